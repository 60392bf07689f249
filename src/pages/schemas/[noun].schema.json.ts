import type { APIRoute, GetStaticPaths } from 'astro';
import { jsonSchema, schemas } from '../../../schemas/index.ts';

export const getStaticPaths: GetStaticPaths = () => Object.keys(schemas).map((noun) => ({ params: { noun } }));

export const GET: APIRoute = ({ params }) => Response.json(jsonSchema(params['noun'] ?? ''));
