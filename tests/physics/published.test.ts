import { describe, expect, it } from 'vitest';
import { checkRow, checks, compareRow, modules, summary } from '../truth/index.ts';

describe.each(modules.map(({ module }) => module))('published values: %s', (name) => {
  it.each(checks.filter(({ module }) => module === name).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const { computed, share } = checkRow(row);
    const place = `${row.check} gives ${computed} ${row.unit}; ${row.source} has ${row.value} (${row.toleranceReason})`;
    expect(Number.isFinite(computed), place).toBe(true);
    expect(share, place).toBeLessThanOrEqual(1);
  });
});

describe('the collection', () => {
  it('gives every row an id of its own, a source, where it was seen, and the reason of its tolerance', () => {
    const ids = checks.map(({ module, id }) => `${module}/${id}`);
    expect(new Set(ids).size).toBe(ids.length);
    for (const row of checks) {
      for (const text of [row.id, row.check, row.source, row.seenIn, row.toleranceReason]) expect(text.trim(), row.id).not.toBe('');
      expect(Number.isFinite(row.value), row.id).toBe(true);
      expect(['rel', 'abs', 'max', 'min'], row.id).toContain(row.tolerance.kind);
      if (row.tolerance.kind === 'rel' || row.tolerance.kind === 'abs') expect(row.tolerance.value, row.id).toBeGreaterThan(0);
    }
  });

  it('uses every evaluator', () => {
    for (const { module, rows, evaluators } of modules) {
      const used = new Set(rows.map(({ check }) => check));
      expect(Object.keys(evaluators).filter((name) => !used.has(name)), module).toEqual([]);
    }
  });

  it.each([
    [{ kind: 'rel', value: 0.01 }, 199, 201, 197, 203],
    [{ kind: 'abs', value: 3 }, 198, 202, 196, 204],
    [{ kind: 'max' }, 10, 200, 200.1, 500],
    [{ kind: 'min' }, 200, 500, 10, 199.9],
  ] as const)('tells right from wrong by %o', (tolerance, right, rightToo, wrong, wrongToo) => {
    const [row] = checks;
    if (row === undefined) throw new Error('no rows');
    for (const computed of [right, rightToo]) expect(compareRow({ ...row, value: 200, tolerance }, computed).share).toBeLessThanOrEqual(1);
    for (const computed of [wrong, wrongToo]) expect(compareRow({ ...row, value: 200, tolerance }, computed).share).toBeGreaterThan(1);
    expect(compareRow({ ...row, value: 200, tolerance }, NaN).share <= 1).toBe(false);
  });

  it('names the row without an evaluator', () => {
    const [row] = checks;
    if (row === undefined) throw new Error('no rows');
    expect(() => checkRow({ ...row, check: 'nothing' })).toThrow(/no evaluator is named nothing/);
  });

  it('is wide enough: at least 70 values of at least 8 sources, summed up module by module', () => {
    const totals = summary();
    expect(totals.reduce((sum, { rows }) => sum + rows, 0)).toBe(checks.length);
    expect(checks.length).toBeGreaterThanOrEqual(70);
    expect(new Set(checks.map(({ source }) => source)).size).toBeGreaterThanOrEqual(8);
    for (const { module, worstShare, worstId, sources } of totals) {
      expect(worstShare, `${module}/${worstId}`).toBeLessThanOrEqual(1);
      expect(sources, module).toBeGreaterThan(0);
    }
  });
});
