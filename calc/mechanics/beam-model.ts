import type { BandedFactor } from './banded.ts';

/** A support of a beam: rigid, or a spring. It acts up and down; who may only push is decided by the caller. */
export interface Support {
  readonly at_m: number;
  /** N/m; `Infinity` where the support is rigid. */
  readonly stiffness_Npm: number;
}

/** A straight beam of one section, with shear movement, on two supports or more. Its ends may stand out. */
export interface Beam {
  readonly length_m: number;
  /** Shear-free bending stiffness. */
  readonly EI_Nm2: number;
  /** Shear stiffness κGA; `Infinity` where the bending stiffness already has shear inside it. */
  readonly GA_N: number;
  /** In order from the left end, each at its own place. */
  readonly supports: readonly Support[];
  /** Indices of inner supports over which the beam is in two lengths. */
  readonly hinges: readonly number[];
}

/** Downward loads on a beam. */
export interface BeamLoad {
  readonly lines: readonly { readonly from_m: number; readonly to_m: number; readonly load_Npm: number }[];
  readonly points: readonly { readonly at_m: number; readonly load_N: number }[];
}

/** A beam made ready: solving one more load costs a few multiplications for each support. */
export interface PreparedBeam {
  readonly beam: Beam;
  /** Places where any field may change its polynomial: ends, supports and the caller's own, in order. */
  readonly grid_m: Float64Array;
  /** First grid interval of each span between supports, and of the right overhang. */
  readonly gridOfSupport: readonly number[];
  readonly factor: BandedFactor;
}

/** What happens over the supports in one load case. */
export interface SupportState {
  readonly moments_Nm: Float64Array;
  /** Up on the beam positive. */
  readonly reactions_N: Float64Array;
  readonly sunk_m: Float64Array;
}

/** Length of the span right of support `i`. */
export function span(beam: Beam, i: number): number {
  return (beam.supports[i + 1]?.at_m ?? NaN) - (beam.supports[i]?.at_m ?? NaN);
}
