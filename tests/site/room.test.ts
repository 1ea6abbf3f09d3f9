/** The reader's room in a real browser: the same digits as a build, what is refused, what is kept, keyboard, print. */
import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browserForFile, fileAddress, oneSheet, publicSheets, servedFolders, builtPages } from '../support/browsing.ts';
import { buildForTests } from '../support/command.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { pagesOfPdf } from '../support/printed.ts';
import { readCode } from '../support/read-code.ts';
import { lettersOf } from '../support/lesson-secrets.ts';
import { ROOT } from '../support/root.ts';

const open = browserForFile();
const SHEETS = ['numbers', 'background', 'run', 'questions', 'booklet'] as const;
const teachersQuestions = builtPages().filter(({ served, path }) => served.name === 'teachers' && path.endsWith('/questions/index.html'));
const tried = [...SHEETS.flatMap(publicSheets), ...teachersQuestions];

/** Every printed digit of a page that is shown, or of the text of another, and every drawing. */
const cells = (page: Page, html?: string): Promise<string[]> =>
  page.evaluate((text) =>
    [...(text === undefined ? document : new DOMParser().parseFromString(text, 'text/html')).querySelectorAll('[data-value], [data-tolerance], [data-table] :is(th, td), [data-run] :is(th, td), [data-curve] svg, [data-run] svg, [data-setup] svg, [data-setup] li')].map((element) =>
      element.tagName === 'svg' ? element.outerHTML : (element.textContent ?? '')), html);

/** Types into a box and waits until everything is drawn. */
async function set(page: Page, field: string, text: string): Promise<void> {
  await page.evaluate(() => (document.querySelector<HTMLElement>('.your-room')!.dataset['state'] = 'waiting'));
  await page.fill(`#room-${field}`, text);
  await drawn(page);
}
const drawn = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => document.querySelector<HTMLElement>('.your-room')?.dataset['state'] === 'drawn');
};
/** Opens a page as one who was never there. */
async function visit(page: Page, address: string): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: new URL(address).origin, storageTypes: 'local_storage' });
  await session.detach();
  await page.goto(address, { waitUntil: 'load' });
}
const unfold = (page: Page): Promise<void> => page.locator('.your-room > summary').click();
/** Until the control listens: what computes is fetched as it is looked for. */
const ready = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => document.querySelector<HTMLFieldSetElement>('.your-room fieldset')?.disabled === false);
};

it('finds the sheets with numbers', () => expect(tried.length).toBeGreaterThanOrEqual(6));

// A booklet holds the same pieces; it is tried below.
describe.each(tried.filter(({ path }) => !path.includes('/booklet/')))('$name', ({ address }) => {
  it('prints in the kit’s own room, set in the control, exactly what was built', () =>
    open({}, async (page) => {
      await visit(page, address);
      const built = await cells(page);
      expect(built.length).toBeGreaterThan(10);
      await unfold(page);
      const own = await page.inputValue('#room-temperature');
      await set(page, 'temperature', '15');
      expect(await cells(page)).not.toEqual(built);
      await set(page, 'temperature', own);
      expect(await cells(page)).toEqual(built);
    }));
});

describe('a school at 1,600 m', () => {
  const folder = newFolder();
  const site = join(folder, 'site');
  beforeAll(async () => {
    const content = join(folder, 'content');
    cpSync(join(ROOT, 'content'), content, { recursive: true });
    // Each kit may name a room of its own.
    for (const name of readdirSync(join(content, 'rooms'))) {
      const file = join(content, 'rooms', name);
      const changed = readFileSync(file, 'utf8')
        .replace(/^(elevation|stationPressure):.*$/m, 'elevation: 1600 m')
        .replace(/^temperature: [\d.]+/m, 'temperature: 18.0')
        .replace(/^humidity: [\d.]+/m, 'humidity: 30');
      writeFileSync(file, changed);
    }
    await buildForTests(content, site);
  }, 240_000);
  afterAll(() => removeFolder(folder));

  it.each(tried)('is told in $name, from an address, exactly what a build for it prints', ({ served, path, address }) =>
    open({}, async (page) => {
      await visit(page, `${address}#elevation=1600m&temperature=18C&humidity=30`);
      await drawn(page);
      const built = await cells(page, readFileSync(join(served.name === 'teachers' ? `${site}-teachers` : site, path), 'utf8'));
      expect(built.length).toBeGreaterThan(10);
      expect(await cells(page)).toEqual(built);
    }));
});

describe.each(oneSheet('numbers'))('the control on $path', (built) => {
  const { address } = built;

  it('explains what is outside its range and keeps the last good numbers', () =>
    open({}, async (page) => {
      await visit(page, address);
      await unfold(page);
      await set(page, 'elevation', '1600');
      const before = await cells(page);
      for (const [field, text] of [['elevation', '9000'], ['temperature', 'warm'], ['moisture', '120']] as const) {
        await page.fill(`#room-${field}`, text);
        const box = page.locator(`#room-${field}`);
        await page.waitForFunction((id) => document.getElementById(id)?.getAttribute('aria-invalid') === 'true', `room-${field}`);
        const problem = page.locator(`#${await box.getAttribute('aria-describedby')}`);
        expect(await problem.isVisible()).toBe(true);
        expect((await problem.innerText()).length).toBeGreaterThan(30);
        expect(await page.locator('.your-room output').innerText()).toContain('keeps its last numbers');
        expect(await cells(page)).toEqual(before);
      }
    }));

  it('goes back to the kit’s own room in one tap', () =>
    open({}, async (page) => {
      await visit(page, address);
      const before = await cells(page);
      await unfold(page);
      await set(page, 'elevation', '2500');
      await page.fill('#room-temperature', 'hot');
      await page.waitForFunction(() => document.querySelector('[aria-invalid]') !== null);
      await page.locator('.your-room .back').click();
      await drawn(page);
      expect(await cells(page)).toEqual(before);
      expect(new URL(page.url()).hash).toBe('');
      expect(await page.locator('[aria-invalid]').count()).toBe(0);
    }));

  it('remembers on the device, is overruled by an address, and leaves anchors alone', () =>
    open({}, async (page) => {
      await visit(page, address);
      await unfold(page);
      await set(page, 'elevation', '1600');
      expect(new URL(page.url()).hash).toBe('#elevation=1600m');
      await page.goto(address.replace('/numbers/', '/run/'), { waitUntil: 'load' });
      await drawn(page);
      expect(await page.locator('.your-room .says').innerText()).toContain('your room');
      await page.goto('about:blank');
      await page.goto(`${address.replace('/numbers/', '/run/')}#elevation=300m`, { waitUntil: 'load' });
      await drawn(page);
      expect(await page.inputValue('#room-elevation')).toBe('300');
      await page.locator('.run-wide a[href="#step-3"]').focus();
      await page.keyboard.press('Enter');
      await page.waitForFunction(() => location.hash.startsWith('#step-3&'));
      expect(new URL(page.url()).hash).toBe('#step-3&elevation=300m');
      expect(await page.evaluate(() => Math.abs(document.getElementById('step-3')!.getBoundingClientRect().top) < innerHeight)).toBe(true);
    }));

  it('takes what was typed into one box when the reader goes on to the next', () =>
    open({}, async (page) => {
      await visit(page, address);
      await unfold(page);
      await page.fill('#room-elevation', '1600');
      await page.fill('#room-temperature', '18');
      await page.waitForFunction(() => location.hash.includes('temperature'));
      await drawn(page);
      expect(new URL(page.url()).hash).toBe('#elevation=1600m&temperature=18C');
      expect(await page.inputValue('#room-elevation')).toBe('1600');
      expect(await page.inputValue('#room-temperature')).toBe('18');
    }));

  it('works where nothing can be kept', () =>
    open({ reducedMotion: 'no-preference' }, async (page) => {
      await page.addInitScript(() => Object.defineProperty(window, 'localStorage', { get: () => { throw new DOMException('no store', 'SecurityError'); } }));
      await page.goto(address, { waitUntil: 'load' });
      await unfold(page);
      await set(page, 'elevation', '1600');
      expect(await page.locator('[data-value="roomPressure"]').first().innerText()).toContain('83.5');
    }));

  it('works from a disk', () =>
    open({}, async (page) => {
      await page.goto(fileAddress(built), { waitUntil: 'load' });
      await unfold(page);
      await set(page, 'elevation', '1600');
      expect(await page.locator('[data-value="roomPressure"]').first().innerText()).toContain('83.5');
      await page.locator('.your-room .back').click();
    }));

  it('runs the simulations in a thread beside the page, and draws the same itself where there is none or it fails', () =>
    open({ locale: 'en-GB' }, async (page) => {
      const inRoom = async (): Promise<string[]> => {
        await visit(page, `${address.replace('/numbers/', '/run/')}#elevation=1600m`);
        await page.reload({ waitUntil: 'load' });
        await drawn(page);
        return cells(page);
      };
      const beside = await inRoom();
      expect(page.workers()).toHaveLength(1);
      await page.addInitScript(() => Object.defineProperty(window, 'Worker', { configurable: true, value: class extends Worker { constructor() { super('not-there.js'); } } }));
      expect(await inRoom()).toEqual(beside);
      expect(page.workers()).toHaveLength(0);
      await page.addInitScript(() => Reflect.deleteProperty(window, 'Worker'));
      expect(await inRoom()).toEqual(beside);
    }));

  it('computes a step before it is taken, and draws the same as for an address', () =>
    open({ locale: 'en-AU' }, async (page) => {
      await page.addInitScript(() => {
        const counted = window as unknown as { asked: number; told: number };
        [counted.asked, counted.told] = [0, 0];
        window.Worker = class extends Worker {
          constructor(script: string | URL) {
            super(script);
            this.addEventListener('message', () => counted.told++);
          }
          override postMessage(message: unknown): void {
            counted.asked++;
            super.postMessage(message);
          }
        };
      });
      const run = address.replace('/numbers/', '/run/');
      await visit(page, `${run}#temperature=25C`);
      await drawn(page);
      await page.reload({ waitUntil: 'load' });
      await drawn(page);
      const stepped = await cells(page);
      await page.goto('about:blank');
      await visit(page, `${run}#temperature=24.5C`);
      await drawn(page);
      await page.locator('.your-room > summary').focus();
      await page.keyboard.press('Enter');
      await ready(page);
      await page.focus('#room-temperature');
      await page.waitForFunction(() => {
        const { asked, told } = window as unknown as { asked: number; told: number };
        return asked >= 2 && asked === told;
      });
      const asked = await page.evaluate(async () => {
        const counted = window as unknown as { asked: number };
        const before = counted.asked;
        const control = document.querySelector<HTMLElement>('.your-room')!;
        document.getElementById('room-temperature')!.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true }));
        while (control.dataset['state'] !== 'drawn') await new Promise((resolve) => setTimeout(resolve));
        return counted.asked - before;
      });
      expect(asked).toBe(0);
      expect(await page.inputValue('#room-temperature')).toBe('25');
      expect(await cells(page)).toEqual(stepped);
    }));

  it('fetches what computes when it is looked for, and not before', () =>
    open({}, async (page) => {
      const scripts: string[] = [];
      page.on('request', (request) => request.resourceType() === 'script' && scripts.push(request.url().replace(/^.*\//, '')));
      await visit(page, address);
      expect(scripts).not.toContain('reader-room.js');
      expect(await page.locator('.your-room fieldset:not([disabled])').count()).toBe(0);
      await page.locator('.your-room > summary').focus();
      await ready(page);
      expect(scripts).toContain('reader-room.js');
      page.removeAllListeners('request');
    }));

  it('is not there without script', () =>
    open({ javaScriptEnabled: false }, async (page) => {
      await page.goto(address, { waitUntil: 'load' });
      expect(await page.locator('.your-room').isVisible()).toBe(false);
    }));

  it('puts the reader’s own units first', () =>
    open({}, async (page) => {
      await visit(page, address);
      const value = page.locator('[data-value="roomTemperature"]').first();
      const [, main, also] = /^(.+) \((.+)\)$/s.exec((await value.textContent())!.trim())!;
      await unfold(page);
      await page.selectOption('#room-units', 'customary');
      await drawn(page);
      expect((await value.textContent())!.trim()).toBe(`${also} (${main})`);
      await page.locator('#room-units').selectOption('metric');
      await drawn(page);
    }));

  it('draws its figures in the reader’s own units', () =>
    open({}, async (page) => {
      await visit(page, address);
      const axes = (): Promise<string[]> => page.locator('[data-curve] svg text[font-weight="600"]').allTextContents();
      const built = await axes();
      expect(built.join(' ')).toMatch(/°C.*kPa|kPa.*°C/);
      await unfold(page);
      await page.selectOption('#room-units', 'customary');
      await drawn(page);
      const customary = (await axes()).join(' ');
      expect(customary).toMatch(/°F/);
      expect(customary).toMatch(/inHg/);
      expect(customary).not.toMatch(/°C|kPa/);
      await page.locator('#room-units').selectOption('metric');
      await drawn(page);
      expect(await axes()).toEqual(built);
    }));

  it('draws the set-up with the reader’s vessel, and a run chart in the reader’s units', () =>
    open({}, async (page) => {
      await visit(page, address.replace('/numbers/', '/run/'));
      const built = await page.locator('[data-setup]').innerHTML();
      expect(built).toContain('A closed cylinder (1)');
      await page.goto('about:blank');
      await page.goto(`${address.replace('/numbers/', '/run/')}#volume=3.5L&shape=sphere&units=customary`, { waitUntil: 'load' });
      await drawn(page);
      expect(await page.locator('[data-setup]').innerHTML()).toContain('A closed sphere (1)');
      expect(await page.locator('[data-setup] li').first().innerText()).toMatch(/sphere, 3\.5\sL, rated from −[\d.]+\sinHg/);
      expect(await page.locator('[data-run] .run-wide').innerHTML()).toMatch(/Gauge, inHg against the room.*Thermometer, °F/s);
      await unfold(page);
      await page.locator('.your-room .back').click();
      await page.selectOption('#room-units', 'metric');
      await drawn(page);
      expect(await page.locator('[data-setup]').innerHTML()).toBe(built);
    }));

  it('prints a code and an address that lead back to the page in the reader’s room', () =>
    open({}, async (page) => {
      await visit(page, address.replace('/numbers/', '/run/'));
      const code = (): Promise<string> => page.locator('.printed-code svg').evaluate((svg) => svg.outerHTML).then(readCode);
      const own = await code();
      await unfold(page);
      await set(page, 'elevation', '1600');
      await expect.poll(code).toBe(`${own}#elevation=1600m`);
      await page.emulateMedia({ media: 'print' });
      expect(lettersOf(await page.locator('.printed-code').innerText())).toContain(lettersOf(`${own.replace('https://', '')}#elevation=1600m`));
      await page.emulateMedia({ media: null });
      await page.locator('.your-room .back').click();
      await expect.poll(code).toBe(own);
    }));

  it('can be used by keyboard alone, and keeps the focus', () =>
    open({}, async (page) => {
      await visit(page, address);
      await page.locator('.your-room > summary').focus();
      await page.keyboard.press('Enter');
      await ready(page);
      await page.keyboard.press('Tab');
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('room-elevation');
      await page.keyboard.press('ArrowUp');
      await drawn(page);
      expect(Number(await page.inputValue('#room-elevation'))).toBeGreaterThan(12);
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('room-elevation');
      const buttons = await page.locator('.your-room button:visible').evaluateAll((all) => all.map((button) => button.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)));
      expect(Math.min(...buttons)).toBeGreaterThanOrEqual(24);
    }));

  it.each([320, 1280])('has nothing that axe objects to when open, with a refused value, at %i px', (width) =>
    open({}, async (page) => {
      await visit(page, address);
      await page.setViewportSize({ width, height: 800 });
      await unfold(page);
      await page.fill('#room-elevation', '9000');
      await page.waitForFunction(() => document.querySelector('[aria-invalid]') !== null);
      const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0);
      await page.setViewportSize({ width: 1280, height: 720 });
    }));

  it('says on every printed page for which room it is', () =>
    open({}, async (page) => {
      await visit(page, `${address}#elevation=1600m`);
      await drawn(page);
      await unfold(page);
      const own = Number(await page.inputValue('#room-temperature')).toFixed(1);
      const pages = await pagesOfPdf(await page.pdf({ format: 'A4' }));
      expect(pages.length).toBeGreaterThan(1);
      for (const { text } of pages) expect(lettersOf(text)).toContain(lettersOf(`Computed for your room: ${own} °C, 83.5 kPa`));
    }));
});

describe('will it work here', () => {
  const address = (): string => `${servedFolders()[0]!.address}room/index.html`;

  it('answers without script, for each apparatus', () =>
    open({ javaScriptEnabled: false }, async (page) => {
      await page.goto(address(), { waitUntil: 'load' });
      expect(await page.locator('.verdict > p').innerText()).toMatch(/^(Yes|No)\./);
      expect(await page.locator('tbody tr').count()).toBeGreaterThan(1);
      expect(await page.locator('tbody').innerText()).not.toMatch(/NaN|undefined|null/);
    }));

  it('answers for another apparatus, another room, and what the reader sets', () =>
    open({}, async (page) => {
      await visit(page, address());
      const answer = page.locator('.verdict');
      const first = await answer.innerText();
      await page.selectOption('#bench-apparatus', { index: 1 });
      await drawn(page);
      const second = await answer.innerText();
      expect(second).not.toBe(first);
      await unfold(page);
      await set(page, 'moisture', '20');
      expect(await answer.innerText()).toMatch(/^No\..*What to change.*moisten/s);
      await page.locator('.your-room .back').click();
      await drawn(page);
      expect(await answer.innerText()).toBe(second);
    }));
});

it.each(['reader.js', 'reader-room.js', 'reader-more.js', 'will-it-work.js', 'readings.js'])('%s is below 30,000 bytes, compressed', (name) => {
  expect(brotliCompressSync(readFileSync(join(servedFolders()[0]!.folder, name))).length).toBeLessThan(30_000);
});
