/** Reads a QR code back from its drawing: enough of ISO/IEC 18004:2015 (its tables from memory) for small codes without damage. */

/** Blocks and their data codewords at level M, by version: table 9. */
const BLOCKS_M: Readonly<Record<number, readonly [blocks: number, data: number]>> = { 1: [1, 16], 2: [1, 28], 3: [1, 44], 4: [2, 32], 5: [2, 43], 6: [4, 27] };
/** Center of the one alignment pattern that versions 2 to 6 have besides the finders, annex E. */
const alignmentOf = (version: number): number | undefined => (version === 1 ? undefined : 4 * version + 10);
/** Mask of the format information, 7.9.1. */
const FORMAT_MASK = 0b101010000010010;
const LEVEL_M = 0b00;
/** Data masks, table 10; i is the row, j the column. */
const MASKS: readonly ((i: number, j: number) => boolean)[] = [
  (i, j) => (i + j) % 2 === 0,
  (i) => i % 2 === 0,
  (_, j) => j % 3 === 0,
  (i, j) => (i + j) % 3 === 0,
  (i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
  (i, j) => (i * j) % 2 + (i * j) % 3 === 0,
  (i, j) => ((i * j) % 2 + (i * j) % 3) % 2 === 0,
  (i, j) => ((i + j) % 2 + (i * j) % 3) % 2 === 0,
];
const BYTE_MODE = 0b0100;

/** Dark modules of a drawing made of paths of whole-module rectangles `Mx yh…v1h…z`, without the quiet zone. */
export function modulesOf(svg: string): { modules: boolean[][]; quiet: number } {
  const side = Number(/viewBox="0 0 (\d+) \1"/.exec(svg)?.[1]);
  const dark = /<path d="([^"]*)" fill="#000"/.exec(svg)?.[1] ?? '';
  const all = Array.from({ length: side }, () => new Array<boolean>(side).fill(false));
  for (const [, x, y, width] of dark.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let at = 0; at < Number(width); at++) all[Number(y)]![Number(x) + at] = true;
  }
  const quiet = all.findIndex((row) => row.includes(true));
  return { modules: all.slice(quiet, side - quiet).map((row) => row.slice(quiet, side - quiet)), quiet };
}

/** The text of a code. Throws RangeError where it is not of version 1 to 6, level M, byte mode. */
export function readCode(svg: string): string {
  const { modules } = modulesOf(svg);
  const size = modules.length;
  const version = (size - 17) / 4;
  const [blocks, perBlock] = BLOCKS_M[version] ?? [];
  if (blocks === undefined || perBlock === undefined) throw new RangeError(`version ${version} is not read here`);
  const dark = (i: number, j: number): boolean => modules[i]?.[j] === true;
  const format = bits([0, 1, 2, 3, 4, 5, 7, 8].map((j) => dark(8, j)).concat([dark(7, 8), ...[5, 4, 3, 2, 1, 0].map((i) => dark(i, 8))])) ^ FORMAT_MASK;
  if (format >> 13 !== LEVEL_M) throw new RangeError('not level M');
  const mask = MASKS[(format >> 10) & 7]!;
  const center = alignmentOf(version);
  const isFunction = (i: number, j: number): boolean =>
    i < 9 && j < 9 || i < 9 && j >= size - 8 || i >= size - 8 && j < 9 || i === 6 || j === 6 || center !== undefined && Math.abs(i - center) <= 2 && Math.abs(j - center) <= 2;
  const stream: boolean[] = [];
  let upward = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step++) {
      const i = upward ? size - 1 - step : step;
      for (const j of [right, right - 1]) if (!isFunction(i, j)) stream.push(dark(i, j) !== mask(i, j));
    }
    upward = !upward;
  }
  const words = Array.from({ length: blocks * perBlock }, (_, at) => bits(stream.slice(8 * at, 8 * at + 8)));
  const data = Array.from({ length: blocks }, (_, block) => Array.from({ length: perBlock }, (_each, at) => words[at * blocks + block]!)).flat();
  if (data[0]! >> 4 !== BYTE_MODE) throw new RangeError('not in byte mode');
  const nibbles = data.flatMap((word) => [word >> 4, word & 15]);
  const length = nibbles[1]! * 16 + nibbles[2]!;
  return Buffer.from(Array.from({ length }, (_, at) => nibbles[3 + 2 * at]! * 16 + nibbles[4 + 2 * at]!)).toString('utf8');
}

const bits = (values: readonly boolean[]): number => values.reduce((sum, value) => sum * 2 + Number(value), 0);
