import type { Bay as WholeBay } from '../../mechanics/bays.ts';
import { twistOfOverhang, twistOfSpan } from '../../mechanics/twist.ts';
import type { FactorOf } from './forces.ts';
import type { Action, Shelf } from './shelf.ts';

/** Where a bay is: all that its twist depends on. */
type Bay = Pick<WholeBay, 'from_m' | 'to_m' | 'kind'>;

/**
 * What the front edge of a bay moves more than the board's middle line: every load that stands in front of mid-depth
 * twists the board between brackets, which hold it from turning. The largest of each load is added, and of the roaming
 * loads the heaviest; loads behind mid-depth would help and are left out.
 */
export function twistMovement(shelf: Shelf, bay: Bay, factor: FactorOf): number {
  const axis_m = shelf.depth_m / 2;
  const reach_m = shelf.depth_m - axis_m;
  let standing = 0;
  let roaming = 0;
  for (const action of shelf.actions) {
    const twist = twistFrom(shelf, bay, action, action.eccentricity_m - axis_m) * factor(action) * reach_m;
    if (action.load.kind === 'roaming') roaming = Math.max(roaming, twist);
    else standing += twist;
  }
  return standing + roaming;
}

function twistFrom(shelf: Shelf, bay: Bay, { load }: Action, arm_m: number): number {
  if (arm_m <= 1e-9) return 0;
  const GJ = shelf.board.GJ_Nm2;
  const length = bay.to_m - bay.from_m;
  const local = (x: number): number => Math.min(Math.max(x - bay.from_m, 0), length);
  const fromRoot = (x: number): number => (bay.kind === 'left-overhang' ? length - local(x) : local(x));
  if (load.kind === 'line') {
    const [a, b] = [local(load.from_m), local(load.to_m)];
    const torque = load.load_Npm * arm_m;
    if (b <= a) return 0;
    if (bay.kind === 'span') return twistOfSpan(length, GJ, { from_m: a, to_m: b, torque });
    const [near, far] = [fromRoot(load.from_m), fromRoot(load.to_m)].sort((p, q) => p - q);
    return twistOfOverhang(GJ, { from_m: near ?? 0, to_m: far ?? 0, torque });
  }
  const inBay =
    load.kind === 'roaming' || (load.at_m > bay.from_m && load.at_m <= bay.to_m) || load.at_m === bay.from_m;
  if (!inBay) return 0;
  const at = load.kind === 'roaming' ? (bay.kind === 'span' ? length / 2 : length) : fromRootOrLocal();
  const torque = load.load_N * arm_m;
  return bay.kind === 'span'
    ? twistOfSpan(length, GJ, { from_m: at, to_m: at, torque })
    : twistOfOverhang(GJ, { from_m: at, to_m: at, torque });

  function fromRootOrLocal(): number {
    if (load.kind !== 'point') return 0;
    return bay.kind === 'span' ? local(load.at_m) : fromRoot(load.at_m);
  }
}
