import type { Check, Step } from '../../shared/check-result.ts';
import type { Unit } from '../../shared/quantity/index.ts';

/** A check and the lines of working behind it. */
export interface Judged {
  readonly check: Check;
  readonly steps: readonly Step[];
  /** What the lines take from the solver, load by load; nothing where they take nothing. */
  readonly byLoad?: ByLoad;
}

/** An effect that a solver found, load by load. */
export interface ByLoad {
  readonly what: string;
  readonly unit: Unit;
  /** Of the piece's own weight, then of every load of the document; worked out where it is asked for. */
  readonly shares: () => readonly number[];
}
