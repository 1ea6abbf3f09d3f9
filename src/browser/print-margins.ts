/** What the margins of printed pages say of the room: the kit's own stands in a stylesheet of the site, the reader's takes its place. */

let sheet: CSSStyleSheet | undefined;

/**
 * Puts a line in the margin of every printed page; undefined puts the site's own back.
 * @param line - for which room the page is computed
 * @param page - name of the printed page
 * @param address - where the page is found
 */
export function printInMargins(line: string | undefined, page: string, address: string): void {
  if (!('adoptedStyleSheets' in document)) return;
  sheet ??= new CSSStyleSheet();
  sheet.replaceSync(line === undefined ? '' : `@page ${page} { @bottom-left { content: ${quoted(line)} "\\A" ${quoted(address)}; white-space: pre-line; } }`);
  if (!document.adoptedStyleSheets.includes(sheet)) document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}

const quoted = (text: string): string => `"${text.replace(/[\\"]/g, '\\$&').replace(/\s*\n\s*/g, ' ')}"`;
