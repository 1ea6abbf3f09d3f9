/** A kit in one file and as a zip. */
import { createHash } from 'node:crypto';
import { crc32 } from 'node:zlib';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { bytesOf, kitArchive, oneFile, publicSource, type Piece } from '../../src/exports/index.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const wholeText = (pieces: readonly Piece[]): string => Buffer.concat(pieces.map(bytesOf)).toString();

describe('one file', () => {
  const FILES: Record<string, string> = { '../a.css': '@font-face{src:url(fonts/x.woff2)}p{color:red}', '../fonts/x.woff2': 'FONT', '../p.css': 'p{color:black}', '../reader.js': 'document.title="</script>"', '../offline.js': 'never()', '../mark.svg': '<svg/>', '../a.png': 'PICTURE' };
  const PAGE =
    '<!DOCTYPE html><html><head><meta http-equiv="Content-Security-Policy" content="default-src \'none\'"><title>Old</title><link rel="icon" href="../mark.svg"><link rel="stylesheet" href="../a.css"><link rel="stylesheet" media="print" href="../p.css"><link rel="alternate" href="../feed.xml"><script src="../offline.js" defer></script></head>' +
    '<body><a href="../run/index.html#s">run</a><a href="#here">here</a><a href="https://doi.org/1">doi</a><img src="../a.png" alt=""><script src="../reader.js" defer></script></body></html>';
  const made = (absolute: (address: string) => string | undefined): string => wholeText(oneFile(PAGE, { read: (address) => (FILES[address] === undefined ? undefined : bytes(FILES[address])), absolute, title: 'A & B', without: ['offline.js'], needs: {} }));
  const page = made((address) => new URL(address, 'https://school.example/kits/a/booklet/').href);

  it('names no file beside it', () => {
    expect(page.match(/(?:src|href)="(?!#|data:|https:)[^"]*"|url\((?!data:)/g)).toBeNull();
    expect(page).not.toContain('never()');
    expect(page).toContain(`url(data:font/woff2;base64,${Buffer.from('FONT').toString('base64')})`);
    expect(page).toContain('@media print{p{color:black}}');
    expect(page).toContain('href="https://school.example/kits/a/run/index.html#s"');
    expect(page).toContain('<title>A &amp; B</title>');
  });

  it('allows by its policy exactly the style and the script that stand in it', () => {
    const policy = /Content-Security-Policy" content="([^"]*)"/.exec(page)?.[1] ?? '';
    // CSP Level 3, 2.3.1 and 6.7.3.3: the digest of the element's text, in base64.
    const hashOf = (element: string): string => `'sha256-${createHash('sha256').update(new RegExp(`<${element}>([\\s\\S]*?)</${element}>`).exec(page)?.[1] ?? '').digest('base64')}'`;
    expect(policy).toBe(`default-src 'none'; img-src data:; font-src data:; style-src ${hashOf('style')}; script-src ${hashOf('script')}; base-uri 'none'; form-action 'none'`);
    expect(page.match(/<script/g)).toHaveLength(1);
  });

  it('holds scripts that would be fetched, before the one that needs them', () => {
    const files: Record<string, string> = { '../reader.js': 'last()', '../more.js': 'first()', '../room.js': 'second()' };
    const text = wholeText(oneFile('<body><script src="../reader.js"></script></body>', { read: (address) => bytes(files[address]!), absolute: () => undefined, title: '', without: [], needs: { 'reader.js': ['more.js', 'room.js'] } }));
    expect(text).toContain('<script>first()</script><script>second()</script><script>last()</script>');
  });

  it('leaves a link out where the site has no address', () => {
    expect(made(() => undefined)).toContain('<a>run</a>');
  });

  it('says which file is missing', () => {
    expect(() => oneFile('<link rel="stylesheet" href="x.css">', { read: () => undefined, absolute: () => undefined, title: '', without: [], needs: {} })).toThrow(/x\.css/);
  });
});

describe('the zip', () => {
  it('has the same bytes for the same files, in any order and at any time', () => {
    const files = [{ path: 'b.txt', data: 'two' }, { path: 'a/a.txt', data: bytes('one') }];
    const zip = kitArchive(files);
    expect(Buffer.from(kitArchive(files.toReversed())).equals(Buffer.from(zip))).toBe(true);
    expect(Object.entries(unzipSync(zip)).map(([path, data]) => [path, Buffer.from(data).toString()])).toEqual([['a/a.txt', 'one'], ['b.txt', 'two']]);
    // APPNOTE.TXT 6.3, 4.4.6: date and time of MS-DOS; 1980-01-01 00:00 is 0x0021, 0.
    expect(Buffer.from(zip).readUInt32LE(10)).toBe(0x00210000);
  });

  it('holds a text in pieces as one, where a piece stands in several files and is repeated too', () => {
    const shared = { text: 'p{color:red}'.repeat(1000) };
    const zip = kitArchive([{ path: 'a.html', data: ['<style>', shared, '</style>', shared, ''] }, { path: 'b.html', data: [shared, '½°'] }, { path: 'empty.txt', data: '' }]);
    const found = Object.entries(unzipSync(zip)).map(([path, data]) => [path, Buffer.from(data).toString()]);
    expect(found).toEqual([['a.html', `<style>${shared.text}</style>${shared.text}`], ['b.html', `${shared.text}½°`], ['empty.txt', '']]);
    // Readers of zip files check this; the unpacker above does not. APPNOTE.TXT 6.3, 4.3.16: the first central header, CRC at 16, at the offset that the end record has at 16.
    const buffer = Buffer.from(zip);
    const directory = buffer.readUInt32LE(buffer.length - 22 + 16);
    expect(buffer.readUInt32LE(directory + 16)).toBe(crc32(`<style>${shared.text}</style>${shared.text}`));
  });
});

describe('a lesson’s text for everybody', () => {
  it.each([
    ['before\n\n<TeacherOnly>\nsecret\n</TeacherOnly>\n\nafter\n', 'before\n\nafter\n'],
    ['no secret\n', 'no secret\n'],
    ['<TeacherOnly>a <TeacherOnly>b</TeacherOnly> c</TeacherOnly>', undefined],
    ['<TeacherOnly>left open', undefined],
    ['<TeacherOnly >odd</TeacherOnly>', undefined],
  ])('%j', (text, open) => expect(publicSource(text)).toBe(open));
});
