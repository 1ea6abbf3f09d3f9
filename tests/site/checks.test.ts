/** The page of checks: every row of the collection with all that is said of it, in few elements, since there are hundreds. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { asWritten, inWords } from '../../src/pages/[...edition]/checks/_numbers.ts';
import { escapeHtml } from '../../src/sheets/html/text.ts';
import { servedFolders } from '../support/browsing.ts';
import { checks } from '../truth/index.ts';

const page = readFileSync(join(servedFolders()[0]!.folder, 'checks', 'index.html'), 'utf8');
const rows = new Map([...page.matchAll(/<li class="check" id="([^"]+)">(.*?)<\/li>/gs)].map(([, id = '', row = '']) => [id, row]));

/** Programs that read a page out or search it go through each of its elements. */
const MOST_ELEMENTS = 6000;

it('holds fewer than 6,000 elements', () => expect(page.match(/<[a-z]/g)!.length).toBeLessThan(MOST_ELEMENTS));

it('has every row, with its name, its inputs, five figures and where they come from', () => {
  expect(rows.size).toBe(checks.length);
  const broken = checks.filter((check) => {
    const row = rows.get(`${check.module}-${check.id}`) ?? '';
    const inputs = Object.entries(check.inputs).map(([name, value]) => `${name} = ${asWritten(value, 'en')}`).join(', ');
    const labels = [...row.matchAll(/(\w+) <b>[^<]+/g)].map(([, label]) => label).join();
    return !(row.includes(`>${inWords(check.check)}</strong>`) && row.includes(inputs) && labels === 'Published,Computed,Deviation,Allowed,Used' && row.includes(escapeHtml(check.source)) && row.includes(escapeHtml(check.toleranceReason)));
  });
  expect(broken.map(({ module, id }) => `${module}-${id}: ${rows.get(`${module}-${id}`)}`)).toEqual([]);
});
