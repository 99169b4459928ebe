import { formula } from '../../formula/formula.ts';

const aisc = (clause: string) => ({ document: 'AISC 360', edition: '2016', clause });

/** Allowable bending stress of a flat bar. */
export const allowableSteelBending = formula({
  symbol: 'F_s',
  caption: 'allowable stress of the steel',
  expression: '0.6 * F_y',
  symbols: { F_y: 'Pa' },
  unit: 'Pa',
  source: aisc('F1 and F11 with Ω = 1.67, on the elastic section'),
});

/** How slender a bar on edge is against turning over. */
export const barSlenderness = formula({
  symbol: 'lambda_b',
  caption: 'slenderness of the bar against turning over',
  expression: 'L_b * t / b^2',
  symbols: { L_b: 'm', t: 'm', b: 'm' },
  unit: '1',
  source: aisc('F11.2: L_b d / t², its depth and width'),
});

/** Allowable stress of a bar on edge, which may turn over; where it yields first, Eq. F11-2 is above 0.6 F_y but for a thousandth. */
export const barOnEdge = formula({
  symbol: 'F_s',
  caption: 'allowable stress of the steel, turning over counted',
  expression: 'min(0.6 * F_y, 1.9 * E_s / lambda_b / 1.67)',
  symbols: { F_y: 'Pa', E_s: 'Pa', lambda_b: '1' },
  unit: 'Pa',
  source: aisc('F11.2, Eq. F11-3 and F11-4 with C_b = 1 and Ω = 1.67'),
});

/** Stress in an arm that is bent and pulled. */
export const armStress = formula({
  symbol: 'f_s',
  caption: 'stress in the arm',
  expression: '6 * M / (b * t^2) + N / (b * t)',
  symbols: { M: 'N.m', N: 'N', b: 'm', t: 'm' },
  unit: 'Pa',
  source: { document: 'elementary mechanics', edition: '', clause: 'bending and tension of a rectangle' },
});

/** Stress in an arm that is bent and pushed along its length, which adds to its sag. */
export const pushedArmStress = formula({
  symbol: 'f_s',
  caption: 'stress in the pushed arm, its sag under the push counted',
  expression: 'N / (b * t) + 6 * M / (b * t^2) / (1 - 1.6 * N / (b * t * F_e))',
  symbols: { N: 'N', M: 'N.m', b: 'm', t: 'm', F_e: 'Pa' },
  unit: 'Pa',
  source: aisc('Appendix 8, Eq. A-8-3 with C_m = 1 and α = 1.6'),
  valid: '1.6 N < F_e b t',
});

/** Allowable stress of a bar in tension. */
export const allowableSteelTension = formula({
  symbol: 'F_t',
  caption: 'allowable stress of the steel in tension',
  expression: 'F_y / 1.67',
  symbols: { F_y: 'Pa' },
  unit: 'Pa',
  source: aisc('D2, Eq. D2-1 with Ω = 1.67'),
});

/** Stress in a flat plate beside the holes in it. */
export const plateStress = formula({
  symbol: 'f_pl',
  caption: 'bending stress in the plate, beside the holes',
  expression: '6 * M / ((b - n_h * d_h) * t^2)',
  symbols: { M: 'N.m', b: 'm', n_h: '1', d_h: 'm', t: 'm' },
  unit: 'Pa',
  source: { document: 'elementary mechanics', edition: '', clause: 'bending of a rectangle' },
});

/** Spring of a cantilever arm under a load at its reach. */
export const armSpring = formula({
  symbol: 'k_arm',
  caption: 'stiffness of the arm at its tip',
  expression: 'E_s * b * t^3 / (4 * a^3)',
  symbols: { E_s: 'Pa', b: 'm', t: 'm', a: 'm' },
  unit: 'N/m',
  source: { document: 'AISC Manual', edition: '', clause: 'Table 3-23, case 21: PL³/3EI' },
});

/** Spring of an arm on a strut, where they meet: a two-bar frame with pinned joints. */
export const strutSpring = formula({
  symbol: 'k_arm',
  caption: 'stiffness of the arm and strut where they meet',
  expression: 'E_s / (L_d^3 / (A_d * h^2) + s^3 / (A_a * h^2))',
  symbols: { E_s: 'Pa', L_d: 'm', A_d: 'm2', A_a: 'm2', h: 'm', s: 'm' },
  unit: 'N/m',
  source: { document: 'elementary mechanics', edition: '', clause: 'two-bar frame, unit load' },
});

/** Force along a strut that carries the whole couple. */
export const strutForce = formula({
  symbol: 'N_d',
  caption: 'force along the strut',
  expression: 'C * L_d / (s * h)',
  symbols: { C: 'N.m', L_d: 'm', s: 'm', h: 'm' },
  unit: 'N',
  source: { document: 'elementary mechanics', edition: '', clause: 'moments about the foot of the arm' },
});

/** Elastic buckling stress of a strut. */
export const elasticBuckling = formula({
  symbol: 'F_e',
  caption: 'elastic buckling stress',
  expression: '3.141592653589793^2 * E_s / (L_d / r_g)^2',
  symbols: { E_s: 'Pa', L_d: 'm', r_g: 'm' },
  unit: 'Pa',
  source: aisc('E3, Eq. E3-4'),
});

/** Allowable stress of a stocky strut. */
export const inelasticStrut = formula({
  symbol: 'F_a',
  caption: 'allowable stress of the strut',
  expression: 'pow(0.658, F_y / F_e) * F_y / 1.67',
  symbols: { F_y: 'Pa', F_e: 'Pa' },
  unit: 'Pa',
  source: aisc('E3, Eq. E3-2 with Ω = 1.67'),
  valid: 'F_y / F_e ≤ 2.25',
});

/** Allowable stress of a slender strut. */
export const elasticStrut = formula({
  symbol: 'F_a',
  caption: 'allowable stress of the strut',
  expression: '0.877 * F_e / 1.67',
  symbols: { F_e: 'Pa' },
  unit: 'Pa',
  source: aisc('E3, Eq. E3-3 with Ω = 1.67'),
  valid: 'F_y / F_e > 2.25',
});

/** Stress in a strut. */
export const strutStress = formula({
  symbol: 'f_a',
  caption: 'stress in the strut',
  expression: 'N_d / A_d',
  symbols: { N_d: 'N', A_d: 'm2' },
  unit: 'Pa',
  source: { document: 'elementary mechanics', edition: '', clause: 'axial force' },
});
