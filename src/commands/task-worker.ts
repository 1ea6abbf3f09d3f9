/** A thread that does one part of a task after another. */
import { parentPort } from 'node:worker_threads';
import { TASKS, type TaskName } from './tasks.ts';

parentPort?.on('message', ({ task, given }: { readonly task: TaskName; readonly given: never }) => parentPort?.postMessage(TASKS[task](given)));
