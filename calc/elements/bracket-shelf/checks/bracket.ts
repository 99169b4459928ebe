import { show, type UnitSystem } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { ratedCouple, ratingFromTest } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { ratingToAskFor } from '../../rating-to-ask.ts';
import type { Context } from '../context.ts';
import { byLoadAt, sharesOfReaction } from '../load-shares.ts';
import type { Shelf } from '../shelf.ts';
import {
  atBracket,
  workCouple,
  largestReaction,
  turnByLoad,
  worstCouple,
  worstLiftingCouple,
} from './reactions.ts';
import { steelArmCheck } from './steel-arm.ts';

type Rated = Extract<Shelf['capacity'], { basis: 'rated' }>;

/** Each bracket against its rating or its steel; without either, cannot say. */
export function bracketCheck(context: Context): Judged {
  const { capacity } = context.shelf;
  if (capacity.basis === 'rated') return ratedBracket(context, capacity);
  if (capacity.basis === 'steel') return steelArmCheck(context, capacity);
  return unknownBracket(context, capacity.what);
}

function ratedBracket(context: Context, capacity: Rated): Judged {
  const { shelf, service } = context;
  const { system } = shelf;
  const { clause, rating, steps: ratingSteps } = ratingOf(capacity, system);
  const at_m = capacity.at ?? shelf.arm_m / 2;

  const heaviest = largestReaction(service);
  const turned = worstCouple(context);
  const allowed = work(ratedCouple, { P_r: rating, e_r: at_m }, system);
  const demand = workCouple(context.shelf, turned);
  const wanted = Math.max(heaviest.weighted, demand.value / at_m);
  const note =
    wanted > rating
      ? `It wants brackets rated for ${ratingToAskFor(wanted, system)} or more each, ${show(at_m, 'm', system)} from the wall; or more of them.`
      : '';
  const reaction: Judged = {
    check: makeCheck(
      {
        note,
        id: 'bracket',
        title: 'Load on one bracket',
        unit: 'N',
        demand: heaviest.weighted,
        capacity: rating,
        clause,
        where: atBracket(shelf, heaviest.index),
        combination: heaviest.situation.combination.name,
      },
      system,
    ),
    steps: ratingSteps,
    byLoad: byLoadAt(shelf, 'On the bracket at', shelf.positions_m[heaviest.index] ?? 0, 'N', () =>
      sharesOfReaction(heaviest.situation, heaviest.index),
    ),
  };
  const byCouple: Judged = {
    check: makeCheck(
      {
        note,
        id: 'bracket',
        title: 'Couple on one bracket: load × distance from the wall',
        unit: 'N.m',
        demand: demand.value,
        capacity: allowed.value,
        clause,
        where: atBracket(shelf, turned.index),
        combination: turned.combination,
      },
      system,
    ),
    steps: [...ratingSteps, demand.step, allowed.step],
    byLoad: turnByLoad(shelf, turned),
  };
  return worstCheck([reaction, byCouple]);
}

/** Share of its rating a bracket is taken to hold against lift, of which ratings say nothing: its screws steady the arm. */
const sureOfLift = 0.25;

/** What lifts a rated bracket, against its rating; none where nothing does. */
export function bracketLiftCheck(context: Context): Judged[] {
  const { capacity, system, arm_m } = context.shelf;
  const lifted = capacity.basis === 'rated' ? worstLiftingCouple(context) : null;
  if (capacity.basis !== 'rated' || lifted === null) return [];
  const { clause, rating, steps } = ratingOf(capacity, system);
  const allowed = work(ratedCouple, { P_r: rating, e_r: capacity.at ?? arm_m / 2 }, system);
  const up = workCouple(context.shelf, lifted);
  const check = makeCheck(
    {
      id: 'bracket-lift',
      title: 'Lift on one bracket: couple upward',
      unit: 'N.m',
      demand: up.value,
      capacity: allowed.value,
      clause: `${clause}; of lift, common practice, no source`,
      where: atBracket(context.shelf, lifted.index),
      combination: lifted.combination,
      sureUpTo: sureOfLift,
      note: 'A rating is of what presses a bracket down and says nothing of lift: up to a quarter of it is taken to hold; above that, ask the maker, or let less board stand past the last bracket.',
    },
    system,
  );
  const byLoad = turnByLoad(context.shelf, lifted);
  return [{ check, steps: [...steps, up.step, allowed.step], byLoad }];
}

function ratingOf(capacity: Rated, system: UnitSystem) {
  const { ultimate, factor, source } = capacity;
  const tested =
    ultimate !== undefined && factor !== undefined
      ? work(ratingFromTest, { P_u: ultimate, Omega: factor }, system)
      : undefined;
  const basis = tested === undefined ? 'rating given as allowable' : 'test load over a safety factor';
  return {
    rating: capacity.allowable ?? tested?.value ?? 0,
    clause: `${basis}${source === undefined ? '' : `: ${source}`}`,
    steps: tested === undefined ? [] : [tested.step],
  };
}

function unknownBracket(context: Context, what: string | undefined): Judged {
  const { shelf, service } = context;
  const { system } = shelf;
  const heaviest = largestReaction(service);
  const material =
    what === undefined ? 'The strength of the brackets is not known' : `Brackets of ${what} have no rating`;
  const at_m = shelf.arm_m / 2;
  const wanted = Math.max(heaviest.weighted, workCouple(shelf, worstCouple(context)).value / at_m);
  const rating = `${ratingToAskFor(wanted, system)} or more for one bracket, ${show(at_m, 'm', system)} from the wall`;
  return {
    check: makeCheck(
      {
        id: 'bracket',
        title: 'Load on one bracket',
        unit: 'N',
        demand: heaviest.weighted,
        capacity: null,
        clause: 'no rating, no section',
        where: atBracket(shelf, heaviest.index),
        combination: heaviest.situation.combination.name,
        note: `${material}. It wants a rating of ${rating}: "load rating", "working load" or "weight capacity" on the packaging, half of it where that is for a pair. Or ask the maker, or test one.`,
      },
      system,
    ),
    steps: [],
  };
}
