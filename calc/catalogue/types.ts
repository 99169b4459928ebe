/** Where a row comes from, and whether it was read in a copy of the source or set down from memory. */
export interface Sourced {
  readonly source: string;
  /** `read`, `memory`, or which columns are which. */
  readonly provenance: string;
}

/** Mean strengths of small clear specimens at one moisture state, Pa. Null where the source prints none. */
export interface ClearStrength {
  readonly modulusOfRupture_Pa: number;
  /** Apparent: shear movement is inside it. */
  readonly modulusOfElasticity_Pa: number;
  readonly shear_Pa: number | null;
  readonly compressionPerp_Pa: number | null;
  readonly tensionPerp_Pa: number | null;
  /** Ovendry mass over volume at this moisture. */
  readonly specificGravity: number;
}

/** Elastic ratios of the Wood Handbook, to the lengthwise modulus. Null where none is printed. */
export interface ElasticRatios extends Sourced {
  readonly species: string;
  readonly ET_over_EL: number | null;
  readonly ER_over_EL: number | null;
  readonly GLR_over_EL: number | null;
  readonly GLT_over_EL: number | null;
  /** Of shear that rolls the fibres. */
  readonly GRT_over_EL: number | null;
  readonly nu_LR: number | null;
  readonly nu_LT: number | null;
}

/** A species as clear wood. */
export interface Species extends Sourced {
  /** Kebab case, in the order people say it: `sugar-maple`. */
  readonly id: string;
  /** As people say it: "Sugar maple". */
  readonly name: string;
  /** Other names it is found by. */
  readonly otherNames: readonly string[];
  readonly group: 'hardwood' | 'softwood';
  readonly green: ClearStrength | null;
  readonly dry: ClearStrength;
  /** The moisture the dry values are printed for: 12, in a few rows 15. */
  readonly dryMoisture_percent: number;
  /** At 12 % moisture. */
  readonly density_kgm3: number;
  readonly elastic: ElasticRatios | null;
  /** A nearby species whose tension across the grain stands in where none is printed. */
  readonly tensionPerpStandIn: string | null;
  /** Whether a board of unknown wood might well be this. */
  readonly likely: boolean;
  /** Where its values are the lowest of several woods; null for a wood that grows. */
  readonly drawn: Drawn | null;
}

/** What a row takes from other woods, a value at a time. */
export type DrawnValue =
  | `${'green' | 'dry'} ${'bending' | 'stiffness' | 'shear' | 'compression across the grain' | 'tension across the grain' | 'specific gravity'}`
  | DrawnRatio
  | 'density (the highest)';

/** The elastic ratios among them. */
export type DrawnRatio =
  | 'tangential ratio'
  | 'radial ratio'
  | 'shear ratio LR'
  | 'shear ratio LT'
  | 'shear ratio RT'
  | 'Poisson ratio LR'
  | 'Poisson ratio LT';

/** Of which woods a row takes the lowest values, and the wood each value is of. */
export interface Drawn {
  /** The woods, as a sentence names them. */
  readonly woods: string;
  /** Whether some of them has no elastic ratios in print: then the usual ones have to count beside those of the others. */
  readonly lacksRatios: boolean;
  readonly from: Readonly<Partial<Record<DrawnValue, string>>>;
}

/** A group of species sold under one stamp. */
export interface LumberCombination extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  /** Ovendry mass over ovendry volume, as the connection rules assign it. */
  readonly specificGravity: number;
}

/** A grade-stamped lumber combination and grade at one width class. */
export interface GradedLumber extends Sourced {
  readonly id: string;
  readonly combination: string;
  readonly grade: string;
  readonly table: '4A' | '4B';
  /** Nominal widths the row is for, in, inclusive; to Infinity where the table says "and wider". */
  readonly nominalWidthFrom_in: number;
  readonly nominalWidthTo_in: number;
  readonly bending_Pa: number;
  readonly shear_Pa: number;
  readonly compressionPerp_Pa: number;
  readonly modulusOfElasticity_Pa: number;
  readonly specificGravity: number;
  /** From the specific gravity, at 12 % moisture. */
  readonly density_kgm3: number;
}

export type StrengthKind = 'mean' | '5-percentile' | 'allowable' | 'minimum requirement';

/** A panel at one thickness, bent along its strong or across it. */
export interface Panel extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly family: 'plywood' | 'osb' | 'mdf' | 'particleboard' | 'hardboard';
  /** Thicknesses the row is for, m, inclusive; from 0 to Infinity where the source gives none. */
  readonly thicknessFrom_m: number;
  readonly thicknessTo_m: number;
  /** Along the strong direction (face grain), and across it; null where none is given. */
  readonly along: { readonly modulusOfElasticity_Pa: number; readonly bending_Pa: number };
  readonly across: { readonly modulusOfElasticity_Pa: number; readonly bending_Pa: number } | null;
  /** Shear in the plane of the panel, as when it bends flatwise, and what the number is. */
  readonly shear_Pa: number | null;
  readonly shearBasis: string | null;
  /** Bearing on the face, and what the number is: it need not be of the same kind as the other strengths. */
  readonly compressionPerp_Pa: number | null;
  readonly bearingBasis: string | null;
  readonly strengthKind: StrengthKind;
  readonly density_kgm3: number;
}

export interface Metal extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly kind: 'steel' | 'stainless' | 'aluminium' | 'cast-iron' | 'other';
  /** Null where the metal has no yield point. */
  readonly yield_Pa: number | null;
  readonly ultimate_Pa: number;
  readonly modulusOfElasticity_Pa: number | null;
  readonly density_kgm3: number;
}

/** A wood screw, lag screw or common nail by size. */
export interface Fastener extends Sourced {
  /** `wood-screw-8`, `lag-screw-1/4`, `common-nail-10d`. */
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly kind: 'wood-screw' | 'lag-screw' | 'common-nail';
  /** Nominal (shank) diameter. */
  readonly diameter_m: number;
  /** Root of the thread; the shank of a nail. */
  readonly rootDiameter_m: number;
  readonly headDiameter_m: number | null;
  /** Length of the tapered tip (lag screws). */
  readonly tip_m: number | null;
  /** Bending yield strength. */
  readonly bendingYield_Pa: number;
}

/** A published limit of movement or load, shown as a reading beside the verdict. */
export interface Criterion extends Sourced {
  readonly id: string;
  readonly topic: string;
  readonly application: string;
  readonly value: string;
  readonly basis: string;
  /** The n of a limit L/n; null where the criterion is not one such limit. */
  readonly spanDivisor: number | null;
  /** The load over an area that the criterion names; null where it names none. */
  readonly load_Npm2: number | null;
}

export interface Density extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly low_kgm3: number;
  readonly high_kgm3: number;
}

type ThingShape = 'disc' | 'bowl' | 'vessel' | 'block';

/** A sort of thing that stands on shelves, with the sizes it has where nothing else is said. */
export interface Thing extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly shape: ThingShape;
  /** disc, bowl, vessel: outside diameter; block: null. */
  readonly diameter_m: number | null;
  /** block only. */
  readonly width_m: number | null;
  readonly height_m: number | null;
  readonly depth_m: number | null;
  /** Thickness of the material: disc, bowl, vessel. */
  readonly wall_m: number | null;
  /** Density of the material, and the row of densities it comes from. */
  readonly density_kgm3: number;
  readonly densityId: string;
  /** Share of the inside that is full where nothing is said, and of what. */
  readonly fill: number;
  readonly fillDensity_kgm3: number | null;
}

/** The wood of a stud, and the specific gravity the connection rules assign to it. */
export interface FramingWood extends Sourced {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  /** Ovendry mass over ovendry volume. */
  readonly specificGravity: number;
}

/** What a search by name gives where the name is in no row: the nearest names, best first. */
export interface UnknownName {
  readonly ok: false;
  readonly reason: 'unknown-name';
  readonly nearest: readonly string[];
}

/** What a search by name gives: the row, or the nearest names. */
export type Found<T> = { readonly ok: true; readonly row: T } | UnknownName;

/** A panel by name and thickness. The name may be known and the thickness not: then the thicknesses it has rows for. */
export type FoundPanel =
  | Found<Panel>
  | {
      readonly ok: false;
      readonly reason: 'no-such-thickness';
      readonly name: string;
      readonly nearest: readonly [];
      readonly thicknesses: readonly { readonly from_m: number; readonly to_m: number }[];
    };

/** Lumber by combination, grade and nominal width; each may be the one that has no row. */
export type FoundGradedLumber =
  | Found<GradedLumber>
  | {
      readonly ok: false;
      readonly reason: 'no-such-grade';
      readonly combination: string;
      /** The grades this combination has, the nearest first. */
      readonly nearest: readonly string[];
    }
  | {
      readonly ok: false;
      readonly reason: 'no-such-width';
      readonly combination: string;
      readonly grade: string;
      readonly nearest: readonly [];
      readonly widths: readonly { readonly from_in: number; readonly to_in: number }[];
    };

/** One line of a picker. */
export interface BoardMatch {
  readonly kind: 'species' | 'lumber' | 'panel';
  readonly id: string;
  readonly name: string;
}
