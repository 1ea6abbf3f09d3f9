/** `npm start`: serves, builds again after a change, shows findings while the last good site stays, and recovers. */
import type { ChildProcess } from 'node:child_process';
import { existsSync } from 'node:fs';
import { cp, readFile, writeFile } from 'node:fs/promises';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { listen, startCommand } from '../support/command.ts';
import { exclusively } from '../support/exclusive.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

/** The longest wait for a build, ms. */
const LIMIT = 60_000;

let place: string;
let child: ChildProcess | undefined;

beforeAll(() => {
  place = newFolder();
});
afterAll(() => removeFolder(place));

it('writes schemas for editors, serves, follows changes, shows findings and recovers', { timeout: 6 * LIMIT }, () =>
  exclusively(async () => {
    const content = join(place, 'content');
    await cp(join(ROOT, 'tests', 'content', 'good', 'minimal'), content, { recursive: true });
    const port = await freePort();
    child = startCommand('start', ['--port', String(port)], { env: { LAPSEBOOK_CONTENT: content, LAPSEBOOK_OUT: join(place, 'site') } });
    const said = listen(child);
    const ended = new Promise((resolve) => child?.on('close', resolve));
    const news = new AbortController();
    try {
      const address = `http://localhost:${port}/`;
      await until(() => said.stdout().includes(address), said.stderr);
      const page = `${address}kits/first-cloud/draft/student/`;
      expect(existsSync(join(content, '.schemas', 'kit.json'))).toBe(true);
      expect(await textAt(page)).toContain('<h1>');
      expect((await fetch(`${address}no-such-page/`)).status).toBe(404);
      expect((await fetch(`${address}%`)).status).toBe(404);
      const heard = hear(`${address}.news`, news.signal);

      const lesson = join(content, 'kits', 'first-cloud', 'student.mdx');
      const good = await readFile(lesson, 'utf8');
      await writeFile(lesson, `${good}\nA newly written sentence.\n`);
      await until(async () => (await textAt(page)).includes('A newly written sentence.'), said.stderr);
      await until(() => heard.length === 1, said.stderr);
      expect(heard[0]).toEqual({});

      await writeFile(lesson, `${good}\nThe air is at 12 °C then.\n`);
      await until(() => heard.length === 2, said.stderr);
      expect(heard[1]?.findings).toMatch(/student\.mdx:\d+:\d+: /);
      expect(said.stderr()).toMatch(/student\.mdx:\d+:\d+: /);
      expect(await textAt(page)).toContain('A newly written sentence.');

      await writeFile(lesson, good);
      await until(() => heard.length === 3, said.stderr);
      expect(heard[2]).toEqual({});
      expect(await textAt(page)).not.toContain('A newly written sentence.');
    } finally {
      news.abort();
      child.kill('SIGTERM');
      await ended;
    }
  }),
);

const textAt = async (address: string): Promise<string> => (await fetch(address)).text();

async function until(done: () => boolean | Promise<boolean>, explain: () => string): Promise<void> {
  for (const end = Date.now() + LIMIT; Date.now() < end; await wait(100)) if (await done()) return;
  throw new Error(`Nothing came in ${LIMIT / 1000} s. ${explain()}`);
}

/** What the server tells open pages. */
function hear(address: string, signal: AbortSignal): { findings?: string }[] {
  const heard: { findings?: string }[] = [];
  const follow = async (): Promise<void> => {
    const { body } = await fetch(address, { signal });
    let text = '';
    for await (const piece of body?.pipeThrough(new TextDecoderStream()) ?? []) {
      text += piece;
      const parts = text.split('\n\n');
      text = parts.pop() ?? '';
      for (const part of parts) if (part.startsWith('data: ')) heard.push(JSON.parse(part.slice('data: '.length)) as { findings?: string });
    }
  };
  follow().catch((error: unknown) => {
    if (!signal.aborted) throw error;
  });
  return heard;
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer().on('error', reject).listen(0, () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
