import type { APIRoute } from 'astro';
import { manoeuvresOf } from '../plan/manoeuvres-of.ts';
import { libraryJson } from '../text/library-json.ts';
import { library } from './_data.ts';

export const GET: APIRoute = () => Response.json(libraryJson(library, (form) => manoeuvresOf(library, form)));
