import { formula } from '../../formula/formula.ts';

const aisc = (clause: string) => ({ document: 'AISC Manual', edition: '15th', clause });

/** Moment over a bracket from an overhang. */
export const overhangMoment = formula({
  symbol: 'M_A',
  caption: 'moment over the end bracket',
  expression: 'w * a^2 / 2',
  symbols: { w: 'N/m', a: 'm' },
  unit: 'N.m',
  source: aisc('Table 3-23, beam overhanging one support, uniform load'),
});

/** Moment in the middle of a single span with overhangs. */
export const middleMoment = formula({
  symbol: 'M_mid',
  caption: 'moment in the middle of the span',
  expression: 'w * L^2 / 8 - (M_A + M_B) / 2',
  symbols: { w: 'N/m', L: 'm', M_A: 'N.m', M_B: 'N.m' },
  unit: 'N.m',
  source: aisc('Table 3-23, simple beam and end moments, superposed'),
});

/** Movement in the middle of a single span with overhangs, without shear. */
export const middleMovement = formula({
  symbol: 'Delta_mid',
  caption: 'movement in the middle of the span, bending only',
  expression: '5 * w * L^4 / (384 * EI) - (M_A + M_B) * L^2 / (16 * EI)',
  symbols: { w: 'N/m', L: 'm', EI: 'N.m2', M_A: 'N.m', M_B: 'N.m' },
  unit: 'm',
  source: aisc('Table 3-23, simple beam and end moments, superposed'),
});

/** The same with shear movement. */
export const middleMovementWithShear = formula({
  symbol: 'Delta_mid',
  caption: 'movement in the middle of the span, bending and shear',
  expression: '5 * w * L^4 / (384 * EI) - (M_A + M_B) * L^2 / (16 * EI) + w * L^2 / (8 * GA)',
  symbols: { w: 'N/m', L: 'm', EI: 'N.m2', M_A: 'N.m', M_B: 'N.m', GA: 'N' },
  unit: 'm',
  source: {
    document: 'Wood Handbook FPL-GTR-282',
    edition: '2021',
    clause: 'chapter 9, bending and shear movement',
  },
});

/** Moment over the first inner bracket of equal bays, all loaded. */
export const equalBaysMoment = formula({
  symbol: 'M_B',
  caption: 'moment over the first inner bracket',
  expression: 'c_M * w * L^2',
  symbols: { c_M: '1', w: 'N/m', L: 'm' },
  unit: 'N.m',
  source: aisc('Table 3-22c, equal spans, all loaded'),
});

/** Reaction of the end bracket of equal bays, all loaded. */
export const equalBaysReaction = formula({
  symbol: 'R_A',
  caption: 'reaction of the end bracket',
  expression: 'c_R * w * L',
  symbols: { c_R: '1', w: 'N/m', L: 'm' },
  unit: 'N',
  source: aisc('Table 3-22c, equal spans, all loaded'),
});

/** Coefficients of equal spans, all loaded: moment over the first inner support, reaction of the end support. */
export const equalBays: Readonly<Record<2 | 3 | 4, { readonly moment: number; readonly reaction: number }>> =
  {
    2: { moment: 0.125, reaction: 0.375 },
    3: { moment: 0.1, reaction: 0.4 },
    4: { moment: 0.1071, reaction: 0.393 },
  };

/** Moment over a bracket from those over its neighbours. */
export const threeMoments = formula({
  symbol: 'M_j',
  caption: 'moment over the bracket, from those over its neighbours',
  expression: '(w * (L_l^3 + L_r^3) / 4 - M_l * L_l - M_r * L_r) / (2 * (L_l + L_r))',
  symbols: { w: 'N/m', L_l: 'm', L_r: 'm', M_l: 'N.m', M_r: 'N.m' },
  unit: 'N.m',
  source: {
    document: 'Timoshenko, Strength of Materials',
    edition: '',
    clause: 'equation of three moments; M_l and M_r by the solver',
  },
});

/** Moment over the inner brackets of three bays that mirror each other, with overhangs. */
export const threeBaysMoment = formula({
  symbol: 'M_B',
  caption: 'moment over the inner brackets',
  expression: '(w * (L_1^3 + L_2^3) / 4 - M_A * L_1) / (2 * L_1 + 3 * L_2)',
  symbols: { w: 'N/m', L_1: 'm', L_2: 'm', M_A: 'N.m' },
  unit: 'N.m',
  source: {
    document: 'Timoshenko, Strength of Materials',
    edition: '',
    clause: 'equation of three moments, symmetric',
  },
});
