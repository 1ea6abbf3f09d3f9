/** Published editions on the site: where each stands, what is noticed of it on its pages and prints, and what changed from one to the next. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browserForFile, troublesOf } from '../support/browsing.ts';
import { buildForTests } from '../support/command.ts';
import { filesBelow, newFolder, removeFolder } from '../support/folders.ts';
import { findJava } from '../support/java.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { PAPER_SIZES } from '../support/paper.ts';
import { pagesOfPdf, type PrintedPage } from '../support/printed.ts';
import { KIT, publishedContent, WORDS } from '../support/published.ts';

const SHEETS = ['', 'run/', 'student/', 'background/', 'numbers/', 'questions/', 'safety/', 'board/', 'readings/', 'booklet/'];
const STATES = ['1.0.0', '1.1.0', 'draft'] as const;
const SITE = 'https://valley.example/lessons/';
/** A window of 1,280 px at 400 %: WCAG 2.2, 1.4.10 Reflow. */
const NARROW = { viewport: { width: 320, height: 800 } };

const open = browserForFile();
const place = newFolder();
const site = join(place, 'site');
const folderOf = { public: site, teachers: `${site}-teachers` } as const;
type Folder = keyof typeof folderOf;

const read = (path: string, folder: Folder = 'public'): string => readFileSync(join(folderOf[folder], path), 'utf8');
const page = (path: string, folder: Folder = 'public'): string => read(`kits/${KIT}/${path}index.html`, folder);
const addressOf = (path: string): string => pathToFileURL(join(site, 'kits', KIT, path, 'index.html')).href;
/** The words of a page's matter. */
const matter = (html: string): string => lettersOf((/<main[^]*<\/main>/.exec(html)?.[0] ?? '').replace(/<[^>]*>/g, ' '));

beforeAll(async () => {
  const content = join(place, 'content');
  await publishedContent(content);
  await buildForTests(content, site);
}, 240_000);
afterAll(() => removeFolder(place));

describe('addresses', () => {
  it('has every sheet of every edition and of the draft at its own address, in both folders', () => {
    const missing = STATES.flatMap((state) => SHEETS.flatMap((sheet) => Object.values(folderOf).map((folder) => join(folder, 'kits', KIT, state, sheet, 'index.html')))).filter((file) => !existsSync(file));
    expect(missing).toEqual([]);
  });

  it.each(STATES)('shows the words of %s on its student sheet, and no others', (state) => {
    const words = matter(page(`${state}/student/`));
    for (const other of STATES) expect(words.includes(lettersOf(WORDS.student[other])), other).toBe(other === state);
  });

  it('shows the newest edition at the address of the kit, and says which page is its own', () => {
    const own = page('1.1.0/');
    expect(matter(page(''))).toBe(matter(own));
    expect(page('')).toContain(`<link rel="canonical" href="${SITE}kits/${KIT}/1.1.0/">`);
    expect(own).not.toContain('rel="canonical"');
    expect(page('')).toContain('href="1.1.0/print.css"');
    expect(page('', 'teachers')).not.toContain('rel="canonical"');
  });

  it('leads from every link to a file and an anchor that is there', () => {
    const wrong = Object.values(folderOf).flatMap((folder) =>
      filesBelow(folder).filter((path) => path.startsWith('kits/') && path.endsWith('/index.html') || path === 'index.html').flatMap((path) => {
        const file = join(folder, path);
        return [...readFileSync(file, 'utf8').matchAll(/ (?:href|src)="(?!https?:|mailto:|data:)([^"#]*)(?:#([^"]*))?"/g)]
          .filter(([, address = '', anchor]) => {
            const target = address === '' ? file : resolve(dirname(file), address);
            return !target.startsWith(`${folder}/`) || !existsSync(target) || anchor !== undefined && !readFileSync(target, 'utf8').includes(` id="${anchor}"`);
          })
          .map(([link]) => `${path}: ${link}`);
      }),
    );
    expect([...new Set(wrong)]).toEqual([]);
  });

  it('gives every page a title of its own', () => {
    const titles = filesBelow(site).filter((path) => path.endsWith('.html')).map((path) => /<title>(.*?)<\/title>/s.exec(read(path))?.[1]);
    expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
  });
});

describe('the shelf and the search', () => {
  it('has the kit once, with a link to the draft', () => {
    expect(read('index.html').match(/<h2[^]*?<\/h2>/g)?.join()).toContain(`kits/${KIT}/1.1.0/index.html`);
    expect(read('index.html').match(/class="shelf-kit"/g)).toHaveLength(1);
    expect(read('index.html')).toContain(`kits/${KIT}/draft/index.html`);
  });

  it('finds nothing twice', () => {
    const found = [...read('search/index-of-words.js').matchAll(/kits\/[^"\\]+/g)].map(([path]) => path);
    expect(found.length).toBeGreaterThan(3);
    expect(found.filter((path) => !path.startsWith(`kits/${KIT}/1.1.0/`))).toEqual([]);
    expect(found.filter((path, at) => found.indexOf(path) !== at)).toEqual([]);
  });
});

describe('the page of changes', () => {
  it('lists the states, the newest first, and says what became of each', () => {
    const rows = /<table class="editions">[^]*?<\/table>/.exec(page('changes/'))![0].split('<tr>').slice(2).map((row) => row.replace(/<[^>]*>/g, '').trim());
    expect(rows.map((row) => row.split(' ')[0])).toEqual(['Draft', '1.1.0', '1.0.0']);
    expect(rows[1]).toMatch(/newest, corrected \d{4}-/);
    expect(rows[2]).toMatch(/withdrawn \d{4}-\S+, replaced by 1\.1\.0/);
  });

  it('names the author’s reasons, the notices, changed words and changed numbers', () => {
    const words = matter(page('changes/'));
    for (const text of [WORDS.withdrawn, WORDS.corrected, WORDS.change]) expect(words).toContain(lettersOf(text));
    expect(page('changes/')).toContain('<del>see?</del> <ins>expect to see first?</ins>');
    // The room was at 20.0 °C when the first edition was published, and at 23.0 °C at the second: the first row of the table of steps.
    expect(page('changes/')).toContain('0\u00a0kPa: air, no droplets</th><td>20.0\u00a0°C</td><td>23.0\u00a0°C</td>');
  });

  it('tells no answer to the public, and all to teachers', () => {
    const [open, all] = [page('changes/'), page('changes/', 'teachers')].map(numberRows) as [string[], string[]];
    expect(all).toEqual(expect.arrayContaining(open));
    for (const hidden of ['how-cold: ', 'Starting drier', 'Air at']) {
      expect(open.filter((row) => row.includes(hidden)), hidden).toEqual([]);
      expect(all.filter((row) => row.includes(hidden)), hidden).not.toEqual([]);
    }
  });

  it('is not there for a kit without an edition', () => expect(filesBelow(site).filter((path) => path.endsWith('/changes/index.html'))).toEqual([`kits/${KIT}/changes/index.html`]));
});

/** Labels of the numbers that a page shows before and after. */
const numberRows = (html: string): string[] => [...html.matchAll(/<details class="number-changes"[^]*?<\/details>/g)].flatMap(([table]) => [...table.matchAll(/<th scope="row">([^<]*)/g)].map(([, label = '']) => label));

describe('notices', () => {
  it.each(SHEETS.filter((sheet) => sheet !== 'board/'))('are the first of 1.0.0/%s', (sheet) => {
    for (const folder of ['public', 'teachers'] as const) {
      const html = page(`1.0.0/${sheet}`, folder);
      expect(html).toMatch(/<main[^>]*>\s*<section class="notices"/);
      expect(matter(html)).toMatch(new RegExp(`^withdrawn\\d{8}donotusethiseditionanymoreuseedition110instead${lettersOf(WORDS.withdrawn)}`));
      expect(html).toContain(`href="${'../'.repeat(sheet === '' ? 1 : 2)}1.1.0/${sheet}index.html"`);
    }
  });

  it('are the first board', () => {
    const first = /<section class="board[^]*?<\/section>/.exec(page('1.0.0/board/'))?.[0] ?? '';
    expect(first).toContain('This edition is withdrawn. Do not use it.');
    expect(first).toContain(WORDS.withdrawn);
  });

  it('of a correction say what was printed and what is right, and no answer to the public', () => {
    const [open, all] = (['public', 'teachers'] as const).map((folder) => numberRows(page('1.1.0/run/', folder))) as [string[], string[]];
    expect(open).toHaveLength(1);
    expect(open[0]).toMatch(/^Background, .*5.kPa: air, no droplets$/);
    expect(all).toHaveLength(2);
    expect(page('1.1.0/run/')).toContain('One more corrected number stands in the teachers’ edition.');
  });

  it('stand in the kit in one file and in its zip', () => {
    expect(read(`kits/${KIT}/1.0.0/${KIT}.html`)).toContain(WORDS.withdrawn);
    const [old, corrected, forTeachers] = ([['1.0.0', 'public'], ['1.1.0', 'public'], ['1.1.0', 'teachers']] as const).map(([version, folder]) => {
      const files = unzipSync(readFileSync(join(folderOf[folder], 'kits', KIT, version, `${KIT}.zip`)));
      return Object.fromEntries(Object.entries(files).map(([path, bytes]) => [path, Buffer.from(bytes).toString()]));
    }) as [Record<string, string>, Record<string, string>, Record<string, string>];
    expect(old['LICENSE.txt']).toMatch(/^Withdrawn /);
    expect(old['LICENSE.txt']).toContain(WORDS.withdrawn);
    expect(old['notice.yaml']).toContain('replacement: 1.1.0');
    expect(old[`content/kits/${KIT}/student.mdx`]).toContain(WORDS.student['1.0.0']);
    expect(Object.keys(old)).toContain('content/rooms/workshop.yaml');
    expect(corrected['notice.yaml']).toContain(WORDS.corrected);
    expect(corrected['notice.yaml']).not.toContain('how-cold');
    expect(forTeachers['notice.yaml']).toContain('question/how-cold/answer');
    expect(Object.keys(corrected).filter((path) => path.includes('how-cold'))).toEqual([]);
  });

  it.each(PAPER_SIZES)('stand on every printed page of a withdrawn edition, with the address of its changes in the foot (%s)', (format) =>
    open({}, async (window) => {
      await window.goto(addressOf('1.0.0/run/'), { waitUntil: 'load' });
      const pages: PrintedPage[] = await pagesOfPdf(await window.pdf({ format }));
      expect(pages.length).toBeGreaterThan(1);
      for (const { text } of pages) for (const part of ['Do not use. Use edition 1.1.0 instead.', `…/kits/${KIT}/changes/`]) expect(lettersOf(text)).toContain(lettersOf(part));
      expect(lettersOf(pages[0]!.text)).toContain(lettersOf(WORDS.withdrawn));
    }));
});

describe('for machines', () => {
  const data = (path: string): Record<string, unknown> => JSON.parse(/<script type="application\/ld\+json">([^]*?)<\/script>/.exec(page(path))![1]!) as Record<string, unknown>;

  it('describes each edition by its own address, its day, its status and its corrections', () => {
    // schema.org: creativeWorkStatus, correction, CorrectionComment, isBasedOn.
    expect(data('1.0.0/')).toMatchObject({ '@id': `${SITE}kits/${KIT}/1.0.0/`, version: '1.0.0', creativeWorkStatus: 'Obsolete', correction: [{ '@type': 'CorrectionComment', text: WORDS.withdrawn, url: `${SITE}kits/${KIT}/changes/` }] });
    expect(data('1.1.0/')).toMatchObject({ creativeWorkStatus: 'Published', isBasedOn: `${SITE}kits/${KIT}/1.0.0/`, correction: [{ text: WORDS.corrected }] });
    expect(data('1.1.0/')['datePublished']).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(data('draft/')).toMatchObject({ creativeWorkStatus: 'Draft', isBasedOn: `${SITE}kits/${KIT}/1.1.0/` });
    expect(data('')).toEqual(data('1.1.0/'));
  });

  it('tells of editions and notices in the feed, and sends nobody to a withdrawn edition', () => {
    for (const id of ['1.0.0/#version-1.0.0', '1.0.0/#notice-1', '1.1.0/#version-1.1.0', '1.1.0/#notice-1']) expect(read('feed.xml')).toContain(`<id>${SITE}kits/${KIT}/${id}</id>`);
    expect(read('sitemap.xml')).toContain(`/${KIT}/changes/`);
    expect(read('sitemap.xml')).not.toContain('/1.0.0/');
  });

  it('keeps the page of changes with each edition on a device, and the kit’s own with the newest', () => {
    const kept = (state: string): string[] => Object.keys(JSON.parse(read(`kits/${KIT}/${state}/offline.json`)) as object);
    for (const state of STATES) {
      expect(kept(state)).toContain(`kits/${KIT}/changes/index.html`);
      expect(kept(state).includes(`kits/${KIT}/index.html`)).toBe(state === '1.1.0');
    }
  });
});

describe.each(['changes/', '1.0.0/run/', ''])('/%s from a disk', (path) => {
  it('loads whole and fits a narrow window', () =>
    open(NARROW, async (window) => {
      const troubles = troublesOf(window, 'file://');
      await window.goto(addressOf(path), { waitUntil: 'load' });
      expect(troubles).toEqual({ console: [], requests: [] });
      expect(await window.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
    }));
});

describe.each(['changes/', '1.0.0/run/'])('/%s', (path) => {
  it('has nothing that axe objects to', () =>
    open(NARROW, async (window) => {
      await window.goto(addressOf(path), { waitUntil: 'load' });
      const { violations } = await new AxeBuilder({ page: window }).setLegacyMode().analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    }));
});

const java = findJava();
it.skipIf(java === undefined)('has no error that the Nu HTML checker finds', () => {
  const checker = createRequire(import.meta.url).resolve('vnu-jar/build/dist/vnu.jar');
  const files = ['changes/', '1.0.0/run/', '1.0.0/board/', '1.1.0/', ''].map((path) => join(site, 'kits', KIT, path, 'index.html'));
  const { stderr } = spawnSync(java ?? 'java', ['-jar', checker, '--format', 'json', '--exit-zero-always', ...files], { encoding: 'utf8' });
  const { messages } = JSON.parse(stderr) as { messages: readonly { type: string; message: string; url: string }[] };
  expect(messages.filter(({ type }) => type === 'error').map(({ url, message }) => `${url} ${message}`)).toEqual([]);
});
