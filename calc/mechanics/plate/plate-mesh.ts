import { gradedLines, type PlateMesh } from './mesh.ts';

/** What decides where a mesh of a plate has its lines. */
export interface PlateOutline {
  readonly length_m: number;
  readonly depth_m: number;
  readonly thickness_m: number;
  readonly x: SideLines;
  readonly y: SideLines;
}

/** Places along one side of a plate. */
export interface SideLines {
  /** Rails, panels, bars and their ends: always a line of the mesh. */
  readonly stops_m: readonly number[];
  /** Where moments turn sharply, as over the front rail: cells are small there. */
  readonly near_m: readonly number[];
}

/** Cells along the longer side, and least size of a cell as a share of the shorter: nothing thinner is a plate. */
const [alongLonger, leastShare] = [16, 1 / 40];
/** Lines nearer to each other are one. */
const closest_m = 0.004;
/** Part of its distance from a sharp place that a cell may be larger. */
const widening = 0.35;

/**
 * Chooses a mesh from the geometry: lines through every stop, cells as small as the plate is thick beside the sharp
 * places, growing away from them up to a sixteenth of the longer side.
 *
 * @param finer how many times smaller every cell is to be; solving at 1 and 2 shows what the mesh is worth
 * @throws RangeError where a measure isn't more than zero
 */
export function plateMesh({ length_m, depth_m, thickness_m, x, y }: PlateOutline, finer = 1): PlateMesh {
  for (const [name, value] of Object.entries({ length_m, depth_m, thickness_m, finer })) {
    if (!(value > 0 && value < Infinity))
      throw new RangeError(`${name} of a plate is more than zero, not ${value}`);
  }
  const largest_m = Math.max(length_m, depth_m) / alongLonger / finer;
  const size_m = Math.max(thickness_m, Math.min(length_m, depth_m) * leastShare) / finer;
  const growth = widening / finer;
  const lines = (whole_m: number, { stops_m, near_m }: SideLines): number[] =>
    gradedLines(
      whole_m,
      stops_m,
      { largest_m, near: near_m.map((at_m) => ({ at_m, size_m })), growth },
      closest_m,
    );
  return { x_m: lines(length_m, x), y_m: lines(depth_m, y) };
}
