/** A picture beside a sheet is shown wherever the sheet is: on its page, in the booklet, in the kit's one file; one for teachers in their folder alone. */
import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { unzipSync } from 'fflate';
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

describe.each([['the public folder', site, 1], ['the teachers’ folder', `${site}-teachers`, 2]] as const)('%s', (_, folder, inAll) => {
  it.each([['background', 1], ['booklet', inAll]] as const)('shows those of the page %s', (sheet, count) => {
    const shown = picturesOf(folder, `${PLACE}/${sheet}/index.html`);
    expect(shown).toHaveLength(count);
    for (const address of shown) expect(readFileSync(join(folder, posix.join(PLACE, sheet, address))).equals(bytes)).toBe(true);
  });

  it('carries them in the kit’s one file', () => {
    expect(picturesOf(folder, `${PLACE}/highland-cloud.html`)).toEqual(Array.from({ length: inAll }, () => `data:image/png;base64,${bytes.toString('base64')}`));
  });

  it('holds what is for teachers in their folder alone', () => {
    const zipped = Object.keys(unzipSync(readFileSync(join(folder, PLACE, 'highland-cloud.zip')))).filter((path) => path.endsWith('.png'));
    expect(zipped).toHaveLength(inAll);
    expect(existsSync(join(folder, PLACE, 'table-of-marks.png'))).toBe(inAll === 2);
  });
});
