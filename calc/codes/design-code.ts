import type { FieldError, ProvenanceValue, Statement, Step } from '../../shared/check-result.ts';
import type { Duration } from '../../shared/check-document/index.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import type { Moisture, Temperature } from '../standards/nds-2018/2.3-adjustment.ts';

/** What a material resists. */
export type Property = 'bending' | 'shear' | 'bearing' | 'tension-across';

/** Where and how a material is used; `path` is where the document names it. */
export interface MaterialRequest {
  readonly path: string;
  readonly fieldPrefix?: 'frame';
  readonly material: string | undefined;
  readonly basis: 'clear-wood' | 'graded' | 'panel' | undefined;
  readonly appearance: 'nearly-clear' | 'small-knots' | 'knotty' | undefined;
  readonly grade: string | undefined;
  /** Smaller and larger side of the piece. */
  readonly thickness_m: number;
  readonly width_m: number;
  /** Bent about its weak axis (a board) or its strong one (a strip on edge). */
  readonly use: 'flat' | 'edge';
  readonly moisture: Moisture;
  readonly temperature: Temperature;
  readonly system: UnitSystem;
}

/** An allowable stress for one load duration with its line of working, or why there is none. */
export type Resistance =
  | { readonly ok: true; readonly value_Pa: number; readonly step: Step; readonly clause: string }
  | { readonly ok: false; readonly why: string; readonly clause: string };

/** A material as one code of practice sees it, in its place and conditions. */
export interface Material {
  readonly label: string;
  readonly basis: 'clear-wood' | 'graded' | 'panel';
  /** Lengthwise stiffness for bending; without shear where `G_Pa` is given. */
  readonly E_Pa: number;
  /** The same with shear inside it, for a section that has no shear term. */
  readonly apparentE_Pa: number;
  /** Null where shear is already inside `E_Pa`. */
  readonly G_Pa: number | null;
  /** For torsion, where `G_Pa` is null. */
  readonly torsionG_Pa: number;
  readonly density_kgm3: number;
  /** For screws; null where none is published. */
  readonly specificGravity: number | null;
  readonly creep: { readonly factor: number; readonly source: string };
  readonly statements: readonly Statement[];
  readonly steps: readonly Step[];
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
  resistance(property: Property, duration: Duration): Resistance;
}

export type MaterialReading =
  | { readonly ok: true; readonly material: Material }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

/** Loads that act at the same time, judged together. */
export interface Combination {
  readonly name: string;
  /** The shortest duration among them: it sets the strength of the wood. */
  readonly duration: Duration;
  /** Factor on the self-weight. */
  readonly selfWeight: number;
  /** Factor on a load of some duration; 0 where it is left out. */
  factor(duration: Duration): number;
}

/** A code of practice: how material and conditions become resistances, and which loads act together. */
export interface DesignCode {
  readonly id: string;
  readonly edition: string;
  material(request: MaterialRequest): MaterialReading;
  /** Every combination that can govern for loads of these durations. */
  combinations(durations: readonly Duration[]): readonly Combination[];
  /** Duration factor of wood, and of connections. */
  woodDuration(duration: Duration): number;
  connectionDuration(duration: Duration): number;
  /** Where the rule for combining and for durations stands. */
  readonly combinationSource: string;
}
