import type { Bay } from './bays.ts';
import { solveSupports } from './beam.ts';
import type { PreparedBeam } from './beam-model.ts';
import { addScaled, product, type Polynomial } from './polynomial.ts';

/**
 * What a unit load standing at s from the left end of one bay does over the supports: cubics in s, exact because a beam
 * of one section answers a moving load with a cubic.
 */
export interface BayInfluence {
  readonly bay: Bay;
  /** A cubic for each support: reaction, up positive. */
  readonly reactions: readonly Polynomial[];
  /** A cubic for each support: moment over it, sagging positive. */
  readonly moments: readonly Polynomial[];
}

/** Influence of a unit load in each bay. */
export function influenceOf(prepared: PreparedBeam, bays: readonly Bay[]): BayInfluence[] {
  return bays.map((bay) => {
    const length = bay.to_m - bay.from_m;
    const solved = [0, 1 / 3, 2 / 3, 1].map((share) =>
      solveSupports(prepared, { lines: [], points: [{ at_m: bay.from_m + share * length, load_N: 1 }] }),
    );
    const through = (values: readonly Float64Array[], i: number): number[] =>
      cubicThrough(
        [values[0]?.[i] ?? 0, values[1]?.[i] ?? 0, values[2]?.[i] ?? 0, values[3]?.[i] ?? 0],
        length,
      );
    const supports = prepared.beam.supports.map((_, index) => index);
    const reactions = solved.map(({ reactions_N }) => reactions_N);
    const moments = solved.map(({ moments_Nm }) => moments_Nm);
    return {
      bay,
      reactions: supports.map((i) => through(reactions, i)),
      moments: supports.map((i) => through(moments, i)),
    };
  });
}

/** Moment under a unit load as it moves along its own span. */
export function momentUnderLoad({ bay, moments }: BayInfluence): number[] {
  if (bay.kind !== 'span') return [0];
  const length = bay.to_m - bay.from_m;
  const result = [0, 1, -1 / length];
  addScaled(result, product(moments[bay.leftSupport] ?? [0], [1, -1 / length]), 1);
  addScaled(result, product(moments[bay.leftSupport + 1] ?? [0], [0, 1 / length]), 1);
  return result;
}

/** Shear at both ends of span `s` (left support `s`) from a unit load in the bay of `influence`. */
export function shearAtEnds(
  influence: BayInfluence,
  s: number,
  spanLength_m: number,
): { readonly left: number[]; readonly right: number[] } {
  const common: number[] = [0];
  addScaled(common, influence.moments[s + 1] ?? [0], 1 / spanLength_m);
  addScaled(common, influence.moments[s] ?? [0], -1 / spanLength_m);
  const own = influence.bay.kind === 'span' && influence.bay.leftSupport === s;
  const left = common.slice();
  const right = common.slice();
  if (own) {
    addScaled(left, [1, -1 / spanLength_m], 1);
    addScaled(right, [0, -1 / spanLength_m], 1);
  }
  return { left, right };
}

/** The cubic through four values at 0, 1/3, 2/3 and the whole of a length. */
function cubicThrough([y0, y1, y2, y3]: readonly [number, number, number, number], length: number): number[] {
  return [
    y0,
    (-11 * y0 + 18 * y1 - 9 * y2 + 2 * y3) / (2 * length),
    (9 * (2 * y0 - 5 * y1 + 4 * y2 - y3)) / (2 * length ** 2),
    (9 * (-y0 + 3 * y1 - 3 * y2 + y3)) / (2 * length ** 3),
  ];
}
