import type { Torque } from './twist.ts';

/**
 * Torque that a bay held from turning at both ends brings to each end, N·m: as a simple beam brings a load to its supports.
 *
 * @param length_m length of the bay between two brackets
 */
export function torqueAtEnds(length_m: number, { from_m, to_m, torque }: Torque): readonly [number, number] {
  const whole = wholeTorque({ from_m, to_m, torque });
  const right = (whole * (from_m + to_m)) / 2 / length_m;
  return [whole - right, right];
}

/** All of a torque, N·m: what an overhang brings to its root. */
export function wholeTorque({ from_m, to_m, torque }: Torque): number {
  return from_m === to_m ? torque : torque * (to_m - from_m);
}
