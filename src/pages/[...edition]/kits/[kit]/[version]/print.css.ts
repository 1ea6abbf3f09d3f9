/** The margins of a kit's printed pages. */
import type { APIRoute } from 'astro';
import { book, EDITIONS } from '../../../../../layouts/book.ts';
import { printCss } from '../../../../../layouts/print.ts';

export const getStaticPaths = () =>
  EDITIONS.flatMap((edition) =>
    book.kits.map((kit) => ({ params: { edition, kit: kit.id, version: kit.version }, props: { text: printCss(book, kit, edition === 'teachers') } })),
  );

export const GET: APIRoute<{ text: string }> = ({ props }) => new Response(props.text, { headers: { 'content-type': 'text/css' } });
