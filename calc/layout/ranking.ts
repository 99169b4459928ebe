import type { Check, Governing } from '../../shared/check-result.ts';
import { judgeShelf, type Judgement } from '../elements/bracket-shelf/judge.ts';
import type { Shelf } from '../elements/bracket-shelf/shelf.ts';
import { movementUsed } from '../elements/bracket-shelf/stillness.ts';
import { inch } from '../../shared/quantity/index.ts';

/** A shelf judged, with all that ranks it among others of its kind. */
export interface Ranked {
  readonly judgement: Judgement;
  readonly shelf: Shelf;
  readonly standing: Standing;
  /** The most any check uses of what it may, Infinity where nothing resists. */
  readonly used: number;
  /** Worst share of its limit that an edge moves. */
  readonly movement: number;
  readonly asymmetry_m: number;
}

/**
 * How a shelf stands. `open`: a check can't be vouched for though both its sides are known. A check that can't say because
 * something is not given can't say in any layout, and doesn't tell layouts apart.
 */
export type Standing = 'holds' | 'open' | 'fails';

const order: Readonly<Record<Standing, number>> = { holds: 0, open: 1, fails: 2 };
const mirrored_m = inch / 16;

/** Judges a shelf in full and ranks it. */
export function rank(shelf: Shelf, judgement: Judgement = judgeShelf(shelf)): Ranked {
  const { checks, movements } = judgement;
  return {
    judgement,
    shelf,
    standing: standingOf(checks),
    used: usedOf(checks),
    movement: movementUsed(shelf, movements),
    asymmetry_m: asymmetryOf(shelf),
  };
}

/** How a list of checks stands. */
export function standingOf(checks: readonly Check[]): Standing {
  if (checks.some(({ outcome }) => outcome === 'does-not-hold')) return 'fails';
  return checks.some(isOpen) ? 'open' : 'holds';
}

/** Checks that a change of the shelf can leave nothing to ask of, whatever is not known. */
const goneByChange: readonly string[] = ['standing', 'board-past-bracket'];

/** Whether a check can't be vouched for though a change of the shelf may settle it: nothing has to be asked of anybody. */
export function isOpen({ id, outcome, ratio }: Check): boolean {
  return outcome === 'cannot-say' && (ratio !== null || goneByChange.includes(id));
}

/** The most that any check uses. */
export function usedOf(checks: readonly Check[]): number {
  return Math.max(
    ...checks.map(({ ratio, outcome }) => ratio ?? (outcome === 'does-not-hold' ? Infinity : 0)),
  );
}

/**
 * Which of two layouts is the better: one that holds, with fewer brackets, stiller, more even; among those that do not
 * hold, the one that is less overloaded.
 */
export function compare(a: Ranked, b: Ranked): number {
  if (a.standing !== b.standing) return order[a.standing] - order[b.standing];
  const brackets = a.shelf.positions_m.length - b.shelf.positions_m.length;
  const used = difference(a.used, b.used);
  const first = a.standing === 'fails' ? used || brackets : brackets;
  return first || difference(a.movement, b.movement) || evenness(a, b) || leftmost(a, b);
}

/** Whether a layout is its own mirror image. */
export function isSymmetric({ asymmetry_m }: Ranked): boolean {
  return asymmetry_m <= mirrored_m;
}

/** What governs, for whoever looks at a changed shelf. */
export function governingOf({ governing }: Pick<Judgement, 'governing'>): Governing {
  const { id, title, ratio, where } = governing;
  return { id, title, ratio, where };
}

/** Shares that differ by less than a millionth are the same: mirror images differ by rounding alone. */
function difference(a: number, b: number): number {
  if (a === b) return 0;
  return Math.round(a * 1e6) - Math.round(b * 1e6);
}

function evenness(a: Ranked, b: Ranked): number {
  return Math.round(a.asymmetry_m * 1e4) - Math.round(b.asymmetry_m * 1e4);
}

function leftmost(a: Ranked, b: Ranked): number {
  const index = a.shelf.positions_m.findIndex((at, i) => at !== b.shelf.positions_m[i]);
  return (a.shelf.positions_m[index] ?? 0) - (b.shelf.positions_m[index] ?? 0);
}

function asymmetryOf({ positions_m, length_m }: Shelf): number {
  return Math.max(
    ...positions_m.map((at, i) => Math.abs(at + (positions_m[positions_m.length - 1 - i] ?? 0) - length_m)),
  );
}
