/** Fonts without the tables the site does not use: a smaller file with the same outlines. */
import { brotliCompressSync, brotliDecompressSync, constants } from 'node:zlib';

const SIGNATURE = 0x774f4632; // "wOF2"
const HEADER_LENGTH = 48;
const ARBITRARY_TAG = 63;
const SFNT_HEADER = 12;
const SFNT_ENTRY = 16;

/** Tags by their index in the table directory: W3C Recommendation "WOFF File Format 2.0" (2018), section 4.1; a blank is written _ here. */
const KNOWN_TAGS =
  'cmap head hhea hmtx maxp name OS/2 post cvt_ fpgm glyf loca prep CFF_ VORG EBDT EBLC gasp hdmx kern LTSH PCLT VDMX vhea vmtx BASE GDEF GPOS GSUB EBSC JSTF MATH CBDT CBLC COLR CPAL SVG_ sbix acnt avar bdat bloc bsln cvar fdsc feat fmtx fvar gvar hsty just lcar mort morx opbd prop trak Zapf Silf Glat Gloc Feat Sill'.split(' ');

interface Table {
  readonly tag: string;
  /** The directory entry as it stands in the file. */
  readonly entry: Buffer;
  readonly length: number;
  readonly data: Buffer;
}

/** A UIntBase128 of the format: value and the place after it. */
const readBase128 = (file: Buffer, start: number): readonly [number, number] => {
  let value = 0;
  for (let at = start; at < start + 5; at += 1) {
    const byte = file.readUInt8(at);
    value = value * 128 + (byte & 127);
    if (byte < 128) return [value, at + 1];
  }
  throw new RangeError('This font has a number of more than five bytes in its table directory.');
};

const readTables = (file: Buffer): Table[] => {
  const count = file.readUInt16BE(12);
  const entries: { tag: string; entry: Buffer; length: number; stored: number }[] = [];
  let at = HEADER_LENGTH;
  for (let index = 0; index < count; index += 1) {
    const start = at;
    const flags = file.readUInt8(at);
    at += 1;
    const known = flags & ARBITRARY_TAG;
    const tag = known === ARBITRARY_TAG ? file.toString('latin1', at, at + 4) : (KNOWN_TAGS[known] ?? '').replace('_', ' ');
    if (known === ARBITRARY_TAG) at += 4;
    const [length, afterLength] = readBase128(file, at);
    at = afterLength;
    const version = flags >> 6;
    const transformed = tag === 'glyf' || tag === 'loca' ? version !== 3 : version !== 0;
    const [stored, afterStored] = transformed ? readBase128(file, at) : [length, at];
    at = afterStored;
    entries.push({ tag, entry: file.subarray(start, at), length, stored });
  }
  const data = brotliDecompressSync(file.subarray(at, at + file.readUInt32BE(20)));
  let offset = 0;
  return entries.map(({ tag, entry, length, stored }) => {
    offset += stored;
    return { tag, entry, length, data: data.subarray(offset - stored, offset) };
  });
};

/**
 * A font file without some of its tables.
 * @param font - a WOFF 2.0 file of one font
 * @param dropped - tags of the tables to leave out; those the font does not have are passed over
 * @returns a WOFF 2.0 file; outlines, widths and character map are those of the font, at its default weight where it is variable
 * @throws RangeError where the file is not WOFF 2.0
 */
export const withoutTables = (font: Uint8Array, dropped: readonly string[]): Uint8Array => {
  const file = Buffer.from(font);
  if (file.length < HEADER_LENGTH || file.readUInt32BE(0) !== SIGNATURE) throw new RangeError('This file is not a WOFF 2.0 font.');
  const kept = readTables(file).filter(({ tag }) => !dropped.includes(tag));
  const stream = brotliCompressSync(Buffer.concat(kept.map(({ data }) => data)), {
    params: { [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_FONT, [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY, [constants.BROTLI_PARAM_LGWIN]: constants.BROTLI_MAX_WINDOW_BITS },
  });
  const padding = Buffer.alloc((4 - ((HEADER_LENGTH + kept.reduce((sum, { entry }) => sum + entry.length, 0) + stream.length) % 4)) % 4);
  const body = Buffer.concat([...kept.map(({ entry }) => entry), stream, padding]);
  const header = Buffer.from(file.subarray(0, HEADER_LENGTH));
  header.writeUInt32BE(HEADER_LENGTH + body.length, 8);
  header.writeUInt16BE(kept.length, 12);
  header.writeUInt32BE(SFNT_HEADER + SFNT_ENTRY * kept.length + kept.reduce((sum, { length }) => sum + Math.ceil(length / 4) * 4, 0), 16);
  header.writeUInt32BE(stream.length, 20);
  header.fill(0, 28, HEADER_LENGTH); // no metadata, no private data
  return Buffer.concat([header, body]);
};
