/** HTML of our own making read tag by tag: it is well-formed, so that no more than this is needed. */

/** A tag: slash of an end, name, attributes. */
export const TAG = /<(\/?)([a-zA-Z][\w-]*)((?:[^>"']|"[^"]*"|'[^']*')*)>/g;

/** Elements without an end. */
export const VOID: ReadonlySet<string> = new Set(['area', 'base', 'br', 'col', 'embed', 'hr', 'img', 'input', 'link', 'meta', 'source', 'track', 'wbr']);

/** What no reader is told. */
export const isHidden = (attributes: string): boolean => /\saria-hidden="true"/.test(attributes);

const NAMED: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: '\u00a0' };

/** Text between tags, its references replaced by what they stand for. */
export const decoded = (text: string): string =>
  text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));/gi, (whole, hex?: string, decimal?: string, name?: string) =>
    name === undefined ? String.fromCodePoint(hex === undefined ? Number(decimal) : parseInt(hex, 16)) : (NAMED[name.toLowerCase()] ?? whole),
  );
