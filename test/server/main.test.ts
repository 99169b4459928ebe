import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
let started: ChildProcess | undefined;
const folder = mkdtempSync(join(tmpdir(), 'data-'));
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => {
  started?.kill('SIGKILL');
  started = undefined;
});

/** Starts the program as `npm start` does. */
function start(environment: Record<string, string>, words = ['server/main.ts']): ChildProcess {
  const env = { ...process.env, ...environment };
  started = spawn(process.execPath, ['--import', 'ts-blank-space/register', ...words], { cwd: root, env });
  return started;
}

function textOf(stream: NodeJS.ReadableStream | null, until: RegExp): Promise<string> {
  return new Promise((resolve) => {
    let text = '';
    stream?.on('data', (chunk: Buffer) => {
      text += chunk.toString();
      if (until.test(text)) resolve(text);
    });
    stream?.on('end', () => resolve(text));
  });
}

const ended = (program: ChildProcess): Promise<number | null> =>
  new Promise((resolve) => program.on('exit', (code) => resolve(code)));

describe('the program', () => {
  it('prints where it is and where a check is, and ends in order when told to', async () => {
    const program = start({ PORT: '0', HOST: '', DATA_DIR: join(folder, 'not-there-yet') });
    const text = await textOf(program.stdout, /\/demo\n/);
    const demo = /http:\/\/127\.0\.0\.1:\d+\/demo/.exec(text)?.[0] ?? '';
    const response = await fetch(demo);
    expect(response.status).toBe(200);
    expect(await response.text()).toContain('id="verdict"');
    const end = ended(program);
    program.kill('SIGTERM');
    expect(await end).toBe(0);
  });

  it('does not start where the jobs can’t be kept, and says which folder and why', async () => {
    const program = start({ PORT: '0', HOST: '', DATA_DIR: join(root, 'package.json') });
    const end = ended(program);
    expect(await textOf(program.stderr, /$^/)).toMatch(/can't be kept in the folder ".*package\.json"/);
    expect(await end).toBe(1);
  });

  it('where other machines reach it, starts when somebody can sign in, and logs what it does', async () => {
    const site = { PORT: '0', HOST: '0.0.0.0', SITE_ADDRESS: 'https://shelves.example' };
    const environment = { ...site, DATA_DIR: join(folder, 'hosted'), DATABASE_URL: '' };
    const refused = start(environment);
    const refusal = ended(refused);
    expect(await textOf(refused.stderr, /$^/)).toContain('There are no accounts yet');
    expect(await refusal).toBe(1);
    const words = ['owner', '--office', 'Office', '--name', 'A. Person', '--sign-in', 'person@example.org'];
    const account = start(environment, ['server/account-line.ts', ...words]);
    expect(await textOf(account.stdout, /$^/)).toMatch(/Password: +(?:[a-z2-9]{4}-){4}[a-z2-9]{4}\n/);
    const program = start(environment);
    const line = await textOf(program.stdout, /\n/);
    const { event, port } = JSON.parse(line) as { event: string; port: number };
    expect(event).toBe('listening');
    expect((await fetch(`http://127.0.0.1:${port}/ready`)).status).toBe(200);
    const page = await fetch(`http://127.0.0.1:${port}/`, { redirect: 'manual' });
    expect(page.headers.get('location')).toBe('/sign-in');
    const end = ended(program);
    program.kill('SIGTERM');
    expect(await end).toBe(0);
  });
});
