import { BandMatrix } from './band-matrix.ts';
import { corners, rectangleOf, times } from './plate-rectangle.ts';
import { standOn, type PushSpring } from './push-springs.ts';

/*
 * A second opinion on panels that lie loose on cabinet sides and rails: an even grid of rectangles with twelve unknowns each; rails are
 * Timoshenko beams of their own under it, and springs that only push lie between. Which of them push is found by trying: those
 * that would pull are taken away, those the plate sinks into put back. Units: m, N.
 */
export interface LoosePlate {
  readonly span: number;
  readonly depth: number;
  readonly thickness: number;
  readonly cells: readonly [number, number];
  readonly D: Readonly<Record<'x' | 'y' | 'one' | 'xy', number>>;
  /** Of what it lies on, for each length. */
  readonly stiffness: number;
  readonly rails: readonly Rail[];
  /** On all of it, for each area. */
  readonly even: number;
}
/** At y = 0 or at the depth; it goes on past either side as far as to the middle of its seat. */
export interface Rail {
  readonly edge: 'back' | 'front';
  readonly EI: number;
  readonly GA: number;
  readonly past: number;
  readonly weight: number;
}
/** A square, its middle and its side, and what it weighs. */
export interface Feet {
  readonly x: number;
  readonly y: number;
  readonly side: number;
  readonly load: number;
}
export interface Answer {
  /** Down, line by line of x. */
  readonly down: readonly (readonly number[])[];
  /** Largest moments for each width along the span and across it, averaged over a thickness. */
  readonly along: number;
  readonly across: number;
  /** Largest mean force over a length, of the sides and of each rail. */
  readonly onSides: (length: number) => number;
  readonly onRail: (rail: number, length: number) => number;
  readonly rails: readonly { readonly moment: number; readonly end: number }[];
}

const gauss = [
  [0.211324865405, 0.5],
  [0.788675134595, 0.5],
] as const;
/** The largest mean over a length of what lies side by side, each so much over so long. */
function mostMean(parts: readonly (readonly [amount: number, length: number])[], length: number): number {
  const ends = parts.reduce((all, [, long]) => [...all, (all.at(-1) ?? 0) + long], [0]);
  const whole = ends.at(-1) ?? 0;
  const wide = Math.min(length, whole);
  const starts = ends
    .flatMap((end) => [end, end - wide])
    .filter((at) => at >= -1e-9 && at <= whole - wide + 1e-9);
  const means = starts.map((from) =>
    parts.reduce((sum, [amount, long], k) => {
      const at = ends[k] ?? 0;
      return sum + (amount * Math.max(0, Math.min(from + wide, at + long) - Math.max(from, at))) / long;
    }, 0),
  );
  return Math.max(...means.map(Math.abs)) / wide;
}

interface Spring extends PushSpring {
  readonly line: number;
  readonly at: number;
  readonly length: number;
}

/** Answers for feet anywhere, or nobody. */
export function loosePlate(plate: LoosePlate): (feet: Feet | null) => Answer {
  const {
    span,
    depth,
    cells: [nx, ny],
    D,
    rails,
  } = plate;
  const [hx, hy] = [span / nx, depth / ny];
  const elastic = [
    [D.x, D.one, 0],
    [D.one, D.y, 0],
    [0, 0, D.xy],
  ];
  const { stiffness: K, shapesAt, bentAt } = rectangleOf([hx, hy], elastic);

  // Column by column: three unknowns a node, then two for each rail; before and after them the ends of the rails.
  const column = 3 * (ny + 1) + 2 * rails.length;
  const ends = 2 * rails.length;
  const size = 2 * ends + (nx + 1) * column;
  const nodeAt = (i: number, j: number): number => ends + i * column + 3 * j;
  const railAt = (k: number, i: number): number =>
    i < 0 ? 2 * k : i > nx ? size - ends + 2 * k : nodeAt(i, ny + 1) + 2 * k;
  const unknownsOf = (i: number, j: number): number[] =>
    corners.flatMap(([a, b]) => [0, 1, 2].map((d) => nodeAt(i + a, j + b) + d));
  const everyCell = Array.from({ length: nx * ny }, (_, k) => [Math.floor(k / ny), k % ny] as const);
  const share = (i: number, n: number): number => (i === 0 || i === n ? 0.5 : 1);
  const springs: Spring[] = [0, nx].flatMap((i, line) =>
    Array.from({ length: ny + 1 }, (_, j) => {
      const length = share(j, ny) * hy;
      return {
        plate: nodeAt(i, j),
        under: -1,
        stiffness: plate.stiffness * length,
        line,
        at: j * hy,
        length,
      };
    }),
  );
  rails.forEach(({ edge }, k) => {
    for (let i = 1; i < nx; i++)
      springs.push({
        ...{ plate: nodeAt(i, edge === 'back' ? 0 : ny), under: railAt(k, i), line: 2 + k },
        ...{ stiffness: plate.stiffness * hx, at: i * hx, length: hx },
      });
  });

  const heldBothWays = (): BandMatrix => {
    const band = new BandMatrix(size, column + 6 + ends);
    const addAll = (at: readonly number[], part: (p: number, q: number) => number): void =>
      at.forEach((i, p) => at.forEach((j, q) => band.add(i, j, part(p, q))));
    for (const [i, j] of everyCell) addAll(unknownsOf(i, j), (p, q) => K[p]?.[q] ?? 0);
    rails.forEach(({ EI, GA, past }, k) => {
      for (let i = -1; i <= nx; i++) {
        const L = i < 0 || i === nx ? past : hx;
        const phi = (12 * EI) / (GA * L * L);
        const c = EI / (L ** 3 * (1 + phi));
        const beam = [
          [12, 6 * L, -12, 6 * L],
          [6 * L, (4 + phi) * L * L, -6 * L, (2 - phi) * L * L],
          [-12, -6 * L, 12, -6 * L],
          [6 * L, (2 - phi) * L * L, -6 * L, (4 + phi) * L * L],
        ];
        const at = [i, i + 1].flatMap((n) => [railAt(k, n), railAt(k, n) + 1]);
        addAll(at, (p, q) => c * (beam[p]?.[q] ?? 0));
      }
      for (const i of [-1, nx + 1]) band.add(railAt(k, i), railAt(k, i), 1e11);
    });
    for (const { plate: at, under, stiffness } of springs) {
      if (under < 0) band.add(at, at, stiffness);
      else addAll([at, under], (p, q) => (p === q ? stiffness : -stiffness));
    }
    return band.factor();
  };

  const settle = standOn(heldBothWays(), size, springs);

  const loadsOf = (feet: Feet | null): Float64Array => {
    const F = new Float64Array(size);
    const put = (i: number, j: number, x: number, y: number, load: number): void => {
      const N = shapesAt(x, y);
      unknownsOf(i, j).forEach((at, k) => (F[at] = (F[at] ?? 0) + load * (N[k] ?? 0)));
    };
    for (const [i, j] of everyCell)
      for (const [u, wu] of gauss)
        for (const [v, wv] of gauss) put(i, j, u * hx, v * hy, plate.even * wu * wv * hx * hy);
    const n = 12;
    for (let k = 0; feet !== null && k < n * n; k++) {
      const at = (middle: number, m: number): number => middle + feet.side * ((m + 0.5) / n - 0.5);
      const [x, y] = [at(feet.x, k % n), at(feet.y, Math.floor(k / n))];
      const [i, j] = [Math.min(nx - 1, Math.floor(x / hx)), Math.min(ny - 1, Math.floor(y / hy))];
      put(i, j, x - i * hx, y - j * hy, feet.load / n ** 2);
    }
    return F;
  };

  return (feet) => {
    const { U, forces } = settle(loadsOf(feet));
    const middle = bentAt(hx / 2, hy / 2);
    const moments = everyCell.map(([i, j]) =>
      times(
        elastic,
        times(
          middle,
          unknownsOf(i, j).map((at) => U[at] ?? 0),
        ),
      ),
    );
    const most = (way: 0 | 1): number => {
      const [lines, along, h] = way === 0 ? [nx, ny, hy] : [ny, nx, hx];
      return Math.max(
        ...Array.from({ length: lines }, (_, a) =>
          mostMean(
            Array.from({ length: along }, (__, b) => {
              const cell = way === 0 ? a * ny + b : b * ny + a;
              return [(moments[cell]?.[way] ?? NaN) * h, h] as const;
            }),
            plate.thickness,
          ),
        ),
      );
    };
    const lineOf = (line: number) =>
      springs.flatMap((each, k) => (each.line === line ? [[each, forces[k] ?? NaN] as const] : []));
    const mean = (line: number, length: number): number =>
      mostMean(
        lineOf(line).map(([each, force]) => [force, each.length] as const),
        length,
      );
    return {
      down: Array.from({ length: nx + 1 }, (_, i) =>
        Array.from({ length: ny + 1 }, (__, j) => U[nodeAt(i, j)] ?? NaN),
      ),
      along: most(0),
      across: most(1),
      onSides: (length) => Math.max(mean(0, length), mean(1, length)),
      onRail: (rail, length) => mean(2 + rail, length),
      rails: rails.map(({ past, weight }, k) => {
        const L = span + 2 * past;
        const pressed = lineOf(2 + k).map(([{ at }, force]) => [at + past, force] as const);
        const left = pressed.reduce((sum, [at, force]) => sum + force * (1 - at / L), 0);
        const right = pressed.reduce((sum, [at, force]) => sum + (force * at) / L, 0);
        const bentBy = (x: number): number =>
          pressed.reduce((sum, [at, force]) => sum - force * Math.max(0, x - at), left * x) +
          (weight * x * (L - x)) / 2;
        return {
          moment: Math.max(0, ...pressed.map(([at]) => bentBy(at))),
          end: Math.max(left, right) + (weight * L) / 2,
        };
      }),
    };
  };
}
