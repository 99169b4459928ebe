import { formula } from '../formula/formula.ts';

/*
 * A hollow box whose skins are so soft across the board, or in shear in their own plane, that a load is not shared by all
 * members of the frame. Each member has the skin that works along with it, and rests on the others through skins that bend
 * across the gap and through the box as it twists. Shares of the bay and factors are fitted, on the safe side, to thin
 * orthotropic plates that meet along lines (test/reference/box-members.test.ts).
 */
const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/** Skin beside a member that works along with it, on one side. */
export const skinBeside = formula({
  symbol: 'b_s',
  caption: 'skin that works along with a member, on each side where there is a gap',
  expression:
    'k_L * L / (3.141592653589793 * sqrt(E_s / G_s)) * (1 - exp(-3.141592653589793 * sqrt(E_s / G_s) * g / (k_L * L))) / (1 + exp(-3.141592653589793 * sqrt(E_s / G_s) * g / (k_L * L)))',
  symbols: { k_L: '1', L: 'm', E_s: 'Pa', G_s: 'Pa', g: 'm' },
  unit: 'm',
  source: mechanics(
    'shear lag of a flange under a sine of moment k_L L long: tanh; EN 1995-1-1, 9.1.2, has such widths for panels',
  ),
});

/** A member of the frame, the skins beside it, and a strip glued to it. */
export const memberStiffness = formula({
  symbol: 'EI_m',
  caption: 'stiffness of a member with its skins, n_g gaps beside it, and with a strip that is glued to it',
  expression: '(E_s * (b_f + n_g * b_s) * (h^3 - h_i^3) + E_f * b_f * h_i^3) / 12 + EI_n',
  symbols: { E_s: 'Pa', b_f: 'm', n_g: '1', b_s: 'm', h: 'm', h_i: 'm', E_f: 'Pa', EI_n: 'N.m2' },
  unit: 'N.m2',
  source: mechanics('rectangles about the middle of the box'),
});

/** What the rest of the box holds a member with: skins clamped at both ends, and the box, which twists. */
export const memberSpring = formula({
  symbol: 'k_m',
  caption: 'what the rest of the box holds a member with, for each length',
  expression: '1 / (s^3 / (2 * r_A * E_s * t^3) + (y_m * L / 3.141592653589793)^2 / GJ)',
  symbols: { s: 'm', r_A: '1', E_s: 'Pa', t: 'm', y_m: 'm', L: 'm', GJ: 'N.m2' },
  unit: 'Pa',
  source: mechanics('two skins of 12 EI / s³ each across the gap, then the box, twisted by a sine at y_m'),
});

/** How much of what a member bears above its share it keeps: of a line of load, in a bay. */
export const keptOfLine = formula({
  symbol: 'phi',
  caption: 'of what it bears above the mean the member keeps',
  expression: '1 / (1 + k_m * (L / 3.141592653589793)^4 / EI_m)',
  symbols: { k_m: 'Pa', L: 'm', EI_m: 'N.m2' },
  unit: '1',
  source: mechanics('beam on an elastic foundation under a sine'),
});

/** The same over a bracket. */
export const keptOverBracket = formula({
  symbol: 'phi',
  caption: 'of what it bears above the mean the member keeps, over a bracket',
  expression: '1 / sqrt(1 + 0.67 * k_m * (L / 3.141592653589793)^4 / EI_m)',
  symbols: { k_m: 'Pa', L: 'm', EI_m: 'N.m2' },
  unit: '1',
  source: mechanics('clamped beam on an elastic foundation: w / 2 λ² of a long one against w L² / 12'),
});

/** A bay against the length over which a member on springs bends. */
export const memberLength = formula({
  symbol: 'v',
  caption: 'length of the bay against that over which the member bends by itself',
  expression: 'L * sqrt(sqrt(k_m / (4 * EI_m)))',
  symbols: { L: 'm', k_m: 'Pa', EI_m: 'N.m2' },
  unit: '1',
  source: mechanics('beam on an elastic foundation, Hetényi'),
});

/** How much of what a member bears above its share it keeps: of a hand or a thing, in a bay. */
export const keptOfThing = formula({
  symbol: 'phi',
  caption: 'of what it bears above the mean the member keeps',
  expression: '(1 - exp(-2 * v) + 2 * exp(-v) * sin(v)) / (v * (1 + exp(-2 * v) + 2 * exp(-v) * cos(v)))',
  symbols: { v: '1' },
  unit: '1',
  source: mechanics(
    'beam on an elastic foundation, Hetényi: a load in the middle, (sinh v + sin v) / v (cosh v + cos v)',
  ),
});

/** Skins bent by themselves as members shear. */
export const skinsOfShear = formula({
  symbol: 'k_s',
  caption: 'more in the skins, since the members shear too',
  expression: '1 + 8 * t * EI_m / (h * G_f * b_f * h_i * L^2)',
  symbols: { t: 'm', EI_m: 'N.m2', h: 'm', G_f: 'Pa', b_f: 'm', h_i: 'm', L: 'm' },
  unit: '1',
  source: mechanics('curvature w / GA of an even load bends each skin, against w L² / 8 EI of the whole'),
});

/** How many times a load counts in the bending of the whole box, for the most bent member. */
export const countsAs = formula({
  symbol: 'k_i',
  caption: 'times a load counts in the moment of the box',
  expression: 'k_f * k_s * max(1, 1 + (r_m * EI_eff / EI_m - 1) * phi)',
  symbols: { k_f: '1', k_s: '1', r_m: '1', EI_eff: 'N.m2', EI_m: 'N.m2', phi: '1' },
  unit: '1',
  source: mechanics(
    'r_m: what of it stands on the member, its neighbours as supports; k_f fitted: skins bent where a force comes in',
  ),
});

/** How many times a load counts in the shear of the frame, for the most sheared member. */
export const countsInShear = formula({
  symbol: 'k_i',
  caption: 'times a load counts in the shear of the frame',
  expression: 'max(1, 1 + (n_m * r_m - 1) * phi)',
  symbols: { n_m: '1', r_m: '1', phi: '1' },
  unit: '1',
  source: mechanics('r_m: what of it stands on one of n_m members, its neighbours as supports'),
});

/** The upper skin bent along the board by what stands on a patch of it, as a beam across is not. */
export const skinAlong = formula({
  symbol: 'f_x',
  caption: 'stress along the board in the upper skin under a load on a patch',
  expression: '0.2 * 6 * m_P / (t^2 * sqrt(r_A))',
  symbols: { m_P: 'N', t: 'm', r_A: '1' },
  unit: 'Pa',
  source: mechanics(
    'an orthotropic plate has moments along and across in the ratio √(D_x / D_y); 0.2 of that of the strip across is fitted',
  ),
});

/** What the upper skin has of the whole box and by itself. */
export const skinTogether = formula({
  symbol: 'f_b',
  caption: 'bending stress of the upper skin along the board',
  expression: 'f_M + f_x',
  symbols: { f_M: 'Pa', f_x: 'Pa' },
  unit: 'Pa',
  source: mechanics('bent as a part of the box, and by itself'),
});

/** Moment across a skin where a member goes down more than its neighbour, for each width. */
export const skinSheared = formula({
  symbol: 'm_d',
  caption: 'moment in a skin where a member goes down more than the next, for each width',
  expression:
    '1.25 * q_m * g / 4 / (1 + g^3 / (8 * r_A * E_s * t^3 * ((L / 3.141592653589793)^4 / EI_m + (L / 3.141592653589793)^2 / (G_f * b_f * h_i))))',
  symbols: {
    ...{ q_m: 'N/m', g: 'm', r_A: '1', E_s: 'Pa', t: 'm', L: 'm', EI_m: 'N.m2' },
    ...{ G_f: 'Pa', b_f: 'm', h_i: 'm' },
  },
  unit: 'N',
  source: mechanics(
    'two skins clamped at both ends pass q_m across the gap; of a member that is stiffer than they are less, fitted; q_m: what lines bring above its even share',
  ),
});
