import { BandMatrix } from './band-matrix.ts';

/** A spring under a structure. */
export interface PushSpring {
  /** Unknowns of the structure and of what it lies on; the latter −1 where that is the ground. */
  readonly plate: number;
  readonly under: number;
  readonly stiffness: number;
  /** Whether it holds what would lift off, too. */
  readonly pulls?: boolean;
}

/**
 * Finds which springs push: those that would pull are let go, those that are sunk into put back. One that is let go is one whose
 * force is given back to the structure.
 *
 * @param held the structure with every spring, factored
 */
export function standOn(
  held: BandMatrix,
  size: number,
  springs: readonly PushSpring[],
): (F: Float64Array) => { readonly U: Float64Array; readonly forces: readonly number[] } {
  const gapsOf = (U: Float64Array): number[] =>
    springs.map(({ plate, under }) => (U[plate] ?? NaN) - (under < 0 ? 0 : (U[under] ?? NaN)));
  const back = springs.map(({ plate, under, pulls }) => {
    const F = new Float64Array(size);
    if (pulls === true) return F;
    F[plate] = 1;
    if (under >= 0) F[under] = -1;
    return held.solve(F);
  });
  const give = back.map(gapsOf);
  const given = (gaps: readonly number[], loose: readonly number[]): number[] => {
    if (loose.length === 0) return [];
    const small = new BandMatrix(loose.length, loose.length - 1);
    loose.forEach((k, p) =>
      loose.forEach((m, q) =>
        small.add(p, q, (p === q ? 1 / (springs[k]?.stiffness ?? NaN) : 0) - (give[k]?.[m] ?? NaN)),
      ),
    );
    return [...small.factor().solve(Float64Array.from(loose, (k) => gaps[k] ?? NaN))];
  };

  let holding = springs.map(() => true);
  return (F) => {
    const U = held.solve(F);
    const first = gapsOf(U);
    for (let round = 0; round < 200; round++) {
      const loose = holding.flatMap((each, k) => (each ? [] : [k]));
      const put = given(first, loose);
      const gaps = first.map((gap, k) =>
        loose.reduce((sum, m, p) => sum + (give[m]?.[k] ?? NaN) * (put[p] ?? NaN), gap),
      );
      const next = gaps.map((gap, k) => gap > 0 || springs[k]?.pulls === true);
      const wrong = next.flatMap((each, k) => (each === holding[k] ? [] : [k]));
      if (wrong.length === 0) {
        loose.forEach((m, p) =>
          back[m]?.forEach((each, i) => (U[i] = (U[i] ?? NaN) + each * (put[p] ?? NaN))),
        );
        const forces = gaps.map((gap, k) => (holding[k] === true ? gap * (springs[k]?.stiffness ?? NaN) : 0));
        return { U, forces };
      }
      // After a while one at a time, so that nothing goes round in circles.
      const worst = wrong.reduce((a, b) => (Math.abs(gaps[b] ?? 0) > Math.abs(gaps[a] ?? 0) ? b : a));
      holding = round < 12 ? next : holding.map((each, k) => (k === worst ? !each : each));
    }
    throw new Error('it finds no rest');
  };
}
