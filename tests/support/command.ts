/** The project's commands, run as a user runs them: in a process of their own. */
import { spawn, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { exclusively } from './exclusive.ts';
import { ROOT } from './root.ts';

export interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Surroundings {
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
}

/** The longest that a command may take, ms. */
const LIMIT = 180_000;

/** Starts `npm run NAME` without npm: the launcher with the command's name and arguments. */
export const startCommand = (name: string, args: readonly string[] = [], { env = {}, cwd = ROOT }: Surroundings = {}): ChildProcess =>
  spawn(process.execPath, [join(ROOT, 'src', 'commands', 'launch.mjs'), name, ...args], { cwd, env: { ...withoutOwn(), ...env }, stdio: ['ignore', 'pipe', 'pipe'] });

/** Runs a command to its end. */
export function runCommand(name: string, args: readonly string[] = [], surroundings: Surroundings = {}): Promise<Ended> {
  const child = startCommand(name, args, surroundings);
  const said = listen(child);
  const timer = setTimeout(() => child.kill('SIGTERM'), LIMIT);
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      clearTimeout(timer);
      resolve({ code, stdout: said.stdout(), stderr: said.stderr() });
    });
  });
}

/** What a process has said so far. */
export function listen(child: ChildProcess): { stdout: () => string; stderr: () => string } {
  const heard = { stdout: '', stderr: '' };
  for (const stream of ['stdout', 'stderr'] as const) child[stream]?.setEncoding('utf8').on('data', (text: string) => (heard[stream] += text));
  return { stdout: () => heard.stdout, stderr: () => heard.stderr };
}

/** Builds a content folder somewhere else than in the project. */
export const buildContent = (content: string, out: string, surroundings: Surroundings = {}, args: readonly string[] = []): Promise<Ended> =>
  exclusively(() => build(content, out, surroundings, args));

const build = (content: string, out: string, { env = {}, ...rest }: Surroundings = {}, args: readonly string[] = []): Promise<Ended> =>
  runCommand('build', args, { ...rest, env: { LAPSEBOOK_CONTENT: content, LAPSEBOOK_OUT: out, ...env } });

/** The same, where the build is needed and not itself what is tried; nothing if it is there when its turn comes. */
export const buildForTests = (content: string, out: string, { isThere = () => false, args = [] }: { readonly isThere?: () => boolean; readonly args?: readonly string[] } = {}): Promise<void> =>
  exclusively(async () => {
    if (isThere()) return;
    const { code, stdout, stderr } = await build(content, out, {}, args);
    if (code !== 0) throw new Error(`The build of ${content} ended with ${code}:\n${stdout}${stderr}`);
  });

/** The environment without what the test runner and the caller's own content put into it. */
function withoutOwn(): NodeJS.ProcessEnv {
  const { LAPSEBOOK_CONTENT: _content, LAPSEBOOK_OUT: _out, NODE_ENV: _mode, NODE_OPTIONS: _options, VITEST: _vitest, DEV: _dev, PROD: _prod, MODE: _viteMode, BASE_URL: _base, ...rest } = process.env;
  return rest;
}
