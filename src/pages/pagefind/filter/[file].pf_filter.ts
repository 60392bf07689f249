import { indexEndpoint } from '../_endpoint.ts';

export const { getStaticPaths, GET } = indexEndpoint('filter/', '.pf_filter');
