/** Text that would take seconds to parse: markers that pile up, found before parsing begins. */

/** Markers of links and emphasis in one block; parsing time grows with their square. */
const MOST_BRACKETS = 300;
const MOST_EMPHASES = 400;
/** Lists and quotes opened on one line. */
const CONTAINERS = /^(?:[ \t]*(?:>|[-+*](?=[ \t])|\d+[.)](?=[ \t]))){10}.*$/gm;
const RULE = /^[ \t]*(?:[-*_][ \t]*)+$/;

/** Where markers pile up, undefined where they do not. */
export function slowPart(text: string): number | undefined {
  for (const row of text.matchAll(CONTAINERS)) if (!RULE.test(row[0].trimEnd())) return row.index;
  let start = 0;
  for (const block of text.split(/(\n[ \t]*\r?\n)/)) {
    if (count(block, /\[/g) > MOST_BRACKETS || count(block, /[*_~]+/g) > MOST_EMPHASES)
      return start + (block.length - block.trimStart().length);
    start += block.length;
  }
  return undefined;
}

function count(text: string, marker: RegExp): number {
  return text.match(marker)?.length ?? 0;
}
