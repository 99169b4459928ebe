import { denseBeam, type DenseBeam, type DenseLoad } from './dense-beam.ts';

/** A shelf in SI numbers, as a second model sees it. */
export interface Plan {
  readonly length_m: number;
  readonly EI_Nm2: number;
  readonly GA_N: number;
  readonly selfWeight_Npm: number;
  readonly positions_m: readonly number[];
  readonly joints?: readonly number[];
  readonly spring_Npm?: number;
  readonly creep: number;
  readonly loads: readonly PlanLoad[];
}

export interface PlanLoad {
  readonly kind: 'line' | 'point' | 'roaming';
  readonly amount: number;
  readonly from_m?: number;
  readonly to_m?: number;
  readonly at_m?: number;
  readonly free: boolean;
  /** Share that stays for years. */
  readonly sustained: number;
}

export interface Extremes {
  readonly reactionMax_N: number[];
  readonly reactionMin_N: number[];
  sagging_Nm: number;
  hogging_Nm: number;
  shear_N: number;
  /** Of each bay, from the straight line between its supports. */
  readonly live_m: number[];
  readonly longTerm_m: number[];
  /** Of the whole board, from where it began. */
  liveFromStart_m: number;
}

interface Part {
  readonly load: DenseLoad;
  readonly live: number;
  readonly longTerm: number;
}

/** Everything one arrangement does, in one row of numbers. */
interface Layout {
  readonly beam: DenseBeam;
  readonly bays: readonly {
    readonly nodes: readonly number[];
    readonly kind: 'left' | 'span' | 'right';
    readonly support: number;
  }[];
  readonly elements: number;
}

/**
 * Enumerates every arrangement of the loads: each free load on or off (a line load bay by bay, an overhang a bay), one
 * roaming load at a time on every node or absent. Nothing is superposed by sign and nothing is skipped.
 */
export function everyArrangement(plan: Plan, step_m: number): Extremes {
  const layout = layoutOf(plan, step_m);
  const { always, free } = partsOf(plan);
  const rows = {
    always: always.map((part) => effectsOf(layout, part)),
    free: free.map((part) => effectsOf(layout, part)),
  };
  const roaming = roamingRows(plan, layout);
  const found: Extremes = {
    reactionMax_N: plan.positions_m.map(() => -Infinity),
    reactionMin_N: plan.positions_m.map(() => Infinity),
    sagging_Nm: 0,
    hogging_Nm: 0,
    shear_N: 0,
    live_m: layout.bays.map(() => 0),
    longTerm_m: layout.bays.map(() => 0),
    liveFromStart_m: 0,
  };
  const size = rows.always[0]?.length ?? 0;
  const base = new Float64Array(size);
  for (const row of rows.always) row.forEach((value, i) => (base[i] = (base[i] ?? 0) + value));
  for (let pattern = 0; pattern < 2 ** free.length; pattern++) {
    const sum = base.slice();
    rows.free.forEach((row, k) => {
      if ((pattern >> k) & 1) row.forEach((value, i) => (sum[i] = (sum[i] ?? 0) + value));
    });
    keep(found, layout, sum);
    for (const row of roaming) keep(found, layout, sum, row);
  }
  return found;
}

/** A roaming load also stands this near every support: shear is largest right beside it. */
const beside_m = 0.0005;

function layoutOf(plan: Plan, step_m: number): Layout {
  const { length_m, EI_Nm2, GA_N, positions_m, loads } = plan;
  const besideSupports = positions_m
    .flatMap((x) => [x - beside_m, x + beside_m])
    .filter((x) => x > 0 && x < length_m);
  const breaks_m = [
    ...besideSupports,
    ...loads.flatMap(({ from_m, to_m, at_m }) => [from_m, to_m, at_m].filter((x) => x !== undefined)),
  ];
  const beam = denseBeam({
    length_m,
    EI_Nm2,
    GA_N,
    supports: positions_m.map((at_m) => ({ at_m, stiffness_Npm: plan.spring_Npm ?? Infinity })),
    hinges: (plan.joints ?? []).map((joint) => positions_m.findIndex((x) => Math.abs(x - joint) < 1e-9)),
    breaks_m,
    step_m,
  });
  const nodes = beam.nodes_m.map((_, i) => i);
  const at = beam.supportNodes;
  const [first = 0, last = 0] = [at[0], at[at.length - 1]];
  const bays: Layout['bays'][number][] = [];
  if (first > 0) bays.push({ nodes: nodes.slice(0, first + 1), kind: 'left', support: 0 });
  for (let i = 0; i + 1 < at.length; i++) {
    bays.push({ nodes: nodes.slice(at[i], (at[i + 1] ?? 0) + 1), kind: 'span', support: i });
  }
  if (last < nodes.length - 1) bays.push({ nodes: nodes.slice(last), kind: 'right', support: at.length - 1 });
  return { beam, bays, elements: nodes.length - 1 };
}

/** The loads as things that are always there and things that may be there. */
function partsOf(plan: Plan): { always: Part[]; free: Part[] } {
  const { length_m, positions_m, loads, creep } = plan;
  const whole = { from_m: 0, to_m: length_m };
  const always: Part[] = [
    { load: { lines: [{ ...whole, load_Npm: plan.selfWeight_Npm }] }, live: 0, longTerm: creep },
  ];
  const free: Part[] = [];
  const edges = [0, ...positions_m, length_m];
  for (const load of loads) {
    if (load.kind === 'roaming') continue;
    const factors = { live: 1, longTerm: creep * load.sustained + 1 - load.sustained };
    if (load.kind === 'point') {
      (load.free ? free : always).push({
        load: { points: [{ at_m: load.at_m ?? 0, load_N: load.amount }] },
        ...factors,
      });
      continue;
    }
    const [from, to] = [load.from_m ?? 0, load.to_m ?? length_m];
    const stretches = load.free
      ? edges.slice(1).map((right, i): [number, number] => [edges[i] ?? 0, right])
      : [[0, length_m] as const];
    for (const [left, right] of stretches) {
      const line = { from_m: Math.max(from, left), to_m: Math.min(to, right), load_Npm: load.amount };
      if (line.to_m - line.from_m > 1e-9)
        (load.free ? free : always).push({ load: { lines: [line] }, ...factors });
    }
  }
  return { always, free };
}

function roamingRows(plan: Plan, layout: Layout): Float64Array[] {
  const units = layout.beam.nodes_m.map((at_m) => ({ at_m }));
  return plan.loads
    .filter(({ kind }) => kind === 'roaming')
    .flatMap((load) =>
      units.map(({ at_m }) =>
        effectsOf(layout, {
          load: { points: [{ at_m, load_N: load.amount }] },
          live: 1,
          longTerm: plan.creep * load.sustained + 1 - load.sustained,
        }),
      ),
    );
}

/** Reactions; moments at both ends of each element; shears there; live and long-term movement of each bay's nodes; from the start. */
function effectsOf({ beam, bays }: Layout, part: Part): Float64Array {
  const state = beam.solve(part.load);
  const relative = bays.flatMap((bay) => {
    const supportMovement = (i: number): number => state.movement_m[beam.supportNodes[i] ?? 0] ?? 0;
    const left = supportMovement(bay.support);
    const right = bay.kind === 'span' ? supportMovement(bay.support + 1) : left;
    const [from, to] = [bay.nodes[0] ?? 0, bay.nodes[bay.nodes.length - 1] ?? 0].map(
      (node) => beam.nodes_m[node] ?? 0,
    );
    return bay.nodes.map((node) => {
      const share = ((beam.nodes_m[node] ?? 0) - (from ?? 0)) / ((to ?? 0) - (from ?? 0));
      return (state.movement_m[node] ?? 0) - left - (right - left) * share;
    });
  });
  return Float64Array.from([
    ...state.reactions_N,
    ...state.momentLeft_Nm,
    ...state.momentRight_Nm,
    ...state.shearLeft_N,
    ...state.shearRight_N,
    ...relative.map((value) => value * part.live),
    ...relative.map((value) => value * part.longTerm),
    ...Array.from(state.movement_m, (value) => value * part.live),
  ]);
}

const nothing = new Float64Array(0);

function keep(
  found: Extremes,
  { beam, bays, elements }: Layout,
  sum: Float64Array,
  more: Float64Array = nothing,
): void {
  const at = (i: number): number => (sum[i] ?? 0) + (more[i] ?? 0);
  const supports = beam.supportNodes.length;
  for (let i = 0; i < supports; i++) {
    found.reactionMax_N[i] = Math.max(found.reactionMax_N[i] ?? 0, at(i));
    found.reactionMin_N[i] = Math.min(found.reactionMin_N[i] ?? 0, at(i));
  }
  let k = supports;
  for (; k < supports + 2 * elements; k++) {
    const moment = at(k);
    if (moment > found.sagging_Nm) found.sagging_Nm = moment;
    if (moment < found.hogging_Nm) found.hogging_Nm = moment;
  }
  for (; k < supports + 4 * elements; k++) found.shear_N = Math.max(found.shear_N, Math.abs(at(k)));
  for (const which of [found.live_m, found.longTerm_m]) {
    bays.forEach(({ nodes }, bay) => {
      for (let i = 0; i < nodes.length; i++, k++) {
        const moved = Math.abs(at(k));
        if (moved > (which[bay] ?? 0)) which[bay] = moved;
      }
    });
  }
  for (; k < sum.length; k++) found.liveFromStart_m = Math.max(found.liveFromStart_m, Math.abs(at(k)));
}
