/** What the formulas of the guide's examples need beside the stylesheet of their fonts. */
import type { APIRoute } from 'astro';
import { exampleFormulaCss } from '../../../components/contribute/practice/draw.ts';

export const getStaticPaths = () => [{ params: { edition: undefined } }];

export const GET: APIRoute = () => new Response(exampleFormulaCss(), { headers: { 'content-type': 'text/css' } });
