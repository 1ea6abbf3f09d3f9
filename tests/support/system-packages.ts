/** Programs that a fresh machine may lack: installed where that can be done without asking anybody. */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The first of some names that stands in the search path and may be run. */
export function inSearchPath(names: readonly string[], searchPath = process.env.PATH ?? ''): string | undefined {
  const ending = process.platform === 'win32' ? '.exe' : '';
  return searchPath
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => names.map((name) => join(folder, `${name}${ending}`)))
    .find(mayBeRun);
}

/** Whether a file is there and may be run. */
export function mayBeRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Installs packages of the distribution as root on Debian; elsewhere does nothing. Returns whether it did. */
export function installOnDebian(packages: readonly string[]): boolean {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version') || !inSearchPath(['apt-get'])) return false;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const run = (...args: string[]): boolean => spawnSync('apt-get', args, { env, stdio: ['ignore', 'ignore', 'inherit'] }).status === 0;
  return run('update', '-qq') && run('install', '-y', '-qq', ...packages);
}
