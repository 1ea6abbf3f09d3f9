/** Sheets brought together in one document: ids kept apart, links between them turned inward, headings one level down. */

/** An opening tag whole, quoted attributes and all. */
const OPENING_TAG = /<[a-zA-Z](?:[^>"']|"[^"]*"|'[^']*')*>/g;
/** Of a tag: a heading's level, its id, attributes that name ids, references of drawings, its address. */
const PARTS = /^<h([2-5])(?=[\s>])| id="([^"]*)"|( (?:aria-labelledby|aria-describedby|aria-controls|for|headers|list)=")([^"]*)"|url\(#| ((?:xlink:)?href)="([^"]*)"/g;

/**
 * A sheet as a part of the booklet.
 * @param html - the sheet's content, with addresses as seen from its own folder
 * @param slug - the part: "run"; every id gets it as a prefix
 * @param slugs - all parts of the booklet, "kit" among them where the kit's own page is one
 * @returns the same content, to stand in a document of a sister folder
 */
export const partOfBooklet = (html: string, slug: string, slugs: readonly string[]): string => {
  const renamed = (found: string, level?: string, id?: string, before?: string, ids?: string, link?: string, address?: string): string => {
    if (level !== undefined) return `<h${level} aria-level="${Number(level) + 1}"`;
    if (id !== undefined) return ` id="${slug}-${id}"`;
    if (ids !== undefined) return `${before}${ids.split(' ').map((one) => `${slug}-${one}`).join(' ')}"`;
    if (address !== undefined) return ` ${link}="${inward(address, slug, slugs)}"`;
    return `${found}${slug}-`;
  };
  // Most tags have no part in it, and the long ones are the lines of drawings.
  return html.replace(OPENING_TAG, (tag) => (MAY_HOLD_PART.test(tag) ? tag.replace(PARTS, renamed) : tag));
};

const MAY_HOLD_PART = /^<h[2-5]| id="| aria-| for="| headers="| list="|url\(#|href="/;

/** An address as the booklet has it: its own part where it holds the page, else as it was. */
function inward(address: string, slug: string, slugs: readonly string[]): string {
  const [, path = '', fragment] = /^([^#]*)(?:#(.*))?$/.exec(address) ?? [];
  const part = path === '' || path === 'index.html' ? slug : path === '../index.html' ? 'kit' : /^\.\.\/([\w-]+)\/index\.html$/.exec(path)?.[1];
  if (part === undefined || !slugs.includes(part)) return address;
  return fragment === undefined || fragment === '' ? `#${part}` : `#${part}-${fragment}`;
}
