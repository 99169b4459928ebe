import type { Bay as WholeBay } from '../../mechanics/bays.ts';
import { twistTogether } from '../../mechanics/open-section-formulas.ts';
import { twistOfOverhang, twistOfSpan, warpedTwistOfSpan } from '../../mechanics/twist.ts';
import { twistedBay, twistedTip, warpedBay } from '../../mechanics/twist-formulas.ts';
import type { FactorOf } from './forces.ts';
import type { Action, Shelf } from './shelf.ts';

/** Where a bay is: all that its twist depends on. */
type Bay = Pick<WholeBay, 'from_m' | 'to_m' | 'kind'>;

/** What the edge that goes down most moves by twisting, m. */
export interface TwistOfBay {
  readonly value_m: number;
  readonly edge: 'front' | 'back';
  /** What it follows from; null where nothing twists the bay. */
  readonly torques: Torques | null;
}

/** The torques on a bay, and how far from the twist axis the edge is. */
export interface Torques {
  readonly d_e: number;
  /** The load that roams, and its distance from the axis. */
  readonly P: number;
  readonly e_t: number;
  /** Torque for each length of what stands along the whole bay, and of what loads: N for each m, and m from the axis. */
  readonly t_s: number;
  readonly even: readonly { readonly load_Npm: number; readonly arm_m: number }[];
  /** What loads on part of the bay bring by twisting, N·m², and by bending of the parts, N·m⁴. */
  readonly S_t: number;
  readonly S_w: number;
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
  const torques = torquesOn(shelf, bay, factor, edge, reach_m);
  if (torques === null) return { value_m: 0, edge, torques };
  const numbers = twistNumbers(shelf, bay, torques);
  if (numbers.kind === 'tip') return { value_m: twistedTip.evaluate(numbers.alone), edge, torques };
  const Delta_s = twistedBay.evaluate(numbers.alone);
  if (numbers.warped === null) return { value_m: Delta_s, edge, torques };
  const Delta_w = warpedBay.evaluate(numbers.warped);
  return { value_m: twistTogether.evaluate({ Delta_s, Delta_w }), edge, torques };
}

/** The numbers of the formulas of a bay's twist: by twisting alone, and by bending of its parts alone where that counts. */
export function twistNumbers({ board }: Shelf, { from_m, to_m, kind }: Bay, torques: Torques) {
  const { GJ_Nm2: GJ, warp } = board.twisting;
  const { d_e, P, e_t, t_s, S_t, S_w } = torques;
  const length = to_m - from_m;
  if (kind !== 'span') return { kind: 'tip', alone: { d_e, P, e_t, a: length, t_s, S_t, GJ } } as const;
  const alone = { d_e, P, e_t, L: length, t_s, S_t, GJ };
  const warped = warp === null ? null : { d_e, P, e_t, L: length, t_s, S_w, EI_w: warp.EIw_Nm4 };
  return { kind: 'bay', alone, warped } as const;
}

/** What twists a bay towards one edge; null where nothing does. */
function torquesOn(
  shelf: Shelf,
  bay: Bay,
  factor: FactorOf,
  edge: 'front' | 'back',
  reach_m: number,
): Torques | null {
  if (reach_m <= 0) return null;
  const { axis_m } = shelf.board.twisting;
  const length = bay.to_m - bay.from_m;
  const even: Torques['even'][number][] = [];
  let [P, e_t, t_s, S_t, S_w] = [0, 0, 0, 0, 0];
  const add = (load: Action['load'], e_m: number, share: number): void => {
    const arm_m = edge === 'front' ? e_m - axis_m : axis_m - e_m;
    if (arm_m <= 1e-9 || share === 0) return;
    if (load.kind === 'roaming') {
      if (load.load_N * share * arm_m > P * e_t) [P, e_t] = [load.load_N * share, arm_m];
      return;
    }
    const torque = torqueIn(bay, load, arm_m * share);
    if (torque === null) return;
    if (load.kind === 'line' && torque.to_m - torque.from_m >= length - 1e-9) {
      t_s += torque.torque;
      even.push({ load_Npm: load.load_Npm * share, arm_m });
    } else if (bay.kind === 'span') {
      S_t += twistOfSpan(length, 1, torque);
      S_w += warpedTwistOfSpan(length, 1, torque);
    } else S_t += twistOfOverhang(1, fromRoot(bay, torque));
  };
  for (const action of shelf.actions) add(action.load, action.eccentricity_m, factor(action));
  const { selfWeight_Npm, weightAt_m } = shelf.board;
  add({ kind: 'line', from_m: 0, to_m: shelf.length_m, load_Npm: selfWeight_Npm }, weightAt_m, factor(null));
  return P === 0 && t_s === 0 && S_t === 0 ? null : { d_e: reach_m, P, e_t, t_s, even, S_t, S_w };
}

/** A standing load as a torque at places from the bay's left end; null where it does not stand there, or weighs nothing. */
function torqueIn({ from_m, to_m }: Bay, load: Exclude<Action['load'], { kind: 'roaming' }>, arm_m: number) {
  const length = to_m - from_m;
  const local = (x: number): number => Math.min(Math.max(x - from_m, 0), length);
  if (load.kind === 'point') {
    const isIn = load.at_m >= from_m && load.at_m <= to_m;
    return isIn ? { from_m: local(load.at_m), to_m: local(load.at_m), torque: load.load_N * arm_m } : null;
  }
  const [a, b] = [local(load.from_m), local(load.to_m)];
  return b > a && load.load_Npm > 0 ? { from_m: a, to_m: b, torque: load.load_Npm * arm_m } : null;
}

/** The same on an overhang, places from its bracket. */
function fromRoot({ from_m, to_m, kind }: Bay, torque: NonNullable<ReturnType<typeof torqueIn>>) {
  if (kind !== 'left-overhang') return torque;
  const length = to_m - from_m;
  return { ...torque, from_m: length - torque.to_m, to_m: length - torque.from_m };
}
