import type { Quantity } from './quantity/index.ts';

/** The three words of a verdict. */
export type Outcome = 'holds' | 'does-not-hold' | 'cannot-say';

/** One check: what acts, what resists, how much of it is used. */
export interface Check {
  readonly id: string;
  readonly title: string;
  /** What acts; null where it can't be worked out. */
  readonly demand: Quantity | null;
  /** What resists; null where there is none or it is not known. */
  readonly capacity: Quantity | null;
  /** demand ÷ capacity; null where there is no capacity. */
  readonly ratio: number | null;
  readonly outcome: Outcome;
  /** The clause or source it follows. */
  readonly clause: string;
  /** Where on the piece it happens. */
  readonly where: string;
  readonly combination: string;
  /** Why it is as it is, where the numbers alone don't tell; empty otherwise. */
  readonly note: string;
}

/** A symbol of a formula with the number put in for it. */
export interface StepInput {
  readonly symbol: string;
  readonly value: number;
  readonly unit: string;
  /** In the calculation's own units, with the unit. */
  readonly shown: string;
  /** In the calculation's own units, the number alone. */
  readonly number: string;
}

/** One line of working. */
export interface Step {
  readonly symbol: string;
  readonly caption: string;
  /** The formula as it was executed. */
  readonly expression: string;
  /** The formula with its numbers put in, in the calculation's own units. */
  readonly substituted: string;
  readonly inputs: readonly StepInput[];
  readonly result: Quantity;
  /** The result in the calculation's own units. */
  readonly shown: string;
  /** The clause or source of the formula. */
  readonly source: string;
}

/** A stated value: something given, or read from a table. */
export interface Statement {
  readonly label: string;
  readonly value: string;
  /** Who says so: "given", "assumed", or a source. */
  readonly source: string;
}

export interface Table {
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export type SectionId =
  | 'given'
  | 'material'
  | 'section'
  | 'actions'
  | 'analysis'
  | 'hand-check'
  | 'checks'
  | 'fixings'
  | 'geometry'
  | 'summary';

/** One chapter of the calculation; its parts are read in order: statements, steps, tables, notes. */
export interface Section {
  readonly id: SectionId;
  /** The id of the check it works out; empty for the other chapters. Every check has its own section. */
  readonly check: string;
  readonly title: string;
  readonly statements: readonly Statement[];
  readonly steps: readonly Step[];
  readonly tables: readonly Table[];
  readonly notes: readonly string[];
}

/** A table value that was used, and how far it can be trusted. */
export interface ProvenanceValue {
  readonly what: string;
  readonly value: string;
  readonly source: string;
  /** Whether the row was read in a copy of the source or set down from memory. */
  readonly provenance: string;
}

export interface BayMovement {
  readonly from: Quantity;
  readonly to: Quantity;
  readonly live: Quantity;
  readonly longTerm: Quantity;
  readonly twist: Quantity;
}

/** Values along the board, for drawing only: SI, positions in m from the left end. */
export interface Diagram {
  readonly at: readonly number[];
  readonly momentMax: readonly number[];
  readonly momentMin: readonly number[];
  readonly shearMax: readonly number[];
  readonly shearMin: readonly number[];
  /** Long-term movement, everything on in full and creep counted, down positive. */
  readonly settled: readonly number[];
}

export interface Analysis {
  readonly supports: readonly {
    readonly position: Quantity;
    readonly reaction: { readonly max: Quantity; readonly min: Quantity; readonly dead: Quantity };
  }[];
  readonly moment: { readonly max: Quantity; readonly min: Quantity };
  readonly shear: { readonly max: Quantity };
  readonly deflection: {
    readonly live: Quantity;
    readonly longTerm: Quantity;
    readonly bays: readonly BayMovement[];
  };
  /** `GA` is null where the material's stiffness already has shear inside it. */
  readonly stiffness: { readonly EI: Quantity; readonly GA: Quantity | null; readonly GJ: Quantity };
  readonly diagram: Diagram;
}

/** How one bracket is held by the wall. Quantities are null where they can't be worked out. */
export interface FixingResult {
  /** Counted from the left end, from 1. */
  readonly bracket: number;
  /** Centre line of the nearest stud, and how far the bracket misses it. */
  readonly stud: Quantity | null;
  readonly miss: Quantity | null;
  /** Pull and shear on the screw that is pulled most: the highest, or of a lifted bracket the lowest. */
  readonly tension: Quantity;
  readonly shear: Quantity;
  /** Couple on the plate about the wall finish; below 0 where it lifts the arm. */
  readonly couple: Quantity;
  readonly penetration: Quantity;
  readonly withdrawalCapacity: Quantity | null;
  readonly lateralCapacity: Quantity | null;
  /** Yield mode, `report` for typed-in values, null where nothing was worked out. */
  readonly mode: string | null;
  readonly withdrawal: number | null;
  readonly lateral: number | null;
  readonly combined: number | null;
  /** The largest of the three. */
  readonly ratio: number | null;
}

/** What governs a shelf that was changed. */
export interface Governing {
  readonly id: string;
  readonly title: string;
  /** demand ÷ capacity; null where there is no capacity. */
  readonly ratio: number | null;
  readonly where: string;
}

/** What a way out changes. */
export type RemedyKind =
  | 'screw-down'
  | 'screw-length'
  | 'screw-size'
  | 'more-screws'
  | 'positions'
  | 'another-bracket'
  | 'longer-arm'
  | 'thicker-plate'
  | 'box-frame'
  | 'nosing'
  | 'thicker-board'
  | 'other-board'
  | 'lighter-contents';

/** What a way out of a counter overhang changes. */
export type OverhangRemedyKind = 'brackets' | 'legs' | 'flat-bars' | 'thicker-top';

/** A change that was tried and judged by every check, and makes the shelf or the counter better. */
export interface Remedy<Kind = RemedyKind> {
  readonly kind: Kind;
  /** What to do, in one plain sentence. */
  readonly what: string;
  /** The whole check with the change made, as a check document takes it. */
  readonly document: unknown;
  readonly verdict: Outcome;
  /** What governs afterwards. */
  readonly governing: Governing;
}

/** Brackets in some places, judged by every check. */
export interface BracketLayout {
  readonly positions: readonly Quantity[];
  readonly verdict: Outcome;
  readonly governing: Governing;
  /** Worst share of its limit that an edge moves; against L/240 over the years where there is no limit. */
  readonly movement: number;
  /** Whether it is its own mirror image, to 1/16 in. */
  readonly isSymmetric: boolean;
}

/** Brackets in other places, and the whole check with them there. */
export interface ProposedLayout extends BracketLayout {
  /** As a check document takes it. */
  readonly document: unknown;
}

/** Where the brackets could go. */
export interface Layouts {
  readonly present: BracketLayout;
  /** Which the present one is among all that were looked at, from 1; null where it is none of the first few or none of them. */
  readonly presentRank: number | null;
  /** The best others, best first. */
  readonly proposals: readonly ProposedLayout[];
  /** Why there are none; empty where there are some. */
  readonly reason: string;
  /** Where brackets may stand, how they are ranked, and how far an end may stand out. */
  readonly rules: readonly string[];
  /** Layouts looked at, those judged by every check, and whether the best are surely the best. */
  readonly searched: { readonly layouts: number; readonly judged: number; readonly isExact: boolean };
}

/** How far one thing can go while every check holds. */
export interface ReachLimit {
  /** The largest value at which every check holds, rounded down; null where there is none. */
  readonly value: Quantity | null;
  /** Why there is no value, or why it goes no further; empty where a check stops it. */
  readonly reason: string;
  /** What was changed and what was left as it is. */
  readonly basis: string;
  /** The check that uses most at that value. */
  readonly governing: Governing | null;
  /** The whole check at that value, as a check document takes it. */
  readonly document: unknown;
}

/** How far the present check could go. */
export interface Reach {
  readonly longestBay: ReachLimit;
  readonly heaviestLine: ReachLimit;
  readonly heaviestPoint: ReachLimit;
}

/** What a counter overhang wants under it. */
export interface PropsAnswer {
  /** Whether it does not hold with nothing under it. */
  readonly wanted: boolean;
  /** Whether it holds as it is, with the props that are there. */
  readonly holds: boolean;
  /** Of each kind the fewest that make it hold. */
  readonly proposals: readonly Remedy<OverhangRemedyKind>[];
  /** Of each kind that comes to nothing the most that was tried, and the check in its way. */
  readonly notEnough: readonly Remedy<OverhangRemedyKind>[];
  /** Why there are no proposals; empty where there are. */
  readonly reason: string;
  /** How far the top could stand out on the stool side with nothing under it. */
  readonly unaided: ReachLimit;
}

/** What every answer has, whatever was checked. */
interface ResultBase {
  readonly schema: 1;
  readonly verdict: Outcome;
  readonly summary: string;
  /** Id of the check that governs. */
  readonly governing: string;
  readonly checks: readonly Check[];
  readonly fixings: readonly FixingResult[];
  /** Ways out where a check does not hold or can't be vouched for; to more margin where all hold and one is close. The best first. */
  readonly remedies: readonly Remedy[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
  readonly worksheet: { readonly sections: readonly Section[] };
  readonly provenance: { readonly values: readonly ProvenanceValue[] };
  readonly edition: { readonly code: string; readonly tool: string };
}

/** The answer to a shelf on brackets. */
export interface BracketShelfResult extends ResultBase {
  readonly element: 'bracket-shelf';
  readonly analysis: Analysis;
}

/** The answer to a plate on a wall. */
export interface WallFixingResult extends ResultBase {
  readonly element: 'wall-fixing';
  /** Everything on the plate at once, unfactored. */
  readonly analysis: {
    readonly plate: { readonly shear: Quantity; readonly pull: Quantity; readonly couple: Quantity };
  };
}

/** A place on a counter top: along its length, and from its back edge. */
export interface TopPlace {
  readonly x: Quantity;
  readonly y: Quantity;
}

/**
 * Something that differs from place to place on a counter top, SI, at the crossings of its mesh: row by row from the back
 * edge, each row from the left end; and who stands where.
 */
export interface TopField {
  readonly x_m: readonly number[];
  readonly y_m: readonly number[];
  readonly values: readonly number[];
  readonly unit: 'm' | 'Pa';
  readonly people: readonly TopPlace[];
  /** Share of the moments by which the mesh may be off, in all. */
  readonly meshError: number;
}

/** What the plate says of a counter top; null where it tips off its base. */
export interface PlateAnalysis {
  /** Largest stresses, a peak averaged over one thickness. */
  readonly alongGrain: Quantity | null;
  readonly acrossGrain: Quantity | null;
  /** The most any edge moves under load, and where. */
  readonly tip: { readonly movement: Quantity; readonly at: TopPlace } | null;
  /** How far the top rises off its base at the farthest. */
  readonly lift: Quantity;
  /** What each stretch of the front rail between panels carries at most. */
  readonly railLine: readonly { readonly from: Quantity; readonly to: Quantity; readonly load: Quantity }[];
  /** The largest load on each prop; null for a bar, which bends with the top. */
  readonly props: readonly { readonly at: Quantity; readonly load: Quantity | null }[];
  /** Largest pull on one screw. */
  readonly screwPull: Quantity;
  /** Where people stand when the check across the grain finds most asked; none where it is worst without them. */
  readonly person: { readonly at: readonly TopPlace[] };
  /** Whether the screws hold or are loose then. */
  readonly bound: 'screws-hold' | 'screws-loose';
  /** Movement down where an edge moves most for what it may, and stress across the grain as its check finds it. */
  readonly fields: { readonly movement: TopField | null; readonly acrossGrain: TopField | null };
}

/** The answer to a counter top that runs past its base. */
export interface CounterOverhangResult extends ResultBase {
  readonly element: 'counter-overhang';
  /** Unfactored. */
  readonly analysis: {
    readonly plate: PlateAnalysis;
    readonly tipOver: {
      readonly overturning: Quantity;
      readonly restoring: Quantity;
      /** Pull on the floor that would hold the base, people and pushes; null where its weight is not known. */
      readonly floorPull: Quantity | null;
    };
  };
}

/** The answer to panels that carry tile or stone over an opening. */
export interface CounterRunResult extends ResultBase {
  readonly element: 'counter-run';
  /**
   * Unfactored, null where the panels slip off their sides; the fields are those of everything even, its weight included,
   * and of stress with a person.
   */
  readonly analysis: {
    readonly even: Quantity | null;
    readonly withPerson: Quantity | null;
    readonly longTerm: Quantity | null;
    readonly fields: { readonly movement: TopField | null; readonly acrossGrain: TopField | null };
  };
}

/** The answer to one check document; `element` says which. */
export type CheckResult = BracketShelfResult | WallFixingResult | CounterOverhangResult | CounterRunResult;

/** One thing wrong with a document: where (a JSON pointer) and what the field takes. */
export interface FieldError {
  readonly path: string;
  readonly message: string;
}
