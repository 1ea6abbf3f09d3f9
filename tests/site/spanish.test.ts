/** A school that writes in Spanish, with one kit also in English: no English word of the interface on its Spanish pages, and the two kits lead to each other. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { brotliCompressSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, inject, it } from 'vitest';
import * as en from '../../src/texts/en.ts';
import * as es from '../../src/texts/es.ts';
import { browserForFile } from '../support/browsing.ts';
import { sharedBuild } from '../support/builds.ts';
import { filesBelow } from '../support/folders.ts';
import { allTexts, PLACE } from '../texts/all-texts.ts';

const open = browserForFile();
const site = await sharedBuild(inject('builds'), 'valle');
const SPANISH = 'kits/primera-nube/draft/';
const ENGLISH = 'kits/first-cloud/draft/';
const SHEETS = ['', 'run/', 'student/', 'background/', 'numbers/', 'questions/', 'safety/', 'board/', 'readings/', 'booklet/'];
const OWN_PAGES = ['index.html', 'room/index.html', 'safety/index.html', 'sources/index.html', 'search/index.html', 'checks/index.html', 'kits/primera-nube/index.html'];

const read = (path: string, teachers = false): string => readFileSync(join(teachers ? `${site}-teachers` : site, path), 'utf8');

/** Titles of books and journals stay as they are, and so does what says that it is English. */
const FOREIGN = /<(?!html\b)(\w+)[^>]* lang="en"[^>]*>[\s\S]*?<\/\1>|<div class="table-sources">[\s\S]*?<\/div>|<ul class="plain matter"><li id="source-[\s\S]*?<\/ul>|<annotation[\s\S]*?<\/annotation>|<script[\s\S]*?<\/script>|<style[\s\S]*?<\/style>/g;
const SPOKEN = /\b(?:aria-label|aria-valuetext|placeholder|alt|title|content)="([^"]*)"/g;

/** An address names a reader's room as in every language. */
const ADDRESS = /\S*#\S+=\S+/g;

/** What a page says to readers: its text, and the attributes that are read out. */
function said(html: string): string {
  const own = html.replace(FOREIGN, ' ');
  const attributes = [...own.matchAll(SPOKEN)].map(([, text]) => text);
  return [own.replace(/<[^>]*>/g, ' | '), ...attributes].join(' | ').replace(/&#39;|&quot;|&amp;|&lt;|&gt;/g, ' ').replace(ADDRESS, ' ').replace(/\s+/g, ' ');
}

/** A word with less letters says little: "to, s", "and". */
const SHORTEST = 4;
const whole = (text: string): RegExp => new RegExp(`(?<![\\p{L}\\d/-])${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\d/-])`, 'u');

/** What is English in the texts, in whole pieces between what goes into them. */
const english = (() => {
  const spanish = [...allTexts(es).values()].join(' | ');
  const pieces = [...allTexts(en)].filter(([path]) => !path.startsWith('references.')).flatMap(([, text]) => text.split(PLACE).flatMap((piece) => piece.split(/[.:;,`]+\s|\n/)));
  const words = new Set(pieces.map((piece) => piece.replace(/^[\s,.:;·()%`“”]+|[\s,.:;·()%`“”]+$/g, '')));
  return [...words].filter((word) => /\p{L}{4}/u.test(word) && word.length >= SHORTEST && !whole(word).test(spanish)).map((word) => [word, whole(word)] as const);
})();

const englishIn = (text: string): string[] => english.filter(([, pattern]) => pattern.test(text)).map(([word]) => word);

describe('the search for English words', () => {
  it('knows many', () => expect(english.length).toBeGreaterThan(400));
  it('finds them on an English page', () => expect(englishIn(said(read(`${ENGLISH}run/index.html`))).length).toBeGreaterThan(20));
});

describe.each([...SHEETS.map((sheet) => `${SPANISH}${sheet}index.html`), ...OWN_PAGES])('%s', (path) => {
  // The shelf and the list of editions tell the English kit in its own language.
  it('says nothing in English', () => expect(englishIn(said(read(path)))).toEqual([]));
  it('is in Spanish by its own account', () => expect(read(path)).toMatch(/<html lang="es"/));
  it('writes decimals with a comma', () => {
    // Versions, addresses and sections of documents keep their points.
    const text = said(read(path).replace(/<time[\s\S]*?<\/time>|<meta [^>]*>|data-[a-z]+="[^"]*"/g, ' ')).replace(/\b\d+\.\d+\.\d+\b|\b(?:1\.0|4\.0|CC BY \d\.\d)\b/g, ' ');
    expect(text.match(/(?<![\p{L}.\d])\d+\.\d+(?![\p{L}.\d])/gu) ?? []).toEqual([]);
  });
});

it.each(SHEETS)('the teachers’ %sindex.html says nothing in English', (sheet) => expect(englishIn(said(read(`${SPANISH}${sheet}index.html`, true)))).toEqual([]));

describe('an original and its translation', () => {
  it.each(SHEETS)('lead to each other from %sindex.html', (sheet) => {
    const up = '../'.repeat(sheet === '' ? 2 : 3);
    const [spanish, original] = [read(`${SPANISH}${sheet}index.html`), read(`${ENGLISH}${sheet}index.html`)];
    expect(spanish).toContain(`<link rel="alternate" hreflang="en" href="${up}first-cloud/draft/${sheet}index.html">`);
    expect(original).toContain(`<link rel="alternate" hreflang="es" href="${up}primera-nube/draft/${sheet}index.html">`);
    expect(original).toMatch(/<html lang="en"/);
    if (sheet === 'board/' || sheet === 'booklet/') return;
    expect(spanish).toContain(`<a href="${up}first-cloud/draft/${sheet}index.html" hreflang="en" lang="en">English</a>`);
    expect(original).toContain(`<a href="${up}primera-nube/draft/${sheet}index.html" hreflang="es" lang="es">Español</a>`);
  });

  it('say so to machines', () => {
    const data = (path: string): Record<string, unknown> => JSON.parse(/<script type="application\/ld\+json">(.*?)<\/script>/s.exec(read(`${path}index.html`))![1]!) as Record<string, unknown>;
    const address = 'https://valle.example/lessons/';
    expect(data(SPANISH)).toMatchObject({ inLanguage: 'es', translationOfWork: { '@id': `${address}${ENGLISH}` } });
    expect(data(ENGLISH)).toMatchObject({ inLanguage: 'en', workTranslation: [{ '@id': `${address}${SPANISH}` }] });
  });

  it('stand on the shelf, the foreign one with its language', () => {
    const shelf = read('index.html');
    expect(shelf).toContain('<dt>Idioma</dt><dd lang="en">English</dd>');
    expect(shelf.match(/<dt>Idioma<\/dt>/g)).toHaveLength(1);
  });
});

it('the checks say which of their words are English: each source, where it was read, and the reason of its tolerance', () => {
  const paragraphs = [...read('checks/index.html').matchAll(/<p class="check-source">(.*?)<\/p>/gs)].map(([, text]) => text!);
  expect(paragraphs.length).toBeGreaterThan(100);
  for (const paragraph of paragraphs) expect(paragraph.replace(/<span lang="en">[^<]+<\/span>/g, '…')).toMatch(/^… (?:De memoria\.|Leído en: …) Tolerancia: …$/);
});

describe('the guide', () => {
  it('is English inside a Spanish frame, and says so', () => {
    const page = read('contribute/index.html');
    expect(page).toMatch(/<html lang="es"/);
    expect(page).toMatch(/<main id="main" tabindex="-1" lang="en">/);
    expect(page).toContain('Comprobaciones');
  });
});

describe('each page asks for the scripts of its language', () => {
  it.each([[SPANISH, 'reader-es.js', 'offline-es.js'], [ENGLISH, 'reader.js', 'offline.js']])('%s', (path, reader, offline) => {
    const scripts = [...read(`${path}run/index.html`).matchAll(/<script[^>]* src="[^"]*?([\w-]+\.js)"/g)].map(([, name]) => name);
    expect(scripts.sort()).toEqual([offline, reader].sort());
  });
  it('and none holds the other’s texts', () => {
    for (const name of filesBelow(site).filter((path) => /^[\w-]+\.js$/.test(path) && path !== 'service-worker.js')) {
      const isSpanish = name.endsWith('-es.js');
      const text = read(name);
      const others = [...allTexts(isSpanish ? en : es)].filter(([, one]) => one.length > 40 && !PLACE.test(one) && text.includes(one)).map(([place]) => place);
      expect(others, name).toEqual([]);
    }
  });
  it.each(['reader-es.js', 'reader-room-es.js', 'reader-more-es.js', 'will-it-work-es.js', 'readings-es.js'])('%s is below 30,000 bytes, compressed', (name) => {
    expect(brotliCompressSync(readFileSync(join(site, name))).length).toBeLessThan(30_000);
  });
  it('the kit in one file holds its own', () => {
    const page = read(`${SPANISH}primera-nube.html`);
    expect(page).toContain('Parte de esta página conserva');
    expect(page).not.toContain('Some of this page keeps');
  });
});

describe('in a browser', () => {
  const address = (path: string): string => pathToFileURL(join(site, path)).href;

  it.each(['run/', 'background/', 'numbers/'])('%sindex.html is drawn again as it was built, in Spanish', (sheet) =>
    open({}, async (page) => {
      await page.goto(address(`${SPANISH}${sheet}index.html`), { waitUntil: 'load' });
      const cells = (): Promise<string[]> => page.evaluate(() =>
        [...document.querySelectorAll('[data-value], [data-table] :is(th, td), [data-run] :is(th, td), [data-curve] svg, [data-run] svg')].map((element) =>
          element.tagName === 'svg' ? element.outerHTML : (element.textContent ?? '')));
      const set = async (text: string): Promise<void> => {
        await page.evaluate(() => (document.querySelector<HTMLElement>('.your-room')!.dataset['state'] = 'waiting'));
        await page.fill('#room-temperature', text);
        await page.waitForFunction(() => document.querySelector<HTMLElement>('.your-room')?.dataset['state'] === 'drawn');
      };
      const built = await cells();
      await page.locator('.your-room > summary').click();
      const own = await page.inputValue('#room-temperature');
      await set('15,5');
      expect(await cells()).not.toEqual(built);
      const text = said(await page.content());
      expect(englishIn(text)).toEqual([]);
      expect(text).toMatch(/Calculado para su aula: 15,50? °C/);
      await page.fill('#room-temperature', '99,5');
      await expect.poll(() => page.locator('.your-room output').innerText()).toBe(
        'Temperatura del aula: 99,5 °C queda fuera de lo que se puede calcular, de −20 °C a 50 °C. La página conserva sus últimos números.');
      await set(own);
      expect(await cells()).toEqual(built);
      expect(await page.locator('.your-room output').innerText()).toMatch(/^Calculado para su aula|^Calculado para el taller/);
    }));

  it('the page that asks whether it works answers in Spanish', () =>
    open({}, async (page) => {
      await page.goto(address('room/index.html'), { waitUntil: 'load' });
      await page.locator('.your-room > summary').click();
      await page.fill('#room-moisture', '20');
      await expect.poll(() => page.locator('.verdict').innerText()).toMatch(/^No\./);
      expect(englishIn(said(await page.content()))).toEqual([]);
    }));

  it('takes readings with decimal commas and answers in Spanish', () =>
    open({}, async (page) => {
      await page.goto(address(`${SPANISH}readings/index.html`), { waitUntil: 'load' });
      await page.fill('#readings-text', 'tiempo (s);manómetro (kPa);termómetro (°C)\n0;0;20,0\n5;−4,5;x');
      await page.locator('[data-part="compare"]').click();
      expect(await page.locator('[data-part="problems"]').innerText()).toContain('Línea 3, columna 3: x no es un número; escriba un número en °C sin la unidad');
      await page.fill('#readings-text', 'tiempo (s);manómetro (kPa);termómetro (°C)\n0;0;20,0\n5;−4,5;19,8\n10;−9,0;19,5');
      await page.locator('[data-part="compare"]').click();
      await expect.poll(() => page.locator('[data-part="status"]').innerText()).toContain('3 lecturas comparadas');
      expect(englishIn(said(await page.content()))).toEqual([]);
    }));

  it.each([`${SPANISH}`, `${SPANISH}run/`, `${SPANISH}board/`, '', 'room/', 'search/'])('axe finds nothing on %sindex.html', (path) =>
    open({}, async (page) => {
      await page.goto(address(`${path}index.html`), { waitUntil: 'load' });
      expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    }));
});
