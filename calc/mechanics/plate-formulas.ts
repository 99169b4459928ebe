import { formula } from '../formula/formula.ts';

const twk = (clause: string) => ({ document: 'Timoshenko & Woinowsky-Krieger', edition: '2nd', clause });
const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/** Bending stiffness of a plate for each width, one way; one Poisson ratio only, so that the matrix stays symmetric. */
export const stiffnessOfPlate = formula({
  symbol: 'D',
  caption: 'bending stiffness for each width',
  expression: 'E * t^3 / (12 * (1 - nu_LT^2 * r_A))',
  symbols: { E: 'Pa', t: 'm', nu_LT: '1', r_A: '1' },
  unit: 'N.m',
  source: twk('ch. 11, Eq. 212'),
});

/** What curvature one way asks of the other. */
export const couplingOfPlate = formula({
  symbol: 'D_1',
  caption: 'coupling of the two ways',
  expression: 'nu_LT * D_A',
  symbols: { nu_LT: '1', D_A: 'N.m' },
  unit: 'N.m',
  source: twk('ch. 11, Eq. 212'),
});

/** Twisting stiffness of a plate. */
export const twistingOfPlate = formula({
  symbol: 'D_xy',
  caption: 'twisting stiffness for each width',
  expression: 'G * t^3 / 12',
  symbols: { G: 'Pa', t: 'm' },
  unit: 'N.m',
  source: twk('ch. 11, Eq. 212'),
});

/** Shear stiffness of a plate, one way. */
export const shearStiffnessOfPlate = formula({
  symbol: 'S',
  caption: 'shear stiffness for each width',
  expression: '5 / 6 * r_G * E_L * t',
  symbols: { r_G: '1', E_L: 'Pa', t: 'm' },
  unit: 'N/m',
  source: {
    document: 'Wood Handbook FPL-GTR-282',
    edition: '2021',
    clause: 'chapter 9: five sixths of a rectangle; Table 5-1',
  },
});

/** Movement of a plate that only bends, made larger by what its shear does. */
export const shearedMovement = formula({
  symbol: 'Delta',
  caption: 'movement, shear with it',
  expression: 'Delta_b * (1 + r_s)',
  symbols: { Delta_b: 'm', r_s: '1' },
  unit: 'm',
  source: mechanics(
    'least work: r_s the work that shear does under the loads over that of bending, Delta_b the movement by bending, both by the plate solver',
  ),
});

/** Stress at the face of a plate from the moment for each width. */
export const plateBendingStress = formula({
  symbol: 'f_b',
  caption: 'stress at the face',
  expression: '6 * m / t^2',
  symbols: { m: 'N', t: 'm' },
  unit: 'Pa',
  source: mechanics('bending of a rectangle, for each width'),
});

/** Shear stress in the middle of a plate from the force for each width. */
export const plateShearStress = formula({
  symbol: 'f_v',
  caption: 'shear stress',
  expression: '3 * v / (2 * t)',
  symbols: { v: 'N/m', t: 'm' },
  unit: 'Pa',
  source: mechanics('shear of a rectangle, for each width'),
});

/** Pressure on a narrow support from the force for each length. */
export const linePressure = formula({
  symbol: 'f_c_perp',
  caption: 'pressure on the rail',
  expression: 'p / b_r',
  symbols: { p: 'N/m', b_r: 'm' },
  unit: 'Pa',
  source: mechanics('force over area'),
});

/** End movement of an overhang under a load along its whole edge, its root held from turning. */
export const clampedOverhang = formula({
  symbol: 'Delta_a',
  caption: 'movement of the edge, a strip held from turning at the rail',
  expression: 'w * a^4 / (8 * EI)',
  symbols: { w: 'N/m', a: 'm', EI: 'N.m2' },
  unit: 'm',
  source: { document: 'AISC Manual', edition: '15th', clause: 'Table 3-23, cantilever, uniform load' },
});

/** End movement of an overhang whose strip runs on freely to a support behind. */
export const freeOverhang = formula({
  symbol: 'Delta_a',
  caption: 'movement of the edge, a strip that turns freely over the rail',
  expression: 'w * a^3 * (4 * L + 3 * a) / (24 * EI)',
  symbols: { w: 'N/m', a: 'm', L: 'm', EI: 'N.m2' },
  unit: 'm',
  source: {
    document: 'AISC Manual',
    edition: '15th',
    clause: 'Table 3-23, beam overhanging one support, uniform load on the overhang',
  },
});
