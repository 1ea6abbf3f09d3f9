/** A thread beside the page, which computes what is out of sight and the simulations. The page's own script once more, so that nothing else is fetched. */
import type { Conditions } from '../tables/conditions.ts';
import type { Style } from '../tables/display.ts';
import type { Asked, Drawer } from './drawn.ts';
import { isNotThere } from './simulations.ts';

interface Question {
  readonly turn: number;
  readonly asked: readonly Asked[];
  readonly conditions: Conditions;
  readonly style: Style;
  /** Where the simulations are, should they be needed. */
  readonly simulations: string;
}

/** HTML, nothing to show, or that physics has no answer. */
export type Answer = { readonly html: string | undefined } | 'refused';

interface Answers {
  readonly turn: number;
  readonly answers: readonly Answer[];
}

export interface Beside {
  /** The pieces as text; undefined where the thread has failed. */
  readonly ask: (asked: readonly Asked[], conditions: Conditions, style: Style) => Promise<readonly Answer[] | undefined>;
  readonly hasFailed: () => boolean;
}

/**
 * Starts the thread; undefined where the browser gives none, as for a page from a disk.
 * @param script address of the page's script, which has to {@link serve}; empty where it is part of the page
 * @param simulations address of theirs
 */
export function startBeside(script: string, simulations: string): Beside | undefined {
  const worker = workerOf(script);
  if (worker === undefined) return undefined;
  const waiting = new Map<number, (answers?: readonly Answer[]) => void>();
  let turn = 0;
  let hasFailed = false;
  worker.onmessage = ({ data }: MessageEvent<Answers>) => {
    waiting.get(data.turn)?.(data.answers);
    waiting.delete(data.turn);
  };
  worker.onerror = () => {
    hasFailed = true;
    for (const answered of waiting.values()) answered();
  };
  const ask: Beside['ask'] = (asked, conditions, style) =>
    new Promise((answered) => {
      waiting.set(++turn, answered);
      worker.postMessage({ turn, asked, conditions, style, simulations } satisfies Question);
    });
  return { ask, hasFailed: () => hasFailed };
}

function workerOf(script: string): Worker | undefined {
  try {
    return script === '' ? undefined : new Worker(script);
  } catch {
    return undefined;
  }
}

/** The part of a worker's surroundings that is used here; the page's own type library does not know it. */
interface Thread {
  onmessage: (event: { readonly data: Question }) => void;
  readonly postMessage: (answers: Answers) => void;
  readonly importScripts: (address: string) => void;
}

/** Whether this script runs as such a thread. */
export const isBeside = (): boolean => globalThis.document === undefined;

/** Answers a page as its thread. */
export function serve(drawerOf: (asked: Asked) => Drawer): void {
  const thread = globalThis as unknown as Thread;
  thread.onmessage = ({ data: { turn, asked, conditions, style, simulations } }) => {
    const answerOf = (draw: Drawer): Answer => {
      try {
        return { html: draw(conditions, style) };
      } catch (error) {
        if (error instanceof RangeError) return 'refused';
        if (!isNotThere(error)) throw error;
        thread.importScripts(simulations);
        return answerOf(draw);
      }
    };
    thread.postMessage({ turn, answers: asked.map((one) => answerOf(drawerOf(one))) });
  };
}
