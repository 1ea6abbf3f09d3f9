/** What the formulas of this book need beside the stylesheet of their fonts. */
import type { APIRoute } from 'astro';
import { book, EDITIONS } from '../../layouts/book.ts';

export const getStaticPaths = () => EDITIONS.map((edition) => ({ params: { edition } }));

export const GET: APIRoute = () => new Response(book.mathCss, { headers: { 'content-type': 'text/css' } });
