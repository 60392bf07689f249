import type { APIRoute, GetStaticPathsItem } from 'astro';
import { allEditions, type Edition } from './_editions.ts';
import { editionFiles, fileNames } from './_files.ts';

interface Props {
  edition: Edition;
  name: string;
}

/** The files of every version of every form whose name has this ending, for a route that spells the ending out. */
export function pathsEnding(ending: `.${string}`): GetStaticPathsItem[] {
  return allEditions.flatMap((edition) =>
    fileNames(edition)
      .filter((name) => name.endsWith(ending))
      .map((name) => ({
        params: { form: edition.form.id, version: edition.at, file: name.slice(0, -ending.length) },
        props: { edition, name } satisfies Props,
      })),
  );
}

/** The file, byte for byte as the download list counts it. */
export const serveFile: APIRoute<Props> = async ({ props: { edition, name } }) => {
  const file = (await editionFiles(edition)).find((each) => each.name === name);
  return file === undefined
    ? new Response(undefined, { status: 404 })
    : new Response(file.bytes, { headers: { 'Content-Type': file.mediaType } });
};
