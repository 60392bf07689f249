/** Parts of words that British and American spelling write differently. */
const parts: readonly (readonly [british: string, american: string])[] = [
  ['aem', 'em'],
  ['aetiolog', 'etiolog'],
  ['anaesth', 'anesth'],
  ['behaviour', 'behavior'],
  ['caec', 'cec'],
  ['caesar', 'cesar'],
  ['calibre', 'caliber'],
  ['centred', 'centered'],
  ['centre', 'center'],
  ['coeliac', 'celiac'],
  ['colour', 'color'],
  ['distension', 'distention'],
  ['faec', 'fec'],
  ['fibre', 'fiber'],
  ['foet', 'fet'],
  ['goitre', 'goiter'],
  ['grey', 'gray'],
  ['gynaec', 'gynec'],
  ['isation', 'ization'],
  ['labour', 'labor'],
  ['leuc', 'leuk'],
  ['litre', 'liter'],
  ['manoeuvre', 'maneuver'],
  ['manoeuvring', 'maneuvering'],
  ['metre', 'meter'],
  ['mould', 'mold'],
  ['naev', 'nev'],
  ['odour', 'odor'],
  ['oedema', 'edema'],
  ['oesophag', 'esophag'],
  ['oestr', 'estr'],
  ['paed', 'ped'],
  ['paralys', 'paralyz'],
  ['phaeo', 'pheo'],
  ['pnoea', 'pnea'],
  ['rhoea', 'rhea'],
  ['sulph', 'sulf'],
  ['tumour', 'tumor'],
];

/** A text in American spelling. Content is written in British spelling, so there is no way back. */
export function americanSpelling(text: string): string {
  return parts.reduce((spelled, [british, american]) => respell(spelled, british, american), text);
}

function respell(text: string, british: string, american: string): string {
  return text.replace(new RegExp(british, 'gi'), (found) =>
    found.charAt(0) === found.charAt(0).toUpperCase() ? american.charAt(0).toUpperCase() + american.slice(1) : american,
  );
}
