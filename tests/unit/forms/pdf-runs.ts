import { pages, type PlacedText } from '../../fixtures/pdf-text.ts';

/** A run of text and the page, from 1, that it stands on. */
export interface TextRun {
  page: number;
  text: string;
  /** Type size in points, to a hundredth. */
  size: number;
  /** Both ends of the run, so that turned text is judged as well; points from the lower left. */
  from: { x: number; y: number };
  to: { x: number; y: number };
}

const textRun = ({ text, size, from, to }: PlacedText, page: number): TextRun => ({
  ...{ page, text, size: Math.round(size * 100) / 100 },
  ...{ from: { x: from[0], y: from[1] }, to: { x: to[0], y: to[1] } },
});

/** Every run of text of a PDF, page by page. */
export const textRuns = async (bytes: Uint8Array): Promise<TextRun[]> =>
  (await pages(bytes)).flatMap(({ items }, index) => items.map((item) => textRun(item, index + 1)));

/** Sizes of the pages in points. */
export const pageSizes = async (bytes: Uint8Array): Promise<{ width: number; height: number }[]> =>
  (await pages(bytes)).map(({ width, height }) => ({ width, height }));

/** Text with every kind of space, and every break, as one plain space. */
export const flattened = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** The whole text of a PDF, or of one page, in reading order, flattened. */
export async function flatText(bytes: Uint8Array, page?: number): Promise<string> {
  const runs = await textRuns(bytes);
  return flattened(
    runs
      .filter((run) => page === undefined || run.page === page)
      .map(({ text }) => text)
      .join(' '),
  );
}
