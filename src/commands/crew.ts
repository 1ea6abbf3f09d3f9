/** Spreads work over the machine's cores. */
import { availableParallelism } from 'node:os';
import { setImmediate } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { TASKS, type TaskName, type Tasks } from './tasks.ts';

type Given<T extends TaskName> = Parameters<Tasks[T]>[0];
type Result<T extends TaskName> = ReturnType<Tasks[T]>;

/** The caller's thread and its helpers, who do tasks in parts. */
export interface Crew {
  /** As many parts as keep all busy to the end, though some take longer. */
  readonly parts: number;
  /** Does a task for each of its parts. Results stand in the order of the parts; the first failure is thrown. */
  readonly work: <T extends TaskName>(task: T, parts: readonly Given<T>[]) => Promise<readonly Result<T>[]>;
}

/** What waits for a helper's next result. */
interface Waiting {
  readonly resolve: (result: never) => void;
  readonly reject: (error: Error) => void;
}

const PARTS_OF_A_THREAD = 8;
/** The next part lies ready at each helper, since the caller hands out no other while it works itself. */
const AT_HAND = 2;

/**
 * Hires a crew of one thread a core, and lets it go when the work is done.
 * @param isLarge whether the work takes so much longer than a thread's start, a second, that more are done sooner
 */
export async function withCrew<R>(isLarge: boolean, use: (crew: Crew) => Promise<R>): Promise<R> {
  const helpers = Array.from({ length: isLarge && mayHire() ? availableParallelism() - 1 : 0 }, hire);
  try {
    return await use({ parts: 1 + helpers.length * PARTS_OF_A_THREAD, work: (task, parts) => shareOut(helpers, task, parts) });
  } finally {
    await Promise.all(helpers.map(({ dismiss }) => dismiss()));
  }
}

/** A Node that is confined by its permissions may start no thread. */
const mayHire = (): boolean => process.permission?.has('worker') ?? true;

interface Helper {
  readonly ask: <T extends TaskName>(task: T, given: Given<T>) => Promise<Result<T>>;
  readonly dismiss: () => Promise<unknown>;
}

function hire(): Helper {
  const worker = new Worker(new URL('./task-worker.ts', import.meta.url));
  const waiting: Waiting[] = [];
  worker.on('message', (result) => waiting.shift()?.resolve(result as never));
  worker.on('error', (error: Error) => {
    for (const { reject } of waiting.splice(0)) reject(error);
  });
  return {
    ask: (task, given) => new Promise((resolve, reject) => {
      waiting.push({ resolve, reject });
      worker.postMessage({ task, given });
    }),
    dismiss: () => worker.terminate(),
  };
}

async function shareOut<T extends TaskName>(helpers: readonly Helper[], task: T, parts: readonly Given<T>[]): Promise<readonly Result<T>[]> {
  const results: Result<T>[] = [];
  const left = parts.entries();
  const own = async (): Promise<void> => {
    for (const [i, given] of left) {
      results[i] = TASKS[task](given as never) as Result<T>;
      // Lets the helpers' results in, and their next parts out.
      await setImmediate();
    }
  };
  const lanes = helpers.flatMap((helper) => Array.from({ length: AT_HAND }, async () => {
    for (const [i, given] of left) results[i] = await helper.ask(task, given);
  }));
  await Promise.all([...lanes, own()]);
  return results;
}

/** A list in so many parts at most, in its order and nearly equal. */
export function inParts<T>(list: readonly T[], parts: number): T[][] {
  const size = Math.max(1, Math.ceil(list.length / parts));
  return Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
}
