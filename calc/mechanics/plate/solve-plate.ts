import { fieldUnder, type FreePlate } from './free-plate.ts';
import { nodeCount } from './mesh.ts';
import { momentsOf, type PlateMoments } from './moments.ts';
import { movementAt, resultantOf, type PlateLoad, type Resultant } from './plate-load.ts';
import { perNode } from './stiffness.ts';
import { standerOf, type PreparedLoad } from './standing.ts';
import { fieldOfStanding } from './standing-field.ts';
import type { HeldPlate } from './supports.ts';

/** How a plate stands under one load, and what comes of it. */
export type SolvedPlate =
  | {
      readonly stands: true;
      readonly field: Float64Array;
      /** Force of each support in its own sense, zero or more, N. */
      readonly forces_N: Float64Array;
      /** Supports that carry nothing: the plate has lifted off, or a screw is slack. */
      readonly lifted: readonly boolean[];
      /** Down, at any place of the plate. */
      readonly movement_m: (x_m: number, y_m: number) => number;
      readonly moments: () => PlateMoments;
    }
  | { readonly stands: false; readonly why: string };

/** Some loads together, ready to be put on a plate; one back-substitution. */
export function preparedLoad(plate: FreePlate, loads: readonly PlateLoad[]): PreparedLoad {
  return { field: fieldUnder(plate, loads), resultant: resultantOf(loads) };
}

/** A load and a share of another one; nothing is solved anew. */
export function addedLoads(a: PreparedLoad, b: PreparedLoad, share = 1): PreparedLoad {
  const sum = (k: 0 | 1 | 2): number => a.resultant[k] + share * b.resultant[k];
  return {
    field: a.field.map((value, k) => value + share * (b.field[k] ?? 0)),
    resultant: [sum(0), sum(1), sum(2)],
  };
}

/** Solves one load; for many on the same plate keep a stander, which begins where it last ended. */
export function solvePlate(held: HeldPlate, load: PreparedLoad): SolvedPlate {
  const standing = standerOf(held).stand(load);
  if (!standing.stands) return { stands: false, why: tippingWords(held, load.resultant) };
  const field = fieldOfStanding(held, load, standing);
  const { forces_N } = standing;
  return {
    stands: true,
    field,
    forces_N,
    lifted: Array.from(forces_N, (force) => force === 0),
    movement_m: (x_m, y_m) => movementAt(held.plate.mesh, field, x_m, y_m),
    moments: () => momentsOf(held.plate, field),
  };
}

/**
 * Why a plate that does not stand does not. Screws are only blamed where screws that never come loose would hold it.
 */
export function tippingWords(held: HeldPlate, resultant: Resultant): string {
  const { supports } = held;
  const tips = 'nothing stops the top from tipping';
  const screws = supports.filter(({ sense }) => sense === 'pull');
  const pushes = supports.length - screws.length;
  if (resultant[0] > 0 && pushes === 0) return 'nothing holds the top up';
  if (screws.length > 0 && stands(endless(held), resultant)) return `the screws bear no more: ${tips}`;
  if (resultant[0] <= 0 && screws.length === 0) return 'nothing holds the top down';
  if (areInLine(supports)) return `all that holds the top lies on one line: ${tips}`;
  const beyond = 'the load lies beyond all that holds the top';
  return screws.length === 0
    ? `${beyond}: ${tips}`
    : `${beyond}, and no screw lies where it would help: ${tips}`;
}

/** The same plate on supports that bear anything. */
function endless(held: HeldPlate): HeldPlate {
  return { ...held, supports: held.supports.map((each) => ({ ...each, most_N: Infinity })) };
}

/** Whether anything balances a load hangs on its resultant alone, not on how the plate bends under it. */
function stands(held: HeldPlate, resultant: Resultant): boolean {
  const field = new Float64Array(perNode * nodeCount(held.plate.mesh));
  return standerOf(held).stand({ field, resultant }).stands;
}

function areInLine(supports: readonly { readonly x_m: number; readonly y_m: number }[]): boolean {
  const [first] = supports;
  if (first === undefined) return true;
  const arms = supports.map(({ x_m, y_m }) => [x_m - first.x_m, y_m - first.y_m] as const);
  const longest = arms.reduce((a, b) => (Math.hypot(...b) > Math.hypot(...a) ? b : a));
  const length = Math.hypot(...longest);
  return arms.every(([x, y]) => Math.abs(x * longest[1] - y * longest[0]) <= 1e-6 * length * length);
}
