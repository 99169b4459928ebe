import { formula } from '../formula/formula.ts';

/*
 * A load beside the edge of a board is carried by a strip along the edge. Of a half-plane, simply supported over L and loaded
 * along its free edge by a sine, Levy's solution has two constants and the moment along the edge is closed: M / (beta L / n pi) for
 * each width, n the harmonic; the sum over n of a patch is a logarithm. What a board that is not so wide makes of it, and places
 * off the edge, are fitted to Levy's exact solution, on the safe side (test/reference/levy-plate.ts).
 */
const levy = (clause: string) => ({
  document: 'Timoshenko & Woinowsky-Krieger',
  edition: '2nd',
  clause: `ch. 11, Levy’s solution of the orthotropic plate${clause}`,
});

/** Stiffness of layers as that of one piece as thick as all of them. */
export const layersAsOne = formula({
  symbol: 'E_e',
  caption: 'stiffness of the layers as one piece',
  expression: '12 * EI_b / (b * t^3)',
  symbols: { EI_b: 'N.m2', b: 'm', t: 'm' },
  unit: 'Pa',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause:
      'EI_b: of the layers by themselves; their softest ratios across the grain and in twist count for all of them',
  },
});

/** Spread along the edge, in both directions, for each distance from it. */
export const edgeSpread = formula({
  symbol: 'p_e',
  caption: 'spread of a load along the edge for each distance from it',
  expression: 'sqrt(2 * (sqrt(D_x * D_y) + D_1 + 2 * D_xy) / D_y)',
  symbols: { D_x: 'N.m', D_y: 'N.m', D_1: 'N.m', D_xy: 'N.m' },
  unit: '1',
  source: levy(': sum of the two rates at which a load dies away from the edge'),
});

/** Width of the strip that carries a sine of load along the edge, as a share of half its wave over π. */
export const edgeWidth = formula({
  symbol: 'beta',
  caption: 'effective width at the edge, for each half wave / π',
  expression: '(D_x * D_y + 4 * sqrt(D_x * D_y) * D_xy - D_1^2) / ((D_x * D_y - D_1^2) * p_e)',
  symbols: { D_x: 'N.m', D_y: 'N.m', D_xy: 'N.m', D_1: 'N.m', p_e: '1' },
  unit: '1',
  source: levy(', half-plane loaded along its free edge'),
});

/** The same far from the edges, where a load spreads to both sides. */
export const insideWidth = formula({
  symbol: 'beta_i',
  caption: 'effective width far from the edges, for each half wave / π',
  expression: '2 * p_e * D_y / (sqrt(D_x * D_y) + D_1)',
  symbols: { p_e: '1', D_y: 'N.m', D_x: 'N.m', D_1: 'N.m' },
  unit: '1',
  source: levy(', whole plane loaded along a line'),
});

/** Width over which a long narrow board, twisted by its edge load, evens it out. */
export const workingWidth = formula({
  symbol: 'b_k',
  caption: 'width that evens out',
  expression: 'max(1.1, 0.22 * (D_x - D_1^2 / D_y) * beta^2 / D_xy) * b',
  symbols: { D_x: 'N.m', D_1: 'N.m', D_y: 'N.m', beta: '1', D_xy: 'N.m', b: 'm' },
  unit: 'm',
  source: levy(', fitted; a long narrow board bends at its edge as it twists'),
});

/** Length of the strip under a load x from one bracket, beyond which a longer bay adds no more than to the whole width. */
export const stripLength = formula({
  symbol: 'L_e',
  caption: 'length of the strip',
  expression: 'min(L * sin(3.141592653589793 * x / L), 4 * b_k / (3.141592653589793 * beta))',
  symbols: { L: 'm', x: 'm', b_k: 'm', beta: '1' },
  unit: 'm',
  source: levy(', fitted: where the strip has the most above the mean'),
});

/** A load off the edge, or beside the place looked at, as one along it. */
export const edgePatch = formula({
  symbol: 'c_e',
  caption: 'length of the load along the edge',
  expression: 'c + p_e * d / 2 + 2 * s',
  symbols: { c: 'm', p_e: '1', d: 'm', s: 'm' },
  unit: 'm',
  source: levy(', fitted'),
});

/** Moment of the strip above the mean of the whole width, for each width. */
export const stripExcess = formula({
  symbol: 'm_e',
  caption: 'moment of the strip above the mean, for each width',
  expression:
    'k_d * W * min(1, L_e / c_e) * ((1 + log(4 * L_e / (3.141592653589793 * min(c_e, L_e)))) / (3.141592653589793 * beta) - (2 * L_e - min(c_e, L_e)) / (8 * b_k))',
  symbols: { k_d: '1', W: 'N', L_e: 'm', c_e: 'm', beta: '1', b_k: 'm' },
  unit: 'N',
  source: levy(': half-plane less the mean P (2 L − c) / 8 b'),
});

/** The same over a bracket, from a load in the bay beside it. */
export const stripOverBracket = formula({
  symbol: 'm_e',
  caption: 'moment of the strip over the bracket above the mean, for each width',
  expression: 'k_d * k_h * W / (3.141592653589793 * beta)',
  symbols: { k_d: '1', k_h: '1', W: 'N', beta: '1' },
  unit: 'N',
  source: levy(', fitted to plates over three brackets'),
});

/**
 * The same over the last bracket, from a load beyond it: the strip hangs by itself. M has a roaming load at the very end of the
 * board; its patch, c_p long, lies wholly on it.
 */
export const stripPastBracket = formula({
  symbol: 'm_o',
  caption: 'the same of a board that ends past the bracket',
  expression: '1.15 * m_e - W * c_p / (2 * b)',
  symbols: { m_e: 'N', W: 'N', c_p: 'm', b: 'm' },
  unit: 'N',
  source: levy(', fitted to plates with a free end: as in a bay 2.5 times as long as what stands out'),
});

/** Stress of the strip: mean of the whole width and what the strip has above it. */
export const stripStress = formula({
  symbol: 'f_b',
  caption: 'bending stress of the strip along the edge',
  expression: '6 * (M / b + m_r + m_f) / t^2',
  symbols: { M: 'N.m', b: 'm', m_r: 'N', m_f: 'N', t: 'm' },
  unit: 'Pa',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause: 'bending of each width; M of everything, m_r of what roams, m_f of all else beside the edge',
  },
});

/** The same of a board of layers or with a strip along its other edge. */
export const stripStressOfParts = formula({
  symbol: 'f_b',
  caption: 'bending stress of the strip along the edge',
  expression: 'f_M + 12 * E_i * c_i * (m_r + m_f) / (E_e * t^3)',
  symbols: { f_M: 'Pa', E_i: 'Pa', c_i: 'm', m_r: 'N', m_f: 'N', E_e: 'Pa', t: 'm' },
  unit: 'Pa',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause:
      'f_M of the whole section, from everything, the line above; the rest of the plate by itself: m_r of what roams, m_f of all else that stands there, c_i from its neutral axis',
  },
});

/** How far from the neutral axis a corner would count if the plate were bent by itself. */
export const plateDistance = formula({
  symbol: 'c_p',
  caption: 'distance the corner would count at, the plate bent by itself',
  expression: '12 * EI_eff * c_i / (E_e * b * t^3)',
  symbols: { EI_eff: 'N.m2', c_i: 'm', E_e: 'Pa', b: 'm', t: 'm' },
  unit: 'm',
  source: { document: 'elementary mechanics', edition: '', clause: 'M / b on the plate, as M c_p / EI_eff' },
});

/** A strip along the other edge bends the board no more than it would be bent without one. */
export const lesserDistance = formula({
  symbol: 'c_w1',
  caption: 'distance that counts: the strip at the other edge bends the board no more',
  expression: 'min(c_w, c_p)',
  symbols: { c_w: 'm', c_p: 'm' },
  unit: 'm',
  source: { document: 'elementary mechanics', edition: '', clause: 'the lesser of two upper bounds' },
});
