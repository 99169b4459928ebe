import { psi } from '../../../shared/quantity/index.ts';
import { formula } from '../../formula/formula.ts';

/** Tensile strength of low-carbon screws, ASTM A307 as the lag screws of NDS; from memory. */
export const screwMetal_Pa = 60_000 * psi;

/** Allowable pull of the metal of a screw at the root of its thread. */
export const allowableMetal = formula({
  symbol: 'T_s',
  caption: 'allowable pull of the metal of the screw, at the root of the thread',
  expression: '0.75 * F_u / 2 * 3.141592653589793 * D_r^2 / 4',
  symbols: { F_u: 'Pa', D_r: 'm' },
  unit: 'N',
  source: { document: 'NDS', edition: '2018', clause: '11.2.3; AISC 360 J3.6 with Ω = 2.0 on the root area' },
});

/** Couple about the middle of a stud's depth: what hangs on its face is a good way from there. */
export const studCouple = formula({
  symbol: 'C_st',
  caption:
    'couple about the middle of the stud: the shear acts its half depth and the coverings away from there',
  expression: 'C + V * (g + d_s / 2)',
  symbols: { C: 'N.m', V: 'N', g: 'm', d_s: 'm' },
  unit: 'N.m',
  source: { document: 'elementary mechanics', edition: '', clause: 'a force moved to another axis' },
});

/** Moment a couple puts into a stud, where its height is known; at most the couple itself. */
export const studMoment = formula({
  symbol: 'M_st',
  caption: 'moment in the stud from the couple',
  expression: 'C_st * max(h_b, H_w - h_b) / H_w',
  symbols: { C_st: 'N.m', h_b: 'm', H_w: 'm' },
  unit: 'N.m',
  source: { document: 'elementary mechanics', edition: '', clause: 'simple beam under a couple' },
});

/** Moment a pull puts into a stud that spans from floor to ceiling. */
export const studPullMoment = formula({
  symbol: 'M_N',
  caption: 'moment in the stud from the pull',
  expression: 'N * h_b * (H_w - h_b) / H_w',
  symbols: { N: 'N', h_b: 'm', H_w: 'm' },
  unit: 'N.m',
  source: { document: 'elementary mechanics', edition: '', clause: 'simple beam under one load' },
});

/** Both together, as if they were worst at one place. */
export const studTotalMoment = formula({
  symbol: 'M_st',
  caption: 'moment in the stud, of couple and pull together',
  expression: 'M_C + M_N',
  symbols: { M_C: 'N.m', M_N: 'N.m' },
  unit: 'N.m',
  source: { document: 'elementary mechanics', edition: '', clause: 'sum' },
});
