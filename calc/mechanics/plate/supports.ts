import { together } from './band.ts';
import { fieldsUnderUnits, type FreePlate } from './free-plate.ts';
import { shapeAt, type PlaceShape } from './plate-load.ts';

/** One place where something outside the plate can act on it. */
export interface PlateSupport {
  readonly x_m: number;
  readonly y_m: number;
  /** A rail, a panel or a prop pushes up; a screw pulls down. */
  readonly sense: 'push' | 'pull';
  /** How far it gives by itself under one newton, m/N; more than zero. */
  readonly give_mpN: number;
  /** The most it can bear, N; Infinity where it has no end. */
  readonly most_N: number;
}

/** How far one support moves when another one is loaded, as on the arm of a bracket: m/N. */
export interface SharedGive {
  readonly supports: readonly number[];
  /** Between each two of `supports`, row by row. */
  readonly give_mpN: readonly number[];
}

/** Movements under one newton at each support. */
export interface UnitFields {
  /** Those of four supports side by side at every unknown, four by four. */
  readonly fours: readonly Float64Array[];
  /** Which of them each support has: a four, and a place in it. */
  readonly lanes: readonly number[];
}

/** A plate condensed on the places where it is held: all that is needed for any load on it. */
export interface HeldPlate {
  readonly plate: FreePlate;
  readonly supports: readonly PlateSupport[];
  /** Where each support is in the plate's unknowns. */
  readonly shapes: readonly PlaceShape[];
  /** Movements under one newton down at each support, on the plate's three springs. */
  readonly units: UnitFields;
  /** Symmetric matrix of support forces and the plate's three rigid movements against gaps and equilibrium. */
  readonly matrix: Float64Array;
}

/** Least give of a support as a share of the free plate's own: less is lost in rounding. */
const leastGive = 1e-7;

/** Sign of the force on the plate, down positive. */
export function signOf({ sense }: PlateSupport): 1 | -1 {
  return sense === 'pull' ? 1 : -1;
}

/**
 * Condenses a plate on its supports. The unknowns are the forces of the supports, zero or more each, and the movement
 * of the plate as a whole; the rows are the gaps at the supports and the three equations of equilibrium.
 *
 * @throws RangeError where a support is rigid through and through: give is what tells two close supports apart
 */
export function heldPlate(
  plate: FreePlate,
  supports: readonly PlateSupport[],
  shared: readonly SharedGive[] = [],
): HeldPlate {
  if (supports.some(({ give_mpN }) => !(give_mpN > 0))) throw new RangeError('every support gives a little');
  const shapes = supports.map(({ x_m, y_m }) => shapeAt(plate.mesh, x_m, y_m));
  const units = { fours: fieldsUnderUnits(plate, shapes), lanes: [...supports.keys()] };
  supports.forEach(({ give_mpN }, index) => {
    const shape = shapes[index];
    if (shape !== undefined && give_mpN < leastGive * movementOfUnit(units, index, shape))
      throw new RangeError('every support gives a little');
  });
  return { plate, supports, shapes, units, matrix: matrixOf(supports, shapes, units, shared) };
}

/** The same plate whose supports give together too, as on a rail; nothing is solved anew. */
export function withGive(held: HeldPlate, shared: readonly SharedGive[]): HeldPlate {
  const matrix = Float64Array.from(held.matrix);
  addGive(matrix, held.supports.length + 3, shared);
  return { ...held, matrix };
}

/** The same plate with only some of its supports; nothing is solved anew. */
export function withSupports(
  held: HeldPlate,
  keep: (support: PlateSupport, index: number) => boolean,
): HeldPlate {
  const kept = held.supports.flatMap((support, index) => (keep(support, index) ? [index] : []));
  const size = held.supports.length + 3;
  const rows = [...kept, size - 3, size - 2, size - 1];
  const matrix = new Float64Array(rows.length ** 2);
  rows.forEach((row, i) => {
    rows.forEach((column, j) => (matrix[i * rows.length + j] = held.matrix[row * size + column] ?? 0));
  });
  return {
    plate: held.plate,
    supports: kept.flatMap((index) => held.supports[index] ?? []),
    shapes: kept.flatMap((index) => held.shapes[index] ?? []),
    units: { ...held.units, lanes: kept.flatMap((index) => held.units.lanes[index] ?? []) },
    matrix,
  };
}

/** Movement at a place under one newton at a support, m/N. */
function movementOfUnit({ fours, lanes }: UnitFields, index: number, { dofs, values }: PlaceShape): number {
  const lane = lanes[index] ?? 0;
  const [four, side] = [fours[Math.floor(lane / together)], lane % together];
  let sum = 0;
  for (let k = 0; k < 16; k++) sum += (four?.[together * (dofs[k] ?? 0) + side] ?? 0) * (values[k] ?? 0);
  return sum;
}

function matrixOf(
  supports: readonly PlateSupport[],
  shapes: readonly PlaceShape[],
  units: UnitFields,
  shared: readonly SharedGive[],
): Float64Array {
  const count = supports.length;
  const size = count + 3;
  const matrix = new Float64Array(size * size);
  const add = (row: number, column: number, value: number): void => {
    matrix[row * size + column] = (matrix[row * size + column] ?? 0) + value;
  };
  supports.forEach((support, i) => {
    const sign = signOf(support);
    const shape = shapes[i];
    for (let j = 0; j <= i; j++) {
      const other = supports[j];
      if (shape === undefined || other === undefined) continue;
      const value = sign * signOf(other) * movementOfUnit(units, j, shape);
      add(i, j, value);
      if (i !== j) add(j, i, value);
    }
    add(i, i, support.give_mpN);
    [1, support.x_m, support.y_m].forEach((lever, k) => {
      add(i, count + k, sign * lever);
      add(count + k, i, sign * lever);
    });
  });
  addGive(matrix, size, shared);
  return matrix;
}

function addGive(matrix: Float64Array, size: number, shared: readonly SharedGive[]): void {
  for (const { supports: members, give_mpN } of shared) {
    members.forEach((row, a) => {
      members.forEach((column, b) => {
        const at = row * size + column;
        matrix[at] = (matrix[at] ?? 0) + (give_mpN[a * members.length + b] ?? 0);
      });
    });
  }
}
