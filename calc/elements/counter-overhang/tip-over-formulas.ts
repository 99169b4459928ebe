import { formula } from '../../formula/formula.ts';

const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });
const asce = {
  document: 'ASCE 7',
  edition: '',
  clause: '2.4.1, 0.6 D by analogy: it has no such combination',
};

/** What turns a counter over its outer foot, or a loose top over the outermost line that carries it. */
export const overturningMoment = formula({
  symbol: 'C_over',
  caption: 'what turns it over the outermost line that carries it',
  expression: 'D_f * e_f + S_f * e_S + P * e_P',
  symbols: { D_f: 'N', e_f: 'm', S_f: 'N', e_S: 'm', P: 'N', e_P: 'm' },
  unit: 'N.m',
  source: mechanics(
    'moments about the line: D_f the weight of the top outside it, S_f what is served there, P the people; e their distances from it',
  ),
});

/** What holds the counter down, counted at 0.6. */
export const restoringMoment = formula({
  symbol: 'C_rest',
  caption: 'what holds it down, counted at 0.6',
  expression: '0.6 * (D_b * e_b + D_r * e_r)',
  symbols: { D_b: 'N', e_b: 'm', D_r: 'N', e_r: 'm' },
  unit: 'N.m',
  source: asce,
});

/** The same with fasteners into the floor. */
export const anchoredMoment = formula({
  symbol: 'C_hold',
  caption:
    'what holds it down, fasteners along the back and along the foot included; over its left or right side at a third of its length',
  expression: 'C_rest + T_a * e_a + T_b * e_b',
  symbols: { C_rest: 'N.m', T_a: 'N', e_a: 'm', T_b: 'N', e_b: 'm' },
  unit: 'N.m',
  source: mechanics('moments about the foot'),
});

/** What a push at the top does. */
export const pushMoment = formula({
  symbol: 'C_push',
  caption: 'what a push at the top does',
  expression: 'H * h + D_f * e_f',
  symbols: { H: 'N', h: 'm', D_f: 'N', e_f: 'm' },
  unit: 'N.m',
  source: mechanics('moments about the foot'),
});

/** The pull on the floor that would hold it. */
export const floorPull = formula({
  symbol: 'T_floor',
  caption: 'pull on the floor along the back of the base that would hold it',
  expression: '(C_over - C_rest) / e_a',
  symbols: { C_over: 'N.m', C_rest: 'N.m', e_a: 'm' },
  unit: 'N',
  source: mechanics('moments about the foot'),
});
