/** Good content changed at random: a finding or a clean page, never a crash, a hang, or markup that the policy would block. */
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { checkGates, loadFolder, parseLesson, readFolder, readReadings, readYaml, SHEET_KINDS, type ContentFile, type Folder, type SheetKind } from '../../src/authoring/index.ts';
import { checkQuestions } from '../../src/questions/index.ts';
import { compileBook, conditionsOf, VOCABULARY } from '../../src/sheets/index.ts';
import { mutate, randomFrom } from './fuzz.ts';
import { blockedIn, htmlOf } from './markup.ts';

const folder = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const SEED = 20261125;
/** A single file is read within this time of the processor, ms. */
const LONGEST = 1000;

/** Findings about one file alone. */
function findingsIn({ kind, file, text = '' }: ContentFile): number {
  if (kind === 'picture') return 0;
  if (kind === 'readings') return readReadings(text, file).findings.length;
  return (SHEET_KINDS as readonly string[]).includes(kind) ? parseLesson(text, file, kind as SheetKind, VOCABULARY).findings.length : readYaml(text, file).findings.length;
}

/** What the policy would block of the book of a folder; nothing where it has findings. */
function blockedBy(read: Folder): { readonly clean: boolean; readonly blocked: readonly string[] } {
  const { content, findings } = loadFolder(read, VOCABULARY);
  if (content === undefined) {
    expect(findings.length).toBeGreaterThan(0);
    return { clean: false, blocked: [] };
  }
  const wrong = [...checkGates(content), ...[...content.kits.values()].flatMap((kit) => checkQuestions(content, kit, conditionsOf(content, kit)))];
  if (wrong.length > 0) return { clean: false, blocked: [] };
  return { clean: true, blocked: htmlOf(compileBook(content)).flatMap(blockedIn) };
}

/** Changes a folder again and again for so long, ms, and so often at most. */
async function fuzz(path: string, seed: number, time: number, rounds: number): Promise<{ readonly refused: number; readonly clean: number }> {
  const good = await readFolder(folder(path));
  const random = randomFrom(seed);
  const end = performance.now() + time;
  let refused = 0;
  let clean = 0;
  // On a busy machine the time may be over before both have been seen.
  for (let round = 0; round < rounds && (performance.now() < end || refused === 0 || clean === 0); round++) {
    const changed = mutate(good, random);
    const where = `${path}, seed ${seed}, round ${round}: ${changed.file.file}\n${changed.file.text}`;
    try {
      const start = process.cpuUsage();
      const wrong = findingsIn(changed.file);
      const { user, system } = process.cpuUsage(start);
      expect((user + system) / 1000).toBeLessThan(LONGEST);
      if (wrong > 0) {
        refused++;
        continue;
      }
      const result = blockedBy(changed.folder);
      expect(result.blocked).toEqual([]);
      if (result.clean) clean++;
      else refused++;
    } catch (error) {
      throw new Error(where, { cause: error });
    }
  }
  return { refused, clean };
}

describe('markup that a policy would block', () => {
  it.each([
    '<script>x</script>', '<p style="x">', '<p onclick="x">', '<a href="javascript:x">', '<a href="java&#10;script:x">', '<a href="//a">', '<a href="http://a">', '<img src="data:x">',
    '<p class=x>', '5 < 6', '<svg xmlns="http://example.org">', '<!-- x -->',
  ])('is seen in %s', (html) => {
    expect(blockedIn(html)).not.toEqual([]);
  });

  it('is not in links, figures and formulas', () => {
    const good = '<a href="../a/">a</a> <a href="https://a">a</a> <a href="mailto:a@b">a</a> 5 &lt; 6 <svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0"/></svg>';
    expect(blockedIn(good)).toEqual([]);
  });
});

describe('good content changed at random', () => {
  it.each([
    ['tests/content/good/minimal', SEED, 2000],
    ['tests/content/good/highland', SEED + 1, 1500],
    ['content', SEED + 2, 1500],
  ] as const)('%s, seed %d, for %d ms', async (path, seed, time) => {
    const { refused, clean } = await fuzz(path, seed, time, 2000);
    expect(refused).toBeGreaterThan(0);
    expect(clean).toBeGreaterThan(0);
  });
});
