import type { BracketShelfDocument, Duration, Limit } from '../../../shared/check-document/index.ts';
import { inch, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { DesignCode } from '../../codes/design-code.ts';
import type { Board } from './board.ts';

type Brackets = BracketShelfDocument['brackets'];

/** A load with every default filled in, in SI. */
export interface Action {
  readonly name: string;
  readonly duration: Duration;
  /** It may be there or not, a line load bay by bay. */
  readonly free: boolean;
  /** Share that stays for years. */
  readonly sustained: number;
  /** Distance from the wall finish. */
  readonly eccentricity_m: number;
  /** Spread evenly over the depth; otherwise it stands on one line at its eccentricity. */
  readonly spread: boolean;
  readonly load:
    | { readonly kind: 'line'; readonly from_m: number; readonly to_m: number; readonly load_Npm: number }
    | { readonly kind: 'point'; readonly at_m: number; readonly load_N: number }
    | { readonly kind: 'roaming'; readonly load_N: number };
}

/** A bracket shelf with every default filled in: what all checks look at. */
export interface Shelf {
  readonly document: BracketShelfDocument;
  readonly system: UnitSystem;
  readonly code: DesignCode;
  readonly length_m: number;
  /** From the wall finish to the front face. */
  readonly depth_m: number;
  readonly board: Board;
  /** In order from the left end. */
  readonly positions_m: readonly number[];
  readonly arm_m: number;
  /** Part of the arm that lies under the board. */
  readonly bearingLength_m: number;
  readonly armWidth_m: number;
  readonly hold: 'screwed' | 'resting';
  readonly capacity: NonNullable<Brackets['capacity']>;
  readonly actions: readonly Action[];
  readonly limits: { readonly live: Limit; readonly longTerm: Limit };
  /** Everything that was not given, in words. */
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Depth of the patch a concentrated load acts on, and its width. */
export const patch_m = 4 * inch;
