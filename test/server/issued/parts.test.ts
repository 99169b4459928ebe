import { describe, expect, it } from 'vitest';
import { revisionLetters } from '../../../server/issued/revision-letters.ts';
import { readFingerprint } from '../../../server/issued/typed-fingerprint.ts';
import { compare, type ComparedResult } from '../../../server/issued/today.ts';
import { todayView } from '../../../server/view-models/issued/today-view.ts';

describe('revisions', () => {
  it.each([
    [1, 'A'],
    [2, 'B'],
    [26, 'Z'],
    [27, 'AA'],
    [28, 'AB'],
    [52, 'AZ'],
    [53, 'BA'],
    [702, 'ZZ'],
    [703, 'AAA'],
  ])('count %i as %s', (number, letters) => {
    expect(revisionLetters(number)).toBe(letters);
  });
});

describe('a fingerprint that is typed in', () => {
  const digits = '0123456789abcdef'.repeat(4);

  it.each([
    digits,
    digits.toUpperCase(),
    digits.replace(/.{4}/g, '$& '),
    `  ${digits.slice(0, 40)}\r\n\t${digits.slice(40)}\n`,
    `Fingerprint ${digits.replace(/.{8}/g, '$&\u00a0')}`,
    `FINGERPRINT: ${digits}`,
  ])('is read whatever its spaces, lines and capitals: %j', (typed) => {
    expect(readFingerprint(typed)).toEqual({ ok: true, fingerprint: digits });
  });

  it.each([
    ['', '64 digits from the foot'],
    [digits.slice(1), 'takes 64 digits, in whatever groups; here are 63'],
    ['7', 'here is 1.'],
    [`${digits}0`, 'here are 65'],
    ['3f2 a91 bc0 d4e', 'a sheet that was not issued'],
    [`${digits.slice(1)}o`, '“o”'],
    [`${digits.slice(1)}<`, '“<”'],
  ])('that is none is told what it takes: %j', (typed, words) => {
    expect(readFingerprint(typed)).toMatchObject({
      ok: false,
      message: expect.stringContaining(words) as string,
    });
  });
});

describe('an answer then and now', () => {
  const value = (amount: number) => ({ value: amount, unit: 'Pa', shown: `${amount} Pa` });
  const check = (id: string, ratio: number | null) => ({
    id,
    title: `Check of ${id}`,
    outcome:
      ratio === null ? ('cannot-say' as const) : ratio > 1 ? ('does-not-hold' as const) : ('holds' as const),
    ratio,
    demand: value(ratio ?? 1),
    capacity: ratio === null ? null : value(1),
  });
  const then: ComparedResult = {
    verdict: 'holds',
    checks: [check('bending', 0.5), check('shear', 0.25), check('fixing', null)],
  };

  it('is the same where only the last digits of a number differ', () => {
    const now = {
      ...then,
      checks: [check('bending', 0.5 + 1e-13), check('shear', 0.25), check('fixing', null)],
    };
    expect(compare(then, now)).toEqual({ kind: 'same' });
    expect(compare(then, then)).toEqual({ kind: 'same' });
  });

  it('names the checks that differ, by how much, and those that came or went', () => {
    const now: ComparedResult = {
      verdict: 'does-not-hold',
      checks: [check('bending', 1.25), check('shear', 0.25), check('glue-line', 0.1)],
    };
    const today = compare(then, now);
    const view = todayView(today, '0.0.9');
    expect(view.said).toContain('Issued by version 0.0.9');
    expect(view.said).toContain('another verdict: Does not hold, not Holds');
    expect(view.isAlarming).toBe(true);
    expect(view.rows).toEqual([
      {
        title: 'Check of bending',
        then: 'Holds, 50 % used: 0.5 Pa of 1 Pa',
        now: 'Does not hold, 125 % used: 1.25 Pa of 1 Pa',
        by: '150 % more',
      },
      { title: 'Check of fixing', then: 'Cannot say: 1 Pa of not known', now: 'Not checked', by: '' },
      { title: 'Check of glue-line', then: 'Not checked', now: 'Holds, 10 % used: 0.1 Pa of 1 Pa', by: '' },
    ]);
  });

  it('tells a difference that print rounds away', () => {
    const now = { ...then, checks: [check('bending', 0.500_01), ...then.checks.slice(1)] };
    const view = todayView(compare(then, now), '0.0.9');
    expect(view.said).toContain('the same verdict, Holds, with other numbers');
    expect(view.rows.map(({ by }) => by)).toEqual(['under 0.01 % more']);
  });
});
