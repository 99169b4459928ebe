import { readDocument } from '../../shared/check-document/index.ts';
import { demoCheck } from '../../server/demo.ts';
import { check } from '../../calc/index.ts';
import type { Beam, BeamLoad } from '../../calc/mechanics/beam-model.ts';

/** The shelf to begin with as a beam: its stiffness as the check found it, rigid supports, and its point load. */
export function demoBeam(): { beam: Beam; load: BeamLoad } {
  const reading = readDocument(demoCheck);
  if (!reading.ok) throw new Error('the check to begin with is not sound');
  const { board, brackets, loads } = reading.document;
  const { EI, GA } = check(demoCheck).analysis.stiffness;
  const points = (loads ?? []).flatMap((load) =>
    load.kind === 'point' && load.amount !== undefined ? [{ at_m: load.at, load_N: load.amount }] : [],
  );
  if (points.length === 0 || GA === null)
    throw new Error('the check to begin with has no point load or no GA');
  return {
    beam: {
      length_m: board.length,
      EI_Nm2: EI.value,
      GA_N: GA.value,
      supports: brackets.positions.map((at_m) => ({ at_m, stiffness_Npm: Infinity })),
      hinges: [],
    },
    load: { lines: [], points },
  };
}

/** A beam by the displacement method: the dense system that is left once the supports are taken out. */
export interface DenseSystem {
  /** All degrees of freedom: sinking and turn of each node. */
  readonly whole: readonly (readonly number[])[];
  readonly free: readonly number[];
  readonly held: readonly number[];
  readonly matrix: number[][];
  readonly forces: number[];
}

/**
 * Builds the stiffness matrix of a beam with shear movement: nodes at the ends, the supports and the point loads, two
 * unknowns at each, elements after Przemieniecki, Theory of Matrix Structural Analysis, 5.6.
 */
export function denseSystem(beam: Beam, { points }: BeamLoad): DenseSystem {
  const places = [
    0,
    beam.length_m,
    ...beam.supports.map(({ at_m }) => at_m),
    ...points.map(({ at_m }) => at_m),
  ];
  const nodes = [...new Set(places)].sort((a, b) => a - b);
  const size = 2 * nodes.length;
  const whole = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  for (let first = 0; first + 1 < nodes.length; first++) {
    const element = elementStiffness((nodes[first + 1] ?? 0) - (nodes[first] ?? 0), beam);
    element.forEach((line, i) => {
      const target = whole[2 * first + i];
      line.forEach((value, j) => {
        if (target !== undefined) target[2 * first + j] = (target[2 * first + j] ?? 0) + value;
      });
    });
  }
  const held = beam.supports.map(({ at_m }) => 2 * nodes.indexOf(at_m));
  const free = Array.from({ length: size }, (_, i) => i).filter((i) => !held.includes(i));
  const force = new Map(points.map(({ at_m, load_N }) => [2 * nodes.indexOf(at_m), load_N]));
  return {
    whole,
    free,
    held,
    matrix: free.map((i) => free.map((j) => whole[i]?.[j] ?? 0)),
    forces: free.map((i) => force.get(i) ?? 0),
  };
}

/** What the supports push up with, from the movements of the free unknowns. */
export function reactionsOf({ whole, free, held }: DenseSystem, moved: readonly number[]): number[] {
  return held.map((i) => -free.reduce((sum, j, at) => sum + (whole[i]?.[j] ?? 0) * (moved[at] ?? NaN), 0));
}

function elementStiffness(L: number, { EI_Nm2: EI, GA_N: GA }: Beam): number[][] {
  const shear = (12 * EI) / (GA * L * L);
  const k = EI / (L ** 3 * (1 + shear));
  const [near, far] = [(4 + shear) * L * L, (2 - shear) * L * L];
  return [
    [12, 6 * L, -12, 6 * L],
    [6 * L, near, -6 * L, far],
    [-12, -6 * L, 12, -6 * L],
    [6 * L, far, -6 * L, near],
  ].map((line) => line.map((value) => k * value));
}
