/** A checked content folder to a book: everything computed, as plain data and HTML, for the pages to lay out. */
import type { Content } from '../authoring/index.ts';
import type { Book } from './book.ts';
import { SITE_SOURCE_LIST } from './kit-scene.ts';
import { hazardView, kitView, placeOf } from './kit-view.ts';
import { MathStyles } from './math.ts';
import { sourceView } from './reference.ts';
import { roomView } from './room-view.ts';

/** The version of a kit's working copy. */
export const DRAFT = 'draft';

/** Compiles all kits. Pure: the same content gives the same book. */
export function compileBook(content: Content): Book {
  const math = new MathStyles();
  const { school, address, language, license, answers, drafts } = content.site;
  const kits = drafts ? [...content.kits].map(([id, kit]) => kitView(content, id, kit, DRAFT, math)) : [];
  return {
    school, address, language, license, answers, kits,
    hazards: siteHazards(content, math),
    sources: [...content.sources.values()].map((source) => sourceView(source, language)),
    room: roomView(content),
    mathCss: math.css,
  };
}

/** All hazard sheets, each with the values of the first kit that lists it. */
function siteHazards(content: Content, math: MathStyles): Book['hazards'] {
  const kits = [...content.kits.values()];
  return [...content.hazards.keys()].flatMap((id) => {
    const kit = kits.find(({ meta }) => meta.hazards.includes(id)) ?? kits[0];
    return kit === undefined ? [] : [hazardView(placeOf(content, kit, math, SITE_SOURCE_LIST), id)];
  });
}
