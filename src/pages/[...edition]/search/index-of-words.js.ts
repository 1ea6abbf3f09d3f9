/** The search index: titles and words, never an answer. */
import type { APIRoute } from 'astro';
import { EDITIONS } from '../../../layouts/book.ts';
import { indexScript } from '../../../layouts/found.ts';

export const getStaticPaths = () => EDITIONS.map((edition) => ({ params: { edition } }));

export const GET: APIRoute = () => new Response(indexScript, { headers: { 'content-type': 'text/javascript' } });
