import { chmod, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { run } from '../../server/command-line/run.ts';
import { caution, cautions } from '../../shared/cautions.ts';
import { bad, barred, codeFor, heavy, light, unknown } from './documents.ts';

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'command-line-'));
  for (const [name, document] of Object.entries({ light, heavy, unknown, bad })) {
    await writeFile(join(folder, `${name}.json`), JSON.stringify(document));
  }
  await mkdir(join(folder, 'directory.json'));
  await writeFile(join(folder, 'slip.json'), '{"schema": 1,\n "element": }');
  await writeFile(join(folder, 'empty.json'), '');
  await writeFile(join(folder, 'latin.json'), new Uint8Array([0x22, 0xe9, 0x22]));
  await writeFile(join(folder, 'large.json'), JSON.stringify(light).padEnd(1_000_001));
  await writeFile(join(folder, 'fits.json'), JSON.stringify(light).padEnd(1_000_000));
});

afterAll(() => rm(folder, { recursive: true }));

async function command(...words: string[]): Promise<{ code: number; out: string; error: string }> {
  let out = '';
  let error = '';
  const code = await run(words, {
    folder,
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { code, out, error };
}

describe('one file', () => {
  it.each([
    ['light.json', light],
    ['heavy.json', heavy],
    ['unknown.json', unknown],
  ] as const)('%s ends with the code of its verdict and begins with its summary', async (file, document) => {
    const answer = await command(file);
    expect(answer.error).toBe('');
    expect(answer.code).toBe(codeFor(document));
    expect(answer.out.startsWith(`${check(document).summary}\n`)).toBe(true);
  });

  it('ends with different codes for what does not hold and what can not be said', async () => {
    expect((await command('heavy.json')).code).toBe(1);
    expect((await command('unknown.json')).code).toBe(3);
  });

  it('prints the ways out under the table where there are any', async () => {
    const { remedies } = check(heavy);
    expect(remedies.length).toBeGreaterThan(0);
    const { out } = await command('heavy.json');
    for (const { what } of remedies) expect(out).toContain(`- ${what} Then it `);
    expect((await command('light.json')).out).not.toContain('Ways out');
  });

  it('says under “Ways out” what they are worth, and where there are none', async () => {
    expect((await command('heavy.json')).out).toMatch(
      /\nWays out\n(?:Each by itself|No change that was tried)/,
    );
    await writeFile(join(folder, 'barred.json'), JSON.stringify(barred));
    expect(check(barred)).toMatchObject({ verdict: 'does-not-hold', remedies: [] });
    expect((await command('barred.json')).out).toContain('\nWays out\nNone is known: ');
  });

  it('has warnings and the caution beside the summary, before the long lists', async () => {
    const unaided = { ...light, loads: [] };
    await writeFile(join(folder, 'unaided.json'), JSON.stringify(unaided));
    const { out } = await command('unaided.json');
    const { warnings } = check(unaided);
    expect(warnings.length).toBeGreaterThan(0);
    for (const words of [caution.aid, ...warnings]) {
      expect(out).toContain(words);
      expect(out.indexOf(words)).toBeLessThan(out.indexOf('\nCheck '));
    }
  });

  it('prints every check in columns, and all that stands beside the verdict', async () => {
    const { out } = await command('light.json');
    const lines = out.split('\n');
    const head = lines.find((line) => line.startsWith('Check ')) ?? '';
    const result = check(light);
    for (const { id, title, clause, demand, capacity } of result.checks) {
      const row = lines.find((line) => line.startsWith(`${title} (${id})`)) ?? '';
      expect(row.slice(head.indexOf('Clause'))).toBe(clause);
      expect(row).toContain(demand?.shown ?? '-');
      expect(row).toContain(capacity?.shown ?? '-');
    }
    for (const line of [...result.warnings, ...result.assumptions, ...cautions])
      expect(out).toContain(`- ${line}`);
    expect(out).not.toMatch(/undefined|NaN|\[object|[ \t]\n/);
  });

  it('prints with --json what the library gives', async () => {
    const { code, out } = await command('--json', 'light.json');
    expect(code).toBe(codeFor(light));
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(check(light))));
  });

  it('puts every error of a bad document on standard error, and nothing on standard output', async () => {
    for (const words of [['bad.json'], ['--json', 'bad.json']]) {
      const { code, out, error } = await command(...words);
      expect(code).toBe(2);
      expect(out).toBe('');
      const lines = error.trimEnd().split('\n');
      expect(lines).toHaveLength(3);
      expect(lines[0]).toMatch(/^bad\.json: \/board\/length: "96" has no unit\. It takes a length/);
      expect(lines[1]).toMatch(/^bad\.json: \/board\/thickness: /);
      expect(lines[2]).toMatch(/^bad\.json: \/limits: /);
    }
  });

  it.each([
    ['missing.json', 'There is no such file.'],
    ['light.json/inside.json', 'There is no such file.'],
    ['directory.json', 'It is a directory, not a file.'],
    ['slip.json', "It is not JSON: what begins at line 2, column 13 can't stand there."],
    ['empty.json', 'It is not JSON: there is nothing in it.'],
    ['latin.json', 'It is not JSON: the text is not UTF-8.'],
    ['large.json', 'It is larger than 1 MB.'],
    [`${'x'.repeat(5000)}.json`, 'There is no such file.'],
    ['nul\0.json', "It can't be read (ERR_INVALID_ARG_VALUE)."],
  ])('a file that can not be read ends with 2 and one line (%#)', async (file, line) => {
    const { code, out, error } = await command(file);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(error).toBe(`${file.replace('\0', '\u{FFFD}')}: ${line}\n`);
  });

  it('takes a file of just 1 MB', async () => {
    expect((await command('fits.json')).error).toBe('');
  });

  it.skipIf(process.getuid?.() === 0)('says so where a file may not be read', async () => {
    const secret = join(folder, 'secret.json');
    await writeFile(secret, '{}');
    await chmod(secret, 0o000);
    const { code, error } = await command(secret);
    expect(code).toBe(2);
    expect(error).toBe(`${secret}: It may not be read by this user.\n`);
  });

  it('lets no document steer the terminal', async () => {
    const steering = { ...light, board: { ...light.board, length: '\u001b[2J\u009b2J96 in' } };
    await writeFile(join(folder, 'steering.json'), JSON.stringify(steering));
    const { code, error } = await command('steering.json');
    expect(code).toBe(2);
    expect(error).toContain('/board/length');
    expect(error.trimEnd()).not.toMatch(/\p{Cc}/u);
  });
});

describe('several files', () => {
  it('give one line each, in order', async () => {
    const { code, out, error } = await command('light.json', 'heavy.json', 'bad.json', 'unknown.json');
    const lines = out.trimEnd().split('\n');
    expect(lines.map((line) => line.split(':')[0])).toEqual([
      'light.json',
      'heavy.json',
      'bad.json',
      'unknown.json',
    ]);
    expect(lines[0]).toContain(check(light).summary);
    expect(lines[2]).toBe('bad.json: Bad input, 3 errors.');
    expect(error.trimEnd().split('\n')).toHaveLength(3);
    expect(code).toBe(2);
  });

  it('give with --json one result a line, in order', async () => {
    const { out } = await command('--json', 'light.json', 'bad.json', 'heavy.json');
    const lines = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines.map((line) => line['verdict'] ?? 'none')).toEqual([
      check(light).verdict,
      'none',
      'does-not-hold',
    ]);
    expect(lines[1]?.['file']).toBe('bad.json');
    expect(lines[1]?.['errors']).toHaveLength(3);
  });

  it.each([
    [['light.json', 'light.json'], codeFor(light)],
    [['light.json', 'unknown.json'], 3],
    [['unknown.json', 'heavy.json'], 1],
    [['heavy.json', 'unknown.json', 'light.json'], 1],
    [['heavy.json', 'missing.json'], 2],
    [['bad.json', 'unknown.json'], 2],
  ])('%s end with %d', async (files, code) => {
    expect((await command(...files)).code).toBe(code);
  });
});

describe('the words of the command', () => {
  it.each([['--help'], ['-h'], ['light.json', '--help']])('%s prints how it is used', async (...words) => {
    const { code, out, error } = await command(...words);
    expect(code).toBe(0);
    expect(out).toContain('npm run --silent check -- ');
    expect(error).toBe('');
  });

  it.each([
    [[], 'Name a file'],
    [['--json'], 'Name a file'],
    [['--jason', 'light.json'], "Unknown option '--jason'."],
    [['--json=yes', 'light.json'], "Option '--json' does not take an argument."],
    [['-', '-'], 'Standard input can be read only once'],
  ])('%j is a mistake', async (words, message) => {
    const { code, out, error } = await command(...words);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(error).toContain(message);
    expect(error).toContain('npm run --silent check -- ');
  });

  it('reads a name that looks like an option after --', async () => {
    await writeFile(join(folder, '--json'), JSON.stringify(light));
    expect((await command('--', '--json')).out).toContain(cautions[0]);
  });
});
