import { torqueAtEnds, wholeTorque } from '../../mechanics/end-torque.ts';
import type { Torque } from '../../mechanics/twist.ts';
import type { Situation } from './context.ts';
import type { Action, Shelf } from './shelf.ts';

/** What twists the board beside one bracket, from one side. */
export interface TorqueAtBracket {
  /** The bracket, and the side of it. */
  readonly support: number;
  readonly side: 'left' | 'right';
  /** Of all that stands and twists one way, N·m. */
  readonly standing_Nm: number;
  /** The heaviest load that roams along the front edge, N, and its distance from the twist axis, m. */
  readonly roaming_N: number;
  readonly reach_m: number;
  /** Length of the bay between two brackets that hold it; null on an overhang, where nothing of the torque is sure to be shared. */
  readonly bay_m: number | null;
}

/** A stretch of board between two brackets that hold it from turning, or beyond the last one: −1 is a free end. */
export interface Stretch {
  readonly from_m: number;
  readonly to_m: number;
  readonly left: number;
  readonly right: number;
}

/**
 * The torque in the board at the ends of every bay. What stands in front of the twist axis twists one way, what stands
 * behind it the other: either may be there without the other, so the greater of the two counts and nothing helps.
 */
export function torquesOf(shelf: Shelf, situation: Situation): TorqueAtBracket[] {
  const { factor } = situation;
  const { axis_m } = shelf.board.twisting;
  const reach_m = Math.max(0, shelf.depth_m - axis_m);
  const roaming_N = Math.max(
    0,
    ...shelf.actions.map((action) =>
      action.load.kind === 'roaming' ? action.load.load_N * factor(action) : 0,
    ),
  );
  const twisting = [
    ...shelf.actions.map((action) => ({
      load: action.load,
      arm_m: (action.eccentricity_m - axis_m) * factor(action),
    })),
    {
      load: { kind: 'line', from_m: 0, to_m: shelf.length_m, load_Npm: shelf.board.selfWeight_Npm } as const,
      arm_m: (shelf.board.weightAt_m - axis_m) * factor(null),
    },
  ];
  return stretchesOf(shelf, situation).flatMap((stretch) => {
    const [front, behind] = [
      [0, 0],
      [0, 0],
    ];
    for (const { load, arm_m } of twisting) {
      const torque = torqueOn(stretch, load, Math.abs(arm_m));
      if (torque === null) continue;
      const sum = arm_m > 0 ? front : behind;
      const ends = endsOf(stretch, torque);
      sum[0] = (sum[0] ?? 0) + ends[0];
      sum[1] = (sum[1] ?? 0) + ends[1];
    }
    const at = (end: 0 | 1, support: number, side: 'left' | 'right'): TorqueAtBracket[] => {
      if (support < 0) return [];
      const [ahead, back] = [front[end] ?? 0, behind[end] ?? 0];
      const isBehind = back > ahead + roaming_N * reach_m;
      const standing_Nm = isBehind ? back : ahead;
      const bay_m = stretch.left >= 0 && stretch.right >= 0 ? stretch.to_m - stretch.from_m : null;
      return [{ support, side, reach_m, standing_Nm, roaming_N: isBehind ? 0 : roaming_N, bay_m }];
    };
    return [...at(0, stretch.left, 'right'), ...at(1, stretch.right, 'left')];
  });
}

/** A board that lifts off a bracket is not held from turning there. */
export function stretchesOf(shelf: Shelf, { solved }: Pick<Situation, 'solved'>): Stretch[] {
  const { stiffness } = solved.model;
  const holding = shelf.positions_m.flatMap((at_m, index) =>
    typeof stiffness === 'number' || stiffness[index] === Infinity ? [{ at_m, index }] : [],
  );
  const stops = [{ at_m: 0, index: -1 }, ...holding, { at_m: shelf.length_m, index: -1 }];
  return stops
    .slice(1)
    .map(({ at_m, index }, i) => ({
      from_m: stops[i]?.at_m ?? 0,
      to_m: at_m,
      left: stops[i]?.index ?? -1,
      right: index,
    }))
    .filter(({ from_m, to_m }) => to_m > from_m);
}

/** What a load does along a stretch, in places from its left end. One that stands at a bracket may stand a little to either side. */
function torqueOn({ from_m, to_m }: Stretch, load: Action['load'], arm_m: number): Torque | null {
  if (load.kind === 'roaming' || arm_m <= 1e-9) return null;
  if (load.kind === 'point') {
    const isOn = load.at_m >= from_m && load.at_m <= to_m;
    const at = load.at_m - from_m;
    return isOn ? { from_m: at, to_m: at, torque: load.load_N * arm_m } : null;
  }
  const [from, to] = [Math.max(load.from_m, from_m), Math.min(load.to_m, to_m)];
  return to > from ? { from_m: from - from_m, to_m: to - from_m, torque: load.load_Npm * arm_m } : null;
}

function endsOf({ from_m, to_m, left, right }: Stretch, torque: Torque): readonly [number, number] {
  if (left >= 0 && right >= 0) return torqueAtEnds(to_m - from_m, torque);
  const whole = wholeTorque(torque);
  return [whole, whole];
}
