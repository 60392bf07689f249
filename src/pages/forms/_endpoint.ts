import type { APIRoute, GetStaticPathsItem } from 'astro';
import { type FormFile, formFiles, offeredForms } from './_files.ts';

/** The drafts' files whose name has this ending, for a route that spells the ending out. */
export async function pathsEnding(ending: `.${string}`): Promise<GetStaticPathsItem[]> {
  const files = offeredForms.map(async ({ id }) => (await formFiles(id)).map((file) => ({ form: id, file })));
  return (await Promise.all(files))
    .flat()
    .filter(({ file }) => file.name.endsWith(ending))
    .map(({ form, file }) => ({ params: { form, file: file.name.slice(0, -ending.length) }, props: { file } }));
}

/** The file, byte for byte as the download list counts it. */
export const serveFile: APIRoute<{ file: FormFile }> = ({ props: { file } }) =>
  new Response(file.bytes, { headers: { 'Content-Type': file.mediaType } });
