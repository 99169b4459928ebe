import type { PlateMesh } from './mesh.ts';
import type { PlateSupport } from './supports.ts';

/** A line that pushes: a rail or the top edge of a panel. */
export interface SupportLine {
  readonly along: 'x' | 'y';
  /** Where it lies: y of a line along x, x of a line along y. */
  readonly at_m: number;
  readonly from_m: number;
  readonly to_m: number;
  /** How stiff it is for each length, N/m². */
  readonly stiffness_Npm2: number;
}

/** One place of a line, and the length of line it stands for. */
export interface LinePlace extends PlateSupport {
  readonly length_m: number;
}

const slack_m = 0.004;

/**
 * A line as places that push, one where each line of the mesh crosses it.
 *
 * @throws RangeError where the line has no length, no stiffness, or crosses fewer than two lines of the mesh
 */
export function lineSupports(
  mesh: PlateMesh,
  { along, at_m, from_m, to_m, stiffness_Npm2 }: SupportLine,
): LinePlace[] {
  if (!(to_m > from_m && stiffness_Npm2 > 0))
    throw new RangeError('a line of supports has a length and a stiffness');
  const lines = (along === 'x' ? mesh.x_m : mesh.y_m).filter(
    (at) => at >= from_m - slack_m && at <= to_m + slack_m,
  );
  if (lines.length < 2) throw new RangeError('a line of supports crosses two lines of the mesh or more');
  return lines.map((at, index) => {
    const length_m = ((lines[index + 1] ?? at) - (lines[index - 1] ?? at)) / 2;
    const [x_m, y_m] = along === 'x' ? [at, at_m] : [at_m, at];
    return { x_m, y_m, sense: 'push', give_mpN: 1 / (stiffness_Npm2 * length_m), most_N: Infinity, length_m };
  });
}
