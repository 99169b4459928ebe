import { legMoment, legPressure, legTurn } from '../../../calc/elements/bracket-formulas.ts';
import * as group from '../../../calc/elements/fixing/group.ts';
import { backingFrom } from '../../../calc/elements/fixing/backing.ts';
import { blockingNeed } from '../../../calc/elements/fixing/blocking.ts';
import * as across from '../../../calc/elements/fixing/plate-across.ts';
import { bentWidth } from '../../../calc/elements/fixing/plate-bending.ts';
import { coupleSpread, plateMoment, pullSpread } from '../../../calc/elements/wall-fixing/plate-moment.ts';
import * as plate from '../../../calc/mechanics/plate-group.ts';
import * as metal from '../../../calc/standards/nds-2018/11.2-metal.ts';
import * as connection from '../../../calc/standards/nds-2018/11.3-connections.ts';
import * as withdrawal from '../../../calc/standards/nds-2018/12.2-withdrawal.ts';
import * as bearing from '../../../calc/standards/nds-2018/12.3-dowel-bearing.ts';
import * as tr12 from '../../../calc/standards/tr12/general-dowel.ts';
import { published, type PublishedValue } from './published-value.ts';
import { inch, poundForce, psi } from './units.ts';

const lbfPerInch = poundForce / inch;
const table = (name: string, rounding: string) => ({
  source: `NDS 2018 ${name}`,
  why: `printed to ${rounding}`,
  memory: false,
});
const byHand = (what: string) => ({
  tolerance: 1e-9,
  source: `worked by hand: ${what}`,
  why: 'exact',
  memory: false,
});

const fasteners: PublishedValue[] = [
  ...(
    [
      [0.25, 0.5, 225],
      [0.375, 0.5, 305],
      [0.5, 0.73, 668],
      [0.3125, 0.4, 190],
    ] as const
  ).map(([D, G, W]) =>
    published(withdrawal.lagWithdrawal, { k_W: withdrawal.lagConstant, G, D: D * inch }, W * lbfPerInch, {
      tolerance: 0.6 / W,
      ...table('Table 12.2A', '1 lbf/in'),
    }),
  ),
  published(
    withdrawal.nailWithdrawal,
    { k_W: withdrawal.nailConstant_Pa, G: 0.5, D: 0.131 * inch },
    32 * lbfPerInch,
    {
      tolerance: 0.5 / 32,
      ...table('Table 12.2C', '1 lbf/in'),
    },
  ),
  ...(
    [
      [0.5, 4650],
      [0.42, 3350],
      [0.55, 5550],
    ] as const
  ).map(([G, F_e]) =>
    published(bearing.bearingOfSmall, { k_e: bearing.smallBearingConstant_Pa, G }, F_e * psi, {
      tolerance: 25 / F_e,
      ...table('Table 12.3.3', '50 psi'),
      memory: true,
    }),
  ),
  published(bearing.bearingAlong, { k_e: bearing.alongBearingConstant_Pa, G: 0.5 }, 5600 * psi, {
    tolerance: 25 / 5600,
    ...table('Table 12.3.3', '50 psi'),
    memory: true,
  }),
  ...(
    [
      [0.25, 4450],
      [0.5, 3150],
    ] as const
  ).map(([D, F_e]) =>
    published(bearing.bearingAcross, { k_e: bearing.acrossBearingConstant, G: 0.5, D: D * inch }, F_e * psi, {
      tolerance: 25 / F_e,
      ...table('Table 12.3.3', '50 psi'),
      memory: true,
    }),
  ),
];

/** A wood screw or nail through a wood side member, in wood of one kind, from printed numbers only. */
function woodSide(G_bearing_psi: number, root_in: number, bending_psi: number) {
  const q = G_bearing_psi * psi * root_in * inch;
  const M = (bending_psi * psi * (root_in * inch) ** 3) / 6;
  return { q_s: q, q_m: q, M_s: M, M_m: M };
}
const screw8 = woodSide(4650, 0.131, 90_000);
const nail16 = woodSide(4650, 0.162, 90_000);
const K_D = 2.2;

/**
 * With a gap no table is printed. A yield load is chosen and the gap that goes with it is worked out from the equilibrium
 * of the dowel: what both members can hold, in moment about the faces, is the load times the gap.
 */
const chosen = { P: 900, q_s: 9e5, q_m: 1.1e5, L_s: 0.006, L_m: 0.05, M: 6 };
const rigid = (q: number, L: number): number =>
  (q * L ** 2) / 4 - (chosen.P * L) / 2 - chosen.P ** 2 / (4 * q);
const hinged = (q: number): number => chosen.M - chosen.P ** 2 / (2 * q);
const gapOf = (side: number, main: number): number => (side + main) / chosen.P;
const gaps = {
  II: gapOf(rigid(chosen.q_s, chosen.L_s), rigid(chosen.q_m, chosen.L_m)),
  IIIm: gapOf(hinged(chosen.q_s), rigid(chosen.q_m, chosen.L_m)),
  IIIs: gapOf(rigid(chosen.q_s, chosen.L_s), hinged(chosen.q_m)),
  IV: gapOf(hinged(chosen.q_s), hinged(chosen.q_m)),
};
const equilibrium = byHand('equilibrium of a dowel across a gap (the model of AWC TR12)');
const { P, q_s, q_m, L_s, L_m, M } = chosen;

const modes: PublishedValue[] = [
  published(
    tr12.modeIIIs,
    { L_s: 0.5 * inch, g: 0, ...pick(screw8, 'q_s', 'q_m', 'M_m') },
    73 * K_D * poundForce,
    {
      tolerance: 0.5 / 73,
      ...table('Table 12L: #8 wood screw, 1/2 in side member, G 0.50, mode IIIs', '1 lbf'),
    },
  ),
  published(tr12.modeIV, { g: 0, ...nail16 }, 141 * K_D * poundForce, {
    tolerance: 0.8 / 141,
    ...table('Table 12N: 16d common nail, 1 in side member, G 0.50, mode IV', '1 lbf, and F_e to 50 psi'),
  }),
  published(tr12.modeII, { L_s, g: gaps.II, L_m, q_s, q_m }, P, equilibrium),
  published(tr12.modeIIIm, { g: gaps.IIIm, L_m, q_s, q_m, M_s: M }, P, equilibrium),
  published(tr12.modeIIIs, { L_s, g: gaps.IIIs, q_s, q_m, M_m: M }, P, equilibrium),
  published(tr12.modeIV, { g: gaps.IV, q_s, q_m, M_s: M, M_m: M }, P, equilibrium),
  published(tr12.modeIm, { q_m: 1e5, L_m: 0.05 }, 5000, byHand('force = bearing × length')),
  published(tr12.modeIs, { q_s: 9e5, L_s: 0.006 }, 5400, byHand('force = bearing × length')),
  published(
    tr12.bearingPerLength,
    { F_e: 4650 * psi, D: 0.131 * inch },
    609.15 * lbfPerInch,
    byHand('4,650 × 0.131 lbf/in'),
  ),
  published(
    tr12.dowelMoment,
    { F_yb: 90_000 * psi, D: 0.1 * inch },
    15 * poundForce * inch,
    byHand('90,000 × 0.1³ / 6 lbf·in'),
  ),
  published(
    tr12.referenceLateral,
    { P: 220 * poundForce, R_d: K_D },
    100 * poundForce,
    byHand('220 / 2.2 lbf'),
  ),
];

function pick<T extends object, K extends keyof T>(from: T, ...keys: K[]): Pick<T, K> {
  return Object.fromEntries(keys.map((key) => [key, from[key]])) as Pick<T, K>;
}

/** A lag screw of 80 mm with 50 mm of thread and a tip of 4 mm, through 5 mm of plate and 15 mm of covering. */
const lag = { p_s: 0.06, E: 0.004 };
const together = { W_p: 200, Z_prime: 100 };
const others: PublishedValue[] = [
  published(
    withdrawal.fastenerReach,
    { k_l: 0.8, l: 0.1, t_p: 0.005, g: 0.015 },
    0.06,
    byHand('80 of 100 mm square to the wall, less 5 and 15 mm'),
  ),
  published(
    withdrawal.threadInWood,
    { ...lag, T_l: 0.05, d_w: 0.089 },
    0.046,
    byHand('50 mm of thread less the tip, 4 mm'),
  ),
  published(
    withdrawal.threadInWood,
    { ...lag, T_l: 0.05, d_w: 0.038 },
    0.028,
    byHand('38 mm of wood, of which the first 10 hold no thread'),
  ),
  published(tr12.bearingLength, { ...lag, d_w: 0.089 }, 0.058, byHand('60 mm less half of 4 mm')),
  published(tr12.bearingLength, { ...lag, d_w: 0.038 }, 0.036, byHand('38 mm less half of 4 mm')),
  published(
    connection.adjustedLateral,
    { Z: 100, C_D: 1.25, C_M: 0.7, C_t: 0.8, C_g: 0.95, C_Delta: 0.75, C_eg: 0.67, C_tn: 0.5 },
    16.708125,
    byHand('NDS 2018 Table 11.3.1: the factors multiply; 100 × 1.25 × 0.7 × 0.8 × 0.95 × 0.75 × 0.67 × 0.5'),
  ),
  published(
    connection.combinedScrew,
    { ...together, alpha: Math.PI / 4 },
    400 / 3,
    byHand('NDS 2018 Eq. 12.4-1 at 45°: 200 × 100 / (100 + 50)'),
  ),
  published(
    connection.combinedNail,
    { ...together, alpha: Math.PI / 6 },
    20_000 / (100 * Math.sqrt(3) + 50),
    byHand('NDS 2018 Eq. 12.4-2 at 30°: 200 × 100 / (200 × √3/2 + 100 × 1/2)'),
  ),
  published(
    plate.screwPull,
    { C: 100, N: 60, z_c: 0.15, z: 0.2, k_n: 2, S_z: 0.05 },
    218,
    byHand('109 N·m about the end, of which 60 N are on 150 mm: 109 × 0.2 / (2 × 0.05)'),
  ),
  published(
    plate.screwPullOff,
    { N: 60, n_h: 2, C: 3, z_m: 0.05, k_n: 2, S_m: 0.005 },
    30,
    byHand('two pairs 100 mm apart: 60 N / 4, and 3 N·m / 0.1 m on one pair'),
  ),
  published(
    plate.mayMiss,
    { c_s: 0.625 * inch, c_e: 0.375 * inch },
    0.25 * inch,
    byHand('a stud 1-1/2 in wide, two screws 1/4 in apart that want 3/8 in: 3/4 - 1/8 - 3/8'),
  ),
  published(plate.screwShear, { V: 90, n_s: 3 }, 30, byHand('90 / 3')),
  published(plate.screwResultant, { T: 30, V_s: 40 }, 50, byHand('3 : 4 : 5')),
  published(
    plate.toeForce,
    { C: 91, N: 60, z_c: 0.15, S_1: 0.3, S_z: 0.05 },
    540,
    byHand('screws at 0.1 and 0.2 m, 91 N·m and 60 N on 0.15 m: pulls of 200 + 400 N, less 60 N'),
  ),
  published(plate.toeLength, { C_toe: 600, f_w: 1e6, b_p: 0.03 }, 0.02, byHand('600 / (10⁶ × 0.03)')),
  published(metal.allowableMetal, { F_u: 60_000 * psi, D_r: 0.5 * inch }, 4420 * poundForce, {
    tolerance: 6 / 4420,
    source: 'AISC Manual, 15th ed., Table 7-2: ASTM A307 bolt 1/2 in, allowable tension 4.42 kips',
    why: 'printed to 0.01 kip',
    memory: true,
  }),
  published(
    metal.studCouple,
    { C: 100, V: 400, g: 0.0125, d_s: 0.089 },
    122.8,
    byHand('400 N on 12.5 + 44.5 mm, and 100 N·m'),
  ),
  published(
    metal.studMoment,
    { C_st: 100, h_b: 1.5, H_w: 2.4 },
    62.5,
    byHand('a couple on a simple beam at 1.5 of 2.4 m: 100 × 1.5 / 2.4 on the longer side'),
  ),
  published(metal.studPullMoment, { N: 200, h_b: 0.6, H_w: 2.4 }, 90, {
    ...byHand('P a b / L = 200 × 0.6 × 1.8 / 2.4'),
    source: 'AISC Manual, Table 3-23, case 8: simple beam, one concentrated load',
  }),
  published(metal.studTotalMoment, { M_C: 62.5, M_N: 90 }, 152.5, byHand('62.5 + 90')),
  published(
    plate.leastPull,
    { C: 50, h_p: 0.2, N: 30 },
    280,
    byHand('50 N·m on a lever of 200 mm: 250 N; and 30 N'),
  ),
  published(plateMoment, { k_c: 3, C: 40, k_b: 2, N: 200, s_z: 0.15 }, 135, {
    ...byHand('three times a couple of 40 N·m, and twice P L / 4 = 200 × 0.15 / 4'),
    source: 'AISC Manual, Table 3-23, case 7: simple beam, a load in the middle',
  }),
  published(
    backingFrom,
    { z_f: 0.18, k_e: 1.5, D: 0.008, h_w: 0.09 },
    0.102,
    byHand('a screw 180 mm up the plate, 12 mm under the upper edge of blocking 90 mm high: 180 + 12 − 90'),
  ),
  published(blockingNeed, { s_z: 0.2, k_1: 4, k_2: 1.5, D: 0.008 }, 0.244, byHand('200 mm, and 5.5 × 8 mm')),
  published(pullSpread, { b: 0.15, s_z: 0.02, a_s: 0.03 }, 3, byHand('150 mm over 20 + 30 mm')),
  published(coupleSpread, { b: 0.15, z_f: 0.02, a_s: 0.03 }, 3, byHand('150 mm over 20 + 30 mm')),
  published(
    across.rowMoment,
    { T_r: 400, a_s: 0.12, b_a: 0.02 },
    10,
    byHand('200 N to either side on 50 mm'),
  ),
  published(
    across.rowHeight,
    { h_1: 0.03, h_2: 0.08, d_h: 0.008, a_s: 0.12, b_a: 0.02 },
    0.08,
    byHand('30 mm to the end and 50 of 80 mm at 45°; less than 110 − 8 mm'),
  ),
  published(
    across.rowHeight,
    { h_1: 0.03, h_2: 0.04, d_h: 0.008, a_s: 0.12, b_a: 0.02 },
    0.062,
    byHand('30 + 40 mm less a hole of 8 mm'),
  ),
  published(across.rowStress, { M_x: 10, h_r: 0.024, t: 0.005 }, 100e6, byHand('10 N·m / (24 × 25 / 6 mm³)')),
  published(bentWidth, { b_p: 0.1, b_a: 0.02, l_s: 0.03 }, 0.08, byHand('20 mm and 30 mm on either side')),
  published(bentWidth, { b_p: 0.05, b_a: 0.02, l_s: 0.03 }, 0.05, byHand('the whole 50 mm of the plate')),
  published(
    legMoment,
    { N: 500, z_N: 0.2, z_j: 0.1, S_w: 8, S_T: 80 },
    22,
    byHand(
      '500 N, 100 mm up: 50 N·m; 800 N of the wall, 10 mm up: 8 N·m; a screw of 1000 N, 80 mm up: 80 N·m the other way',
    ),
  ),
  published(
    legPressure,
    { f_w: 1e6, b_p: 0.04, a_toe: 0.05, z_j: 0.03 },
    8,
    byHand('40 N/mm on the 20 mm beyond: 800 N × 10 mm'),
  ),
  published(
    legTurn,
    { z_w: 0.01, N: 800, f_w: 0.5e6, b_p: 0.05 },
    0.042,
    byHand('25 N/mm come up to 800 N over 32 mm, begun at 10 mm'),
  ),
];

/** Group factor of two members of the same stiffness and no slip stiffness at all: every fastener takes its share. */
const none: PublishedValue[] = [
  published(
    group.slipModulus,
    { k_g: group.slipConstant, D: 0.25 * inch },
    33_750 * lbfPerInch,
    byHand('NDS 2018 11.3.6: 270,000 × 0.25^1.5 lbf/in'),
  ),
  published(
    group.groupSlip,
    { gamma_s: 1e6, s: 0.1, EA_m: 1e6, EA_s: 2e6 },
    0.075,
    byHand('10⁶ × 0.1 / 2 × (10⁻⁶ + 0.5 × 10⁻⁶)'),
  ),
  published(group.groupStiffness, { u: 0.25 }, 0.5, byHand('1.25 − √(1.25² − 1) = 1.25 − 0.75')),
  published(
    group.groupFactor,
    { m: 0.5, n: 2, R_EA: 1 },
    1,
    byHand('two fasteners between equal members share alike: NDS 2018 Eq. 11.3-1 gives 1'),
  ),
  published(
    group.groupFactor,
    { m: 0.5, n: 2, R_EA: 0.5 },
    15 / 16,
    byHand('NDS 2018 Eq. 11.3-1: 0.5 × (1 − 1/16) / (2 × (9/8 × 3/2 − 1 + 1/16)) × 1.5 / 0.5'),
  ),
];

/** Fixings into walls. */
export const connectionValues: readonly PublishedValue[] = [...fasteners, ...modes, ...others, ...none];
