import { together } from './band.ts';
import { addRigid } from './free-plate.ts';
import type { PreparedLoad, Standing } from './standing.ts';
import { signOf, type HeldPlate } from './supports.ts';

/**
 * The movements of a plate that stands.
 *
 * @param field where they are put, that of the load or another one; a place of their own where none is given
 */
export function fieldOfStanding(
  { plate, supports, units: { fours, lanes } }: HeldPlate,
  load: PreparedLoad,
  { forces_N, rigid }: Extract<Standing, { stands: true }>,
  field: Float64Array = new Float64Array(load.field.length),
): Float64Array {
  if (field !== load.field) field.set(load.field);
  const forces = new Float64Array(together * fours.length);
  supports.forEach((support, i) => {
    forces[lanes[i] ?? 0] = signOf(support) * (forces_N[i] ?? 0);
  });
  fours.forEach((four, k) => addFour(field, four, forces.subarray(together * k)));
  addRigid(field, plate.mesh, rigid);
  return field;
}

/** Adds the movements under four forces at once: each number is fetched and put back once for the four. */
function addFour(field: Float64Array, four: Float64Array, forces: Float64Array): void {
  const p = forces[0] ?? 0;
  const q = forces[1] ?? 0;
  const r = forces[2] ?? 0;
  const s = forces[3] ?? 0;
  if (p === 0 && q === 0 && r === 0 && s === 0) return;
  for (let k = 0, at = 0; k < field.length; k++, at += together)
    field[k] =
      (field[k] ?? 0) +
      (p * (four[at] ?? 0) + q * (four[at + 1] ?? 0)) +
      (r * (four[at + 2] ?? 0) + s * (four[at + 3] ?? 0));
}
