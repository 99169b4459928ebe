import { describe, expect, it } from 'vitest';
import { check, DocumentError } from '../../../calc/index.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';

const inch = 0.0254;
const poundForce = 4.4482216152605;

const bare: CounterOverhangInput = {
  schema: 1,
  element: 'counter-overhang',
  top: {
    material: 'sugar-maple',
    appearance: 'nearly-clear',
    staves: 'along',
    length: '72 in',
    depth: '36 in',
    thickness: '1-1/2 in',
  },
  base: {
    from: '0 in',
    to: '72 in',
    back: '0 in',
    front: '24 in',
    weight: '160 lbf',
    weightAt: '12 in',
    foot: '24 in',
    height: '34-1/2 in',
  },
};
const outcome = (document: CounterOverhangInput, id: string) =>
  check(document).checks.find((each) => each.id === id);
const pathsOf = (document: unknown): string[] => {
  try {
    check(document);
  } catch (error) {
    if (error instanceof DocumentError) return error.errors.map(({ path }) => path);
    throw error;
  }
  return [];
};

describe('a counter overhang by hand', () => {
  it('tips about its foot under two people: 2 × 250 lbf, 10 in out, against 0.6 of its dead load', () => {
    const held = outcome(bare, 'tip-over');
    const served = (10 / 144) * 72 * 12 * 6;
    const weight = (72 * 36 * 1.5 * (0.63 * 1.12 * 62.428)) / 1728;
    const over = 5000 + served + (weight / 3) * 6;
    expect(held?.outcome).toBe('does-not-hold');
    expect((held?.demand?.value ?? 0) / (poundForce * inch) / over).toBeCloseTo(1, 3);
    expect(
      (held?.capacity?.value ?? 0) / (poundForce * inch) / (0.6 * (160 * 12 + (weight * 2 * 12) / 3)),
    ).toBeCloseTo(1, 3);
  });

  it('tips off its base without screws, and says so instead of a stress', () => {
    expect(outcome(bare, 'hold-down')?.outcome).toBe('does-not-hold');
    expect(outcome(bare, 'bending-across')?.outcome).toBe('cannot-say');
    expect(check(bare).analysis.plate.acrossGrain).toBeNull();
  });

  it('takes black maple for sugar maple across the grain: 670 psi, 5 % exclusion, over 2.3, seven days', () => {
    const screws = {
      length: '2 in',
      through: '3/4 in',
      at: [
        ['3 in', '1 in'],
        ['24 in', '1 in'],
        ['48 in', '1 in'],
        ['69 in', '1 in'],
      ],
    } satisfies CounterOverhangInput['screws'];
    const across = outcome({ ...bare, screws }, 'bending-across');
    expect((across?.capacity?.value ?? 0) / 6894.757293168).toBeCloseTo(
      (670 * (1 - 1.645 * 0.25) * 1.25) / 2.3,
      0,
    );
    expect(across?.outcome).toBe('does-not-hold');
    expect(across?.note).toContain('Black maple stands in');
  });
});

describe('bad input', () => {
  const { top, base } = bare;
  it.each([
    ['base outside the top', { ...bare, base: { ...base, front: '40 in' } }, '/base/front'],
    [
      'a prop beyond the edge',
      { ...bare, props: [{ kind: 'leg', at: '10 in', to: '40 in' }] },
      '/props/0/to',
    ],
    ['a screw in the air', { ...bare, screws: { length: '2 in', at: [['10 in', '30 in']] } }, '/screws/at/0'],
    ['no thickness', { ...bare, top: { ...top, thickness: '0 in' } }, '/top/thickness'],
    ['a top of 10 m', { ...bare, top: { ...top, length: '10 m' } }, '/top/length'],
    ['a top 1 mm thick', { ...bare, top: { ...top, thickness: '1 mm' } }, '/top/thickness'],
    ['no base', { ...bare, base: undefined }, '/base'],
    ['an unknown wood', { ...bare, top: { ...top, material: 'marzipan' } }, '/top/material'],
  ])('%s', (_what, document, path) => {
    expect(pathsOf(document)).toContain(path);
  });
});
