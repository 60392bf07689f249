import type { APIRoute, GetStaticPaths } from 'astro';
import { sheetPapers, type SheetPaper } from '../../sheets/papers.ts';
import { library } from '../_data.ts';
import { pressedSheets } from '../_press/press.ts';

const papers = Object.keys(sheetPapers) as SheetPaper[];

export const getStaticPaths = (() =>
  library.forms.flatMap(({ id: form }) =>
    papers.map((paper) => ({ params: { sheet: `${form}.${paper}` }, props: { form, paper } })),
  )) satisfies GetStaticPaths;

/** The run sheet of a stock exam as a PDF; the build fails naming what cannot be set. */
export const GET: APIRoute<{ form: string; paper: SheetPaper }> = async ({ props }) =>
  new Response((await pressedSheets(props.form))[props.paper], {
    headers: { 'content-type': 'application/pdf' },
  });
