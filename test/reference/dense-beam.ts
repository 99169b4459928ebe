import { LuDecomposition, Matrix } from 'ml-matrix';

/**
 * A second, independent model of a beam: the displacement method with two-node elements that bend and shear, one dense
 * matrix, many short elements. It shares nothing with the solver under test. Element stiffness after Przemieniecki,
 * Theory of Matrix Structural Analysis, section 5.6 (from memory; proved against handbook cases in dense-beam.test.ts).
 */
export interface DenseBeam {
  readonly nodes_m: readonly number[];
  readonly EI_Nm2: number;
  readonly GA_N: number;
  /** Node of each support. */
  readonly supportNodes: readonly number[];
  readonly stiffnesses_Npm: readonly number[];
  readonly solve: (load: DenseLoad) => DenseState;
}

export interface DenseLoad {
  readonly lines?: readonly { readonly from_m: number; readonly to_m: number; readonly load_Npm: number }[];
  readonly points?: readonly { readonly at_m: number; readonly load_N: number }[];
}

/** Down positive movement; sagging positive moment; shear positive where the left part pushes up. */
export interface DenseState {
  readonly movement_m: Float64Array;
  /** At the left and the right end of each element. */
  readonly momentLeft_Nm: Float64Array;
  readonly momentRight_Nm: Float64Array;
  readonly shearLeft_N: Float64Array;
  readonly shearRight_N: Float64Array;
  /** Up positive. */
  readonly reactions_N: Float64Array;
}

interface Parts {
  readonly length_m: number;
  readonly EI_Nm2: number;
  readonly GA_N: number;
  readonly supports: readonly { readonly at_m: number; readonly stiffness_Npm?: number }[];
  /** Indices of supports over which the beam is cut. */
  readonly hinges?: readonly number[];
  readonly breaks_m: readonly number[];
  readonly step_m: number;
}

/** Prepares a dense beam: every break is a node, and no element is longer than the step. */
export function denseBeam(parts: Parts): DenseBeam {
  const { length_m, EI_Nm2, GA_N, supports, hinges = [], step_m } = parts;
  const nodes = nodesOf([0, length_m, ...supports.map(({ at_m }) => at_m), ...parts.breaks_m], step_m);
  const nodeAt = (x: number): number => {
    const index = nodes.findIndex((node) => Math.abs(node - x) < 1e-9);
    if (index < 0) throw new Error(`no node at ${x}`);
    return index;
  };
  const supportNodes = supports.map(({ at_m }) => nodeAt(at_m));
  const hingeNodes = hinges.map((index) => supportNodes[index] ?? -1);
  const movementOf = (node: number): number => node;
  const turnRight = (node: number): number => nodes.length + node;
  const turnLeft = (node: number): number => {
    const hinge = hingeNodes.indexOf(node);
    return hinge < 0 ? turnRight(node) : 2 * nodes.length + hinge;
  };
  const size = 2 * nodes.length + hinges.length;
  const K = Matrix.zeros(size, size);
  const placesOf = (e: number): number[] => [movementOf(e), turnRight(e), movementOf(e + 1), turnLeft(e + 1)];
  const lengthOf = (e: number): number => (nodes[e + 1] ?? NaN) - (nodes[e] ?? NaN);
  const elements = nodes.length - 1;
  for (let e = 0; e < elements; e++) {
    const places = placesOf(e);
    const k = elementStiffness(lengthOf(e), EI_Nm2, GA_N);
    places.forEach((row, i) => places.forEach((column, j) => add(K, row, column, k[i]?.[j] ?? 0)));
  }
  const stiffnesses_Npm = supports.map(({ stiffness_Npm }) => stiffness_Npm ?? Infinity);
  const held: number[] = [];
  supportNodes.forEach((node, i) => {
    const stiffness = stiffnesses_Npm[i] ?? Infinity;
    if (stiffness === Infinity) held.push(movementOf(node));
    else add(K, movementOf(node), movementOf(node), stiffness);
  });
  const free = Array.from({ length: size }, (_, i) => i).filter((i) => !held.includes(i));
  const factor = new LuDecomposition(K.selection(free, free));

  const solve = (load: DenseLoad): DenseState => {
    const F = new Float64Array(size);
    const q = new Float64Array(elements);
    for (const { from_m, to_m, load_Npm } of load.lines ?? []) {
      for (let e = nodeAt(from_m); e < nodeAt(to_m); e++) q[e] = (q[e] ?? 0) + load_Npm;
    }
    const push = (place: number, value: number): void => {
      F[place] = (F[place] ?? 0) + value;
    };
    for (let e = 0; e < elements; e++) {
      const [L, load_Npm, places] = [lengthOf(e), q[e] ?? 0, placesOf(e)];
      fixedEnds(load_Npm, L).forEach((value, i) => push(places[i] ?? 0, value));
    }
    for (const { at_m, load_N } of load.points ?? []) push(movementOf(nodeAt(at_m)), load_N);
    const solved = factor.solve(Matrix.columnVector(free.map((i) => F[i] ?? 0)));
    const U = new Float64Array(size);
    free.forEach((place, i) => (U[place] = solved.get(i, 0)));
    return stateOf(U, q, F);
  };

  function stateOf(U: Float64Array, q: Float64Array, F: Float64Array): DenseState {
    const state = {
      movement_m: U.slice(0, nodes.length),
      momentLeft_Nm: new Float64Array(elements),
      momentRight_Nm: new Float64Array(elements),
      shearLeft_N: new Float64Array(elements),
      shearRight_N: new Float64Array(elements),
      reactions_N: new Float64Array(supports.length),
    };
    const inner = new Float64Array(nodes.length);
    for (let e = 0; e < elements; e++) {
      const L = lengthOf(e);
      const places = placesOf(e);
      const k = elementStiffness(L, EI_Nm2, GA_N);
      const own = fixedEnds(q[e] ?? 0, L);
      const ends = own.map(
        (value, i) => places.reduce((sum, place, j) => sum + (k[i]?.[j] ?? 0) * (U[place] ?? 0), 0) - value,
      );
      state.shearLeft_N[e] = -(ends[0] ?? 0);
      state.momentLeft_Nm[e] = ends[1] ?? 0;
      state.shearRight_N[e] = ends[2] ?? 0;
      state.momentRight_Nm[e] = -(ends[3] ?? 0);
      inner[e] = (inner[e] ?? 0) + (ends[0] ?? 0) + (own[0] ?? 0);
      inner[e + 1] = (inner[e + 1] ?? 0) + (ends[2] ?? 0) + (own[2] ?? 0);
    }
    supportNodes.forEach((node, i) => (state.reactions_N[i] = (F[node] ?? 0) - (inner[node] ?? 0)));
    return state;
  }

  return { nodes_m: nodes, EI_Nm2, GA_N, supportNodes, stiffnesses_Npm, solve };
}

/** Movement down and slope down to the right, at both ends. */
function elementStiffness(L: number, EI: number, GA: number): number[][] {
  const phi = GA === Infinity ? 0 : (12 * EI) / (GA * L * L);
  const c = EI / (L ** 3 * (1 + phi));
  return [
    [12 * c, 6 * L * c, -12 * c, 6 * L * c],
    [6 * L * c, (4 + phi) * L * L * c, -6 * L * c, (2 - phi) * L * L * c],
    [-12 * c, -6 * L * c, 12 * c, -6 * L * c],
    [6 * L * c, (2 - phi) * L * L * c, -6 * L * c, (4 + phi) * L * L * c],
  ];
}

function fixedEnds(q: number, L: number): number[] {
  return [(q * L) / 2, (q * L * L) / 12, (q * L) / 2, -(q * L * L) / 12];
}

function nodesOf(places: readonly number[], step: number): number[] {
  const marks = [...places]
    .sort((a, b) => a - b)
    .filter((x, i, all) => i === 0 || x - (all[i - 1] ?? 0) > 1e-9);
  const nodes: number[] = [marks[0] ?? 0];
  for (let i = 1; i < marks.length; i++) {
    const [from, to] = [marks[i - 1] ?? 0, marks[i] ?? 0];
    const fewest = to - from > step / 10 ? 12 : 1;
    const pieces = Math.max(fewest, Math.ceil((to - from) / step - 1e-9));
    for (let k = 1; k <= pieces; k++) nodes.push(k === pieces ? to : from + ((to - from) * k) / pieces);
  }
  return nodes;
}

function add(matrix: Matrix, row: number, column: number, value: number): void {
  matrix.set(row, column, matrix.get(row, column) + value);
}
