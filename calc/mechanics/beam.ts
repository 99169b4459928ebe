import { bandedFactor } from './banded.ts';
import { fieldOf, type BeamField } from './beam-field.ts';
import { span, type Beam, type BeamLoad, type PreparedBeam, type SupportState } from './beam-model.ts';
import { lowerBound } from './grid.ts';

/**
 * Makes a beam ready to be solved. The unknowns are the moments over the inner supports (the equation of three
 * moments, with shear movement and springs; Timoshenko, Strength of Materials): banded, well conditioned and exact.
 *
 * @param beam the beam
 * @param breaks_m places where the caller's line loads begin and end and point loads stand
 * @throws RangeError where nothing stops the beam from turning or falling: fewer than two supports
 */
export function prepareBeam(beam: Beam, breaks_m: readonly number[]): PreparedBeam {
  const { supports, length_m } = beam;
  if (supports.length < 2)
    throw new RangeError('nothing stops a beam on fewer than two supports from turning');
  for (let i = 1; i < supports.length; i++) {
    if (!(span(beam, i - 1) > 0))
      throw new RangeError('the supports of a beam are in order, each at its own place');
  }
  const places = [
    0,
    length_m,
    ...supports.map(({ at_m }) => at_m),
    ...breaks_m.filter((x) => x > 0 && x < length_m),
  ];
  places.sort((a, b) => a - b);
  const grid_m = Float64Array.from(
    places.filter((place, index) => index === 0 || place !== places[index - 1]),
  );
  return {
    beam,
    grid_m,
    gridOfSupport: supports.map(({ at_m }) => lowerBound(grid_m, at_m)),
    factor: bandedFactor(supports.length, 2, (i, j) => flexibility(beam, i, j)),
  };
}

/** Solves one load case along the whole beam; its places must be on the prepared grid. */
export function solveBeam(prepared: PreparedBeam, load: BeamLoad): BeamField {
  const { turnLeft, ...state } = solveSupports(prepared, load);
  return fieldOf(prepared, load, state, turnLeft);
}

/** Solves one load case over the supports only; its places may be anywhere. */
export function solveSupports(
  prepared: PreparedBeam,
  load: BeamLoad,
): SupportState & { readonly turnLeft: Float64Array } {
  const { beam } = prepared;
  const count = beam.supports.length;
  const known = momentsOverEnds(beam, load);
  const free = simpleSpans(beam, load);
  const right = new Float64Array(count);
  const settlement = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const withEnds = (free.reaction_N[i] ?? 0) + reactionFromMoments(beam, known, i);
    settlement[i] = withEnds / (beam.supports[i]?.stiffness_Npm ?? Infinity);
  }
  for (let i = 1; i < count - 1; i++) {
    if (beam.hinges.includes(i)) continue;
    right[i] =
      -(free.turnRight[i - 1] ?? 0) -
      (free.turnLeft[i] ?? 0) -
      reactionTurn(beam, settlement, i) -
      (i === 1 ? momentTurn(beam, 0) * (known[0] ?? 0) : 0) -
      (i === count - 2 ? momentTurn(beam, count - 2) * (known[count - 1] ?? 0) : 0);
  }
  const moments = prepared.factor.solve(right);
  moments[0] = known[0] ?? 0;
  moments[count - 1] = known[count - 1] ?? 0;
  const reactions = new Float64Array(count);
  const sunk = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    reactions[i] = (free.reaction_N[i] ?? 0) + reactionFromMoments(beam, moments, i);
    sunk[i] = (reactions[i] ?? 0) / (beam.supports[i]?.stiffness_Npm ?? Infinity);
  }
  return { moments_Nm: moments, reactions_N: reactions, sunk_m: sunk, turnLeft: free.turnLeft };
}

/** Share of a unit moment over one end of span `s` in the turn at the other end. */
function momentTurn(beam: Beam, s: number): number {
  const length = span(beam, s);
  return length / (6 * beam.EI_Nm2) - 1 / (beam.GA_N * length);
}

/** Reaction at support `j` from a unit moment over support `i`. */
function reactionPerMoment(beam: Beam, j: number, i: number): number {
  const last = beam.supports.length - 1;
  if (j === i) return -(i > 0 ? 1 / span(beam, i - 1) : 0) - (i < last ? 1 / span(beam, i) : 0);
  return Math.abs(j - i) === 1 ? 1 / span(beam, Math.min(i, j)) : 0;
}

function reactionFromMoments(beam: Beam, moments: Float64Array, j: number): number {
  let reaction = 0;
  for (let i = Math.max(0, j - 1); i <= Math.min(beam.supports.length - 1, j + 1); i++) {
    reaction += reactionPerMoment(beam, j, i) * (moments[i] ?? 0);
  }
  return reaction;
}

/** Turn over support `i` from the sinking of the supports near it. */
function reactionTurn(beam: Beam, sunk: Float64Array, i: number): number {
  let turn = 0;
  for (let j = i - 1; j <= i + 1; j++) turn += reactionPerMoment(beam, j, i) * (sunk[j] ?? 0);
  return turn;
}

/** Turn between the two sides of support `i` from a unit moment over support `j`; moments over ends and hinges are known. */
function flexibility(beam: Beam, i: number, j: number): number {
  const last = beam.supports.length - 1;
  const isUnknown = (k: number): boolean => k > 0 && k < last && !beam.hinges.includes(k);
  if (!isUnknown(i) || !isUnknown(j)) return i === j ? 1 : 0;
  let turn = 0;
  if (i === j) {
    const [a, b] = [span(beam, i - 1), span(beam, i)];
    turn = (a + b) / (3 * beam.EI_Nm2) + 1 / (beam.GA_N * a) + 1 / (beam.GA_N * b);
  } else if (Math.abs(i - j) === 1) {
    turn = momentTurn(beam, Math.min(i, j));
  }
  for (let k = Math.max(i, j) - 1; k <= Math.min(i, j) + 1; k++) {
    const stiffness = beam.supports[k]?.stiffness_Npm ?? Infinity;
    if (stiffness !== Infinity) {
      turn += (reactionPerMoment(beam, k, i) * reactionPerMoment(beam, k, j)) / stiffness;
    }
  }
  return turn;
}

/** Moments over the two end supports, from what stands on the overhangs alone. */
function momentsOverEnds(beam: Beam, load: BeamLoad): Float64Array {
  const count = beam.supports.length;
  const first = beam.supports[0]?.at_m ?? 0;
  const last = beam.supports[count - 1]?.at_m ?? 0;
  const moments = new Float64Array(count);
  for (const { at_m, load_N } of load.points) {
    if (at_m < first) moments[0] = (moments[0] ?? 0) - load_N * (first - at_m);
    if (at_m > last) moments[count - 1] = (moments[count - 1] ?? 0) - load_N * (at_m - last);
  }
  for (const { from_m, to_m, load_Npm } of load.lines) {
    const left = Math.min(to_m, first) - from_m;
    if (left > 0) moments[0] = (moments[0] ?? 0) - load_Npm * left * (first - from_m - left / 2);
    const begin = Math.max(from_m, last);
    const right = to_m - begin;
    if (right > 0)
      moments[count - 1] = (moments[count - 1] ?? 0) - load_Npm * right * (begin - last + right / 2);
  }
  return moments;
}

interface SimpleSpans {
  /** Reactions if every span were simply supported; loads on overhangs go whole to the end support. */
  readonly reaction_N: Float64Array;
  /** Turn of each span's ends under its own load, without end moments, rad. */
  readonly turnLeft: Float64Array;
  readonly turnRight: Float64Array;
}

function simpleSpans(beam: Beam, load: BeamLoad): SimpleSpans {
  const { supports, EI_Nm2 } = beam;
  const count = supports.length;
  const reaction_N = new Float64Array(count);
  const turnLeft = new Float64Array(count);
  const turnRight = new Float64Array(count);
  const add = (target: Float64Array, index: number, value: number): void => {
    target[index] = (target[index] ?? 0) + value;
  };
  const [first, last] = [supports[0]?.at_m ?? 0, supports[count - 1]?.at_m ?? 0];
  for (const { at_m, load_N } of load.points) {
    if (at_m <= first) add(reaction_N, 0, load_N);
    else if (at_m >= last) add(reaction_N, count - 1, load_N);
    else {
      const s = spanOf(beam, at_m);
      const L = span(beam, s);
      const a = at_m - (supports[s]?.at_m ?? 0);
      const b = L - a;
      add(reaction_N, s, (load_N * b) / L);
      add(reaction_N, s + 1, (load_N * a) / L);
      add(turnLeft, s, (load_N * a * b * (L + b)) / (6 * L * EI_Nm2));
      add(turnRight, s, (load_N * a * b * (L + a)) / (6 * L * EI_Nm2));
    }
  }
  for (const { from_m, to_m, load_Npm } of load.lines) {
    add(reaction_N, 0, load_Npm * Math.max(0, Math.min(to_m, first) - from_m));
    add(reaction_N, count - 1, load_Npm * Math.max(0, to_m - Math.max(from_m, last)));
    const [begin, end] = [Math.max(from_m, first), Math.min(to_m, last)];
    if (end <= begin) continue;
    for (let s = spanOf(beam, begin); s < count - 1; s++) {
      const left = supports[s]?.at_m ?? 0;
      if (left >= end) break;
      const L = span(beam, s);
      const c = Math.max(0, begin - left);
      const d = Math.min(L, end - left);
      const force = load_Npm * (d - c);
      add(reaction_N, s + 1, (force * (c + d)) / (2 * L));
      add(reaction_N, s, force - (force * (c + d)) / (2 * L));
      const [c2, d2] = [c * c, d * d];
      const even = L * L * (d2 - c2);
      const fourth = d2 * d2 - c2 * c2;
      add(turnLeft, s, (load_Npm * (even - L * (d2 * d - c2 * c) + fourth / 4)) / (6 * L * EI_Nm2));
      add(turnRight, s, (load_Npm * (even / 2 - fourth / 4)) / (6 * L * EI_Nm2));
    }
  }
  return { reaction_N, turnLeft, turnRight };
}

/** The span that holds a place between the first and the last support: a binary search. */
function spanOf(beam: Beam, at_m: number): number {
  let low = 0;
  let high = beam.supports.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((beam.supports[middle]?.at_m ?? 0) <= at_m) low = middle;
    else high = middle - 1;
  }
  return low;
}
