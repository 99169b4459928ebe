import { inch } from '../../shared/quantity/index.ts';
import { formula, type UnitExpression } from '../formula/formula.ts';

const perLength: UnitExpression = {
  unit: '1 / m',
  shown: { 'inch-pound': { unit: '1/in', size: 1 / inch }, metric: { unit: '1/mm', size: 1000 } },
};

const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });
const practice = { document: 'common practice, no source', edition: '', clause: 'rating of a bracket' };

/** Rating from a test to failure. */
export const ratingFromTest = formula({
  symbol: 'P_r',
  caption: 'rating of one bracket',
  expression: 'P_u / Omega',
  symbols: { P_u: 'N', Omega: '1' },
  unit: 'N',
  source: practice,
});

/** The couple a rated bracket was rated for. */
export const ratedCouple = formula({
  symbol: 'C_r',
  caption: 'couple one bracket is rated for',
  expression: 'P_r * e_r',
  symbols: { P_r: 'N', e_r: 'm' },
  unit: 'N.m',
  source: practice,
});

/** Couple about the wall finish, with the mean lever of everything that rests on the bracket. */
export const couple = formula({
  symbol: 'C',
  caption: 'couple on the bracket about the wall finish',
  expression: 'R * e_R',
  symbols: { R: 'N', e_R: 'm' },
  unit: 'N.m',
  source: mechanics('each load at its own distance from the wall; e_R: the mean of them, by force'),
});

/** Moment in an arm between wall and strut. */
export const armBetween = formula({
  symbol: 'M',
  caption: 'moment in the arm between wall and strut, with the mean of e (s − e) / s of the loads',
  expression: 'R * e_M',
  symbols: { R: 'N', e_M: 'm' },
  unit: 'N.m',
  source: { document: 'AISC Manual', edition: '', clause: 'Table 3-23, case 8, each load at its own lever' },
});

/** Moment in an arm in front of its strut. */
export const armInFront = formula({
  symbol: 'M',
  caption: 'moment in the arm from what stands in front of the strut, with the mean of e − s of the loads',
  expression: 'R * e_M',
  symbols: { R: 'N', e_M: 'm' },
  unit: 'N.m',
  source: mechanics('cantilever in front of the strut'),
});

/** Pull along the arm from a strut. */
export const armPull = formula({
  symbol: 'N',
  caption: 'pull along the arm',
  expression: 'C / h',
  symbols: { C: 'N.m', h: 'm' },
  unit: 'N',
  source: mechanics('moments about the foot of the strut'),
});

/** Moment in the leg of a bracket with a strut: the pull of the arm and the pressure of the wall less the pulls of the screws beyond. */
export const legMoment = formula({
  symbol: 'M_leg',
  caption: 'moment in the leg',
  expression: 'abs(N * (z_N - z_j) + S_w - S_T)',
  symbols: { N: 'N', z_N: 'm', z_j: 'm', S_w: 'N.m', S_T: 'N.m' },
  unit: 'N.m',
  source: mechanics('the arm pulls at the upper end of the leg, the screws above hold it back'),
});

/** What the pressure of a wall that is crushed adds at a place of the leg. */
export const legPressure = formula({
  symbol: 'S_w',
  caption: 'pressure of the wall beyond that place, times its distance',
  expression: 'f_w * b_p * (a_toe - z_j)^2 / 2',
  symbols: { f_w: 'Pa', b_p: 'm', a_toe: 'm', z_j: 'm' },
  unit: 'N.m',
  source: mechanics('even pressure as far as the plate has to bear'),
  valid: 'z_j < a_toe',
});

/** Where the pressure of a wall that is crushed has come up to the force of the arm. */
export const legTurn = formula({
  symbol: 'z_0',
  caption:
    'where the pressure of the wall has come up to the force of the arm, from the end that is pressed; the wall begins at z_w',
  expression: 'z_w + N / (f_w * b_p)',
  symbols: { z_w: 'm', N: 'N', f_w: 'Pa', b_p: 'm' },
  unit: 'm',
  source: mechanics('even pressure; no shear is left there'),
});

/** Pull on the back screws of an arm from what stands in front of its tip. */
export const boardScrewPull = formula({
  symbol: 'T',
  caption: 'pull on the screws of one arm nearest the wall',
  expression: 'C_f / (a - x_s)',
  symbols: { C_f: 'N.m', a: 'm', x_s: 'm' },
  unit: 'N',
  source: mechanics('couple about the tip of the arm'),
});

/** Pull on the screws of one arm where the board is lifted: it turns about its back edge, or about the tip of the arm. */
export const prisedLift = formula({
  symbol: 'T_n',
  caption:
    'pull on the screws of one arm, the board lifted: all of them counted as the one that is pulled most',
  expression: 'n_s * max(C_u * x_f / S_x, C_t * l_f / S_l)',
  symbols: { n_s: '1', C_u: 'N.m', x_f: 'm', S_x: 'm2', C_t: 'N.m', l_f: 'm', S_l: 'm2' },
  unit: 'N',
  source: mechanics(
    'couples about the back edge and about the tip; pulls in proportion to the distances x and l of the screws from there, S the sums of their squares; what is always there holds down at 0.6 (ASCE 7 2.4.1 by analogy)',
  ),
});

/** What several screws hold together. */
export const screwsTogether = formula({
  symbol: 'T_all',
  caption: 'allowable pull of the screws that share it',
  expression: 'n_s * T_1',
  symbols: { n_s: '1', T_1: 'N' },
  unit: 'N',
  source: mechanics('the weaker of the lines above, for each screw'),
});

/** Tipping about the tips of the arms. */
export const restoring = formula({
  symbol: 'C_rest',
  caption: 'what holds the board down, counted at 0.6',
  expression: '0.6 * D * (a - x_D)',
  symbols: { D: 'N', a: 'm', x_D: 'm' },
  unit: 'N.m',
  source: { document: 'ASCE 7', edition: '', clause: '2.4.1, 0.6 D by analogy' },
});

/** Moment across the grain of one load on the part that stands out. */
export const handMoment = formula({
  symbol: 'M_P',
  caption: 'moment across the grain at the tip of the arm, of a load at the front',
  expression: 'P * l_P',
  symbols: { P: 'N', l_P: 'm' },
  unit: 'N.m',
  source: mechanics('cantilever in front of the arm'),
});

/** The same of everything that stands on the board. */
export const noseMoment = formula({
  symbol: 'M_R',
  caption:
    'moment across the grain at the tip of the arm, of all that stands in front of it; l_R: their mean distance from there, what is spread counted as far as it is in front',
  expression: 'R * l_R',
  symbols: { R: 'N', l_R: 'm' },
  unit: 'N.m',
  source: mechanics('cantilever in front of the arm'),
});

const spread = {
  document: 'common practice, no source',
  edition: '',
  clause: 'width of the arm and 45° on either side, as far as there is board',
};

/** Stress across the grain of one load on a strip. */
export const handStress = formula({
  symbol: 'f_t_perp',
  caption: 'stress across the grain at the tip of the arm',
  expression: '6 * M_P / ((b_a + c_l + c_r) * t^2)',
  symbols: { M_P: 'N.m', b_a: 'm', c_l: 'm', c_r: 'm', t: 'm' },
  unit: 'Pa',
  source: spread,
});

/** Stress across the grain over an arm; what stands everywhere has no more board than up to halfway to the next arm, b_R. */
export const noseStress = formula({
  symbol: 'f_t_perp',
  caption: 'stress across the grain at the tip of the arm; b_R ends halfway to the next',
  expression: '6 * (M_P / (b_a + c_l + c_r) + M_R / b_R) / t^2',
  symbols: { M_P: 'N.m', M_R: 'N.m', b_a: 'm', c_l: 'm', c_r: 'm', b_R: 'm', t: 'm' },
  unit: 'Pa',
  source: spread,
});

/** What falls to one member of a box's frame over an arm. */
export const memberLoad = formula({
  symbol: 'R_m',
  caption: 'load under one member of the frame',
  expression: 'R * k_R + C_m * k_C',
  symbols: { R: 'N', k_R: '1', C_m: 'N.m', k_C: perLength },
  unit: 'N',
  source: mechanics(
    'its share k_R by length, and of the couple about the middle of the frame on the arm by k_C = l y / Σ l y²; the largest of each, though they need not meet',
  ),
});

/** Moment in the upper skin of a box between two members of its frame, for each width. */
export const skinMoment = formula({
  symbol: 'm_s',
  caption:
    'moment in the skin between two members s apart: of q all over, of lines at their places (S_n), and of P on a patch in the middle',
  expression: 'q * s^2 / 8 + S_n + P * (2 * s - min(c, s)) / (8 * (c + s))',
  symbols: { q: 'Pa', s: 'm', S_n: 'N', P: 'N', c: 'm' },
  unit: 'N',
  source: {
    document: 'AISC Manual',
    edition: '',
    clause: 'Table 3-23, cases 1, 8 and 4: a strip on simple supports; a patch spreads at 45°',
  },
});

/** Stress in the skin. */
export const skinStress = formula({
  symbol: 'f_t_perp',
  caption: 'stress in the skin, across the board',
  expression: '6 * (m_s + m_d) / t^2',
  symbols: { m_s: 'N', m_d: 'N', t: 'm' },
  unit: 'Pa',
  source: mechanics('bending of a rectangle'),
});
