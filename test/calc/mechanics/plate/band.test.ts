import { describe, expect, it } from 'vitest';
import { addToBand, emptyBand } from '../../../../calc/mechanics/plate/band.ts';
import { factorBand } from '../../../../calc/mechanics/plate/band-factor.ts';
import { solveBand, solveBandForAll } from '../../../../calc/mechanics/plate/band-solve.ts';
import { columnOf, exchange, following, tableauOf } from '../../../../calc/mechanics/plate/tableau.ts';
import { math } from '../../../units.ts';

/** Numbers between −1 and 1, the same in every run (Park and Miller's minimal standard generator). */
function draws(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return (2 * state) / 2147483647 - 1;
  };
}

const dense = (matrix: readonly (readonly number[])[], right: readonly number[]): number[] =>
  math
    .lusolve(
      matrix.map((row) => [...row]),
      [...right],
    )
    .map(Number);

function expectClose(found: ArrayLike<number>, wanted: readonly number[]): void {
  const scale = Math.max(...wanted.map(Math.abs));
  wanted.forEach((value, k) =>
    expect(Math.abs((found[k] ?? NaN) - value)).toBeLessThanOrEqual(1e-11 * scale),
  );
}

/** Positive definite: the diagonal outweighs its row. */
function bandOf(size: number, reach: number, draw: () => number) {
  const band = emptyBand(size, reach);
  const matrix = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  const put = (i: number, j: number, value: number): void => {
    addToBand(band, i, j, value);
    for (const [row, column] of i === j
      ? [[i, i]]
      : [
          [i, j],
          [j, i],
        ]) {
      const line = matrix[row ?? 0];
      if (line !== undefined && column !== undefined) line[column] = (line[column] ?? 0) + value;
    }
  };
  for (let i = 0; i < size; i++) {
    put(i, i, 2 * reach + 1);
    for (let j = Math.max(0, i - reach); j < i; j++)
      put(...((i + j) % 2 === 0 ? ([i, j] as const) : ([j, i] as const)), draw());
  }
  return { band, matrix };
}

describe('a band matrix, against the dense solution of mathjs', () => {
  it.each([
    [1, 0],
    [2, 1],
    [5, 2],
    [8, 3],
    [13, 5],
    [14, 6],
    [31, 7],
    [32, 11],
    [33, 40],
  ])('%i rows coupled with %i before them, one right-hand side and many', (size, reach) => {
    const draw = draws(size);
    const { band, matrix } = bandOf(size, reach, draw);
    const factor = factorBand(band);
    // Some begin with zeros: what lies above them is skipped.
    const rights = Array.from({ length: 6 }, (_, side) =>
      Array.from({ length: size }, (__, i) => (i < (side * size) / 7 ? 0 : draw())),
    );
    const found = solveBandForAll(
      factor,
      rights.map((right) => Float64Array.from(right)),
    );
    rights.forEach((right, side) => {
      const wanted = dense(matrix, right);
      expectClose(found[side] ?? [], wanted);
      expectClose(solveBand(factor, Float64Array.from(right)), wanted);
    });
  });

  it('is refused where a pivot is not positive, in whichever of the four rows it is', () => {
    for (let bad = 0; bad < 9; bad++) {
      const { band } = bandOf(9, 4, draws(3));
      addToBand(band, bad, bad, -20);
      expect(() => factorBand(band)).toThrow(`row ${bad} `);
    }
  });
});

describe('a tableau, against the dense solution of mathjs', () => {
  const size = 9;
  const draw = draws(11);
  const { matrix } = bandOf(size, size - 1, draw);
  const flat = Float64Array.from(matrix.flat());
  const constant = Array.from({ length: size }, draw);
  const given = Array.from({ length: size }, draw);

  /** Solves y = M z + b for z where it follows and for y where it does not. */
  function solved(follows: readonly boolean[], known: readonly number[], b: readonly number[]): number[] {
    const unknowns = matrix.map((row, i) =>
      row.map((entry, j) => (follows[j] === true ? entry : i === j ? -1 : 0)),
    );
    const right = matrix.map((row, i) =>
      row.reduce(
        (sum, entry, j) => sum - (follows[j] === true ? 0 : entry * (known[j] ?? 0)),
        (follows[i] === true ? (known[i] ?? 0) : 0) - (b[i] ?? 0),
      ),
    );
    return dense(unknowns, right);
  }

  it('gives what follows, and how it changes, whichever pairs are exchanged and exchanged back', () => {
    const tableau = tableauOf(size, flat);
    const follows = Array.from({ length: size }, () => false);
    for (const k of [4, 0, 8, 3, 4, 7, 0, 1, 2, 4, 5, 6, 0, 8]) {
      exchange(tableau, k);
      follows[k] = follows[k] !== true;
      expectClose(
        following(tableau, Float64Array.from(given), Float64Array.from(constant)),
        solved(follows, given, constant),
      );
      for (let column = 0; column < size; column++) {
        const unit = given.map((_, i) => (i === column ? 1 : 0));
        const none = constant.map(() => 0);
        expectClose(columnOf(tableau, column), solved(follows, unit, none));
      }
    }
  });
});
