import { bracketShelfConflicts } from '../../shared/check-document/bracket-shelf-conflicts.ts';
import { judgeUnlessItFails } from '../elements/bracket-shelf/judge.ts';
import type { Shelf } from '../elements/bracket-shelf/shelf.ts';
import {
  bayMovementUsedAtLeast,
  hasLimit,
  movementUsedAtLeast,
} from '../elements/bracket-shelf/stillness.ts';
import { choicesOf, type Choices, type Field } from './enumerate.ts';
import { compare, rank, type Ranked } from './ranking.ts';
import { mayStandOut } from './stands.ts';
import { onBrackets } from './subject.ts';

/** Layouts looked at, and the best of them. */
export interface Found {
  /** Best first; those that hold, or where none does the least overloaded. */
  readonly best: readonly Ranked[];
  readonly layouts: number;
  readonly judged: number;
  readonly isExact: boolean;
}

export const mostBrackets = 24;
/** The work of a layout grows with the square of its brackets. */
const mostWork = 8000;
/** Of layouts that do not hold, for each that is wanted, so many are judged. */
const mostOverloaded = 2;

/** A layout not judged yet, and the share of its limit that it surely moves. */
interface Candidate {
  readonly shelf: Shelf;
  readonly atLeast: number;
}

/**
 * The best layouts on given places. Numbers of brackets are tried from two up; at each, layouts come in the order of what
 * they surely move, so that the search ends where the next one can't be among the best. More brackets than the fewest that
 * hold are tried only as long as too few layouts hold.
 *
 * @param wanted how many
 */
export function searchStuds(shelf: Shelf, places_m: readonly number[], wanted: number): Found {
  const limited = hasLimit(shelf);
  const field = fieldOf(shelf, places_m, limited);
  let best: Ranked[] = [];
  let [layouts, judged, isExact] = [0, 0, true];
  for (let count = 2; count <= Math.min(mostBrackets, places_m.length); count++) {
    if (areFound(best, wanted)) break;
    const { candidates, isComplete } = candidatesOf(shelf, field, count);
    layouts += candidates.length;
    isExact &&= isComplete;
    for (const { shelf: moved, atLeast } of candidates) {
      const last = best[wanted - 1];
      if (limited && atLeast > 1 + 1e-9) break;
      if (last !== undefined && areFound(best, wanted)) {
        if (last.shelf.positions_m.length < count || atLeast > last.movement + 1e-6) break;
      }
      judged += 1;
      const judgement = judgeUnlessItFails(moved);
      if (judgement !== null) best = [...best, rank(moved, judgement)].sort(compare).slice(0, wanted);
    }
  }
  if (best.length > 0) return { best, layouts, judged, isExact };
  const overloaded = leastOverloaded(shelf, { ...field, mayBay: () => true }, wanted);
  return { ...overloaded, judged: judged + overloaded.judged };
}

function areFound(best: readonly Ranked[], wanted: number): boolean {
  return best.length >= wanted && best.every(({ standing }) => standing === 'holds');
}

/** Where no layout holds: those that ask least beyond what is allowed, of as many as time allows. */
function leastOverloaded(shelf: Shelf, field: Field, wanted: number): Found {
  const all: Candidate[] = [];
  let isExact = true;
  let work = 0;
  for (
    let count = Math.min(mostBrackets, field.places_m.length);
    count >= 2 && work < 2 * mostWork;
    count--
  ) {
    const { candidates, isComplete } = candidatesOf(shelf, field, count);
    all.push(...candidates);
    work += candidates.length * count ** 2;
    isExact &&= isComplete && work < 2 * mostWork;
  }
  all.sort((a, b) => a.atLeast - b.atLeast);
  let best: Ranked[] = [];
  let judged = 0;
  for (const { shelf: moved, atLeast } of all) {
    const last = best[wanted - 1];
    if (last !== undefined && atLeast > last.used) break;
    if (judged >= mostOverloaded * wanted) {
      isExact = false;
      break;
    }
    judged += 1;
    best = [...best, rank(moved)].sort(compare).slice(0, wanted);
  }
  return { best, layouts: all.length, judged, isExact };
}

function fieldOf(shelf: Shelf, places_m: readonly number[], limited: boolean): Field {
  const known = new Map<string, boolean>();
  const mayBay = (from_m: number, to_m: number): boolean => {
    if (!limited || to_m <= from_m) return true;
    const key = `${from_m} ${to_m}`;
    const answer = known.get(key) ?? bayMovementUsedAtLeast(shelf, bayOf(shelf, from_m, to_m)) <= 1 + 1e-9;
    known.set(key, answer);
    return answer;
  };
  const apart_m = Math.max(0.001, shelf.document.brackets.armWidth ?? 0);
  return { places_m, length_m: shelf.length_m, apart_m, mayEnd: mayStandOut, mayBay };
}

function bayOf({ length_m }: Shelf, from_m: number, to_m: number) {
  const kind = from_m === 0 ? 'left-overhang' : to_m === length_m ? 'right-overhang' : 'span';
  return { from_m, to_m, kind } as const;
}

function candidatesOf(
  shelf: Shelf,
  field: Field,
  count: number,
): { readonly candidates: readonly Candidate[]; readonly isComplete: boolean } {
  const { layouts, isComplete }: Choices = choicesOf(field, count, Math.round(mostWork / count ** 2));
  const candidates = layouts
    .map((positions_m) => onBrackets(shelf, positions_m))
    .filter(fitsJoints)
    .map((moved): Candidate => ({ shelf: moved, atLeast: movementUsedAtLeast(moved) }));
  return { candidates: candidates.sort((a, b) => a.atLeast - b.atLeast), isComplete };
}

/** Whether every joint of the board is still over a bracket. */
export function fitsJoints({ document }: Shelf): boolean {
  return (document.board.joints ?? []).length === 0 || bracketShelfConflicts(document, []).length === 0;
}
