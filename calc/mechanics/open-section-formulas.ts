import { inch, poundForce, significant, type UnitSystem } from '../../shared/quantity/index.ts';
import { formula, type UnitExpression } from '../formula/formula.ts';

const warpingShown = {
  'inch-pound': { unit: 'lbf·in⁴', size: poundForce * inch ** 4 },
  metric: { unit: 'N·mm⁴', size: 1e-12 },
} as const;

/** Of a stiffness against warping. */
export const warping: UnitExpression = { unit: 'N * m^4', shown: warpingShown };

/** A stiffness against warping, N·m⁴, as it stands in a calculation. */
export function showWarping(EIw_Nm4: number, system: UnitSystem): string {
  const { unit, size } = warpingShown[system];
  return `${significant(EIw_Nm4 / size)} ${unit}`;
}

const vlasov = (clause: string) => ({
  document: 'Vlasov, Thin-Walled Elastic Beams',
  edition: '',
  clause,
});

/** How far a place of a section that bends upright is from the neutral axis, which is inclined where the section is not symmetric. */
export const neutralDistance = formula({
  symbol: 'c_n',
  caption: 'distance from the neutral axis, measured upright',
  expression: 'z_i - y_i * EI_xy / EI_y',
  symbols: { z_i: 'm', y_i: 'm', EI_xy: 'N.m2', EI_y: 'N.m2' },
  unit: 'm',
  source: { document: 'elementary mechanics', edition: '', clause: 'bending about inclined axes' },
});

/** Share of the shear that a strip along an edge carries: what its own bending and the flow through its joint bring. */
export const stripShare = formula({
  symbol: 'v_i',
  caption: 'share of the shear in the strip',
  expression: '(EI_i + EA_i * c_n * (z_i - z_c)) / EI_eff',
  symbols: { EI_i: 'N.m2', EA_i: 'N', c_n: 'm', z_i: 'm', z_c: 'm', EI_eff: 'N.m2' },
  unit: '1',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause: 'moments of the strip about the middle of its joint, z_c',
  },
});

/** Where shear must act so that a board with strips does not twist. */
export const twistAxis = formula({
  symbol: 'y_s',
  caption: 'twist axis (shear centre) from the wall',
  expression: 'y_b + v_f * (y_f - y_b) + v_r * (y_r - y_b)',
  symbols: { y_b: 'm', v_f: '1', y_f: 'm', v_r: '1', y_r: 'm' },
  unit: 'm',
  source: vlasov('shear centre: the middle of the shear in all parts'),
});

/** How a bay shares a torque between twisting and warping. */
export const warpLength = formula({
  symbol: 'u',
  caption: 'length of the bay against that over which warping fades',
  expression: 'min(300, L * sqrt(GJ / EI_w))',
  symbols: { L: 'm', GJ: 'N.m2', EI_w: warping },
  unit: '1',
  source: vlasov('torsion with warping; 300 is as good as without end'),
});

/** Share of a torque that shears by twisting at the end of a bay: 1 − u / sinh u. */
export const twistedShare = formula({
  symbol: 's_t',
  caption: 'share of the torque that twists the parts, the rest bends them',
  expression: '1 - 2 * u / (exp(u) - exp(-u))',
  symbols: { u: '1' },
  unit: '1',
  source: vlasov('a bay held from turning and free to warp at its ends; the most, wherever the torque acts'),
});

/** Where a load that roams shears most by twisting at the end of a bay: cosh w = sinh u / u. */
export const roamingPlace = formula({
  symbol: 'w',
  caption: 'distance of the far end of the bay from where a roaming load twists most, as u',
  expression: 'log((exp(u) - exp(-u)) / (2 * u) + sqrt(((exp(u) - exp(-u)) / (2 * u))^2 - 1))',
  symbols: { u: '1' },
  unit: '1',
  source: vlasov('a bay held from turning and free to warp at its ends; cosh w = sinh u / u'),
});

/** Share of the torque of a load that roams which shears by twisting at the end of a bay, at the most: w / u − sinh w / sinh u. */
export const roamingShare = formula({
  symbol: 's_r',
  caption: 'the same of a load that roams, where it twists most',
  expression: 'w / u - (exp(w) - exp(-w)) / (exp(u) - exp(-u))',
  symbols: { w: '1', u: '1' },
  unit: '1',
  source: vlasov('a bay held from turning and free to warp at its ends, one torque at w from the far end'),
});

/** Share of a torque that bends the parts in the middle of a bay: tanh (u / 2) / (u / 2). */
export const warpedShare = formula({
  symbol: 'r_w',
  caption: 'share of the torque that bends the parts, in the middle of a bay',
  expression: '2 * (1 - exp(-u)) / (u * (1 + exp(-u)))',
  symbols: { u: '1' },
  unit: '1',
  source: vlasov('a torque in the middle of a bay held from turning and free to warp at its ends'),
});

/** Share of a torque that bends the parts over a bracket: (12 / u²) (u / 2 coth (u / 2) − 1). */
export const clampedShare = formula({
  symbol: 'r_w',
  caption: 'share of the torque that bends the parts, over a bracket',
  expression: '6 / u * (1 + exp(-u)) / (1 - exp(-u)) - 12 / u^2',
  symbols: { u: '1' },
  unit: '1',
  source: vlasov(
    'an even torque on a bay whose ends are held from turning and warping; an overhang as half of one',
  ),
});

/** Sectorial coordinate of a corner, from that of the middle of its part. */
export const cornerOmega = formula({
  symbol: 'omega',
  caption: 'sectorial coordinate of the corner',
  expression: 'omega_i + s_y * d_y + s_w * d_z',
  symbols: { omega_i: 'm2', s_y: 'm', d_y: 'm', s_w: 'm', d_z: 'm' },
  unit: 'm2',
  source: vlasov('d_y and d_z: the corner from the middle of its part; the rest as under Section'),
});

/** What a corner gains on the neutral axis by twisting, for each unit a load stands beside the twist axis. */
export const warpedLever = formula({
  symbol: 'k_w',
  caption:
    'what twisting takes off the distance of the corner, for each unit a load stands in front of the twist axis',
  expression: 'r_w * omega * EI_eff / EI_w',
  symbols: { r_w: '1', omega: 'm2', EI_eff: 'N.m2', EI_w: warping },
  unit: '1',
  source: vlasov('ω: sectorial coordinate of the corner; every part stays plane'),
});

/** How far a corner counts as being from the neutral axis for one load: a load beside the twist axis bends it more or less. */
export const cornerDistance = formula({
  symbol: 'c_w',
  caption: 'distance of the corner from the neutral axis, twisting included',
  expression: 'max(abs(c_n), abs(c_n - k_w * e_s))',
  symbols: { c_n: 'm', k_w: '1', e_s: 'm' },
  unit: 'm',
  source: vlasov('twisting relieves nothing'),
});

/** Stress at a corner from the moments of all loads, each at its own distance. */
export const warpedStress = formula({
  symbol: 'f_b',
  caption: 'bending stress at the worst corner, twisting included',
  expression: 'E_i * S_Mc / EI_eff',
  symbols: { E_i: 'Pa', S_Mc: 'N.m2', EI_eff: 'N.m2' },
  unit: 'Pa',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause: 'S_Mc: the moments of the loads there, each times its own c_w',
  },
});

const perLength: UnitExpression = {
  unit: '1 / m',
  shown: { 'inch-pound': { unit: '1/in', size: 1 / inch }, metric: { unit: '1/mm', size: 1000 } },
};
const perArea: UnitExpression = {
  unit: '1 / m^2',
  shown: { 'inch-pound': { unit: '1/in²', size: 1 / inch ** 2 }, metric: { unit: '1/mm²', size: 1e6 } },
};

/** Shear stress in a part from the rest of a torque, which bends the parts. */
export const warpedShear = formula({
  symbol: 'f_vw',
  caption: 'shear stress in the part by the rest of the torque, which bends it',
  expression: '1.5 * (T - T_t) * c_v / (b * d)',
  symbols: { T: 'N.m', T_t: 'N.m', c_v: perLength, b: 'm', d: 'm' },
  unit: 'Pa',
  source: vlasov('c_v: shear of the part for each unit of that torque'),
});

/** Shear stress in a joint from the rest of a torque. */
export const warpedJoint = formula({
  symbol: 'f_vw',
  caption: 'shear stress in the joint by the rest of the torque, which bends the parts',
  expression: '(T - T_t) * c_q / b_j',
  symbols: { T: 'N.m', T_t: 'N.m', c_q: perArea, b_j: 'm' },
  unit: 'Pa',
  source: vlasov('c_q: flow through the joint for each unit of that torque'),
});

/** Twist where a board resists by twisting and by bending of its parts at once. */
export const twistTogether = formula({
  symbol: 'Delta_twist',
  caption: 'movement of the edge by twisting',
  expression: 'Delta_s * Delta_w / (Delta_s + Delta_w)',
  symbols: { Delta_s: 'm', Delta_w: 'm' },
  unit: 'm',
  source: vlasov('both resist at once, by twisting alone and by bending of the parts alone'),
});
