/** Programs that a fresh machine may lack: installed where that can be done without asking anybody. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { inSearchPath } from '../../src/commands/chromium.ts';

/** Installs packages of the distribution as root on Debian; elsewhere does nothing. Returns whether it did. */
export function installOnDebian(packages: readonly string[]): boolean {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version') || !inSearchPath(['apt-get'])) return false;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const run = (...args: string[]): boolean => spawnSync('apt-get', args, { env, stdio: ['ignore', 'ignore', 'inherit'] }).status === 0;
  return run('update', '-qq') && run('install', '-y', '-qq', ...packages);
}
