/** A torque that acts along part of a bay, or at one place (`from_m` = `to_m`, whole torque in `torque_Nm`). */
export interface Torque {
  readonly from_m: number;
  readonly to_m: number;
  /** Along a stretch: N·m for each m; at one place: N·m. */
  readonly torque: number;
}

/**
 * Largest twist of a bay whose ends are held from turning, rad: the diagram of a simple beam under the torques, over GJ.
 *
 * @param length_m length of the bay between two brackets
 * @param GJ_Nm2 torsional stiffness
 */
export function twistOfSpan(length_m: number, GJ_Nm2: number, { from_m, to_m, torque }: Torque): number {
  if (from_m === to_m) return (torque * from_m * (length_m - from_m)) / (length_m * GJ_Nm2);
  const whole = torque * (to_m - from_m);
  const left = (whole * (length_m - (from_m + to_m) / 2)) / length_m;
  const at = from_m + left / torque;
  return (left * at - (torque * (at - from_m) ** 2) / 2) / GJ_Nm2;
}

/** Twist at the tip of an overhang held at its root, rad; places are distances from the root. */
export function twistOfOverhang(GJ_Nm2: number, { from_m, to_m, torque }: Torque): number {
  return from_m === to_m ? (torque * from_m) / GJ_Nm2 : (torque * (to_m ** 2 - from_m ** 2)) / (2 * GJ_Nm2);
}

/**
 * Twist of the middle of a bay that resists by bending of its parts alone, held from turning and free to warp at its ends,
 * rad: the movement of a simple beam (AISC Manual, Table 3-23), torque for load and EI_w for EI.
 *
 * @param length_m length of the bay between two brackets
 * @param EIw_Nm4 stiffness against warping
 */
export function warpedTwistOfSpan(
  length_m: number,
  EIw_Nm4: number,
  { from_m, to_m, torque }: Torque,
): number {
  const nearer = (x: number): number => Math.min(x, length_m - x);
  if (from_m === to_m) {
    const a = nearer(from_m);
    return (torque * a * (3 * length_m ** 2 - 4 * a ** 2)) / (48 * EIw_Nm4);
  }
  /** All of it between the nearer end and a place in that half. */
  const upTo = (a: number): number => (1.5 * length_m ** 2 * a ** 2 - a ** 4) / 48;
  const half = upTo(length_m / 2);
  const fromLeft = (x: number): number => (x <= length_m / 2 ? upTo(x) : 2 * half - upTo(nearer(x)));
  return (torque * (fromLeft(to_m) - fromLeft(from_m))) / EIw_Nm4;
}
