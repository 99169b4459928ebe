import type { Step } from '../../../shared/check-result.ts';
import type { Fastener } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import { leastPull, screwResultant, screwShear } from '../../mechanics/plate-group.ts';
import type { YieldMode } from '../../standards/nds-2018/12.3-dowel-bearing.ts';
import { holeOf } from '../hole.ts';
import type { Fixing, FixingAnswer, FixingLoad } from './fixing.ts';
import { groupFactorsOf } from './group.ts';
import { pullOf, sharesOf, workPull, type Share } from './sharing.ts';
import { sumsAbove, type Toe } from './toe.ts';
import { turningOf } from './turning.ts';
import {
  combinedOf,
  lateralOf,
  leastPenetration_m,
  penetrationOf,
  reachOf,
  tipOf,
  whyNoPull,
  withdrawalOf,
} from './values.ts';

const hollowAdvice =
  'no published value lets a hollow-wall anchor carry a shelf. Move it to a stud, or let a board into the studs behind it';

/** What one screw can take, or why that is not known or is nothing. */
export type Capacity =
  | {
      readonly outcome: 'worked';
      readonly withdrawal_N: number;
      readonly lateral_N: number;
      /** Null where no lateral load is permitted. */
      readonly mode: YieldMode | 'report' | null;
      /** Why nothing resists a pull, or a lateral load; empty where something does. */
      readonly whyNoPull: string;
      readonly whyNoShear: string;
      readonly penetration_m: number;
      readonly clause: string;
      readonly steps: readonly Step[];
    }
  | {
      readonly outcome: 'nothing-resists' | 'cannot-say';
      readonly why: string;
      readonly penetration_m: number;
      readonly steps: readonly Step[];
    };

/** Capacity of one screw for one load duration. */
export function capacityOf(fixing: Fixing, C_D: number): Capacity {
  const { ground, fastener, allowable } = fixing;
  const reach = reachOf(fixing);
  const none = (
    outcome: 'nothing-resists' | 'cannot-say',
    why: string,
    steps: readonly Step[] = [],
  ): Capacity => ({
    outcome,
    why,
    penetration_m: reach,
    steps,
  });
  if (reach <= 0) return none('nothing-resists', 'the screws end in the plate and the wall covering');
  if (breaksEdge(fixing))
    return none('nothing-resists', 'the holes of the screws break the edge of the plate');
  if (ground.kind === 'hollow') return none('cannot-say', hollowAdvice);
  if (allowable !== null) {
    const { tension_N, shear_N, report } = allowable;
    return {
      outcome: 'worked',
      withdrawal_N: tension_N,
      lateral_N: shear_N,
      mode: 'report',
      whyNoPull: '',
      whyNoShear: '',
      penetration_m: reach,
      clause: report,
      steps: [],
    };
  }
  if (ground.kind === 'by-report') {
    return none(
      'cannot-say',
      `in ${ground.what} only the allowable pull and shear of the anchor or screw count, as its report gives them`,
    );
  }
  if (fastener === null)
    return none('cannot-say', 'a listed screw counts with the allowable values of its report');
  const penetration_m = penetrationOf(fixing, ground);
  const withdrawal = withdrawalOf(fixing, fastener, ground, C_D);
  const group = groupFactorsOf(fixing, fastener, ground);
  if (group.why !== '') return none('nothing-resists', group.why, withdrawal.steps);
  const whyNoShear = tooShallow(fastener, penetration_m);
  const lateral =
    whyNoShear === '' ? lateralOf(fixing, fastener, ground, C_D, group) : { value: 0, mode: null, steps: [] };
  return {
    outcome: 'worked',
    withdrawal_N: withdrawal.value,
    lateral_N: lateral.value,
    mode: lateral.mode,
    whyNoPull: whyNoPull(fastener, ground),
    whyNoShear,
    penetration_m,
    clause: 'NDS chapter 12, TR12',
    steps: [...withdrawal.steps, ...group.steps, ...lateral.steps],
  };
}

/** Whether a hole is not wholly within the plate; how wide one of a listed screw is nobody knows. */
function breaksEdge({ plate, heights_m, across_m, fastener }: Fixing): boolean {
  const radius_m = fastener === null ? 0 : holeOf(fastener.diameter_m) / 2;
  const edges_m = [
    Math.min(...heights_m),
    plate.height_m - Math.max(...heights_m),
    (plate.width_m - across_m) / 2,
  ];
  return Math.min(...edges_m) < radius_m - 1e-9;
}

/** Why a fastener stands too shallow for any lateral load; empty where it does not. */
function tooShallow(fastener: Fastener, penetration_m: number): string {
  const isLag = fastener.kind === 'lag-screw';
  const counted_m = isLag ? penetration_m - tipOf(fastener) : penetration_m;
  if (counted_m >= leastPenetration_m(fastener) - 1e-9) return '';
  return `the screws stand less than ${isLag ? 4 : 6} diameters in the wood, and no lateral load is permitted (NDS 12.1)`;
}

/** What the screw farthest from where the plate turns is pulled with; or why no screw can hold the couple. */
type FarthestShare = { readonly share: Share } | { readonly why: string };

/** Pull on the screw that is pulled most, N. Where no screw can hold the couple, what all together are pulled with at least. */
export interface ScrewPull {
  readonly pull_N: number;
  /** Why no screw can hold the couple; empty where one can. */
  readonly why: string;
}

/** The same with its line of working. */
export function workScrewPull(
  fixing: Fixing,
  load: FixingLoad,
  toe: Toe,
): ScrewPull & { readonly step: Step } {
  const { system } = fixing;
  const farthest = farthestShare(fixing, load, toe);
  const { screw, aside } = turningOf(fixing, load);
  const { value, step } =
    'why' in farthest
      ? work(leastPull, leastOf(fixing, load), system)
      : workPull(farthest.share, system, `pull on the ${screw} screw${aside}`);
  return { pull_N: value, why: 'why' in farthest ? farthest.why : '', step };
}

function farthestShare(fixing: Fixing, load: FixingLoad, toe: Toe): FarthestShare {
  const { heights_m, end } = turningOf(fixing, load);
  const { pivot_m, length_m } = toe;
  if (load.couple_Nm > 0 && length_m === Infinity)
    return { why: 'the wall covering crushes before the plate can hold the couple' };
  if (load.couple_Nm > 0 && sumsAbove(heights_m, pivot_m).S_z <= 0)
    return { why: `every screw is at the ${end} end of the plate, and none can hold the couple` };
  const shares = sharesOf(heights_m, pivot_m, load, fixing.perHeight);
  const share = shares[heights_m.indexOf(Math.max(...heights_m))];
  if (share === undefined) throw new RangeError('a plate has screws');
  return { share };
}

/** Pull on the screw of a plate that is pulled most. */
export function screwPullOf(fixing: Fixing, load: FixingLoad, toe: Toe): ScrewPull {
  const farthest = farthestShare(fixing, load, toe);
  return 'why' in farthest
    ? { pull_N: leastPull.evaluate(leastOf(fixing, load)), why: farthest.why }
    : { pull_N: pullOf(farthest.share), why: '' };
}

function leastOf({ plate }: Fixing, { couple_Nm, pull_N }: FixingLoad) {
  return { C: couple_Nm, h_p: plate.height_m, N: Math.max(0, pull_N) };
}

/** Works out the worst screw of a plate: the one that is pulled most, the highest unless the bracket is lifted, with its even share of the shear. */
export function solveFixing(fixing: Fixing, load: FixingLoad, capacity: Capacity, toe: Toe): FixingAnswer {
  const { system } = fixing;
  const n_s = fixing.heights_m.length * fixing.perHeight;
  const shear = work(screwShear, { V: Math.abs(load.shear_N), n_s }, system);
  const farthest = farthestShare(fixing, load, toe);
  if ('why' in farthest) {
    const least = work(leastPull, leastOf(fixing, load), system);
    return {
      ...answerOf(capacity, least.value, shear.value, [least.step, shear.step]),
      outcome: 'nothing-resists',
      why: farthest.why,
    };
  }
  const { screw, aside } = turningOf(fixing, load);
  const pull = workPull(farthest.share, system, `pull on the ${screw} screw${aside}`);
  const steps = [...toe.steps, pull.step, shear.step, ...capacity.steps];
  const answer = answerOf(capacity, pull.value, shear.value, steps);
  if (capacity.outcome !== 'worked') return answer;
  const ratios = {
    withdrawal: share(pull.value, capacity.withdrawal_N),
    lateral: share(shear.value, capacity.lateral_N),
  };
  if (ratios.withdrawal === null || ratios.lateral === null) {
    const known = [
      ...(ratios.withdrawal === null ? [capacity.whyNoPull] : []),
      ...(ratios.lateral === null ? [capacity.whyNoShear] : []),
    ];
    const why =
      known.find((each) => each !== '') ?? 'the screws have no strength in the direction they are loaded';
    return { ...answer, outcome: 'nothing-resists', why, ratios: { ...ratios, combined: null } };
  }
  if (capacity.mode === 'report' || fixing.fastener === null) {
    return { ...answer, ratios: { ...ratios, combined: ratios.withdrawal + ratios.lateral } };
  }
  if (pull.value === 0 || shear.value === 0) {
    return { ...answer, ratios: { ...ratios, combined: Math.max(ratios.withdrawal, ratios.lateral) } };
  }
  const resultant = work(screwResultant, { T: pull.value, V_s: shear.value }, system);
  const combined = combinedOf(fixing, fixing.fastener, {
    W_p: capacity.withdrawal_N,
    Z_prime: capacity.lateral_N,
    alpha: Math.atan2(pull.value, shear.value),
  });
  return {
    ...answer,
    combined_N: combined.value,
    ratios: { ...ratios, combined: share(resultant.value, combined.value) },
    steps: [...steps, resultant.step, combined.step],
  };
}

function share(demand: number, capacity: number): number | null {
  if (demand === 0) return 0;
  return capacity > 0 ? demand / capacity : null;
}

function answerOf(
  capacity: Capacity,
  tension_N: number,
  shear_N: number,
  steps: readonly Step[],
): FixingAnswer {
  const isWorked = capacity.outcome === 'worked';
  return {
    tension_N,
    shear_N,
    penetration_m: capacity.penetration_m,
    withdrawal_N: isWorked ? capacity.withdrawal_N : null,
    lateral_N: isWorked ? capacity.lateral_N : null,
    mode: isWorked ? capacity.mode : null,
    combined_N: null,
    ratios: { withdrawal: null, lateral: null, combined: null },
    why: isWorked ? '' : capacity.why,
    outcome: capacity.outcome,
    clause: isWorked ? capacity.clause : 'NDS chapter 12',
    steps,
  };
}
