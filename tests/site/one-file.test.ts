/** A kit in one file: opened from any disk it asks for nothing and lacks nothing; and its zip. */
import { copyFile } from 'node:fs/promises';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browserForFile, builtPages, isOneFile, ofOneKit, troublesOf } from '../support/browsing.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { lettersOf, secretsOf } from '../support/lesson-secrets.ts';
import { ROOT } from '../support/root.ts';

const open = browserForFile();
const kits = ofOneKit(builtPages().filter(isOneFile));
/** kB; a kit must travel by mail and fit on an old stick. */
const LARGEST = 700;
const SHEETS = ['run', 'student', 'background', 'numbers', 'questions', 'safety'];

let alone: string;
beforeAll(() => {
  alone = newFolder();
});
afterAll(() => removeFolder(alone));

it('is there for each kit in both folders', () => expect(kits.map(({ served }) => served.name)).toEqual(['public', 'teachers']));

describe.each(kits)('$name', (built) => {
  it(`is smaller than ${LARGEST} kB`, () => expect(statSync(built.file).size / 1000).toBeLessThan(LARGEST));

  it('shows every sheet from a folder where nothing else is, with its faces, without any request or violation', () =>
    open({}, async (page) => {
      const file = join(alone, `${built.served.name}.html`);
      await copyFile(built.file, file);
      const address = pathToFileURL(file).href;
      const requests: string[] = [];
      page.on('request', (request) => {
        if (request.url() !== address && !request.url().startsWith('data:')) requests.push(request.url());
      });
      const troubles = troublesOf(page, '');
      await page.goto(address, { waitUntil: 'load' });
      await page.evaluate(() => document.fonts.ready);
      expect(requests).toEqual([]);
      expect(troubles).toEqual({ console: [], requests: [] });
      for (const sheet of SHEETS) expect(await page.locator(`#${sheet}`).isVisible(), sheet).toBe(true);
      expect(await page.evaluate(() => document.fonts.check('16px "IBM Plex Sans"') && [...document.fonts].some(({ family, status }) => family.includes('Source Serif') && status === 'loaded'))).toBe(true);
      const lost = await page.evaluate(() => [...document.querySelectorAll('a[href^="#"]')].map((link) => link.getAttribute('href') ?? '').filter((href) => document.getElementById(decodeURIComponent(href.slice(1))) === null));
      expect(lost).toEqual([]);
    }));

  it('is computed for another room there, simulations included', () =>
    open({}, async (page) => {
      const file = join(alone, `room-${built.served.name}.html`);
      await copyFile(built.file, file);
      const troubles = troublesOf(page, '');
      await page.goto(pathToFileURL(file).href, { waitUntil: 'load' });
      const own = await page.locator('.foot [data-computed-for]').innerText();
      await page.goto('about:blank');
      await page.goto(`${pathToFileURL(file).href}#elevation=1600m`, { waitUntil: 'load' });
      await expect.poll(() => page.locator('.foot [data-computed-for]').innerText()).not.toBe(own);
      // Set by the room's script when the last drawing that needs a simulation stands.
      await expect.poll(() => page.evaluate(() => performance.getEntriesByName('room-all').length)).toBeGreaterThan(0);
      expect(await page.locator('.your-room output').allInnerTexts()).not.toContainEqual(expect.stringContaining('could not'));
      expect(troubles).toEqual({ console: [], requests: [] });
    }));

  it('allows nothing that does not stand in it', () => {
    const policy = /Content-Security-Policy" content="([^"]*)"/.exec(readFileSync(built.file, 'utf8'))?.[1] ?? '';
    expect(policy).toMatch(/^default-src 'none'; img-src data:; font-src data:; style-src 'sha256-[^']+'; script-src [^;]+; base-uri 'none'; form-action 'none'$/);
    expect(policy).not.toMatch(/unsafe|\*|'self'|https?:|blob:/);
  });

  it('stands in the zip with the numbers and the text it was made from', () => {
    const files = unzipSync(readFileSync(built.file.replace(/html$/, 'zip')));
    const name = built.path.replace(/^.*\//, '');
    expect(Buffer.from(files[name] ?? []).equals(readFileSync(built.file))).toBe(true);
    const paths = Object.keys(files);
    for (const path of ['tables.json', 'LICENSE.txt', `content/kits/${name.replace('.html', '')}/kit.yaml`, `content/kits/${name.replace('.html', '')}/run.mdx`]) expect(paths).toContain(path);
    expect(paths.some((path) => path.includes('/questions/'))).toBe(built.served.name === 'teachers');
    expect(paths.filter((path) => /^tables\/[a-z0-9-]+\.csv$/.test(path)).length).toBeGreaterThan(0);
  });

  it('has its questions for learning platforms beside it where answers may stand', () => {
    for (const version of ['qti3', 'qti21']) expect(existsSync(built.file.replace(/\.html$/, `-${version}.zip`))).toBe(built.served.name === 'teachers');
  });
});

it.each(kits.filter(({ served }) => served.name === 'public'))('$path holds nothing for teachers in its zip', (built) => {
  const letters = lettersOf(Object.values(unzipSync(readFileSync(built.file.replace(/html$/, 'zip')))).map((data) => Buffer.from(data).toString()).join('\n'));
  expect(secretsOf(join(ROOT, 'content')).filter((secret) => letters.includes(secret.letters)).map(({ where }) => where)).toEqual([]);
});
