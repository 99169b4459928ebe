import type {
  CounterOverhangResult,
  PropsAnswer,
  Remedy,
  OverhangRemedyKind,
} from '../../../shared/check-result.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import { governingOf } from '../ranking.ts';
import { bars, brackets, legs, thickerTops, type Candidate, type Family } from './candidates.ts';
import { lowerFirst } from '../../../shared/words.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { readCounter, tryCounter, tryRead, type Counter } from './subject.ts';
import { unaidedOverhang } from './unaided.ts';

/** Whole checks a search may make: somebody waits for it. */
const mostChecks = 40;

/**
 * What a counter overhang wants under it: of each kind of prop the fewest that make it hold, each checked whole with the
 * rating it asks for; a thicker top where it does not hold as it is; and how far the top could stand out with nothing under it.
 *
 * @param untrusted an untrusted check document, as parsed from JSON
 * @throws DocumentError with every error of the document, as `check` does
 */
export function props(untrusted: unknown): PropsAnswer {
  const counter = readCounter(untrusted);
  const system = counter.document.units ?? 'inch-pound';
  const bare = tryCounter({ ...counter.input, props: [] });
  const unaided = unaidedOverhang(counter, system);
  const hasProps = (counter.document.props ?? []).length > 0;
  const holds = (hasProps ? tryCounter(counter.input) : bare)?.verdict === 'holds';
  if (bare?.verdict === 'holds')
    return {
      wanted: false,
      holds,
      proposals: [],
      notEnough: [],
      reason: 'The top holds with nothing under it.',
      unaided,
    };
  const tipsOver =
    bare?.checks.some(({ id, outcome }) => id.startsWith('tip-over') && outcome !== 'holds') ?? false;
  const families = [
    ...(tipsOver ? [] : [[brackets(counter, system)], [legs(counter, system)], bars(counter, system)]),
    ...(holds ? [] : [[thickerTops(counter, system)]]),
  ];
  const allowance = { left: mostChecks };
  const tried = families.flatMap((sizes) => firstOf(sizes, allowance) ?? []);
  const alone = tried.filter(({ verdict }) => verdict === 'holds');
  const notEnough = tried.filter(({ verdict }) => verdict !== 'holds');
  const proposals =
    alone.length > 0 || tipsOver || holds ? alone : thickerOnBrackets(counter, system, allowance);
  const most = bare?.checks.find(({ id }) => id === bare.governing);
  return {
    wanted: true,
    holds,
    proposals,
    notEnough,
    reason:
      proposals.length > 0
        ? ''
        : holds
          ? 'It holds on the props that are there; no others that were tried make it hold.'
          : tipsOver
            ? 'The base itself tips over, and props under the top do not cure that: hold it to the floor with fasteners whose pull is given, or make it heavier or deeper.'
            : `No props that were tried make it hold.${most === undefined ? '' : ` Without any, what fails is this: ${most.title}.`}`,
    unaided,
  };
}

/** Brackets under the next thicker tops, where nothing is enough by itself. */
function thickerOnBrackets(counter: Counter, system: UnitSystem, allowance: { left: number }): Tried[] {
  const bare = { input: { ...counter.input, props: [] }, document: { ...counter.document, props: [] } };
  for (const { input, what } of thickerTops(bare, system)) {
    const changed = tryRead(input);
    if (changed === null) continue;
    const found = fewest(brackets(changed, system), allowance);
    if (found?.verdict === 'holds')
      return [{ ...found, what: `${what} And then: ${lowerFirst(found.what)}` }];
  }
  return [];
}

type Tried = Remedy<OverhangRemedyKind>;

/** The first family in which anything is enough; where none is, the most of the last that was tried. */
function firstOf(families: readonly Family[], allowance: { left: number }): Tried | null {
  let last: Tried | null = null;
  for (const family of families) {
    const tried = fewest(family, allowance);
    if (tried?.verdict === 'holds') return tried;
    last = tried ?? last;
  }
  return last;
}

/**
 * The smallest change of a family that is enough: halved down from its largest, the one under it tried and not enough. Where the
 * largest is not, that one.
 */
function fewest(family: Family, allowance: { left: number }): Tried | null {
  let high = family.length - 1;
  let best = triedAs(family[high], allowance);
  if (best?.verdict !== 'holds') return best;
  for (let low = -1; high - low > 1 && allowance.left > 1;) {
    const middle = (low + high) >> 1;
    const found = triedAs(family[middle], allowance);
    if (found?.verdict === 'holds') [high, best] = [middle, found];
    else low = middle;
  }
  return best;
}

/** A change as it stands with the rating it asks for; one that is not enough, as it was tried. */
function triedAs(candidate: Candidate | undefined, allowance: { left: number }): Tried | null {
  if (candidate === undefined || allowance.left < 2) return null;
  const tried = checked(candidate.input, allowance);
  if (tried === null) return null;
  if (tried.verdict !== 'holds') return triedWith(candidate, candidate, tried);
  const rated = candidate.rated(tried);
  const after = rated.input === candidate.input ? tried : checked(rated.input, allowance);
  return after === null ? null : triedWith(candidate, rated, after);
}

function triedWith(
  { kind }: Candidate,
  { input, what }: { readonly input: CounterOverhangInput; readonly what: string },
  { checks, governing: id, verdict }: CounterOverhangResult,
): Tried | null {
  const governing = checks.find((each) => each.id === id);
  return governing === undefined
    ? null
    : { kind, what, document: input, verdict, governing: governingOf({ governing }) };
}

function checked(input: CounterOverhangInput, allowance: { left: number }): CounterOverhangResult | null {
  allowance.left -= 1;
  return tryCounter(input);
}
