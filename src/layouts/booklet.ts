/** Sheets brought together in one document: ids kept apart, links between them turned inward, headings one level down. */

/** An opening tag whole, quoted attributes and all. */
const OPENING_TAG = /<[a-zA-Z](?:[^>"']|"[^"]*"|'[^']*')*>/g;
/** Attributes that name one or more ids. */
const REFERENCES = /( (?:aria-labelledby|aria-describedby|aria-controls|for|headers|list)=")([^"]*)"/g;

/**
 * A sheet as a part of the booklet.
 * @param html - the sheet's content, with addresses as seen from its own folder
 * @param slug - the part: "run"; every id gets it as a prefix
 * @param slugs - all parts of the booklet, "kit" among them where the kit's own page is one
 * @returns the same content, to stand in a document of a sister folder
 */
export const partOfBooklet = (html: string, slug: string, slugs: readonly string[]): string =>
  html.replace(OPENING_TAG, (tag) =>
    tag
      .replace(/^<h([2-5])(?=[\s>])/, (_, level: string) => `<h${level} aria-level="${Number(level) + 1}"`)
      .replace(/ id="([^"]*)"/, ` id="${slug}-$1"`)
      .replace(REFERENCES, (_, before: string, ids: string) => `${before}${ids.split(' ').map((id) => `${slug}-${id}`).join(' ')}"`)
      .replace(/url\(#/g, `url(#${slug}-`)
      .replace(/ ((?:xlink:)?href)="([^"]*)"/, (_, name: string, address: string) => ` ${name}="${inward(address, slug, slugs)}"`),
  );

/** An address as the booklet has it: its own part where it holds the page, else as it was. */
function inward(address: string, slug: string, slugs: readonly string[]): string {
  const [, path = '', fragment] = /^([^#]*)(?:#(.*))?$/.exec(address) ?? [];
  const part = path === '' || path === 'index.html' ? slug : path === '../index.html' ? 'kit' : /^\.\.\/([\w-]+)\/index\.html$/.exec(path)?.[1];
  if (part === undefined || !slugs.includes(part)) return address;
  return fragment === undefined || fragment === '' ? `#${part}` : `#${part}-${fragment}`;
}
