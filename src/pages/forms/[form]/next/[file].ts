import type { APIRoute, GetStaticPaths } from 'astro';
import { type FormFile, formFiles, offeredForms } from '../../_files.ts';

/** One address for each file of each draft that is offered. */
export const getStaticPaths = (async () => {
  const paths = offeredForms.map(async ({ id }) =>
    (await formFiles(id)).map((file) => ({ params: { form: id, file: file.name }, props: { file } })),
  );
  return (await Promise.all(paths)).flat();
}) satisfies GetStaticPaths;

/** The file as it stands in the download list. */
export const GET: APIRoute<{ file: FormFile }> = ({ props: { file } }) =>
  new Response(file.bytes, { headers: { 'Content-Type': file.mediaType } });
