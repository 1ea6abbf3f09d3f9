/** The house as DEVELOPERS.md draws it: no room of src/ knows one above it. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from './support/root.ts';

const SRC = join(ROOT, 'src');

/** From the top to the bottom; rooms of one row stand beside each other. */
const FLOORS = [...readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8').matchAll(/^\| ((?:`\w+\/` ?)+)\|/gm)].map(([, names = '']) => [...names.matchAll(/\w+/g)].map(([name]) => name));
const floorOf = (room: string): number => FLOORS.findIndex((rooms) => rooms.includes(room));

const ROOMS = readdirSync(SRC, { withFileTypes: true }).filter((entry) => entry.isDirectory()).map(({ name }) => name);

interface Import {
  readonly file: string;
  /** As written: a path of ours, else the name of a package. */
  readonly from: string;
}

/** What the files of a room import, also for types alone. */
const importsOf = (room: string): Import[] =>
  readdirSync(join(SRC, room), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:ts|mjs|astro|mdx)$/.test(name))
    .flatMap((name) => {
      const file = join(SRC, room, name);
      const found = readFileSync(file, 'utf8').matchAll(/^(?:(?:import|export)\b.*|\}) from '([^']+)'|^import '([^']+)'|\bimport\('([^']+)'\)/gm);
      return [...found].map((names) => ({ file, from: names.slice(1).find((name) => name !== undefined) ?? '' }));
    });

const isOurs = ({ from }: Import): boolean => from.startsWith('.');

/** The room that an import leads to; undefined outside of src. */
const roomOf = ({ file, from }: Import): string | undefined => {
  const [place, room] = resolve(dirname(file), from).slice(ROOT.length + 1).split(sep);
  return place === 'src' ? room : undefined;
};

const shown = ({ file, from }: Import): string => `${file.slice(ROOT.length + 1)} imports ${from}`;

it('has every room in the table, and no other', () => expect(FLOORS.flat().sort()).toEqual([...ROOMS].sort()));

describe.each(ROOMS.filter((room) => room !== 'styles'))('%s', (room) => {
  const imports = importsOf(room);

  it('was read', () => expect(imports.length + Number(room === 'texts')).toBeGreaterThan(0));

  it('imports nothing from above', () =>
    expect(imports.filter((one) => isOurs(one) && floorOf(roomOf(one) ?? room) < floorOf(room)).map(shown)).toEqual([]));
});

it('lets the library stand on its own', () =>
  expect(importsOf('physics').filter((one) => !isOurs(one) || roomOf(one) !== 'physics').map(shown)).toEqual([]));

it.each(ROOMS.filter((room) => !['authoring', 'editions', 'exports', 'commands'].includes(room)))('keeps Node out of %s', (room) =>
  expect(importsOf(room).filter(({ from }) => from.startsWith('node:')).map(shown)).toEqual([]));
