import * as stability from '../../../calc/standards/nds-2018/3.3.3-stability.ts';
import { published, type PublishedValue } from './published-value.ts';
import { inch, psi } from './units.ts';

const byHand = (what: string) => ({
  ...{ tolerance: 1e-9, why: 'exact' },
  ...{ source: `worked by hand: ${what}`, memory: false },
});

/** Printed E and E_min of graded lumber: NDS Supplement 2018, Table 4A. */
const table4A: readonly (readonly [string, number, number])[] = [
  ['Douglas Fir-Larch, select structural', 1_900_000, 690_000],
  ['Douglas Fir-Larch, No. 2', 1_600_000, 580_000],
  ['Spruce-Pine-Fir, No. 2', 1_400_000, 510_000],
];

const stiffness = table4A.map(([grade, E, printed]) =>
  published(stability.leastStiffness, { E: E * psi, V_E: 0.25 }, printed * psi, {
    tolerance: 5_001 / printed,
    source: `NDS Supplement 2018, Table 4A, ${grade}: E_min`,
    why: 'printed to 10,000 psi',
    memory: true,
  }),
);

export const stabilityValues: readonly PublishedValue[] = [
  ...stiffness,
  published(stability.effectiveLengthShort, { l_u: 2 }, 4.12, byHand('2.06 × 2')),
  published(stability.effectiveLength, { l_u: 2, d: 0.2 }, 3.86, byHand('1.63 × 2 + 3 × 0.2')),
  published(stability.effectiveLengthLong, { l_u: 3 }, 5.52, byHand('1.84 × 3')),
  published(stability.slenderness, { l_e: 96 * inch, d: 6 * inch, b: 1.5 * inch }, 16, {
    ...byHand('√(96 × 6 / 2.25) = √256'),
  }),
  published(stability.bucklingStress, { E_min: 500_000 * psi, R_B: 20 }, 1500 * psi, {
    ...byHand('1.20 × 500,000 / 400 psi'),
  }),
  published(stability.stabilityFactor, { F_bE: 1, F_b_star: 1 }, (2 - Math.sqrt(0.2)) / 1.9, {
    ...byHand('0.95 C² − 2 C + 1 = 0: (2 − √(4 − 3.8)) / 1.9'),
  }),
  published(stability.stableBending, { C_L: 0.8, F_b_star: 1000 * psi }, 800 * psi, byHand('0.8 × 1000 psi')),
];
