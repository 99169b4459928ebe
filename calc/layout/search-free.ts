import type { Shelf } from '../elements/bracket-shelf/shelf.ts';
import { hasLimit, movementUsedAtLeast } from '../elements/bracket-shelf/stillness.ts';
import { judgeUnlessItFails } from '../elements/bracket-shelf/judge.ts';
import { compare, rank, type Ranked } from './ranking.ts';
import { fitsJoints, mostBrackets, type Found } from './search-studs.ts';
import { mayStandOut } from './stands.ts';
import { onBrackets } from './subject.ts';

/** Ends that stand out by these shares of a bay are where the search begins. */
const startingShares = [0.2, 0.3, 0.35, 0.4, 0.5];
/** No bay is shorter than this share of what each bracket has of the board: two close together hold little more than one. */
const leastShare = 0.5;
const coarseSteps = [4, 2, 1];
const mostFineMoves = 4;
const mostJudged = 16;
/** Brackets of all the layouts that are looked at by what they surely move. */
const mostWork = 900;
/** A start that surely moves more than so many times its limit is not made better by moving its brackets. */
const hopeless = 1.5;
/** More brackets that lessen what is used by less than this make nothing better. */
const leastGain = 0.03;

/**
 * Good layouts where brackets may stand anywhere on a grid, the best for each number of brackets: even layouts first, then
 * brackets moved one by one and in mirrored pairs, at first by what surely moves and at last by every check. Numbers of
 * brackets go up from two until enough layouts hold, or until more of them make nothing better.
 *
 * @param places_m the grid, evenly spaced, in order
 */
export function searchFree(shelf: Shelf, places_m: readonly number[], wanted: number): Found {
  const grid = new Grid(shelf, places_m);
  const holding: Ranked[] = [];
  const failing: Ranked[] = [];
  let stillest: Coarse | null = null;
  let [judged, idle] = [0, 0];
  for (let count = 2; count <= Math.min(mostBrackets, places_m.length); count++) {
    if (holding.length >= wanted || idle >= 2 || judged >= mostJudged || grid.work > mostWork) break;
    const coarse = coarsest(grid, count);
    if (coarse === null) continue;
    const before: number = stillest?.atLeast ?? Infinity;
    if (coarse.atLeast < before) stillest = coarse;
    if (hasLimit(shelf) && coarse.atLeast > 1 + 1e-9) {
      idle = coarse.atLeast > before * (1 - leastGain) ? idle + 1 : 0;
      continue;
    }
    let fine = finest(grid, coarse.chosen);
    judged += fine.judged;
    const even = fine.best.standing === 'fails' ? firstEven(grid, count) : null;
    if (even !== null) {
      fine = finest(grid, even);
      judged += fine.judged;
    }
    if (fine.best.standing !== 'fails') {
      holding.push(fine.best);
      continue;
    }
    const last = failing[failing.length - 1];
    idle = last !== undefined && fine.best.used > last.used * (1 - leastGain) ? idle + 1 : 0;
    failing.push(fine.best);
  }
  if (holding.length + failing.length === 0 && stillest !== null) {
    judged += 1;
    failing.push(rank(grid.on(stillest.chosen) ?? shelf));
  }
  const best = (holding.length > 0 ? holding : failing).sort(compare).slice(0, wanted);
  return { best, layouts: grid.tried, judged, isExact: false };
}

/** The grid, and what may stand on it; layouts are lists of indices. */
class Grid {
  readonly shelf: Shelf;
  readonly #places_m: readonly number[];
  readonly #apart_m: number;
  /** Layouts looked at, and all their brackets. */
  tried = 0;
  work = 0;

  constructor(shelf: Shelf, places_m: readonly number[]) {
    this.shelf = shelf;
    this.#places_m = places_m;
    this.#apart_m = Math.max(0.001, shelf.document.brackets.armWidth ?? 0);
  }

  /** The place nearest to a length from the left end. */
  nearest(at_m: number): number {
    const first = this.#places_m[0] ?? 0;
    const step = (this.#places_m[1] ?? 1) - first;
    return Math.min(Math.max(Math.round((at_m - first) / step), 0), this.#places_m.length - 1);
  }

  /** The shelf on a layout; null where it may not be. */
  on(layout: readonly number[]): Shelf | null {
    const at = layout.map((index) => this.#places_m[index] ?? NaN);
    const { length_m } = this.shelf;
    const [first = NaN, second = NaN] = at;
    const [before = NaN, last = NaN] = at.slice(-2);
    const apart_m = Math.max(this.#apart_m, (leastShare * length_m) / at.length);
    const isApart = at.every((place, i) => i === 0 || place - (at[i - 1] ?? NaN) >= apart_m);
    const isFine =
      isApart &&
      mayStandOut(first, second - first, layout[0] === 0) &&
      mayStandOut(length_m - last, last - before, layout[layout.length - 1] === this.#places_m.length - 1);
    const moved = onBrackets(this.shelf, at);
    return isFine && fitsJoints(moved) ? moved : null;
  }

  /** What a layout surely moves; null where it may not be. */
  movement(layout: readonly number[]): number | null {
    const moved = this.on(layout);
    if (moved === null) return null;
    this.tried += 1;
    this.work += layout.length;
    return movementUsedAtLeast(moved);
  }
}

interface Coarse {
  readonly chosen: readonly number[];
  readonly atLeast: number;
}

/** The layout of a number of brackets that surely moves least, as far as moving brackets by itself leads. */
function coarsest(grid: Grid, count: number): Coarse | null {
  let best: Coarse | null = null;
  for (const share of startingShares) {
    const chosen = evenLayout(grid, count, share);
    const atLeast = grid.movement(chosen);
    if (atLeast !== null && (best === null || atLeast < best.atLeast)) best = { chosen, atLeast };
  }
  if (best === null || (hasLimit(grid.shelf) && best.atLeast > hopeless)) return best;
  for (const step of coarseSteps) {
    let isMoving = true;
    while (isMoving && grid.work <= mostWork) {
      isMoving = false;
      for (const chosen of movesOf(best.chosen, step)) {
        const atLeast = grid.movement(chosen);
        if (atLeast === null || atLeast >= best.atLeast * (1 - 1e-3)) continue;
        best = { chosen, atLeast };
        isMoving = true;
      }
    }
  }
  return best;
}

/** The first even layout that holds, where the stillest does not; null where none does. */
function firstEven(grid: Grid, count: number): readonly number[] | null {
  const even = startingShares.map((share) => evenLayout(grid, count, share));
  return (
    even.find((layout) => {
      const moved = grid.on(layout);
      return moved !== null && judgeUnlessItFails(moved) !== null;
    }) ?? null
  );
}

/** Moves brackets by one place while that makes a layout that holds better by every check. */
function finest(grid: Grid, start: readonly number[]): { readonly best: Ranked; readonly judged: number } {
  let chosen = start;
  let best = rank(grid.on(start) ?? grid.shelf);
  let judged = 1;
  let isMoving = best.standing !== 'fails';
  while (isMoving) {
    isMoving = false;
    for (const move of movesOf(chosen, 1)) {
      if (judged > mostFineMoves) break;
      const atLeast = grid.movement(move);
      const moved = grid.on(move);
      if (atLeast === null || moved === null || atLeast >= best.movement) continue;
      judged += 1;
      const next = rank(moved);
      if (compare(next, best) < 0) [best, chosen, isMoving] = [next, move, true];
    }
  }
  return { best, judged };
}

/** Equal bays, with ends that stand out by a share of one; over the joints of the board where it has any. */
function evenLayout(grid: Grid, count: number, share: number): number[] {
  const { length_m, document } = grid.shelf;
  const bay = length_m / (count - 1 + 2 * share);
  const layout = Array.from({ length: count }, (_, i) => grid.nearest((share + i) * bay));
  for (const joint of document.board.joints ?? []) {
    const wanted = grid.nearest(joint);
    const inner = layout.slice(1, -1).map((index) => Math.abs(index - wanted));
    const nearest = inner.indexOf(Math.min(...inner));
    if (nearest >= 0) layout[nearest + 1] = wanted;
  }
  return layout;
}

/** Layouts with one bracket moved, or two mirrored ones moved the opposite way. */
function movesOf(layout: readonly number[], step: number): number[][] {
  const last = layout.length - 1;
  const moves: number[][] = [];
  for (let i = 0; i <= last; i++) {
    for (const way of [-step, step]) {
      if (i < last - i) {
        moves.push(layout.map((at, k) => (k === i ? at + way : k === last - i ? at - way : at)));
      }
      moves.push(layout.map((at, k) => (k === i ? at + way : at)));
    }
  }
  return moves;
}
