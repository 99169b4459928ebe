import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { exitCode, worst } from '../../server/command-line/exit-code.ts';
import { judge } from '../../server/command-line/judge.ts';
import { heavy } from './documents.ts';

const result = check(heavy);

describe('the exit code', () => {
  it.each([
    ['holds', 0],
    ['does-not-hold', 1],
    ['cannot-say', 3],
  ] as const)('of a check that says %s is %d', (verdict, code) => {
    expect(exitCode({ kind: 'result', result: { ...result, verdict } })).toBe(code);
  });

  it('of bad input is 2, and of a fault of the tool 4', () => {
    expect(exitCode(judge({ ok: false, message: 'There is no such file.' }))).toBe(2);
    expect(exitCode(judge({ ok: true, value: {} }))).toBe(2);
    expect(exitCode({ kind: 'fault', message: 'broke off' })).toBe(4);
  });

  it.each<[number[], number]>([
    [[], 0],
    [[0, 0], 0],
    [[0, 3], 3],
    [[3, 1, 0], 1],
    [[1, 2, 3], 2],
    [[0, 2], 2],
    [[2, 4, 1], 4],
  ])('of several, %j, is %d', (codes, code) => {
    expect(worst(codes)).toBe(code);
  });
});
