import * as open from '../../../calc/mechanics/open-section-formulas.ts';
import * as twist from '../../../calc/mechanics/twist-formulas.ts';
import { twistingPart } from '../../../calc/mechanics/torsion-formulas.ts';
import { published, type PublishedValue } from './published-value.ts';

const exact = { memory: true, tolerance: 1e-9 };

/** Two upright rectangles on a thin plate at their middles: 0.1 and 0.2 m high, of one thickness and stiffness. */
const [I_1, I_2] = [0.1 ** 3, 0.2 ** 3];
const uprights = { c_n: 0, z_i: 0, z_c: 0, EI_eff: I_1 + I_2 };
/** An angle of two equal thin legs a = 1, t = 1: centroid a/4 from both, I 5/24 and I_xy 1/8 of a³t. */
const [I_angle, xy_angle] = [5 / 24, 1 / 8];
const angle = { EI_i: 1 / 12, EA_i: 1, z_i: 1 / 4, c_n: 1 / 4 - ((1 / 4) * xy_angle) / I_angle };
const shearCentre = 'Timoshenko, Strength of Materials, part I, shear centre';

const axis: PublishedValue[] = [
  published(open.neutralDistance, { z_i: 0.05, y_i: 1, EI_xy: 0.02, EI_y: 1 }, 0.03, {
    ...exact,
    source: 'worked by hand: bending about inclined axes takes 1 × 0.02 off',
    why: '0.05 − 0.02',
  }),
  published(open.stripShare, { ...angle, z_c: -1 / 4, EI_eff: I_angle - xy_angle ** 2 / I_angle }, 1, {
    ...exact,
    source: `${shearCentre}: of an angle, where the middle lines of its legs meet`,
    why: 'the upright leg carries all of an upright shear; a³t = 1',
  }),
  published(open.stripShare, { ...uprights, EI_i: I_2, EA_i: 0.2 }, 8 / 9, {
    ...exact,
    source: `${shearCentre}: flanges on a thin web share the shear as their second moments`,
    why: 'twice the height: 8 of 9',
  }),
  published(open.stripShare, { EI_i: 2, EA_i: 4, c_n: 3, z_i: 1, z_c: 0.5, EI_eff: 14 }, 4 / 7, {
    ...exact,
    source: 'worked by hand',
    why: '(2 + 4 × 3 × 0.5) / 14',
  }),
  published(open.twistAxis, { y_b: 5, v_f: 0.2, y_f: 10, v_r: 0.3, y_r: 0.5 }, 4.65, {
    ...exact,
    source: 'worked by hand: 0.5 × 5 + 0.2 × 10 + 0.3 × 0.5',
    why: 'the middle of three shears',
  }),
  published(open.twistAxis, { y_b: 0.25, v_f: 8 / 9, y_f: 0.5, v_r: 1 / 9, y_r: 0 }, (0.5 * 8) / 9, {
    ...exact,
    source: `${shearCentre} of an I with unequal flanges: e = h I_2 / (I_1 + I_2)`,
    why: 'h 0.5 m, heights 1 : 2',
  }),
];

const tables = {
  memory: true,
  tolerance: 5e-5,
  source: 'Vlasov, torsion with warping of a bay on forks; tables of hyperbolic functions',
};
const shares: PublishedValue[] = [
  published(open.warpLength, { L: 2, GJ: 9, EI_w: 4 }, 3, {
    ...exact,
    source: 'Vlasov, Thin-Walled Elastic Beams: k = L √(GJ / EI_w)',
    why: 'exact',
  }),
  published(open.twistedShare, { u: 2 }, 1 - 2 / 3.62686, { ...tables, why: 'sinh 2 = 3.62686' }),
  published(open.warpedShare, { u: 2 }, 0.761594, { ...tables, why: 'tanh 1 = 0.761594' }),
  published(open.clampedShare, { u: 2 }, 3 * (1.313035 - 1), { ...tables, why: 'coth 1 = 1.313035' }),
  published(open.roamingPlace, { u: 3 }, 1.87569, {
    ...tables,
    why: 'sinh 3 / 3 = 10.01787 / 3 = 3.33929, whose arcosh is ln (3.33929 + 3.18604)',
  }),
  published(open.roamingShare, { w: 1, u: 2 }, 0.5 - 1.1752 / 3.62686, {
    ...tables,
    why: 'sinh 1 = 1.17520, sinh 2 = 3.62686',
  }),
  published(twistingPart, { T_s: 10, s_t: 0.5, P: 4, e_t: 2, s_r: 0.25 }, 7, {
    ...exact,
    source: 'worked by hand',
    why: '10 / 2 + 4 × 2 / 4',
  }),
];

/** Two beams EI = 1 side by side, 2 m apart, each 0.1 m high: EI_w = 2 × 1², ω = −y z at a corner. */
const pair = { c_n: 0.05, k_w: -0.05 };
const loadOver = 'worked by hand: of two beams side by side, one that has the load over it carries all of it';
const stresses: PublishedValue[] = [
  published(open.cornerOmega, { omega_i: 0, s_y: 0.5, d_y: 0.02, s_w: -1, d_z: -0.05 }, 0.06, {
    ...exact,
    source:
      'worked by hand: of two beams side by side, 1 m from the middle, −1 × −0.05; 0.5 × 0.02 for its width',
    why: '0.05 + 0.01',
  }),
  published(open.cornerOmega, { omega_i: 3, s_y: 1, d_y: 2, s_w: 4, d_z: 0.5 }, 7, {
    ...exact,
    source: 'worked by hand',
    why: '3 + 2 + 2',
  }),
  published(open.warpedLever, { r_w: 1, omega: 0.05, EI_eff: 2, EI_w: 2 }, 0.05, {
    ...exact,
    source: loadOver,
    why: '1 m in front, its lower corner, at −0.05, is bent twice as far: 0.05 less',
  }),
  published(open.cornerDistance, { ...pair, e_s: 1 }, 0.1, {
    ...exact,
    source: loadOver,
    why: 'twice what it would carry of a load between the two',
  }),
  published(open.cornerDistance, { ...pair, e_s: -1 }, 0.05, {
    ...exact,
    source: loadOver,
    why: 'the other carries nothing, which is not counted: it stays at half',
  }),
  published(open.warpedStress, { E_i: 12e9, S_Mc: 30, EI_eff: 9000 }, 40e6, {
    ...exact,
    source: 'worked by hand: E M c / EI',
    why: '12 × 10⁹ × 30 / 9000',
  }),
  published(open.warpedShear, { T: 100, T_t: 20, c_v: 0.5, b: 0.02, d: 0.05 }, 60e3, {
    ...exact,
    source: 'worked by hand: two beams 2 m apart bear a torque of 80 N·m by 40 N each; 1.5 V / (b d)',
    why: '1.5 × 40 / 0.001',
  }),
  published(open.warpedJoint, { T: 100, T_t: 20, c_q: 5, b_j: 0.02 }, 20e3, {
    ...exact,
    source: 'worked by hand: a flow of 400 N/m over 20 mm',
    why: '80 × 5 / 0.02',
  }),
  published(open.twistTogether, { Delta_s: 3, Delta_w: 6 }, 2, {
    ...exact,
    source: 'worked by hand: two springs side by side, 1/3 + 1/6 = 1/2',
    why: 'exact',
  }),
];

/** Torques on a bay as a simple beam has loads. */
const twists: PublishedValue[] = [
  published(twist.twistedBay, { d_e: 1, P: 0, e_t: 0, L: 2, t_s: 6, S_t: 0, GJ: 30 }, 0.1, {
    ...exact,
    source: 'AISC Manual 15th, Table 3-23, case 1: w L² / 8, torque for load, over GJ',
    why: '6 × 4 / 8 / 30',
  }),
  published(twist.twistedBay, { d_e: 0.5, P: 4, e_t: 0.25, L: 2, t_s: 0, S_t: 1.5, GJ: 10 }, 0.1, {
    ...exact,
    source: 'AISC Manual 15th, Table 3-23, case 7: P L / 4, torque for load, over GJ; 1.5 of other loads',
    why: '0.5 × (4 × 0.25 × 2 / 4 + 1.5) / 10',
  }),
  published(twist.warpedBay, { d_e: 2, P: 0, e_t: 0, L: 2, t_s: 12, S_w: 0, EI_w: 5 }, 1, {
    ...exact,
    source: 'AISC Manual 15th, Table 3-23, case 1: 5 w L⁴ / 384 EI, torque for load',
    why: '2 × 5 × 12 × 16 / 384 / 5',
  }),
  published(twist.warpedBay, { d_e: 1, P: 3, e_t: 2, L: 2, t_s: 0, S_w: 4, EI_w: 5 }, 1, {
    ...exact,
    source: 'AISC Manual 15th, Table 3-23, case 7: P L³ / 48 EI, torque for load; 4 of other loads',
    why: '(6 × 8 / 48 + 4) / 5',
  }),
  published(twist.twistedTip, { d_e: 2, P: 3, e_t: 2, a: 0.5, t_s: 8, S_t: 1, GJ: 10 }, 1, {
    ...exact,
    source: 'worked by hand: a shaft of 0.5 m under 6 N·m at its end, under 8 N·m/m, and 1 of other loads',
    why: '2 × (6 × 0.5 + 8 × 0.25 / 2 + 1) / 10',
  }),
];

export const openSectionValues: readonly PublishedValue[] = [...axis, ...shares, ...stresses, ...twists];
