/** One Astro at a time: two at once in this project overwrite each other's generated types. */
import { createHash } from 'node:crypto';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { ROOT } from './root.ts';

const LOCK = join(tmpdir(), `lapsebook-${createHash('sha256').update(ROOT).digest('hex').slice(0, 12)}.lock`);
/** How often a waiting process looks again, ms. */
const INTERVAL = 100;

/** Does the work while no other process of these tests builds or checks types in this project. */
export async function exclusively<T>(work: () => Promise<T>): Promise<T> {
  while (!(await take())) await wait(INTERVAL);
  try {
    return await work();
  } finally {
    await rm(LOCK, { force: true });
  }
}

async function take(): Promise<boolean> {
  try {
    await writeFile(LOCK, String(process.pid), { flag: 'wx' });
    return true;
  } catch {
    const holder = Number(await readFile(LOCK, 'utf8').catch(() => ''));
    if (holder > 0 && !alive(holder)) await rm(LOCK, { force: true });
    return false;
  }
}

/** A process that was ended leaves its lock behind. */
function alive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
