/**
 * Runs a command of this project on a Node that can: the one that `npm ci` brought along, else the
 * caller's own if it is new enough. Plain JavaScript, since it must start on Node 20.
 *
 * Usage: node src/commands/launch.mjs COMMAND [arguments]
 */
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { delimiter, dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const LEAST_NODE = [22, 12];
/** From here on Node reads TypeScript without a flag. */
const NODE_WITH_TYPES = [22, 18];

const atLeast = ([major, minor]) => {
  const [ownMajor, ownMinor] = process.versions.node.split('.').map(Number);
  return ownMajor > major || (ownMajor === major && ownMinor >= minor);
};

function findNode() {
  const require = createRequire(import.meta.url);
  try {
    const manifest = require.resolve(`node-${process.platform}-${process.arch}/package.json`);
    return { path: resolve(dirname(manifest), 'bin', 'node'), flags: [] };
  } catch {
    if (atLeast(NODE_WITH_TYPES)) return { path: process.execPath, flags: [] };
    if (atLeast(LEAST_NODE)) return { path: process.execPath, flags: ['--experimental-strip-types', '--no-warnings'] };
    console.error(
      `This machine's Node is ${process.versions.node}, and no newer one came with the packages. ` +
        `Install Node ${LEAST_NODE.join('.')} or newer, or run \`npm ci\` again without \`--omit=optional\`.`,
    );
    process.exit(1);
  }
}

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');
const [command, ...rest] = process.argv.slice(2);
const script = { test: 'tests/run.ts', bench: 'tests/bench/run.ts' }[command] ?? `src/commands/${command}.ts`;
const node = findNode();
// A larger nursery for new objects, 16 MB as it is by itself, gains no time here and costs 120 MB.
const child = spawn(node.path, [...node.flags, '--max-semi-space-size=8', '--expose-gc', resolve(root, script), ...rest], {
  stdio: 'inherit',
  // What is read and translated once is kept: starting takes half the time.
  // Astro's bundler leaves its memory in huge pages, which are never given back: 130 MB.
  env: { MIMALLOC_ALLOW_THP: '0', NODE_COMPILE_CACHE: resolve(root, 'node_modules', '.cache', 'compiled'), ...process.env, PATH: `${dirname(node.path)}${delimiter}${process.env.PATH ?? ''}`, ASTRO_TELEMETRY_DISABLED: '1' },
});
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
child.on('exit', (code, signal) => process.exit(signal === null ? (code ?? 1) : 128));
