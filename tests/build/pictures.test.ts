/** A picture beside a sheet is shown wherever the sheet is: on its page, in the booklet, in the kit's one file. */
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { sharedBuild } from '../support/builds.ts';
import { ROOT } from '../support/root.ts';

const KIT = join('kits', 'highland-cloud');
const PLACE = 'kits/highland-cloud/draft';
const bytes = readFileSync(join(ROOT, 'tests', 'content', 'good', 'highland', KIT, 'flask-and-water.png'));
const site = await sharedBuild(inject('builds'), 'highland');

/** Addresses of the pictures of a built file. */
const picturesOf = (folder: string, path: string): string[] =>
  [...readFileSync(join(folder, path), 'utf8').matchAll(/<img\b[^>]*\bsrc="([^"]*)"[^>]*>/g)].map(([, address = '']) => address);

describe.each([['the public folder', site], ['the teachers’ folder', `${site}-teachers`]])('%s', (_, folder) => {
  it.each(['background', 'booklet'])('shows it on the page %s', (sheet) => {
    const shown = picturesOf(folder, `${PLACE}/${sheet}/index.html`);
    expect(shown).toHaveLength(1);
    expect(readFileSync(join(folder, posix.join(PLACE, sheet, shown[0]!))).equals(bytes)).toBe(true);
  });

  it('carries it in the kit’s one file', () => {
    expect(picturesOf(folder, `${PLACE}/highland-cloud.html`)).toEqual([`data:image/png;base64,${bytes.toString('base64')}`]);
  });
});
