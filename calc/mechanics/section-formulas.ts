import { formula } from '../formula/formula.ts';

const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/** Second moment of a rectangle. */
export const secondMoment = formula({
  symbol: 'I',
  caption: 'second moment of area',
  expression: 'b * t^3 / 12',
  symbols: { b: 'm', t: 'm' },
  unit: 'm4',
  source: mechanics('rectangle'),
});

/** Section modulus of a rectangle. */
export const sectionModulus = formula({
  symbol: 'S',
  caption: 'section modulus',
  expression: 'b * t^2 / 6',
  symbols: { b: 'm', t: 'm' },
  unit: 'm3',
  source: mechanics('rectangle'),
});

/** Bending stiffness of a section that is free to move sideways. */
export const effectiveStiffness = formula({
  symbol: 'EI_eff',
  caption: 'bending stiffness',
  expression: 'EI_x - EI_xy^2 / EI_y',
  symbols: { EI_x: 'N.m2', EI_xy: 'N.m2', EI_y: 'N.m2' },
  unit: 'N.m2',
  source: mechanics('bending about inclined axes'),
});

/** Stress at a corner of a part, bending about inclined axes. */
export const cornerStress = formula({
  symbol: 'f_b',
  caption: 'bending stress at the worst corner',
  expression: 'M * E_i * abs(EI_y * z_i - EI_xy * y_i) / (EI_x * EI_y - EI_xy^2)',
  symbols: { M: 'N.m', E_i: 'Pa', EI_y: 'N.m2', z_i: 'm', EI_xy: 'N.m2', y_i: 'm', EI_x: 'N.m2' },
  unit: 'Pa',
  source: mechanics('bending about inclined axes'),
});

/** Stress at the face of a layer that slides on its neighbours. */
export const layerStress = formula({
  symbol: 'f_b',
  caption: 'bending stress at the face of the layer',
  expression: 'M * E_i * t_i / (2 * EI_eff)',
  symbols: { M: 'N.m', E_i: 'Pa', t_i: 'm', EI_eff: 'N.m2' },
  unit: 'Pa',
  source: mechanics('unbonded layers share the moment by their stiffness'),
});

/** Shear flow across a cut. */
export const shearFlow = formula({
  symbol: 'q',
  caption: 'shear flow across the cut',
  expression: 'V * abs(EI_y * EQ_x - EI_xy * EQ_y) / (EI_x * EI_y - EI_xy^2)',
  symbols: { V: 'N', EI_y: 'N.m2', EQ_x: 'N.m', EI_xy: 'N.m2', EQ_y: 'N.m', EI_x: 'N.m2' },
  unit: 'N/m',
  source: mechanics('VQ/I about inclined axes'),
});

/** Share of the shear that one sliding layer takes. */
export const layerShear = formula({
  symbol: 'V_i',
  caption: 'shear in the layer',
  expression: 'V * EI_i / EI_eff',
  symbols: { V: 'N', EI_i: 'N.m2', EI_eff: 'N.m2' },
  unit: 'N',
  source: mechanics('unbonded layers share the shear by their stiffness'),
});

/** What an edge moves: the board bends, and twists. */
export const edgeMovement = formula({
  symbol: 'Delta_edge',
  caption: 'movement of the edge',
  expression: 'Delta + Delta_twist',
  symbols: { Delta: 'm', Delta_twist: 'm' },
  unit: 'm',
  source: mechanics('bending and twist added'),
});

/** Allowed movement as a fraction of a span. */
export const spanFraction = formula({
  symbol: 'Delta_lim',
  caption: 'allowed movement',
  expression: 'L_s / n_L',
  symbols: { L_s: 'm', n_L: '1' },
  unit: 'm',
  source: {
    document: 'the limit that is set',
    edition: '',
    clause:
      'a share of the span; on an overhang of twice its length, by the rule of IBC Table 1604.3, footnote i',
  },
});
