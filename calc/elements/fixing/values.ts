import type { Step } from '../../../shared/check-result.ts';
import { work, type Worked } from '../../formula/step.ts';
import {
  endGrain,
  lagThread_m,
  toeNail,
  wetFasteners,
  adjustedLateral,
  combinedNail,
  combinedScrew,
} from '../../standards/nds-2018/11.3-connections.ts';
import {
  adjustedWithdrawal,
  fastenerReach,
  lagConstant,
  lagWithdrawal,
  nailConstant_Pa,
  nailWithdrawal,
  threadInWood,
  woodScrewConstant_Pa,
  woodScrewWithdrawal,
} from '../../standards/nds-2018/12.2-withdrawal.ts';
import {
  acrossBearingConstant,
  alongBearingConstant_Pa,
  bearingAcross,
  bearingAlong,
  bearingOfSmall,
  bearingOfSteel_Pa,
  reductionTerm,
  smallBearingConstant_Pa,
  yieldModes,
  type YieldMode,
} from '../../standards/nds-2018/12.3-dowel-bearing.ts';
import { temperatureFactor } from '../../standards/nds-2018/2.3-adjustment.ts';
import * as tr12 from '../../standards/tr12/general-dowel.ts';
import type { Fastener } from '../../catalogue/index.ts';
import type { Fixing, Ground } from './fixing.ts';
import { inch } from '../../../shared/quantity/index.ts';

const quarter_m = 0.25 * inch - 1e-9;

type Wood = Extract<Ground, { kind: 'wood' }>;

/** Thread of a fastener of some length where nobody measured it: NDS Appendix L. */
export function usualThread_m(fastener: Fastener, length_m: number): number {
  if (fastener.kind === 'common-nail') return length_m;
  if (fastener.kind === 'lag-screw') return lagThread_m(length_m);
  return Math.min(length_m, Math.max((2 * length_m) / 3, 4 * fastener.diameter_m));
}

/** Length of the tapered tip: as tabulated for lags, two diameters for screws and nails. */
export function tipOf(fastener: Fastener): number {
  return fastener.kind === 'lag-screw' ? (fastener.tip_m ?? 0) : 2 * fastener.diameter_m;
}

/** Least penetration for lateral load, NDS 12.1: 6D of screws and nails, tip included; 4D of lags, tip left out. */
export function leastPenetration_m(fastener: Fastener): number {
  return (fastener.kind === 'lag-screw' ? 4 : 6) * fastener.diameter_m;
}

/** Nails toed in stand at about 30° to where they would stand straight, NDS Figure 12A. */
const toeSlope = Math.cos(Math.PI / 6);

/** How far the fastener reaches past plate and coverings, square to the wall. */
export function reachOf(fixing: Fixing): number {
  return Math.max(0, fastenerReach.evaluate(reachSymbols(fixing)));
}

function reachSymbols({ length_m, plate, gap_m, driven }: Fixing) {
  return { k_l: driven === 'toe' ? toeSlope : 1, l: length_m, t_p: plate.thickness_m, g: gap_m };
}

/** How far the fastener stands in the wood. */
export function penetrationOf(fixing: Fixing, wood: Wood): number {
  return Math.min(reachOf(fixing), wood.depth_m);
}

/** Thread that is truly in the wood: a screw that comes out behind thin wood may have none of it there. The tip of a lag is no thread. */
function threadOf(fixing: Fixing, fastener: Fastener, wood: Wood): { value: number; steps: Step[] } {
  const { system } = fixing;
  const reach = work(fastenerReach, reachSymbols(fixing), system);
  const E = fastener.kind === 'lag-screw' ? tipOf(fastener) : 0;
  const symbols = { d_w: wood.depth_m, p_s: reachOf(fixing), E, T_l: fixing.thread_m };
  const thread = work(threadInWood, symbols, system);
  return thread.value > 0
    ? { value: thread.value, steps: [reach.step, thread.step] }
    : { value: 0, steps: [reach.step] };
}

/** Why the fastener may not be pulled at all; empty where it may. */
export function whyNoPull({ kind }: Fastener, { grain }: Wood): string {
  if (grain === 'side' || kind === 'lag-screw') return '';
  const [what, clause] = kind === 'wood-screw' ? ['wood screws', '12.2.2'] : ['nails', '12.2.3'];
  return `${what} may not be pulled from the end of the wood (NDS ${clause}): screw into its side, or take lag screws`;
}

/** Allowable withdrawal of one fastener, with its working; nothing where it may not be pulled. */
export function withdrawalOf(
  fixing: Fixing,
  fastener: Fastener,
  wood: Wood,
  C_D: number,
): { readonly value: number; readonly steps: readonly Step[] } {
  if (whyNoPull(fastener, wood) !== '') return { value: 0, steps: [] };
  const { system, moisture, temperature } = fixing;
  const { G } = wood;
  const D = fastener.diameter_m;
  const isNail = fastener.kind === 'common-nail';
  const W = {
    'wood-screw': () => work(woodScrewWithdrawal, { k_W: woodScrewConstant_Pa, G, D }, system),
    'lag-screw': () => work(lagWithdrawal, { k_W: lagConstant, G, D }, system),
    'common-nail': () => work(nailWithdrawal, { k_W: nailConstant_Pa, G, D }, system),
  }[fastener.kind]();
  const thread = threadOf(fixing, fastener, wood);
  const isToed = fixing.driven === 'toe';
  const wet = isNail ? wetFasteners.nailWithdrawal : wetFasteners.screwWithdrawal;
  const worked = work(
    adjustedWithdrawal,
    {
      W: W.value,
      p_t: thread.value,
      C_D,
      C_M: moisture === 'wet' && !isToed ? wet : 1,
      C_t: temperatureFactor[moisture][temperature],
      C_eg: wood.grain === 'end' ? endGrain.lagWithdrawal : 1,
      C_tn: isToed ? toeNail.withdrawal : 1,
    },
    system,
  );
  return { value: worked.value, steps: [W.step, ...thread.steps, worked.step] };
}

/** Lateral value of one fastener: the least of six yield modes across the gap. */
export interface Lateral {
  readonly value: number;
  readonly mode: YieldMode;
  readonly steps: readonly Step[];
}

/** Reference lateral value Z of one fastener through a steel plate, by TR12 with the coverings as a gap. */
export function referenceLateralOf(fixing: Fixing, fastener: Fastener, wood: Wood): Lateral {
  const { system, plate, gap_m: g } = fixing;
  const bending = fastener.rootDiameter_m;
  const dowel = woodBearing(fixing, fastener, wood);
  const F_es = bearingOfSteel_Pa(plate.thickness_m);
  const q_s = work(
    tr12.bearingPerLength,
    { F_e: F_es, D: bending },
    system,
    'bearing in the plate, for each length',
    'q_s',
  );
  const q_m = work(
    tr12.bearingPerLength,
    { F_e: dowel.value, D: bending },
    system,
    'bearing in the wood, for each length',
    'q_m',
  );
  const M = work(tr12.dowelMoment, { F_yb: fastener.bendingYield_Pa, D: bending }, system);
  const length = work(
    tr12.bearingLength,
    { d_w: wood.depth_m, p_s: reachOf(fixing), E: tipOf(fastener) },
    system,
  );
  const L_m = Math.max(0, length.value);
  const n = {
    q_s: q_s.value,
    q_m: q_m.value,
    L_s: plate.thickness_m,
    L_m,
    g,
    M_s: M.value,
    M_m: M.value,
  };
  const yields: Readonly<Record<YieldMode, () => Worked>> = {
    Im: () => work(tr12.modeIm, { q_m: n.q_m, L_m }, system),
    Is: () => work(tr12.modeIs, { q_s: n.q_s, L_s: n.L_s }, system),
    II: () => work(tr12.modeII, { L_s: n.L_s, g, L_m, q_s: n.q_s, q_m: n.q_m }, system),
    IIIm: () => work(tr12.modeIIIm, { g, L_m, q_s: n.q_s, q_m: n.q_m, M_s: n.M_s }, system),
    IIIs: () => work(tr12.modeIIIs, { L_s: n.L_s, g, q_s: n.q_s, q_m: n.q_m, M_m: n.M_m }, system),
    IV: () => work(tr12.modeIV, { g, q_s: n.q_s, q_m: n.q_m, M_s: n.M_s, M_m: n.M_m }, system),
  };
  const all = yieldModes.map((mode) => {
    const P = yields[mode]();
    const R_d = reductionTerm(mode, fastener.diameter_m, bending, wood.angle_deg);
    return {
      mode,
      P,
      Z: work(tr12.referenceLateral, { P: P.value, R_d }, system, `lateral value of one screw, mode ${mode}`),
    };
  });
  const least = all.reduce((a, b) => (b.Z.value < a.Z.value ? b : a));
  return {
    value: least.Z.value,
    mode: least.mode,
    steps: [dowel.step, q_s.step, q_m.step, M.step, length.step, least.P.step, least.Z.step],
  };
}

function woodBearing({ system }: Fixing, fastener: Fastener, { G, angle_deg }: Wood): Worked {
  const D = fastener.diameter_m;
  if (D < quarter_m) return work(bearingOfSmall, { k_e: smallBearingConstant_Pa, G }, system);
  if (angle_deg === 0) return work(bearingAlong, { k_e: alongBearingConstant_Pa, G }, system);
  return work(bearingAcross, { k_e: acrossBearingConstant, G, D }, system);
}

/** Allowable lateral load of one fastener. */
export function lateralOf(
  fixing: Fixing,
  fastener: Fastener,
  wood: Wood,
  C_D: number,
  group: { readonly C_g: number; readonly C_Delta: number },
): Worked & { readonly steps: Step[]; readonly mode: YieldMode } {
  const reference = referenceLateralOf(fixing, fastener, wood);
  const { moisture, temperature, system } = fixing;
  const worked = work(
    adjustedLateral,
    {
      Z: reference.value,
      C_D,
      C_M: moisture === 'wet' ? wetFasteners.lateral : 1,
      C_t: temperatureFactor[moisture][temperature],
      ...group,
      C_eg: wood.grain === 'end' ? endGrain.lateral : 1,
      C_tn: fixing.driven === 'toe' ? toeNail.lateral : 1,
    },
    system,
  );
  return { ...worked, mode: reference.mode, steps: [...reference.steps, worked.step] };
}

/** Allowable load of one fastener at the angle of its load to the wall. */
export function combinedOf(
  fixing: Fixing,
  fastener: Fastener,
  values: { readonly W_p: number; readonly Z_prime: number; readonly alpha: number },
): Worked {
  return work(fastener.kind === 'common-nail' ? combinedNail : combinedScrew, values, fixing.system);
}
