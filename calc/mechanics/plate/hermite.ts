/** A 4 × 4 matrix of integrals over one element side, row by row; order: value and slope at the near end, then at the far end. */
export type SideMatrix = Float64Array;

/** ∫ N N over a side of length h: cubic Hermite functions, values only. */
export function massOfSide(h: number): SideMatrix {
  const c = h / 420;
  return scaled(c, [
    [156, 22 * h, 54, -13 * h],
    [22 * h, 4 * h * h, 13 * h, -3 * h * h],
    [54, 13 * h, 156, -22 * h],
    [-13 * h, -3 * h * h, -22 * h, 4 * h * h],
  ]);
}

/** ∫ N' N' over a side. */
export function slopeOfSide(h: number): SideMatrix {
  const c = 1 / (30 * h);
  return scaled(c, [
    [36, 3 * h, -36, 3 * h],
    [3 * h, 4 * h * h, -3 * h, -h * h],
    [-36, -3 * h, 36, -3 * h],
    [3 * h, -h * h, -3 * h, 4 * h * h],
  ]);
}

/** ∫ N'' N'' over a side: the stiffness of a beam without its EI. */
export function curvatureOfSide(h: number): SideMatrix {
  const c = 1 / h ** 3;
  return scaled(c, [
    [12, 6 * h, -12, 6 * h],
    [6 * h, 4 * h * h, -6 * h, 2 * h * h],
    [-12, -6 * h, 12, -6 * h],
    [6 * h, 2 * h * h, -6 * h, 4 * h * h],
  ]);
}

function scaled(c: number, rows: readonly (readonly number[])[]): SideMatrix {
  return Float64Array.from(rows.flat(), (value) => c * value);
}

/** ∫ N N'' over a side, by parts from ∫ N' N' and the ends. */
export function valueTimesCurvature(h: number): SideMatrix {
  const matrix = slopeOfSide(h).map((value) => -value);
  matrix[1] = (matrix[1] ?? 0) - 1;
  matrix[11] = (matrix[11] ?? 0) + 1;
  return matrix;
}

/**
 * The four cubics of a side at a share s of its length h.
 *
 * @param order 0 for the functions, 1 and 2 for their derivatives by length
 */
export function hermite(s: number, h: number, order: 0 | 1 | 2): readonly [number, number, number, number] {
  if (order === 0)
    return [
      1 - 3 * s * s + 2 * s ** 3,
      h * (s - 2 * s * s + s ** 3),
      3 * s * s - 2 * s ** 3,
      h * (s ** 3 - s * s),
    ];
  if (order === 1)
    return [(6 * s * s - 6 * s) / h, 1 - 4 * s + 3 * s * s, (6 * s - 6 * s * s) / h, 3 * s * s - 2 * s];
  return [(12 * s - 6) / h ** 2, (6 * s - 4) / h, (6 - 12 * s) / h ** 2, (6 * s - 2) / h];
}

/** Gauss's two places of a side, which integrate cubics exactly. */
export const gauss = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6] as const;
