import { lowerFirst } from '../../../shared/words.ts';
import type { Check, Remedy, RemedyKind } from '../../../shared/check-result.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import {
  judgeOtherFixing,
  judgeShelf,
  judgeUnlessItFails,
  type Judgement,
} from '../../elements/bracket-shelf/judge.ts';
import type { Shelf } from '../../elements/bracket-shelf/shelf.ts';
import { hasLimit, movementUsedAtLeast } from '../../elements/bracket-shelf/stillness.ts';
import { governingOf, isOpen, rank, standingOf, usedOf } from '../ranking.ts';
import { tryShelf, type Subject } from '../subject.ts';
import { boxFrame, nosing, otherBoard, thickerBoard } from './board.ts';
import { anotherBracket, longerArms, otherPositions, screwDown } from './brackets.ts';
import { canHelp, canHelpWith, type Change, type Family, type Trouble } from './change.ts';
import { lighterContents, withShare } from './contents.ts';
import { thickerPlate } from './plate.ts';
import { longerScrews, moreScrews, thickerScrews } from './screws.ts';

const close = 0.9;
const most = 8;
const mostHelping = 6;
/** Judgements a search for ways out may cost; one of a board that may lift off or stands on soft arms counts as several. */
const mostJudgements = 24;
const leastGain = 0.99;
const shareSteps = 20;

/** A change that was tried. */
interface Tried {
  readonly change: Change;
  readonly after: Judgement;
}

/**
 * What asks for a change: checks that do not hold or can't be vouched for. Where all hold, those that are close to their
 * limit; where what is missing is something to be given, nothing.
 */
function pressingOf(checks: readonly Check[]): readonly Check[] {
  if (checks.every(({ outcome }) => outcome === 'holds'))
    return checks.filter(({ ratio }) => (ratio ?? 0) > close);
  return checks.filter((check) => check.outcome === 'does-not-hold' || isOpen(check));
}

/** Whether there is anything to find a way out of: only then is the document worth reading again. */
export function needsRemedies(checks: readonly Check[]): boolean {
  return pressingOf(checks).length > 0;
}

const families: Readonly<Record<Exclude<RemedyKind, 'lighter-contents'>, (trouble: Trouble) => Family>> = {
  'screw-down': screwDown,
  'screw-length': longerScrews,
  'screw-size': thickerScrews,
  'more-screws': moreScrews,
  'thicker-plate': thickerPlate,
  positions: otherPositions,
  'another-bracket': anotherBracket,
  'longer-arm': longerArms,
  'box-frame': boxFrame,
  nosing,
  'thicker-board': thickerBoard,
  'other-board': otherBoard,
};

/**
 * Ways out for a shelf that does not hold or can't be vouched for, and ways to more margin for one that holds but is used to more
 * than 90 %: changes that were each made and judged by every check, the smallest first. Enough is that all holds; of a
 * shelf that holds already, that no check is used to more than 90 %. Where no single change is enough, the change that helps most is made and a second one is looked
 * for after it. Changes that are not enough are offered only where none is, the one that helps most first.
 *
 * @param input the check as it was written
 * @param before the shelf read from it, judged
 */
export function remediesOf(input: BracketShelfInput, shelf: Shelf, before: Judgement): Remedy[] {
  const trouble = troubleOf({ input, shelf }, before, { left: mostJudgements });
  const { enough, helping } = tryAll(trouble);
  const wayOut = enough.length > 0 ? enough : afterAnother(trouble, helping);
  const offered = wayOut.length > 0 ? wayOut : helping;
  return offered.slice(0, most).map(({ change, after }) => ({
    kind: change.kind,
    what: change.what,
    document: change.input,
    verdict: after.verdict,
    governing: governingOf(after),
  }));
}

function troubleOf(subject: Subject, judgement: Judgement, allowance: Trouble['allowance']): Trouble {
  const pressing = new Set(pressingOf(judgement.checks).map(({ id }) => id));
  return { ...subject, present: rank(subject.shelf, judgement), pressing, allowance };
}

/** What single changes lead to: those that are enough, the smallest first; or else those that help, the best first. */
interface Outcomes {
  readonly enough: readonly Tried[];
  readonly helping: readonly Tried[];
}

function tryAll(trouble: Trouble, done?: RemedyKind): Outcomes {
  const tried = entries(families)
    .filter(([kind]) => kind !== done && canHelp(kind, trouble))
    .map(([, familyOf]) => familyOf(trouble))
    .filter(({ changes }) => changes.length > 0);
  const found = tried.flatMap((family) => firstEnough(trouble, family) ?? []);
  const lighter =
    done !== 'lighter-contents' && canHelp('lighter-contents', trouble) ? heaviestShare(trouble) : null;
  const enough = distinct(lighter === null ? found : [...found, lighter]);
  if (enough.length > 0) {
    return { enough: [...enough].sort((a, b) => a.change.effort - b.change.effort), helping: [] };
  }
  const few = done === undefined ? tried.slice(0, mostHelping) : [];
  const helping = distinct(few.flatMap((family) => mostHelpful(trouble, family) ?? []));
  return {
    enough,
    helping: [...helping].sort((a, b) => worseBy(a.after, b.after) || a.change.effort - b.change.effort),
  };
}

/** Second changes, of another kind, after the one that helps most by itself. */
function afterAnother({ allowance }: Trouble, [helping]: readonly Tried[]): readonly Tried[] {
  const shelf = helping === undefined ? null : tryShelf(helping.change.input);
  if (helping === undefined || shelf === null) return [];
  const { change: first, after } = helping;
  const { enough } = tryAll(troubleOf({ input: first.input, shelf }, after, allowance), first.kind);
  return enough.map(({ change, after: last }) => ({
    change: { ...change, what: `${first.what} And then: ${lowerFirst(change.what)}` },
    after: last,
  }));
}

function entries<K extends string, V>(record: Readonly<Record<K, V>>): [K, V][] {
  return Object.entries<V>(record).flatMap(([key, value]) => (isKey(record, key) ? [[key, value]] : []));
}

function isKey<K extends string>(record: Readonly<Record<K, unknown>>, key: string): key is K {
  return Object.hasOwn(record, key);
}

/** Whether all holds; of a shelf that held already, whether nothing is close any more. */
function isEnough({ present }: Trouble, { checks }: Judgement): boolean {
  return standingOf(checks) === 'holds' && (present.standing !== 'holds' || usedOf(checks) <= close);
}

/** The first change of a family that is enough; what surely moves too far is not judged any further. */
function firstEnough(trouble: Trouble, { touches, changes }: Family): Tried | null {
  if (touches === 'wall' && !canWallHelp(trouble)) return null;
  for (const change of changes) {
    const shelf = tryShelf(change.input);
    if (shelf === null) continue;
    const after =
      touches === 'wall'
        ? judgeOtherFixing(trouble.present.judgement, shelf)
        : judgeUnlessItMoves(trouble, shelf);
    if (after !== null && isEnough(trouble, after)) return { change, after };
  }
  return null;
}

/** Whether everything that is not enough has to do with the wall, so that other screws or plates could be enough. */
function canWallHelp({ pressing }: Trouble): boolean {
  return [...pressing].every((id) => canHelpWith('more-screws', id) || canHelpWith('thicker-plate', id));
}

/** Null where a check does not hold, or nothing more may be judged. */
function judgeUnlessItMoves({ allowance, present }: Trouble, shelf: Shelf): Judgement | null {
  if (allowance.left <= 0 || (hasLimit(shelf) && movementUsedAtLeast(shelf) > 1 + 1e-9)) return null;
  const after = judgeUnlessItFails(shelf);
  allowance.left -= costOf(after ?? present.judgement) * (after === null ? 0.5 : 1);
  return after;
}

/** Every idea of how the board is held is worked out by itself, and takes longer the more brackets and loads there are. */
function costOf({ context: { shelf, solved } }: Judgement): number {
  return solved.length * Math.max(1, (shelf.positions_m.length * shelf.actions.length) / manyPlaces);
}

/** Brackets times loads up to here, a judgement costs as much as another. */
const manyPlaces = 64;

/** The largest change of a family, where it makes the shelf better though not good enough. */
function mostHelpful({ present, allowance }: Trouble, { touches, changes }: Family): Tried | null {
  const change = changes[changes.length - 1];
  const shelf = change === undefined ? null : tryShelf(change.input);
  if (change === undefined || shelf === null) return null;
  const after = touches === 'wall' ? judgeOtherFixing(present.judgement, shelf) : judgeShelf(shelf);
  allowance.left -= touches === 'wall' ? 0 : costOf(after);
  return worseBy(after, present.judgement) < 0 ? { change, after } : null;
}

/** How much worse one judgement is than another: how it stands, then whether brackets miss the studs, then how many checks fail, then the most that is used. */
function worseBy(a: Judgement, b: Judgement): number {
  const order = { holds: 0, open: 1, fails: 2 };
  const [usedA, usedB] = [usedOf(a.checks), usedOf(b.checks)];
  return (
    order[standingOf(a.checks)] - order[standingOf(b.checks)] ||
    notStanding(a) - notStanding(b) ||
    offStud(a) - offStud(b) ||
    failing(a) - failing(b) ||
    (usedA < leastGain * usedB ? -1 : usedB < leastGain * usedA ? 1 : 0)
  );
}

/** Nothing is known of a board while it is not known what it stands on. */
function notStanding({ standing }: Judgement): number {
  return standing.length;
}

/** A bracket that misses its stud is held by nothing, whatever else is asked of it. */
function offStud({ checks }: Judgement): number {
  return checks.some(({ id, outcome }) => id === 'bracket-on-stud' && outcome === 'does-not-hold') ? 1 : 0;
}

function failing({ checks }: Judgement): number {
  return checks.filter(({ outcome }) => outcome === 'does-not-hold').length;
}

/** The largest share of the contents, in steps of 5 %, that is enough; null where even 5 % is not, or nothing stands there. */
function heaviestShare(trouble: Trouble): Tried | null {
  const { shelf } = trouble;
  if (!shelf.actions.some(({ load }) => load.kind !== 'roaming')) return null;
  let [low, high] = [0, shareSteps];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const after = judgeUnlessItMoves(trouble, withShare(shelf, middle / shareSteps));
    if (after !== null && isEnough(trouble, after)) low = middle;
    else high = middle;
  }
  if (low === 0) return null;
  const change = lighterContents(trouble, low / shareSteps);
  const lighter = tryShelf(change.input);
  if (lighter === null) return null;
  const after = judgeShelf(lighter);
  return isEnough(trouble, after) ? { change, after } : null;
}

/** Two ways to the same places are one: the smaller change is kept. */
function distinct(tried: readonly Tried[]): Tried[] {
  const places = ({ change }: Tried): string => [...change.input.brackets.positions].join();
  const sameKind = (each: Tried): boolean =>
    each.change.kind === 'positions' || each.change.kind === 'another-bracket';
  return tried.filter(
    (each, index) =>
      !sameKind(each) ||
      !tried.some(
        (other, k) =>
          k !== index &&
          sameKind(other) &&
          places(other) === places(each) &&
          (other.change.effort < each.change.effort ||
            (other.change.effort === each.change.effort && k < index)),
      ),
  );
}
