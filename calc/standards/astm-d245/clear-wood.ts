import { formula } from '../../formula/formula.ts';

const d245 = (clause: string) => ({ document: 'ASTM D245', edition: '', clause });
const d2555 = (clause: string) => ({ document: 'ASTM D2555', edition: '', clause });

/** Coefficients of variation of clear wood, ASTM D2555. */
export const variation = { bending: 0.16, shear: 0.14, tensionPerp: 0.25 } as const;

/** Factors from a short test to a design value, ASTM D245 (from memory but for the checks in test/published). */
export const testToDesign = {
  strength: { softwood: 2.1, hardwood: 2.3 },
  compressionPerp: 1.67,
  tensionPerp: 2.3,
} as const;

/** Seasoning factors for stock up to 4 in thick used dry, ASTM D245. */
export const seasoning = { bending: 1.25, shear: 1.08, compressionPerp: 1.5 } as const;

/** Strength ratio of shear, whatever the knots: a split board is allowed for. */
export const shearStrengthRatio = 0.5;

export type Appearance = 'nearly-clear' | 'small-knots' | 'knotty';

/** Strength ratio in bending and quality factor of stiffness by appearance. */
export const appearanceFactors: Readonly<Record<Appearance, { strengthRatio: number; stiffness: number }>> = {
  'nearly-clear': { strengthRatio: 0.65, stiffness: 1.0 },
  'small-knots': { strengthRatio: 0.45, stiffness: 0.9 },
  knotty: { strengthRatio: 0.26, stiffness: 0.8 },
};

/** The value that 95 of 100 clear specimens exceed. */
export const fifthPercentile = formula({
  symbol: 'S_05',
  caption: '5 % exclusion value of clear wood',
  expression: 'S_m * (1 - 1.645 * V_c)',
  symbols: { S_m: 'Pa', V_c: '1' },
  unit: 'Pa',
  source: d2555('exclusion limit; V_c is the variation of clear wood'),
});

/** Bending design value of an appearance board. */
export const clearWoodBending = formula({
  symbol: 'F_b',
  caption: 'bending design value',
  expression: 'S_05 / k_a * R_b * k_s',
  symbols: { S_05: 'Pa', k_a: '1', R_b: '1', k_s: '1' },
  unit: 'Pa',
  source: d245('k_a from test to design, R_b for knots as given above, k_s for seasoning'),
});

/** Shear design value of an appearance board. */
export const clearWoodShear = formula({
  symbol: 'F_v',
  caption: 'shear design value',
  expression: 'S_05 / k_a * R_v * k_s',
  symbols: { S_05: 'Pa', k_a: '1', R_v: '1', k_s: '1' },
  unit: 'Pa',
  source: d245('k_a from test to design, R_v as if split, k_s for seasoning'),
});

/** Compression across the grain: from the mean, not from the 5 % value. */
export const clearWoodBearing = formula({
  symbol: 'F_c_perp',
  caption: 'bearing design value across the grain',
  expression: 'S_m / k_a * k_s',
  symbols: { S_m: 'Pa', k_a: '1', k_s: '1' },
  unit: 'Pa',
  source: d245('k_a from test to design, k_s for seasoning'),
});

/** Tension across the grain: no standard gives a design value; this is the method used here, said each time. */
export const clearWoodTensionPerp = formula({
  symbol: 'F_t_perp',
  caption: 'tension across the grain',
  expression: 'S_m * (1 - 1.645 * V_c) / k_a',
  symbols: { S_m: 'Pa', V_c: '1', k_a: '1' },
  unit: 'Pa',
  source: d245('by analogy: no standard gives a design value for tension across the grain'),
});
