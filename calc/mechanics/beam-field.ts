import { span, type Beam, type BeamLoad, type PreparedBeam, type SupportState } from './beam-model.ts';
import { lowerBound } from './grid.ts';

/**
 * A solved load case. In every grid interval, with t from its left end: V = V0 − q t, M = M0 + V0 t − q t²/2, and the
 * section turns and moves by the integrals of M/EI and V/κGA.
 */
export interface BeamField extends SupportState {
  readonly prepared: PreparedBeam;
  /** Five numbers an interval: movement (down +), turn, moment (sagging +), shear at its left end, and load. */
  readonly start: Float64Array;
}

/** Numbers that `start` holds for each interval. */
const perInterval = 5;

/** Follows the beam from its left end to its right and keeps the state at the start of every interval. */
export function fieldOf(
  prepared: PreparedBeam,
  load: BeamLoad,
  state: SupportState,
  turnLeft: Float64Array,
): BeamField {
  const { beam, grid_m, gridOfSupport } = prepared;
  const intervals = grid_m.length - 1;
  const start = new Float64Array(intervals * perInterval);
  const line = lineOn(grid_m, load);
  const point = pointOn(grid_m, load);
  const firstSupport = gridOfSupport[0] ?? 0;

  const turnOverFirst = turnRightOf(beam, state, turnLeft, 0);
  let [w, turn, M, V] = [0, 0, 0, -(point[0] ?? 0)];
  let support = 0;
  for (let i = 0; i < intervals; i++) {
    if (i === gridOfSupport[support]) {
      w = state.sunk_m[support] ?? 0;
      turn = support < beam.supports.length - 1 ? turnRightOf(beam, state, turnLeft, support) : turn;
      M = state.moments_Nm[support] ?? 0;
      V += state.reactions_N[support] ?? 0;
      support += 1;
    }
    const q = line[i] ?? 0;
    start.set([w, turn, M, V, q], i * perInterval);
    const t = (grid_m[i + 1] ?? 0) - (grid_m[i] ?? 0);
    const next = advance(beam, w, turn, M, V, q, t);
    [w, turn, M, V] = [next.w, next.turn, next.M, next.V - (point[i + 1] ?? 0)];
    if (i + 1 === firstSupport) {
      liftOverhang(start, grid_m, firstSupport, turnOverFirst - next.turn, (state.sunk_m[0] ?? 0) - next.w);
    }
  }
  return { prepared, start, ...state };
}

/** The left overhang was followed from a tip at rest; this turns and moves it to meet its support. */
function liftOverhang(
  start: Float64Array,
  grid: Float64Array,
  end: number,
  turn: number,
  move: number,
): void {
  const at = grid[end] ?? 0;
  for (let i = 0; i < end; i++) {
    const k = i * perInterval;
    start[k] = (start[k] ?? 0) + move - turn * (at - (grid[i] ?? 0));
    start[k + 1] = (start[k + 1] ?? 0) + turn;
  }
}

/** Turn of the section just right of support `i`. */
function turnRightOf(beam: Beam, state: SupportState, turnLeft: Float64Array, i: number): number {
  const L = span(beam, i);
  const [left, right] = [state.moments_Nm[i] ?? 0, state.moments_Nm[i + 1] ?? 0];
  const sunk = ((state.sunk_m[i + 1] ?? 0) - (state.sunk_m[i] ?? 0)) / L;
  return (
    sunk +
    (turnLeft[i] ?? 0) +
    (L * (2 * left + right)) / (6 * beam.EI_Nm2) -
    (right - left) / (beam.GA_N * L)
  );
}

function advance(beam: Beam, w: number, turn: number, M: number, V: number, q: number, t: number) {
  const { EI_Nm2: EI, GA_N: GA } = beam;
  return {
    w: w + turn * t - ((M / 2 + (V / 6 - (q * t) / 24) * t) * t * t) / EI + ((V - (q * t) / 2) * t) / GA,
    turn: turn - ((M + (V / 2 - (q * t) / 6) * t) * t) / EI,
    M: M + (V - (q * t) / 2) * t,
    V: V - q * t,
  };
}

function lineOn(grid: Float64Array, load: BeamLoad): Float64Array {
  const line = new Float64Array(grid.length);
  for (const { from_m, to_m, load_Npm } of load.lines) {
    for (let i = lowerBound(grid, from_m); i < grid.length - 1 && (grid[i] ?? 0) < to_m; i++) {
      line[i] = (line[i] ?? 0) + load_Npm;
    }
  }
  return line;
}

function pointOn(grid: Float64Array, load: BeamLoad): Float64Array {
  const point = new Float64Array(grid.length);
  for (const { at_m, load_N } of load.points) {
    const i = lowerBound(grid, at_m);
    point[i] = (point[i] ?? 0) + load_N;
  }
  return point;
}

/** Movement in interval `i` as a polynomial of the distance from its left end, m. */
export function movementIn(field: BeamField, i: number): number[] {
  const [w, turn, M, V, q] = field.start.subarray(i * perInterval, i * perInterval + perInterval);
  const { EI_Nm2: EI, GA_N: GA } = field.prepared.beam;
  return [
    w ?? 0,
    (turn ?? 0) + (V ?? 0) / GA,
    -(M ?? 0) / (2 * EI) - (q ?? 0) / (2 * GA),
    -(V ?? 0) / (6 * EI),
    (q ?? 0) / (24 * EI),
  ];
}

/** Moment in interval `i` as a polynomial of the distance from its left end, N·m. */
export function momentIn(field: BeamField, i: number): number[] {
  const k = i * perInterval;
  return [field.start[k + 2] ?? 0, field.start[k + 3] ?? 0, -(field.start[k + 4] ?? 0) / 2];
}

/** Shear in interval `i` as a polynomial of the distance from its left end, N. */
export function shearIn(field: BeamField, i: number): number[] {
  const k = i * perInterval;
  return [field.start[k + 3] ?? 0, -(field.start[k + 4] ?? 0)];
}
