/** The shelf's choice, without a browser. */
import { expect, it } from 'vitest';
import { suits, type Choice } from '../../src/browser/shelf-choice.ts';

const kit = { ages: '12–15', minutes: '50', apparatus: 'Clear cylinder', uses: 'flame smoke hot-water' };
const any: Choice = { age: '', time: '', apparatus: '', without: [] };

it.each<[Partial<Choice>, boolean]>([
  [{}, true],
  [{ age: '12' }, true],
  [{ age: '15' }, true],
  [{ age: '11' }, false],
  [{ age: '16' }, false],
  [{ time: '50' }, true],
  [{ time: '45' }, false],
  [{ apparatus: 'Clear cylinder' }, true],
  [{ apparatus: 'Bottle' }, false],
  [{ without: ['solvent'] }, true],
  [{ without: ['solvent', 'smoke'] }, false],
  [{ without: ['water'] }, true],
  [{ age: '13', time: '60', without: ['flame'] }, false],
])('%j: %s', (wanted, found) => expect(suits(kit, { ...any, ...wanted })).toBe(found));
