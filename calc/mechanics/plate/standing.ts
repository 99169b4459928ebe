import { hullOf, type Point } from '../hull.ts';
import { movementAtShape, type Resultant } from './plate-load.ts';
import { signOf, type HeldPlate, type PlateSupport } from './supports.ts';
import { columnOf, copyOf, diagonalOf, exchange, following, tableauOf, type Tableau } from './tableau.ts';

/** A load on a held plate, ready to be put on it: its movements on the three springs, and its resultant. */
export interface PreparedLoad {
  readonly field: Float64Array;
  readonly resultant: Resultant;
}

/** How a plate stands under a load, or that nothing stops it from tipping. */
export type Standing =
  | {
      readonly stands: true;
      /** Force of each support in its own sense, zero or more, N. */
      readonly forces_N: Float64Array;
      /** Down, and the slopes along x and y, of the plate as a whole. */
      readonly rigid: readonly [number, number, number];
    }
  | { readonly stands: false };

/** Finds how a plate stands, load after load; neighbouring loads cost little since each begins where the last ended. */
export interface Stander {
  stand(load: PreparedLoad): Standing;
}

const [mostSteps, mostExchanges] = [40, 600];
/** Share of a support's own stiffness below which what is left of it is rounding. */
const leastStiffness = 1e-8;
/** Share of what adds up in a balance or a gap that may be left over. */
const accuracy = 1e-8;
/** How far past its supports, as a share of their line, a load may be for rounding's sake. */
const brink = 1e-9;

/**
 * Makes a stander. The forces of least complementary energy in equilibrium, none of them negative or above its
 * support's most, are found by the dual method of Goldfarb and Idnani (1983): the energy grows with every step, so no
 * set of supports comes twice and nothing alternates; a support that can't be let go without a mechanism, and no gap
 * that closes, means that nothing stops the plate from tipping.
 *
 * At the brink of tipping what holds the plate is next to nothing and its movement next to endless. A plate that would
 * have to turn by its own length before something stops it does not stand. A state is only given when it balances and
 * leaves no gap closed on the matrix it began with; where rounding forbids that even from a fresh start, the plate is so
 * near the brink that it does not stand either.
 */
export function standerOf(held: HeldPlate): Stander {
  const { supports, plate, shapes, matrix } = held;
  const count = supports.length;
  const size = count + 3;
  const { x_m, y_m } = plate.mesh;
  const reach = [1, x_m[x_m.length - 1] ?? 1, y_m[y_m.length - 1] ?? 1];
  const signs = supports.map(signOf);
  const span_m = Math.hypot(reach[1] ?? 1, reach[2] ?? 1);
  const outline = supports.every(({ sense }) => sense === 'push')
    ? hullOf(supports.map(({ x_m: x, y_m: y }) => [x, y]))
    : null;
  let exchanges = Infinity;
  let tableau: Tableau = tableauOf(size, matrix);
  const isFull = new Uint8Array(size);

  const rebuild = (): boolean => {
    const active = tableau.exchanged;
    const made = exchanges < Infinity ? onSupports(held, (i) => active[i] === 1) : onAllSupports(held);
    exchanges = made === null ? Infinity : 0;
    tableau = made ?? tableau;
    return made !== null;
  };
  const forget = (): void => {
    exchanges = Infinity;
    isFull.fill(0);
  };
  const soundOrNot = (found: Extract<Standing, { stands: true }>, constant: Float64Array): Standing => {
    const turns = Math.max(Math.abs(found.rigid[1]), Math.abs(found.rigid[2]));
    if (turns < 1 && isSound(held, found, constant)) return found;
    forget();
    return { stands: false };
  };
  const swap = (index: number): void => {
    exchange(tableau, index);
    exchanges++;
  };

  const attempt = ({ field, resultant }: PreparedLoad): Standing => {
    if (exchanges > mostExchanges && !rebuild()) return { stands: false };
    const constant = new Float64Array(size);
    shapes.forEach((shape, i) => {
      constant[i] = (signs[i] ?? 0) * movementAtShape(field, shape);
    });
    constant.set(resultant, count);
    const given = new Float64Array(size);
    for (let i = 0; i < count; i++) given[i] = isFull[i] === 1 ? (supports[i]?.most_N ?? 0) : 0;
    const values = following(tableau, given, constant);
    const forceTolerance =
      1e-10 * Math.max(...resultant.map((total, k) => Math.abs(total) / (reach[k] ?? 1)), 1e-6);
    const gapTolerance =
      1e-10 * constant.subarray(0, count).reduce((most, each) => Math.max(most, Math.abs(each)), 0);

    const move = (column: Float64Array, step: number): void => {
      for (let i = 0; i < size; i++) values[i] = (values[i] ?? 0) + step * (column[i] ?? 0);
    };
    const letIn = (index: number, before: number): void => {
      swap(index);
      isFull[index] = 0;
      values[index] = before;
    };
    /** A gap that would be overlap, or a full support that would want more: its force is free again. */
    const wantsIn = (i: number): boolean =>
      tableau.exchanged[i] === 0 &&
      (isFull[i] === 1 ? (values[i] ?? 0) > gapTolerance : (values[i] ?? 0) < -gapTolerance);

    for (let i = 0; i < count; i++) {
      if (!wantsIn(i)) continue;
      const gap = values[i] ?? 0;
      letIn(i, given[i] ?? 0);
      move(columnOf(tableau, i), -gap);
      i = -1;
    }

    for (let steps = 0; steps <= mostSteps * size; steps++) {
      const worst = worstForce(held, tableau, values, forceTolerance);
      if (worst === undefined) return soundOrNot(standingOf(held, tableau, isFull, values), constant);
      let gap = 0;
      for (;;) {
        steps++;
        const column = columnOf(tableau, worst.index);
        const own = column[worst.index] ?? 0;
        const stiffness = own * (matrix[worst.index * size + worst.index] ?? 0);
        const missing = worst.target - (values[worst.index] ?? 0);
        const reached = stiffness > leastStiffness ? missing / own : Infinity;
        const full = Math.abs(reached) < span_m ? reached : worst.direction * Infinity;
        const block = firstBlock(tableau, count, isFull, values, column, worst.direction);
        if (!Number.isFinite(full) && block === undefined) {
          forget();
          return { stands: false };
        }
        const step = block !== undefined && Math.abs(block.step) < Math.abs(full) ? block.step : full;
        move(column, step);
        gap += step;
        if (block !== undefined && step === block.step) {
          letIn(block.index, isFull[block.index] === 1 ? (supports[block.index]?.most_N ?? 0) : 0);
          continue;
        }
        swap(worst.index);
        isFull[worst.index] = worst.direction < 0 ? 1 : 0;
        values[worst.index] = gap;
        break;
      }
    }
    return { stands: false };
  };

  return {
    stand(load) {
      if (outline !== null && !isOver(outline, load.resultant)) return { stands: false };
      const isFresh = exchanges === Infinity;
      const found = attempt(load);
      if (found.stands || isFresh) return found;
      forget();
      const again = attempt(load);
      if (!again.stands) forget();
      return again;
    },
  };
}

/** Whether the middle of a load lies over the supports: on supports that only push nothing else can stand. */
function isOver(outline: readonly Point[], [total, alongX, alongY]: Resultant): boolean {
  return outline.every(([x, y], index) => {
    const [nextX, nextY] = outline[(index + 1) % outline.length] ?? [x, y];
    const [dx, dy] = [nextX - x, nextY - y];
    const [px, py] = [alongX - total * x, alongY - total * y];
    return dx * py - dy * px >= -brink * Math.abs(total) * (dx * dx + dy * dy);
  });
}

interface Worst {
  readonly index: number;
  readonly target: number;
  /** 1 where the force is to grow to nothing, −1 where it is to shrink to the most its support can bear. */
  readonly direction: 1 | -1;
}

function worstForce(
  held: HeldPlate,
  tableau: Tableau,
  values: Float64Array,
  tolerance: number,
): Worst | undefined {
  let most = tolerance;
  let worst: Worst | undefined;
  held.supports.forEach(({ most_N }, index) => {
    if (tableau.exchanged[index] === 0) return;
    const force = values[index] ?? 0;
    if (-force > most) {
      most = -force;
      worst = { index, target: 0, direction: 1 };
    }
    if (force - most_N > most) {
      most = force - most_N;
      worst = { index, target: most_N, direction: -1 };
    }
  });
  return worst;
}

/** The gap that closes first while a support is let go. */
function firstBlock(
  { exchanged }: Tableau,
  count: number,
  isFull: Uint8Array,
  values: Float64Array,
  column: Float64Array,
  direction: 1 | -1,
): { readonly index: number; readonly step: number } | undefined {
  let first: { readonly index: number; readonly step: number } | undefined;
  for (let i = 0; i < count; i++) {
    if (exchanged[i] === 1) continue;
    const change = direction * (column[i] ?? 0);
    const closes = isFull[i] === 1 ? change > 1e-13 : change < -1e-13;
    if (!closes) continue;
    const step = direction * Math.max(0, -(values[i] ?? 0) / change);
    if (first === undefined || Math.abs(step) < Math.abs(first.step)) first = { index: i, step };
  }
  return first;
}

/** Every support in touch, by the matrix they were told from; null where that is a mechanism. */
const known = new WeakMap<Float64Array, Tableau | null>();

/** A tableau of its own with every support in touch; null where that is a mechanism. */
function onAllSupports(held: HeldPlate): Tableau | null {
  const found = known.get(held.matrix);
  const made = found === undefined ? onSupports(held, () => true) : found;
  known.set(held.matrix, made);
  return made === null ? null : copyOf(made);
}

/** With some supports in touch; null where that is a mechanism. */
function onSupports(held: HeldPlate, isIn: (index: number) => boolean): Tableau | null {
  const { supports, matrix } = held;
  const count = supports.length;
  const made = tableauOf(count + 3, matrix);
  for (let i = 0; i < count; i++) if (isIn(i)) exchange(made, i);
  for (let k = 0; k < 3; k++) {
    const scale = supports.reduce((sum, support) => sum + leverOf(support, k) ** 2, 0);
    if (!(Math.abs(diagonalOf(made, count + k)) > 1e-9 * scale * stiffest(held))) return null;
    exchange(made, count + k);
  }
  return made;
}

function leverOf({ x_m, y_m }: PlateSupport, k: number): number {
  return [1, x_m, y_m][k] ?? 0;
}

function stiffest({ supports, matrix }: HeldPlate): number {
  const size = supports.length + 3;
  return 1 / Math.max(...supports.map((_, i) => matrix[i * size + i] ?? 0));
}

/** Whether the forces balance the load and no place overlaps what it rests on, told from the matrix before any exchange. */
function isSound(
  { supports, matrix }: HeldPlate,
  { forces_N, rigid }: Extract<Standing, { stands: true }>,
  constant: Float64Array,
): boolean {
  const count = supports.length;
  const size = count + 3;
  const sums = Float64Array.from(constant);
  const scales = constant.map(Math.abs);
  for (let j = 0; j < size; j++) {
    const unknown = j < count ? (forces_N[j] ?? 0) : (rigid[j - count] ?? 0);
    if (unknown === 0) continue;
    // The matrix is symmetric: its row is its column.
    for (let i = 0, at = j * size; i < size; i++, at++) {
      const term = (matrix[at] ?? 0) * unknown;
      sums[i] = (sums[i] ?? 0) + term;
      scales[i] = (scales[i] ?? 0) + Math.abs(term);
    }
  }
  for (let i = 0; i < size; i++) {
    const [sum, scale] = [sums[i] ?? 0, scales[i] ?? 0];
    const off = Math.abs(sum) <= accuracy * scale ? 0 : sum;
    const [force, most] = [forces_N[i] ?? 0, supports[i]?.most_N ?? Infinity];
    const mayLift = i < count && force === 0;
    const mayGive = i < count && force === most;
    if ((off > 0 && !mayLift) || (off < 0 && !mayGive)) return false;
  }
  return true;
}

function standingOf(
  held: HeldPlate,
  tableau: Tableau,
  isFull: Uint8Array,
  values: Float64Array,
): Extract<Standing, { stands: true }> {
  const count = held.supports.length;
  const forces_N = new Float64Array(count);
  held.supports.forEach(({ most_N }, i) => {
    if (tableau.exchanged[i] === 1) forces_N[i] = Math.max(0, values[i] ?? 0);
    else forces_N[i] = isFull[i] === 1 ? most_N : 0;
  });
  return {
    stands: true,
    forces_N,
    rigid: [values[count] ?? 0, values[count + 1] ?? 0, values[count + 2] ?? 0],
  };
}
