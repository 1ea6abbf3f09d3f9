/** Papers chosen from questions, without a browser. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { optionsOf, questionsOf, readPaper, VERSIONS, writePaper, type Paper } from '../../src/browser/paper-choice.ts';

const LEVELS = [1, 1, 1, 2, 2, 2, 2, 3, 3];
const questions = LEVELS.map((level, i) => ({ id: `q${i + 1}`, level }));
const ids = (paper: Paper): string[] => questionsOf(questions, paper).map(({ id }) => id);
const paper = fc.record({ version: fc.constantFrom(...VERSIONS), count: fc.integer({ min: 1, max: 30 }), levels: fc.subarray([1, 2, 3], { minLength: 1 }) });

describe('a paper', () => {
  it('survives its way through an address', () => fc.assert(fc.property(paper, (one) => {
      expect(readPaper(writePaper(one))).toEqual(one);
    })));

  it.each(['', 'question-1', 'paper-e-6-12', 'paper-a-0-1', 'paper-a-6-', 'paper-b-6', 'paper-a-1000-1'])('is not read from %j', (anchor) => expect(readPaper(anchor)).toBeUndefined());

  it('has as many questions as asked for, or all that there are, of the levels asked for, none twice', () =>
    fc.assert(fc.property(paper, (one) => {
      const chosen = questionsOf(questions, one);
      expect(chosen).toHaveLength(Math.min(one.count, questions.filter(({ level }) => one.levels.includes(level)).length));
      expect(new Set(chosen).size).toBe(chosen.length);
      expect(chosen.every(({ level }) => one.levels.includes(level))).toBe(true);
    })));

  it('has the same questions in every version', () =>
    fc.assert(fc.property(paper, (one) => {
      expect(new Set(VERSIONS.map((version) => ids({ ...one, version }).sort().join())).size).toBe(1);
    })));

  it('rises in level, and takes of each as evenly as can be', () => {
    for (const version of VERSIONS) {
      const chosen = questionsOf(questions, { version, count: 7, levels: [1, 2, 3] });
      expect(chosen.map(({ level }) => level)).toEqual([1, 1, 1, 2, 2, 3, 3]);
    }
  });

  it('has the order of the kit in its first version, and others in the others', () => {
    const orders = VERSIONS.map((version) => ids({ version, count: 9, levels: [1, 2, 3] }).join());
    expect(orders[0]).toBe('q1,q2,q3,q4,q5,q6,q7,q8,q9');
    expect(new Set(orders).size).toBe(VERSIONS.length);
  });

  it('keeps all options of a question', () =>
    fc.assert(fc.property(fc.uniqueArray(fc.string(), { minLength: 2, maxLength: 8 }), fc.constantFrom(...VERSIONS), (options, version) => {
      expect([...optionsOf(options, 'q1', version)].sort()).toEqual([...options].sort());
    })));
});
