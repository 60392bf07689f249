import { indexEndpoint } from './_endpoint.ts';

export const { getStaticPaths, GET } = indexEndpoint('', '.json', 'application/json');
