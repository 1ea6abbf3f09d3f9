/** The shelf's choice, in a browser, on a Spanish shelf with two kits. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, inject, it } from 'vitest';
import { browserForFile } from '../support/browsing.ts';
import { sharedBuild } from '../support/builds.ts';

const open = browserForFile();
const shelf = pathToFileURL(join(await sharedBuild(inject('builds'), 'valle'), 'index.html')).href;

it('finds what suits, says how many, and shows all again', () =>
  open({}, async (page) => {
    await page.goto(shelf, { waitUntil: 'load' });
    const shown = () => page.locator('.shelf-kit:visible').count();
    expect(await shown()).toBe(2);
    await page.getByRole('combobox', { name: 'Edad de la clase' }).selectOption('14');
    expect(await shown()).toBe(2);
    for (const box of await page.getByRole('group', { name: 'Sin' }).getByRole('checkbox').all()) await box.check();
    expect(await shown()).toBe(0);
    expect(await page.getByRole('status').innerText()).toBe('0 de 2 kits');
    expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations.map(({ id }) => id)).toEqual([]);
    await page.getByRole('button', { name: 'Mostrar todos' }).click();
    await expect.poll(shown).toBe(2);
  }));

it('holds all kits without script, and offers no choice', () =>
  open({ javaScriptEnabled: false }, async (page) => {
    await page.goto(shelf, { waitUntil: 'load' });
    expect(await page.locator('.shelf-kit:visible').count()).toBe(2);
    expect(await page.locator('.shelf-choice').isVisible()).toBe(false);
  }));
