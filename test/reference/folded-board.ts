import { BandMatrix } from './band-matrix.ts';
import { corners, inverse, rectangleOf, times, transposed, type Rectangle } from './plate-rectangle.ts';
import { standOn, type PushSpring } from './push-springs.ts';

/*
 * A board with strips along its edges on brackets: flat shells, each a rectangle in bending (plate-rectangle.ts) and in its own plane
 * (Wilson and Taylor, four corners and bending shapes of its own), that meet along lines. At each node it moves three
 * ways, slopes along the board for what goes down and for what goes sideways, and turns about the board's length. Units: in, lbf.
 */
export interface FoldedBoard {
  readonly length: number;
  readonly cells: number;
  readonly thickness: number;
  /** Across the board, from its back edge: lines of nodes. */
  readonly lines: readonly number[];
  /** Upright strips: which line they stand on, lines of nodes above and below it, up positive, and how much stiffer their wood is. */
  readonly upright: readonly {
    readonly line: number;
    readonly z: readonly number[];
    readonly stiffer: number;
  }[];
  readonly wood: {
    readonly E: number;
    readonly across: number;
    readonly shear: number;
    readonly poisson: number;
  };
  /** Each a line across the board, as long as from its back edge; one that only pushes, or holds what lifts too. */
  readonly brackets: readonly { readonly at: number; readonly to: number; readonly pulls: boolean }[];
}
interface Patch {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly load: number;
}
interface Shell {
  readonly ends: readonly [number, number];
  readonly isFlat: boolean;
  readonly width: number;
  readonly stiffer: number;
}
export interface Bent {
  /** Largest stress along the grain at either face of the board, averaged over its thickness across. */
  readonly board: number;
  /** The same over a bracket. */
  readonly over: (x: number) => number;
  /** Largest at an end of an upright strip. */
  readonly strips: number;
}

/** Stiffness in its own plane of a rectangle; unknowns at each corner along x and across. Its own shapes are condensed. */
function inPlane([hx, hy]: readonly [number, number], elastic: readonly (readonly number[])[]): number[][] {
  const strains = (u: number, v: number): number[][] => {
    const N = corners.map(([i, j]) => [
      ((i ? 1 : -1) * (j ? v : 1 - v)) / hx,
      ((j ? 1 : -1) * (i ? u : 1 - u)) / hy,
    ]);
    const own = [(1 - 2 * u) / hx, (1 - 2 * v) / hy];
    return [
      [...N.flatMap(([dx = 0]) => [dx, 0]), own[0] ?? 0, 0, 0, 0],
      [...N.flatMap(([, dy = 0]) => [0, dy]), 0, 0, 0, own[1] ?? 0],
      [...N.flatMap(([dx = 0, dy = 0]) => [dy, dx]), 0, own[0] ?? 0, own[1] ?? 0, 0],
    ];
  };
  const K = Array.from({ length: 12 }, () => Array.from({ length: 12 }, () => 0));
  for (const u of [0.211324865405, 0.788675134595])
    for (const v of [0.211324865405, 0.788675134595]) {
      const B = strains(u, v);
      const DB = elastic.map((row) => times(transposed(B), row));
      K.forEach((row, p) =>
        row.forEach((_, q) => {
          for (let k = 0; k < 3; k++)
            row[q] = (row[q] ?? 0) + ((hx * hy) / 4) * (B[k]?.[p] ?? 0) * (DB[k]?.[q] ?? 0);
        }),
      );
    }
  const own = inverse(K.slice(8).map((row) => row.slice(8)));
  const side = K.slice(0, 8).map((row) => row.slice(8));
  return K.slice(0, 8).map((row, p) =>
    row.slice(0, 8).map((each, q) => each - (times([side[p] ?? []], times(own, side[q] ?? []))[0] ?? NaN)),
  );
}

/** How a board is bent under a patch. */
export function foldedBoard(board: FoldedBoard): (patch: Patch) => Bent {
  const { length, cells, thickness: t, lines, upright, wood, brackets } = board;
  const hx = length / cells;
  const shells: Shell[] = lines
    .slice(1)
    .map((y, j) => ({ ends: [j, j + 1], isFlat: true, stiffer: 1, width: y - (lines[j] ?? 0) }));
  let nodes = lines.length;
  for (const { line, z, stiffer } of upright) {
    const heights = [...z, 0].sort((a, b) => a - b);
    const named = heights.map((at) => (at === 0 ? line : nodes++));
    heights.slice(1).forEach((at, k) => {
      const ends = [named[k] ?? 0, named[k + 1] ?? 0] as const;
      shells.push({ ends, isFlat: false, width: at - (heights[k] ?? 0), stiffer });
    });
  }
  const { E, across: ratio, shear: G, poisson } = wood;
  const whole = 1 - poisson ** 2 * ratio;
  const elastic = (by: number): number[][] => [
    [(by * E) / whole, (by * poisson * ratio * E) / whole, 0],
    [(by * poisson * ratio * E) / whole, (by * ratio * E) / whole, 0],
    [0, 0, by * G * E],
  ];
  type Part = Readonly<Record<'bending' | 'stretching', number[][]>> & { plate: Rectangle; flat: number[][] };
  const parts = new Map<string, Part>();
  const partOf = ({ width, stiffer }: Shell): Part => {
    const name = `${width} ${stiffer}`;
    const [bending, stretching] = [elastic((stiffer * t ** 3) / 12), elastic(stiffer * t)];
    const found = parts.get(name) ?? {
      ...{ bending, stretching },
      plate: rectangleOf([hx, width], bending),
      flat: inPlane([hx, width], stretching),
    };
    parts.set(name, found);
    return found;
  };
  const stations = cells + 1;
  const size = 6 * nodes * stations;
  const at = (i: number, node: number): number => 6 * (i * nodes + node);
  const cornersOf = ({ ends }: Shell, i: number): number[] => corners.map(([a, b]) => at(i + a, ends[b]));
  /** Unknowns in bending, with their signs: what goes down or sideways, its slope along, and its turn. */
  const bentBy = (shell: Shell, i: number): (readonly [number, number])[] =>
    cornersOf(shell, i).flatMap((node) =>
      shell.isFlat
        ? ([
            [node + 2, 1],
            [node + 3, 1],
            [node + 5, 1],
          ] as const)
        : ([
            [node + 1, 1],
            [node + 4, 1],
            [node + 5, -1],
          ] as const),
    );
  const stretchedBy = (shell: Shell, i: number): number[] =>
    cornersOf(shell, i).flatMap((node) => [node, node + (shell.isFlat ? 1 : 2)]);

  const reach = 6 * (nodes + Math.max(...shells.map(({ ends: [a, b] }) => Math.abs(a - b)))) + 5;
  const K = new BandMatrix(size, reach);
  for (let i = 0; i < cells; i++)
    for (const shell of shells) {
      const { plate, flat } = partOf(shell);
      const bent = bentBy(shell, i);
      bent.forEach(([p, sp], r) =>
        bent.forEach(([q, sq], c) => K.add(p, q, sp * sq * (plate.stiffness[r]?.[c] ?? 0))),
      );
      const stretched = stretchedBy(shell, i);
      stretched.forEach((p, r) => stretched.forEach((q, c) => K.add(p, q, flat[r]?.[c] ?? 0)));
    }
  const stiff = 20 * E;
  const springs = brackets.flatMap(({ at: x, to, pulls }): PushSpring[] => {
    const i = Math.round(x / hx);
    const middle = at(
      i,
      lines.findIndex((y) => y >= (lines.at(-1) ?? 0) / 2),
    );
    K.add(middle + 1, middle + 1, stiff);
    return lines.flatMap((y, j) =>
      y > to + 1e-9
        ? []
        : [
            {
              plate: at(i, j) + 2,
              under: -1,
              stiffness: stiff * (((lines[j + 1] ?? y) - (lines[j - 1] ?? y)) / 2),
              pulls,
            },
          ],
    );
  });
  for (const { plate, stiffness } of springs) K.add(plate, plate, stiffness);
  K.add(0, 0, stiff);
  // Slopes that no shell has at a node.
  for (let node = 0; node < nodes; node++)
    for (const [slope, isFlat] of [
      [3, true],
      [4, false],
    ] as const)
      if (!shells.some((shell) => shell.isFlat === isFlat && shell.ends.includes(node)))
        for (let i = 0; i < stations; i++) K.add(at(i, node) + slope, at(i, node) + slope, E);
  const settle = standOn(K.factor(), size, springs);

  return ({ x, y, load }) => {
    const F = new Float64Array(size);
    const n = 12;
    for (let k = 0; k < n * n; k++) {
      const [px, py] = [
        x[0] + ((x[1] - x[0]) * ((k % n) + 0.5)) / n,
        y[0] + ((y[1] - y[0]) * (Math.floor(k / n) + 0.5)) / n,
      ];
      const j = Math.max(0, lines.findIndex((line) => line > py) - 1);
      const i = Math.min(cells - 1, Math.floor(px / hx));
      const shell = shells[j];
      if (shell === undefined) continue;
      const N = partOf(shell).plate.shapesAt(px - i * hx, py - (lines[j] ?? 0));
      bentBy(shell, i).forEach(([p], c) => (F[p] = (F[p] ?? 0) + (load / n ** 2) * (N[c] ?? 0)));
    }
    const { U } = settle(F);
    /** In the middle of a cell, at one face and the other, along the grain. */
    const middleOf = (shell: Shell, i: number): readonly [number, number] => {
      const { plate, bending, stretching } = partOf(shell);
      const curved = times(
        plate.bentAt(hx / 2, shell.width / 2),
        bentBy(shell, i).map(([p, sign]) => sign * (U[p] ?? NaN)),
      );
      const [mx = NaN] = times(bending, curved);
      const u = stretchedBy(shell, i).map((p) => U[p] ?? NaN);
      const [ex, ey] = [
        ((u[2] ?? 0) - (u[0] ?? 0) + (u[6] ?? 0) - (u[4] ?? 0)) / (2 * hx),
        ((u[5] ?? 0) - (u[1] ?? 0) + (u[7] ?? 0) - (u[3] ?? 0)) / (2 * shell.width),
      ];
      const [nx = NaN] = times(stretching, [ex, ey, 0]);
      return [nx / t + (6 * mx) / t ** 2, nx / t - (6 * mx) / t ** 2];
    };
    const all = shells.map((shell) => Array.from({ length: cells }, (_, i) => middleOf(shell, i)));
    /** At a station, from the cells on either side. */
    const alongAt = (s: number, i: number, face: 0 | 1): number => {
      const value = (k: number): number => all[s]?.[Math.min(cells - 1, Math.max(0, k))]?.[face] ?? NaN;
      const left = 1.5 * value(i - 1) - 0.5 * value(i - 2);
      const right = 1.5 * value(i) - 0.5 * value(i + 1);
      return i === 0 ? right : i === cells ? left : (left + right) / 2;
    };
    const faces = [0, 1] as const;
    /** Mean over a thickness, which two cells are as wide as beside the edges. */
    const meanAt = (s: number, i: number, face: 0 | 1): number => {
      let [sum, wide] = [0, 0];
      for (let k = s; wide < t - 1e-9 && k < lines.length - 1; k++) {
        const w = Math.min(shells[k]?.width ?? 0, t - wide);
        sum += w * alongAt(k, i, face);
        wide += w;
      }
      return wide < t - 1e-9 ? 0 : Math.abs(sum / wide);
    };
    const joined = (one?: Shell, other?: Shell): boolean =>
      one?.isFlat === false && other?.isFlat === false && one.ends[1] === other.ends[0];
    /** Straight on from the middles of the outermost two cells of a strip to its end. */
    const tipAt = (s: number, i: number, face: 0 | 1): number => {
      const [shell, before, after] = [shells[s], shells[s - 1], shells[s + 1]];
      const inner = !joined(shell, after) ? s - 1 : !joined(before, shell) ? s + 1 : s;
      if (shell?.isFlat !== false || shells[inner]?.width !== shell.width) return 0;
      return Math.abs(1.5 * alongAt(s, i, face) - 0.5 * alongAt(inner, i, face));
    };
    const most = (of: typeof meanAt, i: number): number =>
      Math.max(
        ...shells.flatMap(({ isFlat }, s) =>
          isFlat === (of === meanAt) ? faces.map((face) => of(s, i, face)) : [],
        ),
      );
    const over = (x: number): number => most(meanAt, Math.round(x / hx));
    const everywhere = Array.from({ length: stations }, (_, i) => i);
    return {
      board: Math.max(...everywhere.map((i) => most(meanAt, i))),
      over,
      strips: Math.max(0, ...everywhere.map((i) => most(tipAt, i))),
    };
  };
}
