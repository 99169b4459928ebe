import { prepareBeam, solveBeam } from '../../../calc/mechanics/beam.ts';
import type { Beam, BeamLoad } from '../../../calc/mechanics/beam-model.ts';
import { momentIn, movementIn, shearIn, type BeamField } from '../../../calc/mechanics/beam-field.ts';
import { largest, valueAt } from '../../../calc/mechanics/polynomial.ts';

interface BeamParts extends Partial<Omit<Beam, 'supports'>> {
  readonly length_m: number;
  readonly supports: readonly (number | { readonly at_m: number; readonly stiffness_Npm: number })[];
}

/** A beam on rigid supports, without shear movement, of EI = 1 unless something else is said. */
export function beamOf({ supports, ...others }: BeamParts): Beam {
  return {
    EI_Nm2: 1,
    GA_N: Infinity,
    hinges: [],
    ...others,
    supports: supports.map((each) =>
      typeof each === 'number' ? { at_m: each, stiffness_Npm: Infinity } : each,
    ),
  };
}

/** Solves a beam and reads it at any place. */
export function solved(parts: BeamParts, load: Partial<BeamLoad>) {
  const beam = beamOf(parts);
  const full: BeamLoad = { lines: load.lines ?? [], points: load.points ?? [] };
  const breaks = [
    ...full.lines.flatMap(({ from_m, to_m }) => [from_m, to_m]),
    ...full.points.map(({ at_m }) => at_m),
  ];
  const field = solveBeam(prepareBeam(beam, breaks), full);
  return { ...readings(field), field };
}

/** Reads a solved beam. Left and right of a place where something jumps are told apart. */
function readings(field: BeamField) {
  const grid = field.prepared.grid_m;
  const intervals = Array.from({ length: grid.length - 1 }, (_, i) => i);
  const at = (polynomialIn: typeof momentIn, x: number, side: 'left' | 'right'): number => {
    let i = 0;
    while (i + 2 < grid.length && (side === 'left' ? (grid[i + 1] ?? 0) < x : (grid[i + 1] ?? 0) <= x))
      i += 1;
    return valueAt(polynomialIn(field, i), x - (grid[i] ?? 0));
  };
  const most = (polynomialIn: typeof momentIn, sense: 1 | -1, from = -Infinity, to = Infinity): number =>
    Math.max(
      ...intervals
        .filter((i) => (grid[i] ?? 0) >= from - 1e-12 && (grid[i + 1] ?? 0) <= to + 1e-12)
        .map((i) => {
          const polynomial = Array.from(polynomialIn(field, i), (c) => c * sense);
          return largest(polynomial, 0, (grid[i + 1] ?? 0) - (grid[i] ?? 0)).value;
        }),
    ) * sense;
  return {
    reactions: Array.from(field.reactions_N),
    moment: (x: number) => at(momentIn, x, 'left'),
    movement: (x: number) => at(movementIn, x, 'left'),
    shearLeft: (x: number) => at(shearIn, x, 'left'),
    shearRight: (x: number) => at(shearIn, x, 'right'),
    mostMoment: (sense: 1 | -1, from?: number, to?: number) => most(momentIn, sense, from, to),
    mostMovement: (sense: 1 | -1, from?: number, to?: number) => most(movementIn, sense, from, to),
  };
}
