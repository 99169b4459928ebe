import { gauss, hermite } from '../../mechanics/plate/hermite.ts';
import { nearestLine, nodeOf, type PlateMesh } from '../../mechanics/plate/mesh.ts';
import { perNode } from '../../mechanics/plate/stiffness.ts';
import type { FlatBar } from './bar.ts';

/**
 * Largest curvature of a bar, 1/m: of the cubic that it follows between two lines of the mesh, which is most exact at Gauss's
 * places and continued straight from there. The top bends on past the end of a bar, where nothing bends the bar: moments of
 * the top say nothing of it there.
 */
export function barCurvature(
  mesh: PlateMesh,
  field: Float64Array,
  bar: FlatBar,
): { readonly value: number; readonly x_m: number; readonly y_m: number } {
  const x_m = nearestLine(mesh.x_m, bar.at);
  const i = mesh.x_m.indexOf(x_m);
  const onBar = mesh.y_m.flatMap((y_m, j) => (y_m >= bar.from - 1e-6 && y_m <= bar.to + 1e-6 ? [j] : []));
  /** At each line, of the sides that meet there. */
  const sums = new Map(onBar.map((j) => [j, { curvature: 0, sides: 0 }]));
  for (const j of onBar.slice(0, -1)) {
    const h = (mesh.y_m[j + 1] ?? 0) - (mesh.y_m[j] ?? 0);
    const ends = [j, j + 1].flatMap((at) => {
      const dof = perNode * nodeOf(mesh, i, at);
      return [field[dof] ?? 0, field[dof + 2] ?? 0];
    });
    const [near = 0, far = 0] = gauss.map((s) =>
      hermite(s, h, 2).reduce((sum, value, k) => sum + value * (ends[k] ?? 0), 0),
    );
    const apart = ((far - near) * Math.sqrt(3)) / 2;
    [j, j + 1].forEach((at, end) => {
      const sum = sums.get(at);
      if (sum === undefined) return;
      sum.curvature += (near + far) / 2 + (end === 0 ? -apart : apart);
      sum.sides++;
    });
  }
  let peak = { value: 0, x_m: bar.at, y_m: bar.from };
  sums.forEach(({ curvature, sides }, j) => {
    const value = Math.abs(curvature) / Math.max(1, sides);
    if (value > peak.value) peak = { value, x_m: bar.at, y_m: mesh.y_m[j] ?? 0 };
  });
  return peak;
}
