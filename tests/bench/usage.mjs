/**
 * Loaded into each process of a measured command by `--import`: at its end it writes what it has used, a line of JSON, to
 * the file that BENCH_USAGE names. Plain JavaScript, since the launcher of the commands may run on an older Node.
 */
import { appendFileSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

const file = process.env.BENCH_USAGE;
if (isMainThread && file !== undefined) {
  process.on('exit', () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    appendFileSync(file, `${JSON.stringify({ processor: (userCPUTime + systemCPUTime) / 1e6, memory: maxRSS * 1024 })}\n`);
  });
}
