/** The numbers of a kit as a file. */
import type { APIRoute } from 'astro';
import { book, EDITIONS } from '../../../../../layouts/book.ts';

export const getStaticPaths = () =>
  EDITIONS.flatMap((edition) => book.kits.map((kit) => ({ params: { edition, kit: kit.id, version: kit.version }, props: { text: kit.tablesJson } })));

export const GET: APIRoute<{ text: string }> = ({ props }) => new Response(props.text, { headers: { 'content-type': 'application/json' } });
