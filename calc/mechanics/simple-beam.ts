/** A straight beam on a pin at each end. */
export interface SimpleBeam {
  readonly span_m: number;
  readonly EI_Nm2: number;
  /** Stiffness in shear, G times the section that resists it; Infinity where shear is left out. */
  readonly GA_N: number;
}

/**
 * How far a simple beam moves at one place under one newton at another, m/N: bending (AISC Manual, Table 3-23, simple
 * beam, concentrated load at any point) and shear (elementary mechanics: the moment over GA).
 *
 * @param at_m, load_m places along the beam; past its ends nothing moves
 */
export function simpleBeamGive(
  { span_m: L, EI_Nm2, GA_N }: SimpleBeam,
  at_m: number,
  load_m: number,
): number {
  const [x, a] = at_m <= load_m ? [at_m, load_m] : [load_m, at_m];
  const b = L - a;
  if (x <= 0 || b <= 0) return 0;
  return (b * x * (L ** 2 - b ** 2 - x ** 2)) / (6 * EI_Nm2 * L) + (b * x) / (L * GA_N);
}

/** An arm that a simple beam runs on as, past one of its pins. */
export interface OverhangingArm {
  /** Of the beam behind the arm; 0 where its root is held from turning. */
  readonly back_m: number;
  readonly EI_Nm2: number;
  readonly GA_N: number;
}

/**
 * How far an arm moves at one place under one newton at another, m/N: AISC Manual, Table 3-23, cantilever, and beam
 * overhanging one support, concentrated load on the overhang.
 *
 * @param at_m, load_m places along the arm, from its root
 */
export function armGive({ back_m, EI_Nm2, GA_N }: OverhangingArm, at_m: number, load_m: number): number {
  const [x, a] = at_m <= load_m ? [at_m, load_m] : [load_m, at_m];
  if (x <= 0) return 0;
  const bent = (x * x * (3 * a - x)) / 6 + (x * a * back_m) / 3;
  const sheared = x + (back_m > 0 ? (x * a) / back_m : 0);
  return bent / EI_Nm2 + sheared / GA_N;
}
