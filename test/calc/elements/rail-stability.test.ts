import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { stabilityFactor } from '../../../calc/standards/nds-2018/3.3.3-stability.ts';
import { startChecks } from '../../../server/start-checks.ts';
import type { CounterRunInput } from '../../../shared/check-document/index.ts';

const psi = 6894.757293168;
const start: CounterRunInput = startChecks['counter-run'];
const onRails = (height: string, opening = '60 in'): CounterRunInput => ({
  ...start,
  ...{ opening, rails: 'both' },
  rail: { thickness: '3/4 in', height, material: 'sugar-maple', seat: '3/4 in' },
});
const bending = (document: CounterRunInput) => check(document).checks.find(({ id }) => id === 'rail-bending');

describe('a rail on edge that nothing holds between its ends (NDS 3.3.3)', () => {
  it('may be bent to C_L F_b*: 3/4 by 5-1/2 in maple over 60-3/4 in, by hand', () => {
    // l_u / d = 11.05: l_e = 1.63 × 60.75 + 3 × 5.5 = 115.5 in; R_B = √(115.5 × 5.5 / 0.75²) = 33.6.
    // E of maple with small knots 0.9 × 1,830,000 psi (Wood Handbook; D245); E_min = 1.03 E (1 − 1.645 × 0.25) / 1.66 = 602,000 psi;
    // F_bE = 1.20 × 602,000 / 33.6² = 639 psi. F_b* = 2117 psi as without stability, so F_bE / F_b* = 0.302.
    // C_L = 1.302 / 1.9 − √((1.302 / 1.9)² − 0.302 / 0.95) = 0.296: 626 psi.
    const found = bending(onRails('5-1/2 in'));
    expect((found?.capacity?.value ?? NaN) / psi).toBeGreaterThan(618);
    expect((found?.capacity?.value ?? NaN) / psi).toBeLessThan(634);
    expect(found?.outcome).toBe('does-not-hold');
  });

  it('is not permitted with a slenderness over 50', () => {
    // l_u / d = 10.5: l_e = 1.63 × 96.75 + 3 × 9.25 = 185 in; R_B = √(185 × 9.25 / 0.75²) = 55.
    const found = bending(onRails('9-1/4 in', '96 in'));
    expect(found?.outcome).toBe('does-not-hold');
    expect(found?.capacity).toBeNull();
    expect(found?.note).toContain('more than 50 is not permitted');
  });

  it('no higher than thick does not turn over', () => {
    const wide: CounterRunInput = {
      ...onRails('1 in'),
      rail: { thickness: '1-1/2 in', height: '1-1/2 in', seat: '3/4 in' },
    };
    const steps = check(wide).worksheet.sections.find(({ check: id }) => id === 'rail-bending')?.steps ?? [];
    expect(steps.map(({ symbol }) => symbol)).not.toContain('C_L');
  });

  it('has the factor that solves 0.95 C² − (1 + r) C + r = 0, whose smaller root Eq. 3.3-6 is', () => {
    for (const r of [0.05, 0.3, 1, 4, 30]) {
      const C = stabilityFactor.evaluate({ F_bE: r, F_b_star: 1 });
      expect(0.95 * C ** 2 - (1 + r) * C + r).toBeCloseTo(0, 10);
      expect(C).toBeLessThan(Math.min(1, r));
    }
  });
});
