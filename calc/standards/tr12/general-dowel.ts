import { formula } from '../../formula/formula.ts';

const source = (clause: string) => ({ document: 'AWC TR12', edition: '2015', clause });

/** Bearing of a dowel for each length. */
export const bearingPerLength = formula({
  symbol: 'q',
  caption: 'bearing for each length of dowel',
  expression: 'F_e * D',
  symbols: { F_e: 'Pa', D: 'm' },
  unit: 'N/m',
  source: source('notation; D: diameter at the root of the thread'),
});

/** Bearing length in the wood. */
export const bearingLength = formula({
  symbol: 'L_m',
  caption: 'bearing length in the wood: the penetration less half the tip E',
  expression: 'min(d_w, p_s) - E / 2',
  symbols: { d_w: 'm', p_s: 'm', E: 'm' },
  unit: 'm',
  source: { document: 'NDS', edition: '2018', clause: '12.3.5' },
  valid: 'L_m > 0',
});

/** Moment at which a dowel bends. */
export const dowelMoment = formula({
  symbol: 'M_d',
  caption: 'moment at which the screw bends, M_s in the plate and M_m in the wood alike',
  expression: 'F_yb * D^3 / 6',
  symbols: { F_yb: 'Pa', D: 'm' },
  unit: 'N.m',
  source: source('notation; D: diameter at the root of the thread'),
});

/** Mode I_m: the wood crushes along the whole dowel. */
export const modeIm = formula({
  symbol: 'P_Im',
  caption: 'yield load, mode Im: the wood crushes',
  expression: 'q_m * L_m',
  symbols: { q_m: 'N/m', L_m: 'm' },
  unit: 'N',
  source: source('Table 1-1, mode Im'),
});

/** Mode I_s: the plate crushes. */
export const modeIs = formula({
  symbol: 'P_Is',
  caption: 'yield load, mode Is: the plate crushes',
  expression: 'q_s * L_s',
  symbols: { q_s: 'N/m', L_s: 'm' },
  unit: 'N',
  source: source('Table 1-1, mode Is'),
});

/** Mode II: the dowel turns in both members. */
export const modeII = formula({
  symbol: 'P_II',
  caption: 'yield load, mode II: the screw turns in plate and wood',
  expression:
    '(sqrt((L_s / 2 + g + L_m / 2)^2 + 4 * (1 / (4 * q_s) + 1 / (4 * q_m)) * (q_s * L_s^2 / 4 + q_m * L_m^2 / 4)) - (L_s / 2 + g + L_m / 2)) / (2 * (1 / (4 * q_s) + 1 / (4 * q_m)))',
  symbols: { L_s: 'm', g: 'm', L_m: 'm', q_s: 'N/m', q_m: 'N/m' },
  unit: 'N',
  source: source('Table 1-1, mode II'),
});

/** Mode III_m: the dowel bends in the plate and turns in the wood. */
export const modeIIIm = formula({
  symbol: 'P_IIIm',
  caption: 'yield load, mode IIIm: the screw bends at the plate and turns in the wood',
  expression:
    '(sqrt((g + L_m / 2)^2 + 4 * (1 / (2 * q_s) + 1 / (4 * q_m)) * (M_s + q_m * L_m^2 / 4)) - (g + L_m / 2)) / (2 * (1 / (2 * q_s) + 1 / (4 * q_m)))',
  symbols: { g: 'm', L_m: 'm', q_s: 'N/m', q_m: 'N/m', M_s: 'N.m' },
  unit: 'N',
  source: source('Table 1-1, mode IIIm'),
});

/** Mode III_s: the dowel bends in the wood and turns in the plate. */
export const modeIIIs = formula({
  symbol: 'P_IIIs',
  caption: 'yield load, mode IIIs: the screw bends in the wood and turns in the plate',
  expression:
    '(sqrt((L_s / 2 + g)^2 + 4 * (1 / (4 * q_s) + 1 / (2 * q_m)) * (q_s * L_s^2 / 4 + M_m)) - (L_s / 2 + g)) / (2 * (1 / (4 * q_s) + 1 / (2 * q_m)))',
  symbols: { L_s: 'm', g: 'm', q_s: 'N/m', q_m: 'N/m', M_m: 'N.m' },
  unit: 'N',
  source: source('Table 1-1, mode IIIs'),
});

/** Mode IV: the dowel bends in both. */
export const modeIV = formula({
  symbol: 'P_IV',
  caption: 'yield load, mode IV: the screw bends at the plate and in the wood',
  expression:
    '(sqrt(g^2 + 4 * (1 / (2 * q_s) + 1 / (2 * q_m)) * (M_s + M_m)) - g) / (2 * (1 / (2 * q_s) + 1 / (2 * q_m)))',
  symbols: { g: 'm', q_s: 'N/m', q_m: 'N/m', M_s: 'N.m', M_m: 'N.m' },
  unit: 'N',
  source: source('Table 1-1, mode IV'),
});

/** Reference lateral value of one fastener. */
export const referenceLateral = formula({
  symbol: 'Z',
  caption: 'lateral value of one screw',
  expression: 'P / R_d',
  symbols: { P: 'N', R_d: '1' },
  unit: 'N',
  source: {
    document: 'NDS',
    edition: '2018',
    clause: '12.3.1, Table 12.3.1B: R_d by the diameter and the mode',
  },
});
