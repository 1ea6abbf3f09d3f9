/** What a part of the benchmark gives, and how its times are taken. */

/** One line of a table, cell by cell. */
export type BenchRow = readonly string[];

/** A part of the benchmark: a table with a line on what it shows. */
export interface BenchSection {
  readonly name: string;
  readonly title: string;
  readonly head: BenchRow;
  /** Measures; calls `progress` before each thing it measures */
  readonly measure: (progress: (what: string) => void) => BenchRow[] | Promise<BenchRow[]>;
}

const BATCH = 60; // ms: long against the clock's grain
const BATCHES = 5;

/** What calls return ends here, so that no engine leaves them out. */
let sink = 0;

/** Milliseconds of processor time that this process has taken: other work of the machine does not count. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Calls per second of processor time of a function over inputs taken in turn: the best of some batches, since caches shared with other work only ever slow them. */
export function callsPerSecond<T>(inputs: readonly T[], call: (input: T) => number): number {
  let best = 0;
  for (let batch = 0; batch <= BATCHES; batch++) {
    let calls = 0;
    let spent = 0;
    const start = processorTime();
    while (spent < BATCH) {
      for (const input of inputs) sink += call(input);
      calls += inputs.length;
      spent = processorTime() - start;
    }
    // The first batch warms up the engine's compilers.
    if (batch > 0) best = Math.max(best, (1000 * calls) / spent);
  }
  if (Number.isNaN(sink)) throw new Error('a call of the benchmark returns what is not a number');
  return best;
}

/** Milliseconds of processor time that each input takes, in rising order. */
export function processorTimes<T>(inputs: readonly T[], call: (input: T) => unknown): number[] {
  return inputs
    .map((input) => {
      const start = processorTime();
      call(input);
      return processorTime() - start;
    })
    .sort((a, b) => a - b);
}

/** The value below which a share of sorted values lies. */
export const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;

/** "1,234,000", to four digits. */
export const rounded = (value: number): string => Number(value.toPrecision(4)).toLocaleString('en-US', { maximumFractionDigits: 3 });

/** Lines of a table: the first column to the left, numbers to the right. */
export function tableLines(head: BenchRow, rows: readonly BenchRow[]): string[] {
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => (row[column] ?? '').length)));
  const line = (row: BenchRow): string =>
    widths.map((width, column) => (column === 0 ? (row[column] ?? '').padEnd(width) : (row[column] ?? '').padStart(width))).join('   ').trimEnd();
  return [line(head), widths.map((width) => '-'.repeat(width)).join('   '), ...rows.map(line)];
}
