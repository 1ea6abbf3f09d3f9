/** Tells a test run in one line for each file, with what failed below it, and counts. */
import { relative } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import type { Reporter, TestCase, TestModule, Vitest } from 'vitest/node';
import { ROOT } from './root.ts';

export interface Counts {
  passed: number;
  failed: number;
  skipped: number;
}

type Failure = { readonly message?: string; readonly diff?: string; readonly stack?: string };

/** Stack frames to show: where in the project's own files it failed. */
const FRAMES = 3;

export class LineReporter implements Reporter {
  readonly counts: Counts = { passed: 0, failed: 0, skipped: 0 };
  readonly #running = new Set<string>();
  #runner: Vitest | undefined;

  onInit(runner: Vitest): void {
    this.#runner = runner;
  }

  /** Ends a run that does not end by itself, its worker processes included. */
  async stop(): Promise<void> {
    await this.#runner?.exit(true);
  }

  /** Files that have begun and not ended. */
  get running(): readonly string[] {
    return [...this.#running];
  }

  onTestModuleStart(module: TestModule): void {
    this.#running.add(nameOf(module));
  }

  onTestModuleEnd(module: TestModule): void {
    this.#running.delete(nameOf(module));
    const tests = [...module.children.allTests()];
    const failed = tests.filter((test) => test.result().state === 'failed');
    const broken = [...module.errors(), ...[...module.children.allSuites()].flatMap((suite) => suite.errors())];
    const skipped = tests.filter((test) => test.result().state === 'skipped').length;
    const passed = tests.length - failed.length - skipped;
    this.counts.passed += passed;
    this.counts.skipped += skipped;
    this.counts.failed += failed.length + broken.length;
    console.log(reportLine(nameOf(module), { passed, failed: failed.length + broken.length, skipped }, module.diagnostic().duration));
    for (const error of broken) describe('The file itself', error);
    for (const test of failed) describeTest(test);
  }

  onUserConsoleLog(log: { readonly content: string }): void {
    process.stderr.write(log.content);
  }

  onTestRunEnd(_modules: readonly TestModule[], errors: readonly Failure[]): void {
    this.counts.failed += errors.length;
    for (const error of errors) describe('Outside of any test', error);
  }
}

const nameOf = (module: TestModule): string => relative(ROOT, module.moduleId);

/** One line of the report. `took` in ms. */
export function reportLine(name: string, counts: Counts, took: number): string {
  return `${counts.failed > 0 ? 'FAIL' : 'ok  '}  ${name.padEnd(44)} ${countsText(counts).padEnd(34)} ${(took / 1000).toFixed(1)} s`;
}

/** "3 passed, 0 failed", and how many were skipped if any were. */
export const countsText = ({ passed, failed, skipped }: Counts): string => `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;

function describeTest(test: TestCase): void {
  for (const error of test.result().errors ?? []) describe(test.fullName, error);
}

function describe(what: string, { message = 'no message', diff, stack = '' }: Failure): void {
  const frames = stack.split('\n').filter((line) => /^\s+at /.test(line) && !line.includes('node_modules')).slice(0, FRAMES);
  const text = stripVTControlCharacters([message, ...(diff ? [diff] : []), ...frames].join('\n'));
  console.log(`      ${what}\n${text.replace(/^/gm, '        ')}\n`);
}
