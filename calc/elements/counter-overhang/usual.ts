import { usualThrough_m } from '../../../shared/check-document/counter-overhang-conflicts.ts';
import { foot, inch, poundForce } from '../../../shared/quantity/index.ts';

/** What a counter is taken to be where nothing is said; every one is printed as an assumption. Common practice, no source. */
export const usual = {
  railThickness_m: usualThrough_m,
  height_m: 34.5 * inch,
  push_N: 100 * poundForce,
  serving_Npm2: (10 * poundForce) / foot ** 2,
  sustained: 0.3,
  /** The square under somebody's hands or feet. */
  patch_m: 4 * inch,
};

/** How far two stools stand apart, and the edge one takes. Common practice, no source. */
export const stoolSpacing_m = 24 * inch;

/** Who states a rating that no prop has yet. */
export const wantedRating = 'wanted by this check';
