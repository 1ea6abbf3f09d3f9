/** `npm start`: builds and serves the site, and builds it again as content changes. */
import { spawn } from 'node:child_process';
import { existsSync, watch } from 'node:fs';
import type { Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { writeEditorSchemas } from '../authoring/index.ts';
import { VOCABULARY } from '../sheets/index.ts';
import { foldersFrom } from './folders.ts';
import { checkContent } from './read-book.ts';
import { describeFindings } from './report.ts';
import { runCommand, UsageError } from './run-command.ts';
import { staticServer } from './static-server.ts';
import { writing } from './writing.ts';

const HELP = `npm start [-- --port N]

Builds the site, serves it on this machine, and builds it again whenever a file of the content
folder changes. Findings are shown here and in the open page; the last good site stays until they
are mended. Schemas for editors are written into the content folder as by npm run schemas.

  --port N   serves on this port (8017; the next free one if it is taken)
  --help     prints this

LAPSEBOOK_CONTENT and LAPSEBOOK_OUT as for npm run build.`;

const FIRST_PORT = 8017;
const PORTS_TO_TRY = 20;
/** Editors write a file in several strokes: wait until they rest, ms. */
const REST = 150;

await runCommand(HELP, async (args) => {
  const { values } = parseArgs({ args, options: { port: { type: 'string' } } });
  const port = values.port === undefined ? undefined : Number(values.port);
  if (port !== undefined && !(Number.isInteger(port) && port > 0 && port < 65_536)) throw new UsageError(`${values.port} is no port; write a whole number from 1 to 65535`);
  const folders = foldersFrom(process.env);
  if (existsSync(folders.content)) await writing(() => writeEditorSchemas(folders.content, VOCABULARY));
  const { server, announce } = staticServer(folders.site, { live: true });

  const rebuild = async (): Promise<void> => {
    const { findings } = await checkContent(folders.content);
    if (findings.length > 0) {
      console.error(`\n${describeFindings(findings)}`);
      announce({ findings: describeFindings(findings) });
      return;
    }
    if ((await buildInOwnProcess()) === 0) announce({});
  };

  await rebuild();
  const address = await listen(server, port);
  console.log(`\nServing ${address}  (Ctrl+C ends it)`);

  let waiting: NodeJS.Timeout | undefined;
  let building = Promise.resolve();
  watch(folders.content, { recursive: true }, () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      building = building.then(rebuild);
    }, REST);
  });
  await new Promise((resolve) => server.on('close', resolve));
  return 0;
});

/** Page modules keep what they have read, so each build has a process of its own. */
function buildInOwnProcess(): Promise<number> {
  const script = fileURLToPath(new URL('build.ts', import.meta.url));
  return new Promise((resolve) => {
    spawn(process.execPath, [...process.execArgv, script], { stdio: 'inherit' }).on('exit', (code) => resolve(code ?? 1));
  });
}

/** Listens on the port asked for, or on the first free one of a few. */
async function listen(server: Server, wanted: number | undefined): Promise<string> {
  for (let port = wanted ?? FIRST_PORT; ; port++) {
    const error = await new Promise<NodeJS.ErrnoException | undefined>((resolve) => {
      server.once('error', resolve);
      server.listen(port, () => {
        server.off('error', resolve);
        resolve(undefined);
      });
    });
    if (error === undefined) return `http://localhost:${port}/`;
    if (error.code !== 'EADDRINUSE') throw error;
    if (wanted !== undefined) throw new UsageError(`port ${wanted} is taken; name another with --port`);
    if (port >= FIRST_PORT + PORTS_TO_TRY) throw new UsageError(`ports ${FIRST_PORT} to ${port} are taken; name one with --port`);
  }
}
