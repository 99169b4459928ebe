import type { CounterOverhangDocument, Duration, Limit } from '../../../shared/check-document/index.ts';
import { type UnitSystem } from '../../../shared/quantity/index.ts';
import type { DesignCode } from '../../codes/design-code.ts';
import type { Finish } from './finish.ts';
import type { TopWood } from './top-wood.ts';
import type { TopScrews } from './top-screws.ts';

/** The top; x runs along the stool edge from its left end, y from the back edge towards the stools. */
export interface Top {
  readonly length_m: number;
  readonly depth_m: number;
  readonly thickness_m: number;
  /** Whether the staves run along x. */
  readonly isAlong: boolean;
  readonly wood: TopWood;
  readonly weight_N: number;
  readonly finish: Finish | null;
}

/** Moment and thickness of one sheet of a top under a moment for each width of the whole. */
export function onOneSheet(
  { thickness_m, wood }: Top,
  moment_N: number,
): { readonly m: number; readonly t: number } {
  return { m: moment_N / wood.sheets, t: thickness_m / wood.sheets };
}

/** The base, as the top lies on it and as it stands on the floor. */
export interface Base {
  readonly from_m: number;
  readonly to_m: number;
  readonly back_m: number;
  readonly front_m: number;
  readonly panels_m: readonly number[];
  readonly railThickness_m: number;
  /** Null where it is not known. */
  readonly weight_N: number | null;
  readonly weightAt_m: number;
  readonly foot_m: number;
  readonly height_m: number;
  readonly isHeld: boolean;
  readonly anchorPull_N: number | null;
  /** The same along the outer foot on the stool side. */
  readonly anchorPullFront_N: number;
  readonly push_N: number;
}

export type Prop = NonNullable<CounterOverhangDocument['props']>[number];

/** What is served on the top. */
export interface Serving {
  readonly name: string;
  readonly pressure_Npm2: number;
  readonly duration: Duration;
  readonly sustained: number;
}

/** Somebody who leans or sits on an edge. */
export interface Person {
  readonly name: string;
  readonly load_N: number;
  readonly patch_m: number;
  readonly duration: Duration;
  /** Where on the stool edge, or null for anywhere on every free edge. */
  readonly at_m: number | null;
  /** Whether a second one fits beside the first. */
  readonly isPair: boolean;
}

/** A counter overhang with every default filled in: what all checks look at. */
export interface Overhang {
  readonly document: CounterOverhangDocument;
  readonly system: UnitSystem;
  readonly code: DesignCode;
  readonly top: Top;
  readonly base: Base;
  readonly screws: TopScrews | null;
  readonly props: readonly Prop[];
  readonly serving: Serving | null;
  readonly person: Person | null;
  readonly limits: { readonly live: Limit; readonly serving: Limit; readonly longTerm: Limit };
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** The durations of the loads that weigh anything: one of nothing makes nothing stronger. */
export function loadDurations({ serving, person }: Overhang): Duration[] {
  return [
    ...(serving !== null && serving.pressure_Npm2 > 0 ? [serving.duration] : []),
    ...(person !== null && person.load_N > 0 ? [person.duration] : []),
  ];
}
