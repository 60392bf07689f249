import { indexEndpoint } from '../_endpoint.ts';

export const { getStaticPaths, GET } = indexEndpoint('index/', '.pf_index');
