import { PDFString, type PDFContext, type PDFRef } from '@cantoo/pdf-lib';
import type { Appearances } from './appearances.ts';
import type { DrawnField } from './drawn-fields.ts';
import type { FieldOption, FieldSpec } from './field-spec.ts';
import { type Entries, fittedType, linesType, setEntries, toWidget, typeOf, words } from './widgets.ts';

/** What making a field needs of its document. */
export interface FieldMaker {
  context: PDFContext;
  appearances: Appearances;
}

type SpecOf<K extends FieldSpec['kind']> = Extract<FieldSpec, { kind: K }>;
type Places = readonly [DrawnField, ...DrawnField[]];

/** Field flags of ISO 32000-1, tables 226, 228 and 230. */
const flags = { multiline: 1 << 12, radio: 1 << 15, combo: 1 << 17 };

/** State of a tick box that is ticked. */
const ticked = 'Yes';

const own = ({ name, tooltip }: FieldSpec): Entries => ({ T: PDFString.of(name), TU: words(tooltip) });

/** Field and widget are one dictionary. */
function single({ context }: FieldMaker, place: DrawnField, entries: Entries): PDFRef {
  setEntries(place.annotation, context, entries);
  return place.ref;
}

/** A field of its own with several widgets, which are its kids. */
function shared({ context }: FieldMaker, places: Places, entries: Entries): PDFRef {
  const parent = context.obj({});
  setEntries(parent, context, { ...entries, Kids: places.map(({ ref }) => ref) });
  const ref = context.register(parent);
  for (const { annotation } of places) setEntries(annotation, context, { Parent: ref });
  return ref;
}

/** Height in points from which a field of several lines keeps its type at one size; in a lower one type is fitted. */
const roomForLines = 30;
function typeOfText({ size, multiline }: SpecOf<'text'>, [{ height }]: Places): PDFString {
  if (size !== undefined) return typeOf(size);
  return multiline && height >= roomForLines ? linesType : fittedType;
}

function textField(maker: FieldMaker, spec: SpecOf<'text'>, places: Places): PDFRef {
  const type = typeOfText(spec, places);
  for (const place of places)
    toWidget(place, maker.context, spec.tooltip, { AP: maker.appearances.text(place), DA: type });
  const entries = { ...own(spec), FT: 'Tx', ...(spec.multiline && { Ff: flags.multiline }), DA: type };
  return places.length === 1 ? single(maker, places[0], entries) : shared(maker, places, entries);
}

function listField(maker: FieldMaker, spec: SpecOf<'list'>, [place]: Places): PDFRef {
  const { context, appearances } = maker;
  toWidget(place, context, spec.tooltip, { AP: appearances.text(place) });
  const options = spec.options.map(({ code, display }) => context.obj([PDFString.of(code), words(display)]));
  return single(maker, place, { ...own(spec), FT: 'Ch', Ff: flags.combo, DA: fittedType, Opt: options });
}

function tickField(maker: FieldMaker, spec: SpecOf<'tick'>, [place]: Places): PDFRef {
  toWidget(place, maker.context, spec.tooltip, { AP: maker.appearances.box(place, ticked), AS: 'Off' });
  return single(maker, place, { ...own(spec), FT: 'Btn', V: 'Off' });
}

function answerAt({ name, options }: SpecOf<'radio'>, { option = -1 }: DrawnField): FieldOption {
  const answer = options[option];
  if (answer === undefined) throw new Error(`field "${name}" has no answer ${option}`);
  return answer;
}

/** The group is not marked "always one chosen": a box ticked by mistake can be cleared. */
function radioField(maker: FieldMaker, spec: SpecOf<'radio'>, places: Places): PDFRef {
  for (const place of places) {
    const { code, display } = answerAt(spec, place);
    const appearance = { AP: maker.appearances.box(place, code), AS: 'Off' };
    toWidget(place, maker.context, `${spec.tooltip}: ${display}`, appearance);
  }
  return shared(maker, places, { ...own(spec), FT: 'Btn', Ff: flags.radio, V: 'Off' });
}

/** Makes one field of the places drawn for it, and gives the reference for the form's list of fields. */
export function makeField(maker: FieldMaker, spec: FieldSpec, places: Places): PDFRef {
  switch (spec.kind) {
    case 'text':
      return textField(maker, spec, places);
    case 'list':
      return listField(maker, spec, places);
    case 'tick':
      return tickField(maker, spec, places);
    case 'radio':
      return radioField(maker, spec, places);
  }
}
