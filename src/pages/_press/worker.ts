/** Runs in a thread of its own, by Node as it stands: sets one job's PDFs from the Library it was started with. */
import { setImmediate } from 'node:timers/promises';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { workerData } from 'piscina';
import type { Library } from '../../../schemas/library.ts';
import { cardFits, cardPdf } from '../../cards/cards.ts';
import { observationPdf } from '../../forms/observation-pdf.ts';
import { formPdf } from '../../forms/pdf.ts';
import { keptFolder } from '../../library/kept-folder.ts';
import { keepWith } from '../../pdf/engine.ts';
import { sheetPdf } from '../../sheets/pdf.ts';
import { runSheet } from '../../sheets/sheet.ts';
import type { Job, PressedCards, PressedSheets } from './job.ts';

const library = workerData as Library;

// A typeset document is large, and JavaScript sees only its small handle: left alone, handles pile up by the gigabyte.
setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

// An edit touches one deck; the others are as they were. Forms are kept whole, with their fields: see kept.ts.
const typeset = keptFolder('.cache/typeset', ['src/pdf/**/*.{ts,typ}', 'package-lock.json']);

function deck(set: string): PressedCards {
  const pdf = (size: Parameters<typeof cardPdf>[2]) => cardPdf(library, set, size);
  const files = { a6: pdf('a6'), a4: pdf('a4'), index: pdf('index'), letter: pdf('letter') };
  return { files, fits: { a6: cardFits(library, set, 'a6'), index: cardFits(library, set, 'index') } };
}

function sheets(form: string): PressedSheets {
  const sheet = runSheet(library, form);
  return { a4: sheetPdf(sheet, 'a4'), letter: sheetPdf(sheet, 'letter'), a6: sheetPdf(sheet, 'a6') };
}

/** Sets the PDFs of a job. Rejects as cardPdf, formPdf, observationPdf and sheetPdf do, with the words of their faults. */
export default async function press(job: Job): Promise<PressedCards | PressedSheets | Uint8Array> {
  keepWith(job.kind === 'cards' || job.kind === 'sheets' ? typeset : undefined);
  try {
    if (job.kind === 'cards') return deck(job.set);
    if (job.kind === 'sheets') return sheets(job.form);
    return await (job.kind === 'watch' ? observationPdf(job.form, job.paper) : formPdf(job.form, job.print));
  } finally {
    collectGarbage();
    // The typesetter's memory is given back in a turn of the event loop, which the pool would not take between jobs.
    await setImmediate();
  }
}
