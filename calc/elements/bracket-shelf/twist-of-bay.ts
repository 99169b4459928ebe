import type { Bay as WholeBay } from '../../mechanics/bays.ts';
import { twistTogether } from '../../mechanics/open-section-formulas.ts';
import { twistOfOverhang, twistOfSpan, warpedTwistOfSpan } from '../../mechanics/twist.ts';
import type { FactorOf } from './forces.ts';
import type { Action, Shelf } from './shelf.ts';

/** Where a bay is: all that its twist depends on. */
type Bay = Pick<WholeBay, 'from_m' | 'to_m' | 'kind'>;

/** What the edge that goes down most moves by twisting, m. */
export interface TwistOfBay {
  readonly value_m: number;
  readonly edge: 'front' | 'back';
  /** By twisting alone, and by bending of the parts alone; null where only twisting counts. */
  readonly apart: { readonly Delta_s: number; readonly Delta_w: number } | null;
}

/**
 * What the front edge of a bay moves more than the board's twist axis, or the back edge where that is more: every load in
 * front of the axis twists the board forward between brackets, which hold it from turning, every load behind it backward.
 * The largest of each load is added, and of the roaming loads the heaviest; loads on the other side would help and are
 * left out.
 */
export function twistMovement(shelf: Shelf, bay: Bay, factor: FactorOf): TwistOfBay {
  const { axis_m } = shelf.board.twisting;
  const front = edgeMovement(shelf, bay, factor, 'front', Math.max(0, shelf.depth_m - axis_m));
  const back = edgeMovement(shelf, bay, factor, 'back', axis_m);
  return back.value_m > front.value_m * (1 + 1e-9) ? back : front;
}

function edgeMovement(
  shelf: Shelf,
  bay: Bay,
  factor: FactorOf,
  edge: 'front' | 'back',
  reach_m: number,
): TwistOfBay {
  const { axis_m, GJ_Nm2, warp } = shelf.board.twisting;
  const weight: Pick<Action, 'load'> = {
    load: { kind: 'line', from_m: 0, to_m: shelf.length_m, load_Npm: shelf.board.selfWeight_Npm },
  };
  const loads = [
    ...shelf.actions.map((action) => ({ action, e_m: action.eccentricity_m, share: factor(action) })),
    { action: weight, e_m: shelf.board.weightAt_m, share: factor(null) },
  ];
  const sumOf = (by: (action: Pick<Action, 'load'>, arm_m: number) => number): number => {
    let [standing, roaming] = [0, 0];
    for (const { action, e_m, share } of loads) {
      const arm_m = edge === 'front' ? e_m - axis_m : axis_m - e_m;
      if (arm_m <= 1e-9) continue;
      const moved = by(action, arm_m) * share * reach_m;
      if (action.load.kind === 'roaming') roaming = Math.max(roaming, moved);
      else standing += moved;
    }
    return standing + roaming;
  };
  const pure = sumOf((action, arm_m) => twistFrom(bay, action, arm_m, GJ_Nm2));
  if (warp === null || bay.kind !== 'span' || pure === 0) return { value_m: pure, edge, apart: null };
  const apart = {
    Delta_s: pure,
    Delta_w: sumOf((action, arm_m) => warpedFrom(bay, action, arm_m, warp.EIw_Nm4)),
  };
  return { value_m: twistTogether.evaluate(apart), edge, apart };
}

/** A load on a span as a torque at places from its left end; null where it does not stand there, or weighs nothing. */
function torqueIn({ from_m, to_m }: Bay, { load }: Pick<Action, 'load'>, arm_m: number) {
  const length = to_m - from_m;
  const local = (x: number): number => Math.min(Math.max(x - from_m, 0), length);
  if (load.kind === 'roaming') return { from_m: length / 2, to_m: length / 2, torque: load.load_N * arm_m };
  if (load.kind === 'point') {
    const isIn = load.at_m >= from_m && load.at_m <= to_m;
    return isIn ? { from_m: local(load.at_m), to_m: local(load.at_m), torque: load.load_N * arm_m } : null;
  }
  const [a, b] = [local(load.from_m), local(load.to_m)];
  return b > a && load.load_Npm > 0 ? { from_m: a, to_m: b, torque: load.load_Npm * arm_m } : null;
}

/** Twist of a bay by twisting alone, rad. */
function twistFrom(bay: Bay, action: Pick<Action, 'load'>, arm_m: number, GJ: number): number {
  const torque = torqueIn(bay, action, arm_m);
  if (torque === null) return 0;
  const length = bay.to_m - bay.from_m;
  if (bay.kind === 'span') return twistOfSpan(length, GJ, torque);
  if (action.load.kind === 'roaming') return twistOfOverhang(GJ, { ...torque, from_m: length, to_m: length });
  const fromRoot = (x: number): number => (bay.kind === 'left-overhang' ? length - x : x);
  const [near, far] = [fromRoot(torque.from_m), fromRoot(torque.to_m)].sort((p, q) => p - q);
  return twistOfOverhang(GJ, { ...torque, from_m: near ?? 0, to_m: far ?? 0 });
}

/** Twist of the middle of a span by bending of its parts alone, rad. */
function warpedFrom(bay: Bay, action: Pick<Action, 'load'>, arm_m: number, EIw: number): number {
  const torque = torqueIn(bay, action, arm_m);
  return torque === null ? 0 : warpedTwistOfSpan(bay.to_m - bay.from_m, EIw, torque);
}
