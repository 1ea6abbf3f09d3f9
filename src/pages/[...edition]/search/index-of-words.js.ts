/** The search index: titles and words, never an answer. */
import type { APIRoute } from 'astro';
import { searchDocuments, searchIndexScript } from '../../../exports/index.ts';
import { book, EDITIONS } from '../../../layouts/book.ts';
import { kitPath } from '../../../layouts/links.ts';

export const getStaticPaths = () => EDITIONS.map((edition) => ({ params: { edition } }));

export const GET: APIRoute = () => new Response(searchIndexScript(searchDocuments(book, kitPath)), { headers: { 'content-type': 'text/javascript' } });
