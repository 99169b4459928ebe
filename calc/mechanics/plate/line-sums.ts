import { gauss, hermite } from './hermite.ts';

/**
 * What the unknowns along a row of nodes make of a cubic and its derivatives at each node, where those at Gauss's two
 * places of a side are continued straight to its ends and a node takes the mean of its sides.
 */
export interface LineSums {
  /** The first of the three nodes that count, for each node. */
  readonly first: Int32Array;
  /** Shares of the value and the slope at the three nodes, six numbers for each node: of the cubic itself, */
  readonly plain: Float64Array;
  /** of its first derivative, */
  readonly sloped: Float64Array;
  /** and of its second. */
  readonly bent: Float64Array;
}

/** Numbers for each node: value and slope at three. */
export const perLine = 6;

/** Share of what is at the nearer and the farther of Gauss's places in its straight continuation to an end. */
const [near, far] = [(1 + Math.sqrt(3)) / 2, (1 - Math.sqrt(3)) / 2];

/** @param lines places of the nodes in order, two or more */
export function lineSumsOf(lines: readonly number[]): LineSums {
  const sums = {
    first: Int32Array.from(lines, (_, k) => Math.max(0, Math.min(k - 1, lines.length - 3))),
    plain: new Float64Array(perLine * lines.length),
    sloped: new Float64Array(perLine * lines.length),
    bent: new Float64Array(perLine * lines.length),
  };
  const orders = [
    [0, sums.plain],
    [1, sums.sloped],
    [2, sums.bent],
  ] as const;
  for (let side = 0; side + 1 < lines.length; side++) {
    const h = (lines[side + 1] ?? 0) - (lines[side] ?? 0);
    for (const [order, into] of orders) {
      const [one, two] = [hermite(gauss[0], h, order), hermite(gauss[1], h, order)];
      for (const node of [side, side + 1]) {
        const [ofOne, ofTwo] = node === side ? [near, far] : [far, near];
        const sides = node === 0 || node === lines.length - 1 ? 1 : 2;
        const from = perLine * node + 2 * (side - (sums.first[node] ?? 0));
        one.forEach((value, k) => {
          const share = (ofOne * value + ofTwo * (two[k] ?? 0)) / sides;
          into[from + k] = (into[from + k] ?? 0) + share;
        });
      }
    }
  }
  return sums;
}
