import type {
  CounterOverhangResult,
  PropsAnswer,
  Remedy,
  OverhangRemedyKind,
} from '../../../shared/check-result.ts';
import { governingOf } from '../ranking.ts';
import { bars, brackets, thickerTops, type Candidate, type Family } from './candidates.ts';
import { lowerFirst } from '../../../shared/words.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { readCounter, tryCounter, tryRead, type Counter } from './subject.ts';
import { unaidedOverhang } from './unaided.ts';

/** Whole checks a search may make: somebody waits for it. */
const mostChecks = 40;

/**
 * What a counter overhang wants under it: of each kind of prop the fewest that make it hold, each checked whole with the
 * rating it asks for; a thicker top; and how far the top could stand out with nothing under it.
 *
 * @param untrusted an untrusted check document, as parsed from JSON
 * @throws DocumentError with every error of the document, as `check` does
 */
export function props(untrusted: unknown): PropsAnswer {
  const counter = readCounter(untrusted);
  const system = counter.document.units ?? 'inch-pound';
  const bare = tryCounter({ ...counter.input, props: [] });
  const unaided = unaidedOverhang(counter, system);
  if (bare?.verdict === 'holds')
    return { wanted: false, proposals: [], reason: 'The top holds with nothing under it.', unaided };
  const tipsOver =
    bare?.checks.some(({ id, outcome }) => id.startsWith('tip-over') && outcome !== 'holds') ?? false;
  const families = [
    ...(tipsOver ? [] : [[brackets(counter, system)], bars(counter, system)]),
    [thickerTops(counter, system)],
  ];
  const allowance = { left: mostChecks };
  const alone = families.flatMap((sizes) => firstOf(sizes, allowance) ?? []);
  const proposals = alone.length > 0 || tipsOver ? alone : thickerOnBrackets(counter, system, allowance);
  const most = bare?.checks.find(({ id }) => id === bare.governing);
  return {
    wanted: true,
    proposals,
    reason:
      proposals.length > 0
        ? ''
        : tipsOver
          ? 'The base itself tips over, and props under the top do not cure that: hold it to the floor with fasteners whose pull is given, or make it heavier or deeper.'
          : `No props that were tried make it hold.${most === undefined ? '' : ` Without any, what fails is this: ${most.title}.`}`,
    unaided,
  };
}

/** Brackets under the next thicker tops, where nothing is enough by itself. */
function thickerOnBrackets(counter: Counter, system: UnitSystem, allowance: { left: number }): Found[] {
  for (const { input, rated } of thickerTops(counter, system)) {
    const changed = tryRead(input);
    if (changed === null) continue;
    const found = fewest(brackets(changed, system), allowance);
    const bare = tryCounter(input);
    if (found !== null && bare !== null)
      return [{ ...found, what: `${rated(bare).what} And then: ${lowerFirst(found.what)}` }];
  }
  return [];
}

type Found = Remedy<OverhangRemedyKind>;

/** The first family in which anything is enough. */
function firstOf(families: readonly Family[], allowance: { left: number }): Found | null {
  for (const family of families) {
    const found = fewest(family, allowance);
    if (found !== null) return found;
  }
  return null;
}

/** The smallest change of a family that is enough: halved down from its largest, the one under it tried and not enough. */
function fewest(family: Family, allowance: { left: number }): Found | null {
  let high = family.length - 1;
  let best = holdsAs(family[high], allowance);
  if (best === null) return null;
  for (let low = -1; high - low > 1 && allowance.left > 1;) {
    const middle = (low + high) >> 1;
    const found = holdsAs(family[middle], allowance);
    if (found === null) low = middle;
    else [high, best] = [middle, found];
  }
  return best;
}

function holdsAs(candidate: Candidate | undefined, allowance: { left: number }): Found | null {
  if (candidate === undefined || allowance.left < 2) return null;
  const tried = checked(candidate.input, allowance);
  if (tried?.verdict !== 'holds') return null;
  const { input, what } = candidate.rated(tried);
  const after = input === candidate.input ? tried : checked(input, allowance);
  const governing = after?.checks.find(({ id }) => id === after.governing);
  if (after?.verdict !== 'holds' || governing === undefined) return null;
  return {
    ...{ kind: candidate.kind, what, document: input, verdict: after.verdict },
    governing: governingOf({ governing }),
  };
}

function checked(
  input: Parameters<typeof tryCounter>[0],
  allowance: { left: number },
): CounterOverhangResult | null {
  allowance.left -= 1;
  return tryCounter(input);
}
