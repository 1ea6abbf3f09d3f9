/** A zip archive, the same bytes for the same files: PKWARE APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16. */
import { crc32, deflateRawSync } from 'node:zlib';

export interface ZipEntry {
  readonly path: string;
  readonly data: Uint8Array;
}

const LOCAL_HEADER = 0x04034b50;
const CENTRAL_HEADER = 0x02014b50;
const END_OF_DIRECTORY = 0x06054b50;
/** Of the format that knows deflate. */
const VERSION = 20;
/** Names are in UTF-8: bit 11. */
const FLAGS = 0x0800;
const DEFLATE = 8;
/** 1980-01-01 in the form of MS-DOS, at midnight: the first moment that a zip can state, so that no build leaves its own time in it. */
const NO_DATE = 0x0021;
const NO_TIME = 0;

/** Fields of two (`u16`) or four bytes, lowest first. */
const fields = (...values: readonly (readonly [bytes: 2 | 4, value: number])[]): Buffer =>
  Buffer.concat(values.map(([bytes, value]) => {
    const field = Buffer.alloc(bytes);
    field.writeUIntLE(value, 0, bytes);
    return field;
  }));

/** The archive of some files, in their order. Fewer than 65,536 files and 4 GiB. */
export function zip(entries: readonly ZipEntry[]): Uint8Array {
  const locals: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const { path, data } of entries) {
    const name = Buffer.from(path);
    const packed = deflateRawSync(data);
    const common = fields([2, VERSION], [2, FLAGS], [2, DEFLATE], [2, NO_TIME], [2, NO_DATE], [4, crc32(data)], [4, packed.length], [4, data.length], [2, name.length], [2, 0]);
    const local = Buffer.concat([fields([4, LOCAL_HEADER]), common, name]);
    // After the common fields: no comment, first disk, attributes inside and outside, where the file begins.
    directory.push(fields([4, CENTRAL_HEADER], [2, VERSION]), common, fields([2, 0], [2, 0], [2, 0], [4, 0], [4, offset]), name);
    locals.push(local, packed);
    offset += local.length + packed.length;
  }
  const size = directory.reduce((sum, { length }) => sum + length, 0);
  const end = fields([4, END_OF_DIRECTORY], [2, 0], [2, 0], [2, entries.length], [2, entries.length], [4, size], [4, offset], [2, 0]);
  return Buffer.concat([...locals, ...directory, end]);
}
