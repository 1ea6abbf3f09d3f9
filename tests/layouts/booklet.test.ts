/** Sheets as parts of one document. */
import { describe, expect, it } from 'vitest';
import { partOfBooklet } from '../../src/layouts/booklet.ts';

const SLUGS = ['kit', 'run', 'student'];
const part = (html: string): string => partOfBooklet(html, 'run', SLUGS);

describe('ids', () => {
  it.each([
    ['<p id="a">x</p>', '<p id="run-a">x</p>'],
    ['<svg aria-labelledby="t d"><title id="t">x</title></svg>', '<svg aria-labelledby="run-t run-d"><title id="run-t">x</title></svg>'],
    ['<path clip-path="url(#clip)"/>', '<path clip-path="url(#run-clip)"/>'],
    ['<use href="#mark"/>', '<use href="#run-mark"/>'],
    ['<label for="r">x</label>', '<label for="run-r">x</label>'],
    ['<p title="1 > 0" id="a">x</p>', '<p title="1 > 0" id="run-a">x</p>'],
    ['<p>text that says id="a" and href="#b"</p>', '<p>text that says id="a" and href="#b"</p>'],
    ['<p data-id="a" class="id">x</p>', '<p data-id="a" class="id">x</p>'],
  ])('%s', (before, after) => expect(part(before)).toBe(after));
});

describe('links', () => {
  it.each([
    ['#step-2', '#run-step-2'],
    ['index.html#step-2', '#run-step-2'],
    ['../student/index.html', '#student'],
    ['../student/index.html#predict', '#student-predict'],
    ['../index.html', '#kit'],
    ['../board/index.html', '../board/index.html'],
    ['../../../../safety/index.html#fire', '../../../../safety/index.html#fire'],
    ['https://a.example/run/index.html#x', 'https://a.example/run/index.html#x'],
    ['../tables.json', '../tables.json'],
  ])('%s', (before, after) => expect(part(`<a class="x" href="${before}">y</a>`)).toBe(`<a class="x" href="${after}">y</a>`));
});

describe('headings', () => {
  it('are said to be one level lower and look as they did', () => expect(part('<h2>a</h2><h3 class="b">c</h3><hr>')).toBe('<h2 aria-level="3">a</h2><h3 aria-level="4" class="b">c</h3><hr>'));
});
