/** Java, which the Nu HTML checker runs on. It is optional: without it that check is skipped and counted so. */
import { join } from 'node:path';
import { inSearchPath, mayBeRun } from '../../src/commands/chromium.ts';
import { installOnDebian } from './system-packages.ts';

/** Where Java is: JAVA_HOME or the search path. */
export function findJava(): string | undefined {
  const home = process.env.JAVA_HOME;
  const own = home === undefined ? undefined : join(home, 'bin', 'java');
  return own !== undefined && mayBeRun(own) ? own : inSearchPath(['java']);
}

/** The same, after installing it where that can be done without asking. */
export const findOrInstallJava = (): string | undefined => findJava() ?? (installOnDebian(['default-jre-headless']) ? findJava() : undefined);
