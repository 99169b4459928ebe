import { formula } from '../formula/formula.ts';

const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/** Torque at a bracket: what stands, and one load that roams. */
export const endTorque = formula({
  symbol: 'T',
  caption: 'torque beside the bracket',
  expression: 'T_s + P * e_t',
  symbols: { T_s: 'N.m', P: 'N', e_t: 'm' },
  unit: 'N.m',
  source: mechanics('load times its distance from the twist axis'),
});

/** The part of a torque that twists, where the rest bends the parts. */
export const twistingPart = formula({
  symbol: 'T_t',
  caption: 'torque that twists the parts',
  expression: 'T_s * s_t + P * e_t * s_r',
  symbols: { T_s: 'N.m', s_t: '1', P: 'N', e_t: 'm', s_r: '1' },
  unit: 'N.m',
  source: mechanics('the rest bends the parts, as the board warps'),
});

/** Share of a torque that one part takes: all turn alike. */
export const torqueShare = formula({
  symbol: 'T_i',
  caption: 'torque in the part',
  expression: 'T * GJ_i / GJ',
  symbols: { T: 'N.m', GJ_i: 'N.m2', GJ: 'N.m2' },
  unit: 'N.m',
  source: mechanics('parts share a torque by their stiffness'),
});

const solidRectangle = {
  document: "Roark's Formulas for Stress and Strain",
  edition: '',
  clause: 'torsion, solid rectangular section',
};

/** Stiffness of a rectangle against twisting: b is its long side. */
export const twistingStiffness = formula({
  symbol: 'GJ_i',
  caption: 'twisting stiffness of the part',
  expression: 'G_v * b * t^3 * (1 / 3 - 0.21 * t / b * (1 - t^4 / (12 * b^4)))',
  symbols: { G_v: 'Pa', b: 'm', t: 'm' },
  unit: 'N.m2',
  source: solidRectangle,
});

const closedSection = {
  document: "Roark's Formulas for Stress and Strain",
  edition: '',
  clause: 'torsion, thin closed section',
};

/** Stiffness of a hollow box against twisting (Bredt); its sides run between the middles of its walls. */
export const twistingStiffnessOfBox = formula({
  symbol: 'GJ_i',
  caption: 'twisting stiffness of the box, its sides between the middles of skins and outer members',
  expression: '4 * (b_m * h_m)^2 / (2 * b_m / (G_s * t_s) + 2 * h_m / (G_f * t_f))',
  symbols: { b_m: 'm', h_m: 'm', G_s: 'Pa', t_s: 'm', G_f: 'Pa', t_f: 'm' },
  unit: 'N.m2',
  source: closedSection,
});

/** What a twisted rectangle is strained more than a thin one; r_t is its short side over its long one. */
export const rectangleFactor = formula({
  symbol: 'k_T',
  caption: 'factor of the shape, by its short side over its long one',
  expression: '1 + 0.6095 * r_t + 0.8865 * r_t^2 - 1.8023 * r_t^3 + 0.91 * r_t^4',
  symbols: { r_t: '1' },
  unit: '1',
  source: solidRectangle,
});

/** Largest shear stress of a twisted rectangle, in the middle of its broad face; b is its long side. */
export const twistedRectangle = formula({
  symbol: 'f_vt',
  caption: 'shear stress by twisting',
  expression: '3 * T * k_T / (b * t^2)',
  symbols: { T: 'N.m', k_T: '1', b: 'm', t: 'm' },
  unit: 'Pa',
  source: solidRectangle,
});

/** Shear stress in the wall of a twisted box (Bredt). */
export const twistedBox = formula({
  symbol: 'f_vt',
  caption: 'shear stress by twisting',
  expression: 'T / (2 * A_m * t)',
  symbols: { T: 'N.m', A_m: 'm2', t: 'm' },
  unit: 'Pa',
  source: closedSection,
});

/** The same where a part of the torque bends the parts. */
export const shearOfAll = formula({
  symbol: 'f_vT',
  caption: 'shear stress by twisting and bending together',
  expression: 'f_v + f_vt + f_vw',
  symbols: { f_v: 'Pa', f_vt: 'Pa', f_vw: 'Pa' },
  unit: 'Pa',
  source: mechanics('largest stresses added'),
});

/** Shear of bending and of twisting, as if they were largest in one place. */
export const shearTogether = formula({
  symbol: 'f_vT',
  caption: 'shear stress by twisting and bending together',
  expression: 'f_v + f_vt',
  symbols: { f_v: 'Pa', f_vt: 'Pa' },
  unit: 'Pa',
  source: mechanics('largest stresses added'),
});
