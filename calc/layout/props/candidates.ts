import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import type { CounterOverhangResult, OverhangRemedyKind } from '../../../shared/check-result.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { listed } from '../../../shared/words.ts';
import { wantedRating } from '../../elements/counter-overhang/usual.ts';
import { ratingToAskFor } from '../../elements/rating-to-ask.ts';
import { metresOf, topThicknesses } from '../stock-sizes.ts';
import { barBegins, placesFor, reachOf } from './places.ts';
import type { Counter } from './subject.ts';

/** A change to a counter that may make it hold. */
export interface Candidate {
  readonly kind: OverhangRemedyKind;
  readonly input: CounterOverhangInput;
  /** What it is, in one plain sentence without a rating. */
  readonly what: string;
  /** The same once it is known what its props carry: with the rating they want. */
  readonly rated: (found: CounterOverhangResult) => {
    readonly input: CounterOverhangInput;
    readonly what: string;
  };
}

/** Changes of one sort, the smallest first; where one is enough, so is every one after it. */
export type Family = readonly Candidate[];

type Props = NonNullable<CounterOverhangInput['props']>;

const mostProps = 6;
/** The most the field of a rating takes, N. */
const unlimited_N = 50_000;

/** Brackets in place of the props there: one, two and more of them. */
export function brackets(counter: Counter, system: UnitSystem): Family {
  return ratedProps(counter, system, { kind: 'brackets', prop: 'bracket', reaching: 'reaching to' });
}

/** Legs from the floor in place of the props there. */
export function legs(counter: Counter, system: UnitSystem): Family {
  return ratedProps(counter, system, { kind: 'legs', prop: 'leg', reaching: 'standing' });
}

interface Rated {
  readonly kind: 'brackets' | 'legs';
  readonly prop: 'bracket' | 'leg';
  readonly reaching: string;
}

function ratedProps(counter: Counter, system: UnitSystem, { kind, prop, reaching }: Rated): Family {
  const to = reachOf(counter, system);
  return counts().map((count): Candidate => {
    const places = placesFor(counter, system, count);
    const rated = (allowable: string): CounterOverhangInput => ({
      ...counter.input,
      props: places.map((at) => ({ kind: prop, at, to, allowable, source: wantedRating })),
    });
    const what = `${countWords(count, prop)} at ${listed(places)}, ${reaching} ${to} from the back edge`;
    return {
      kind,
      what: `${what}, whatever the rating.`,
      input: rated(`${unlimited_N} N`),
      rated: (found) => {
        const rating = ratingFor(found, system);
        return {
          input: rated(rating),
          what: `${what}, rated for ${rating}${count === 1 ? '' : ' each'}.`,
        };
      },
    };
  });
}

/** Flat bars of steel under the top, one family for each size, slim ones first. */
export function bars(counter: Counter, system: UnitSystem): Family[] {
  const [from, to] = [barBegins(counter, system), reachOf(counter, system)];
  const sizes =
    system === 'metric'
      ? [
          ['50 mm', '10 mm'],
          ['50 mm', '15 mm'],
          ['80 mm', '20 mm'],
        ]
      : [
          ['2 in', '3/8 in'],
          ['2 in', '1/2 in'],
          ['3 in', '3/4 in'],
        ];
  return sizes.map(([width = '', thickness = '']) =>
    counts().map((count): Candidate => {
      const places = placesFor(counter, system, count);
      const props: Props = places.map((at) => ({
        ...{ kind: 'flat-bar', at, from, to, width, thickness, metal: 'a36' },
      }));
      const input = { ...counter.input, props };
      const what = `${countWords(count, 'flat bar')} of A36 steel, ${width} × ${thickness}, at ${listed(places)}, from ${from} to ${to} from the back edge.`;
      return { kind: 'flat-bars', input, what, rated: () => ({ input, what }) };
    }),
  );
}

/** Thicker tops, as they are sold, on the props that are there; none of a panel, which has its own thicknesses. */
export function thickerTops({ input, document }: Counter, system: UnitSystem): Family {
  if (document.top.build === 'panel') return [];
  const on = (document.props ?? []).length === 0 ? '' : ', on the props that are there';
  return topThicknesses[system]
    .map((thickness) => ({ thickness, input: { ...input, top: { ...input.top, thickness } } }))
    .filter(({ thickness }) => metresOf(thickness) > document.top.thickness + 1e-6)
    .map(({ thickness, input }) => {
      const what = `A top ${thickness} thick${on}.`;
      return { kind: 'thicker-top', input, what, rated: () => ({ input, what }) };
    });
}

function counts(): number[] {
  return Array.from({ length: mostProps }, (_, index) => index + 1);
}

function countWords(count: number, what: string): string {
  return count === 1 ? `One ${what}` : `${count} ${what}s`;
}

/** What each prop must be rated for, by its own check. */
function ratingFor({ checks }: CounterOverhangResult, system: UnitSystem): string {
  return ratingToAskFor((checks.find(({ id }) => id === 'prop')?.ratio ?? 0) * unlimited_N, system);
}
