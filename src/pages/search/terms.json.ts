import type { APIRoute } from 'astro';
import { searchTerms } from '../../search/terms.ts';
import { records } from '../_search.ts';

export const GET: APIRoute = () => Response.json(searchTerms(records));
