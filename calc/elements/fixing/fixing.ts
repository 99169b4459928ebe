import type { Duration } from '../../../shared/check-document/index.ts';
import type { Step } from '../../../shared/check-result.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import type { Fastener } from '../../catalogue/index.ts';
import type { Moisture, Temperature } from '../../standards/nds-2018/2.3-adjustment.ts';
import type { YieldMode } from '../../standards/nds-2018/12.3-dowel-bearing.ts';

/** What the screws of a bracket go into. */
export type Ground =
  | {
      readonly kind: 'wood';
      readonly G: number;
      /** Largest angle of a vertical load to the grain: 0 in a stud, 90 in blocking and in an end. */
      readonly angle_deg: 0 | 90;
      /** What the fasteners stand in. */
      readonly grain: 'side' | 'end';
      /** How deep the wood is. */
      readonly depth_m: number;
      /** Width of the member along the wall; for the group factor. */
      readonly width_m: number;
      readonly E_Pa: number;
    }
  /** Only values typed in from a report count. */
  | { readonly kind: 'by-report'; readonly what: string }
  | { readonly kind: 'hollow' };

/** A plate on a wall with its screws. */
export interface Fixing {
  readonly system: UnitSystem;
  readonly plate: { readonly height_m: number; readonly width_m: number; readonly thickness_m: number };
  readonly fastener: Fastener | null;
  readonly allowable: {
    readonly tension_N: number;
    readonly shear_N: number;
    readonly report: string;
  } | null;
  readonly length_m: number;
  readonly thread_m: number;
  /** Nails may be toed in. */
  readonly driven: 'straight' | 'toe';
  readonly heights_m: readonly number[];
  readonly perHeight: number;
  /** Between the outer screws at one height; 0 where there is one. */
  readonly across_m: number;
  /** Coverings between plate and wood. */
  readonly gap_m: number;
  readonly ground: Ground;
  /** Height of the blocking behind the plate; null where the wall is solid all the way up it. */
  readonly blockingHeight_m: number | null;
  readonly moisture: Moisture;
  readonly temperature: Temperature;
  /** Allowable bearing of the covering under the plate; null where it isn't known. */
  readonly coveringBearing_Pa: number | null;
}

/** What acts on a plate. */
export interface FixingLoad {
  readonly shear_N: number;
  readonly pull_N: number;
  readonly couple_Nm: number;
  /** The couple lifts the arm: it presses the upper end of the plate on the wall, and the plate turns about that. */
  readonly isLifted?: boolean;
  readonly duration: Duration;
  /** Duration factor of connections. */
  readonly C_D: number;
}

/** A fixing worked out. Ratios are null where nothing resists or it can't be said. */
export interface FixingAnswer {
  readonly tension_N: number;
  readonly shear_N: number;
  readonly penetration_m: number;
  readonly withdrawal_N: number | null;
  readonly lateral_N: number | null;
  readonly mode: YieldMode | 'report' | null;
  readonly combined_N: number | null;
  readonly ratios: {
    readonly withdrawal: number | null;
    readonly lateral: number | null;
    readonly combined: number | null;
  };
  /** Why there is no answer, or why nothing resists; empty otherwise. */
  readonly why: string;
  readonly outcome: 'worked' | 'nothing-resists' | 'cannot-say';
  readonly clause: string;
  readonly steps: readonly Step[];
}
