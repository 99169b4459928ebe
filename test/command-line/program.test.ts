import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bad, codeFor, heavy, light } from './documents.ts';

/** The command as people run it: another process, with its real streams and exit code. */

const project = join(import.meta.dirname, '..', '..');
let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'program-'));
  await writeFile(join(folder, 'light.json'), JSON.stringify(light));
});

afterAll(() => rm(folder, { recursive: true }));

function start(command: string, words: string[], input: string, cwd = project) {
  return new Promise<{ code: number | null; out: string; error: string }>((resolve, reject) => {
    const environment = Object.fromEntries(
      Object.entries(process.env).filter(([name]) => !/^(npm_|INIT_CWD)/i.test(name)),
    );
    const child = spawn(command, words, { cwd, env: environment });
    let out = '';
    let error = '';
    child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
    child.stderr.on('data', (chunk: Buffer) => (error += chunk.toString()));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, error }));
    child.stdin.on('error', () => undefined);
    child.stdin.end(input);
  });
}

const npm = (words: string[], input = '', cwd = project) =>
  start('npm', ['--prefix', project, 'run', '--silent', 'check', '--', ...words], input, cwd);

describe('the program', () => {
  it('reads a document from standard input', async () => {
    const { code, out, error } = await npm(['--json', '-'], JSON.stringify(heavy));
    expect(error).toBe('');
    expect(code).toBe(1);
    expect((JSON.parse(out) as { verdict: string }).verdict).toBe('does-not-hold');
  });

  it('takes paths from the folder it was called in', async () => {
    const { code, error } = await npm(['light.json'], '', folder);
    expect(error).toBe('');
    expect(code).toBe(codeFor(light));
  });

  it('keeps the errors of standard input on standard error, without a stack trace', async () => {
    const { code, out, error } = await npm(['-'], JSON.stringify(bad));
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(error).toMatch(/^standard input: \/board\/length: /);
    expect(error).not.toMatch(/^\s+at /m);
  });

  it('does not mind a reader who stops reading', async () => {
    const files = Array.from({ length: 40 }, () => join(folder, 'light.json'));
    const line = [
      'node --import ts-blank-space/register server/command-line.ts --json',
      ...files,
      '| head -c 100 > /dev/null; echo ${PIPESTATUS[0]}',
    ];
    const { out, error } = await start('bash', ['-c', line.join(' ')], '');
    expect(error).toBe('');
    expect(out.trimEnd()).toBe(String(codeFor(light)));
  });
});
