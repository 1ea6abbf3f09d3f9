/** A command run as a user runs it, in processes of its own: how long it takes, what it uses. */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Cost {
  /** From start to end, s. */
  readonly time: number;
  /** Of all its Node processes together, s. */
  readonly processor: number;
  /** The most that any one of its Node processes held, bytes. */
  readonly memory: number;
}

/**
 * Runs a script on this Node and waits for its end.
 * @param env what the script finds in its environment beside the caller's own
 * @throws Error with what it said if it ends with anything but 0
 */
export async function costOf(script: string, args: readonly string[], env: Readonly<Record<string, string>> = {}, cwd?: string): Promise<Cost> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-'));
  const usage = join(folder, 'usage');
  try {
    const started = performance.now();
    await ended(script, args, { ...process.env, ...env, BENCH_USAGE: usage, NODE_OPTIONS: `--import ${new URL('usage.mjs', import.meta.url).href}` }, cwd);
    const time = (performance.now() - started) / 1000;
    const lines = readFileSync(usage, 'utf8').trim().split('\n').map((line) => JSON.parse(line) as { processor: number; memory: number });
    return { time, processor: lines.reduce((sum, line) => sum + line.processor, 0), memory: Math.max(...lines.map(({ memory }) => memory)) };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function ended(script: string, args: readonly string[], env: NodeJS.ProcessEnv, cwd?: string): Promise<void> {
  const child = spawn(process.execPath, [script, ...args], { cwd, env, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text: string) => (said += text));
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(`${script} ${args.join(' ')} ended with ${code}:\n${said}`))));
  });
}

/** The least of some runs, each figure by itself: other work of the machine only ever adds. */
export async function leastCost(runs: number, run: () => Promise<Cost>): Promise<Cost> {
  let least: Cost = { time: Infinity, processor: Infinity, memory: Infinity };
  for (let i = 0; i < runs; i++) {
    const { time, processor, memory } = await run();
    least = { time: Math.min(least.time, time), processor: Math.min(least.processor, processor), memory: Math.min(least.memory, memory) };
  }
  return least;
}
