/** What every command promises: help, exit codes, findings for programs, and sentences instead of stack traces. */
import { appendFile, cp } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { runCommand } from '../support/command.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';

const GOOD = join(ROOT, 'tests', 'content', 'good', 'minimal');
const STACK = /^\s+at .+:\d+:\d+/m;

let place: string;
let bad: string;
beforeAll(async () => {
  place = newFolder();
  bad = join(place, 'bad');
  await cp(GOOD, bad, { recursive: true });
  await appendFile(join(bad, 'rooms', 'workshop.yaml'), 'colour: green\n');
});
afterAll(() => removeFolder(place));

describe.each(['check', 'build', 'start'])('%s', (name) => {
  it.each(['--help', '-h'])('explains itself with %s', async (option) => {
    const { code, stdout, stderr } = await runCommand(name, [option]);
    expect(code).toBe(0);
    expect(stdout).toContain(name === 'start' ? 'npm start' : `npm run ${name}`);
    expect(stdout).toContain('LAPSEBOOK_CONTENT');
    expect(stderr).toBe('');
  });

  it('refuses an option that it does not know, by name, with exit code 2', async () => {
    const { code, stdout, stderr } = await runCommand(name, ['--colour']);
    expect(code).toBe(2);
    expect(stderr).toContain('--colour');
    expect(stderr).toContain('--help');
    expect(stderr).not.toMatch(STACK);
    expect(stdout).toBe('');
  });
});

describe('a content folder that is not there', () => {
  it.each(['check', 'build'])('is named by %s, without a stack trace', async (name) => {
    const missing = join(place, 'nowhere');
    const { code, stdout, stderr } = await runCommand(name, [], { env: { LAPSEBOOK_CONTENT: missing, LAPSEBOOK_OUT: join(place, 'out') } });
    expect(code).toBe(2);
    expect(stdout + stderr).toContain(missing);
    expect(stdout + stderr).not.toMatch(STACK);
  });
});

describe('check', () => {
  const text = z.string().min(1);
  const findings = z.array(z.strictObject({ code: text, file: text, line: z.int().positive(), column: z.int().positive(), what: text, instead: text }));

  it('finds nothing in good content: exit code 0', async () => {
    const { code, stdout } = await runCommand('check', [], { env: { LAPSEBOOK_CONTENT: GOOD } });
    expect(code).toBe(0);
    expect(stdout).toMatch(/^1 kits? checked/);
  });

  it('prints an empty array as JSON then', async () => {
    const { code, stdout } = await runCommand('check', ['--json'], { env: { LAPSEBOOK_CONTENT: GOOD } });
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toEqual([]);
  });

  it('prints findings with their places: exit code 1', async () => {
    const { code, stdout } = await runCommand('check', [], { env: { LAPSEBOOK_CONTENT: bad } });
    expect(code).toBe(1);
    expect(stdout).toMatch(/^(.*[/\\])?rooms[/\\]workshop\.yaml:\d+:1: .+; .+$/m);
    expect(stdout).toMatch(/^1 finding\b/m);
  });

  it('prints the same findings as JSON, and nothing else', async () => {
    const { code, stdout, stderr } = await runCommand('check', ['--json'], { env: { LAPSEBOOK_CONTENT: bad } });
    expect(code).toBe(1);
    expect(stderr).toBe('');
    const [found, ...others] = findings.parse(JSON.parse(stdout));
    expect(others).toEqual([]);
    expect(found?.file).toMatch(/rooms[/\\]workshop\.yaml$/);
    expect(found?.column).toBe(1);
  });

  it('takes a relative content folder from where it is called', async () => {
    const { code } = await runCommand('check', [], { cwd: place, env: { LAPSEBOOK_CONTENT: 'bad' } });
    expect(code).toBe(1);
  });
});

describe('start', () => {
  it.each(['0', '65536', 'door', '80.5'])('refuses the port %s', async (port) => {
    const { code, stderr } = await runCommand('start', ['--port', port]);
    expect(code).toBe(2);
    expect(stderr).toContain(port);
    expect(stderr).not.toMatch(STACK);
  });

  it('names a content folder that is not there, without a stack trace', async () => {
    const missing = join(place, 'nowhere');
    const { code, stdout, stderr } = await runCommand('start', [], { env: { LAPSEBOOK_CONTENT: missing, LAPSEBOOK_OUT: join(place, 'out') } });
    expect(code).toBe(2);
    expect(stdout + stderr).toContain(missing);
    expect(stdout + stderr).not.toMatch(STACK);
  });
});
