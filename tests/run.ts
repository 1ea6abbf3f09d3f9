/** `npm test`: types of every file, then every test, a real browser included. One line a check, counts at the end. */
import { execFile } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { startVitest } from 'vitest/node';
import { findChromium } from './support/chromium.ts';
import { exclusively } from './support/exclusive.ts';
import { findOrInstallJava } from './support/java.ts';
import { countsText, LineReporter, reportLine } from './support/line-reporter.ts';
import { ROOT } from './support/root.ts';

const HELP = `npm test [-- NAME …]

Checks the types of all files, then runs every test, a real browser included. The browser is looked
for in CHROMIUM_PATH and the usual places; as root on Debian it is installed.

  NAME     runs only the test files whose path holds this text, and no type check
  --help   prints this

Exit code: 0 all passed, 1 something failed.`;

/** A test that computes without end cannot be stopped from inside: after this the run ends and names it, ms. */
const LIMIT = 1_200_000;

const args = process.argv.slice(2);
if (args.includes('--help') || args.includes('-h')) {
  console.log(HELP);
} else {
  const reporter = new LineReporter();
  setTimeout(() => void giveUp(reporter), LIMIT).unref();
  if (args.length === 0) await checkTypes(reporter);
  prepareMachine();
  await runTests(args, reporter);
  console.log(countsText(reporter.counts));
  process.exitCode = reporter.counts.failed > 0 || reporter.counts.passed === 0 ? 1 : 0;
}

async function giveUp(reporter: LineReporter): Promise<void> {
  const { counts, running } = reporter;
  console.log(`After ${LIMIT / 1000} s still running: ${running.join(', ') || 'nothing that has a name'}`);
  console.log(countsText({ ...counts, failed: counts.failed + Math.max(running.length, 1) }));
  process.exitCode = 1;
  await reporter.stop();
}

/**
 * All files, pages included; counted as one check. The compiler does not read pages, and the checker of
 * pages finds no types in packages that hold CommonJS declarations: each reads what it can.
 */
async function checkTypes({ counts }: LineReporter): Promise<void> {
  const started = performance.now();
  const ends = await exclusively(() => Promise.all([
    runProgram('astro', 'bin/astro.mjs', 'check', '--tsconfig', 'tests/support/pages.tsconfig.json', '--minimumSeverity', 'warning', '--minimumFailingSeverity', 'warning'),
    runProgram('typescript', 'bin/tsc', '--noEmit', '--project', '.'),
  ]));
  const wrong = ends.filter(({ isWrong }) => isWrong);
  const failed = wrong.length === 0 ? 0 : 1;
  counts.failed += failed;
  counts.passed += 1 - failed;
  console.log(reportLine('types', { passed: 1 - failed, failed, skipped: 0 }, performance.now() - started));
  for (const { said } of wrong) console.log(stripVTControlCharacters(said).trim());
}

/** Runs a program of an installed package in the project's folder. */
function runProgram(name: string, program: string, ...args: string[]): Promise<{ readonly isWrong: boolean; readonly said: string }> {
  const manifest = createRequire(import.meta.url).resolve(`${name}/package.json`);
  return new Promise((resolve) => {
    execFile(process.execPath, [join(dirname(manifest), program), ...args], { cwd: ROOT }, (error, stdout, stderr) => resolve({ isWrong: error !== null, said: `${stdout}${stderr}` }));
  });
}

/** The browser's place is handed on; without one the tests that need it fail and say so. */
function prepareMachine(): void {
  try {
    process.env.CHROMIUM_PATH = findChromium();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
  }
  findOrInstallJava();
}

async function runTests(names: readonly string[], reporter: LineReporter): Promise<void> {
  try {
    const runner = await startVitest([...names], { root: ROOT, watch: false, reporters: [reporter] });
    await runner.close();
  } catch (error) {
    reporter.counts.failed += 1;
    console.error(error);
  }
}
