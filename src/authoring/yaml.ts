/** YAML as data only: one document, no anchors, no tags, no field twice, and the place of everything. */
import {
  isAlias,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  visit,
  type Document,
  type YAMLError,
} from 'yaml';
import { findingAt, START, type Finding, type Place } from './findings.ts';
import type { FindingCode } from './catalogue.ts';
import { hiddenProblem, holdsHidden } from './hidden.ts';

/** What one YAML text says. */
export interface YamlSource {
  readonly file: string;
  /** undefined where the text is not readable */
  readonly data: unknown;
  /** where a field stands; for a field that is not there, the nearest that encloses it */
  readonly locate: (path: readonly PropertyKey[], part?: 'key' | 'value') => Place;
  readonly findings: readonly Finding[];
}

/** The reader's own limit is the call stack, reached at some thousand levels. */
const STACK = /call stack/i;

/**
 * Reads YAML 1.2 (core schema).
 * @param text of the file, or of the front matter
 * @param firstLine of the text in its file
 */
export function readYaml(text: string, file: string, firstLine = 1): YamlSource {
  const lines = new LineCounter();
  const at = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line) + firstLine - 1, column: Math.max(1, col) };
  };
  const top: Place = { ...START, line: firstLine };
  const unreadable = (findings: readonly Finding[]): YamlSource => ({ file, data: undefined, locate: () => top, findings });

  const tooDeep = (): YamlSource =>
    unreadable([
      findingAt(file, top, { code: 'yaml-syntax', what: 'lists or fields are nested too deeply', instead: 'write a flat list' }),
    ]);

  let document: Document.Parsed;
  try {
    document = parseDocument(text, { version: '1.2', schema: 'core', lineCounter: lines, prettyErrors: false, logLevel: 'error' });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return tooDeep();
  }
  if (document.errors.some((error) => STACK.test(error.message))) return tooDeep();
  const findings = document.errors.map((error) => findingAt(file, at(error.pos[0]), explain(error)));
  findings.push(...refused(document, text, file, at));
  // A field given twice leaves no doubt about the others.
  if (findings.some(({ code }) => code !== 'yaml-duplicate-key')) return unreadable(findings);

  const data: unknown = document.toJS({ maxAliasCount: 0 });
  if (data === null || data === undefined) {
    return unreadable([
      findingAt(file, top, { code: 'yaml-syntax', what: 'there are no fields', instead: 'write the fields of this kind of file' }),
    ]);
  }
  return { file, data, locate: (path, part = 'value') => placeOf(document, path, part, at, top), findings };
}

function explain(error: YAMLError): { code: FindingCode; what: string; instead: string } {
  if (error.code === 'DUPLICATE_KEY')
    return { code: 'yaml-duplicate-key', what: 'this field is given a second time', instead: 'remove one of the two' };
  if (error.code === 'MULTIPLE_DOCS')
    return { code: 'yaml-documents', what: 'another document begins here', instead: 'remove the `---`, or make it another file' };
  const what = error.message
    .replace(/\s+/g, ' ')
    .replace(/ at line \d+.*$/, '')
    .replace(/\.$/, '');
  return {
    code: 'yaml-syntax',
    what: `this is not readable as YAML (${what})`,
    instead: 'check indent, colons and quotes; put text that holds `: ` or ` #` in quotes',
  };
}

function refused(document: Document.Parsed, text: string, file: string, at: (offset: number) => Place): Finding[] {
  const findings: Finding[] = [];
  const add = (offset: number | undefined, code: FindingCode, what: string, instead: string): void => {
    findings.push(findingAt(file, at(offset ?? 0), { code, what, instead }));
  };
  visit(document, (_, node) => {
    if (isPair(node)) {
      const { key } = node;
      if (!isScalar(key))
        add(
          isNode(key) ? key.range?.[0] : 0,
          'yaml-syntax',
          'a field’s name is not plain text',
          'write a plain name before the colon',
        );
      else if (key.value === '<<') add(key.range?.[0], 'yaml-anchor', '`<<` merges other fields in', 'write the fields out');
      return undefined;
    }
    if (isAlias(node))
      add(node.range?.[0], 'yaml-anchor', `\`*${node.source}\` repeats what stands elsewhere`, 'write the value out');
    else if (isNode(node)) {
      // Those that are not escaped are found in the file's text.
      if (isScalar(node) && typeof node.value === 'string' && holdsHidden(node.value) && !holdsHidden(text.slice(node.range?.[0], node.range?.[1]))) {
        const { code, what, instead } = hiddenProblem(node.value);
        add(node.range?.[0], code, what, instead);
      }
      const start = node.range?.[0] ?? 0;
      if (node.anchor !== undefined)
        add(signBefore(text, start, '&'), 'yaml-anchor', `\`&${node.anchor}\` names a value for repetition`, 'remove it and write values out');
      // Maps and lists carry these tags without being written with them.
      if (node.tag !== undefined && !/^tag:yaml\.org,2002:(?:map|seq)$/.test(node.tag))
        add(
          signBefore(text, start, '!'),
          'yaml-tag',
          `the tag \`${node.tag.replace('tag:yaml.org,2002:', '!!')}\` is refused`,
          'write the value plainly',
        );
    }
    return undefined;
  });
  return findings;
}

/** Where the anchor or tag before a value begins. */
function signBefore(text: string, value: number, sign: '&' | '!'): number {
  const before = /(?:[&!]\S*\s+)+$/.exec(text.slice(0, value));
  const at = before === null ? -1 : before[0].search(sign === '&' ? /(?<!\S)&/ : /(?<!\S)!/);
  return before === null || at < 0 ? value : before.index + at;
}

function placeOf(
  document: Document.Parsed,
  path: readonly PropertyKey[],
  part: 'key' | 'value',
  at: (offset: number) => Place,
  top: Place,
): Place {
  let node: unknown = document.contents;
  let place = top;
  for (const [depth, step] of path.entries()) {
    const last = depth === path.length - 1;
    if (isMap(node)) {
      const pair = node.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));
      if (pair === undefined) return place;
      const own = isScalar(pair.key) ? pair.key.range?.[0] : undefined;
      const value = isNode(pair.value) && !(isScalar(pair.value) && pair.value.value === null) ? pair.value.range?.[0] : undefined;
      const offset = last && part === 'value' ? (value ?? own) : own;
      if (offset !== undefined) place = at(offset);
      node = pair.value;
    } else if (isSeq(node)) {
      const item = node.items[Number(step)];
      if (!isNode(item)) return place;
      if (item.range) place = at(item.range[0]);
      node = item;
    } else return place;
  }
  return place;
}
