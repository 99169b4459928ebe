import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { denseBeam, type DenseLoad, type DenseState } from './dense-beam.ts';
import { drawsFrom } from './draws.ts';
import { drawnShelf, type DrawnShelf } from './drawn-shelf.ts';
import type { Plan } from './every-arrangement.ts';

/*
 * A board that only rests on its brackets, arrangement by arrangement: in each, the one set of brackets is found that all
 * push and where the board is clear of the others (Signorini's conditions), by trying every set. Nothing the shelf is said
 * to do may be less than what it does in any of these. Where no set of two or more will do, the board turns over, and the
 * verdict must be "does not hold".
 */
interface Found {
  readonly reaction_N: number[];
  sagging_Nm: number;
  hogging_Nm: number;
  shear_N: number;
  /** Of each bay, from the straight line between the brackets themselves: what comes on top of the empty board. */
  readonly live_m: number[];
  /** How many arrangements leave a bracket. */
  lifted: number;
  turnsOver: boolean;
}

const looked = ['movement_m', 'momentLeft_Nm', 'shearLeft_N', 'shearRight_N', 'reactions_N'] as const;
type Row = Pick<DenseState, (typeof looked)[number]>;

/** What several loads do at once. */
function together(rows: readonly Row[]): Row {
  const sum = (key: keyof Row): Float64Array => {
    const total = new Float64Array(rows[0]?.[key].length ?? 0);
    for (const row of rows)
      for (let i = 0; i < total.length; i++) total[i] = (total[i] ?? 0) + (row[key][i] ?? 0);
    return total;
  };
  return Object.fromEntries(looked.map((key) => [key, sum(key)])) as Record<keyof Row, Float64Array>;
}

function restingExtremes(plan: Plan): Found {
  const { length_m, EI_Nm2, GA_N, positions_m, loads } = plan;
  const step_m = length_m / 24;
  const sets = Array.from({ length: 2 ** positions_m.length }, (_, bits) =>
    positions_m.filter((_, i) => (bits >> i) & 1),
  )
    .filter((set) => set.length >= 2)
    .sort((a, b) => b.length - a.length);
  const breaks_m = [
    ...positions_m,
    ...loads.flatMap((load) => [load.from_m, load.to_m, load.at_m].filter((x) => x !== undefined)),
  ];
  const beams = sets.map((set) =>
    denseBeam({ length_m, EI_Nm2, GA_N, supports: set.map((at_m) => ({ at_m })), breaks_m, step_m }),
  );
  const edges = [0, ...positions_m, length_m];
  const always: DenseLoad[] = [{ lines: [{ from_m: 0, to_m: length_m, load_Npm: plan.selfWeight_Npm }] }];
  const free: DenseLoad[] = [];
  for (const load of loads) {
    if (load.kind === 'point')
      (load.free ? free : always).push({ points: [{ at_m: load.at_m ?? 0, load_N: load.amount }] });
    if (load.kind !== 'line') continue;
    const stretches = load.free
      ? edges.slice(1).map((to, i) => [edges[i] ?? 0, to] as const)
      : [[0, length_m] as const];
    for (const [left, right] of stretches) {
      const line = {
        from_m: Math.max(left, load.from_m ?? 0),
        to_m: Math.min(right, load.to_m ?? length_m),
        load_Npm: load.amount,
      };
      if (line.to_m > line.from_m + 1e-9) (load.free ? free : always).push({ lines: [line] });
    }
  }
  const nodes = beams[0]?.nodes_m ?? [];
  const stands = loads
    .filter(({ kind }) => kind === 'roaming')
    .flatMap(({ amount }) => nodes.map((at_m) => ({ points: [{ at_m, load_N: amount }] })));
  const solvedOn = beams.map((beam) => ({
    always: always.map((load) => beam.solve(load)),
    free: free.map((load) => beam.solve(load)),
    stands: stands.map((load) => beam.solve(load)),
    bracketNodes: positions_m.map((x) => beam.nodes_m.findIndex((node) => Math.abs(node - x) < 1e-9)),
  }));
  const found: Found = {
    reaction_N: positions_m.map(() => 0),
    sagging_Nm: 0,
    hogging_Nm: 0,
    shear_N: 0,
    live_m: [],
    lifted: 0,
    turnsOver: false,
  };
  const bays = edges
    .slice(1)
    .map((to, i) => [edges[i] ?? 0, to] as const)
    .filter(([from, to]) => to > from);
  let empty: Float64Array | undefined;
  for (let pattern = 0; pattern < 2 ** free.length; pattern++) {
    const standing = solvedOn.map((on) =>
      together([...on.always, ...on.free.filter((_, k) => (pattern >> k) & 1)]),
    );
    for (let stand = -1; stand < stands.length; stand++) {
      const added = (s: number, key: keyof Row, i: number): number =>
        (standing[s]?.[key][i] ?? 0) + (solvedOn[s]?.stands[stand]?.[key][i] ?? 0);
      const index = sets.findIndex((set, s) => {
        const pushes = set.every((_, i) => added(s, 'reactions_N', i) >= -1e-9);
        return (
          pushes && (solvedOn[s]?.bracketNodes ?? []).every((node) => added(s, 'movement_m', node) <= 1e-12)
        );
      });
      const set = sets[index];
      if (set === undefined) {
        found.turnsOver = true;
        continue;
      }
      if (set.length < positions_m.length) found.lifted += 1;
      const moved = Float64Array.from(nodes, (_, node) => added(index, 'movement_m', node));
      empty ??= moved;
      const base = empty;
      bays.forEach(([from, to], bay) => {
        nodes.forEach((x, node) => {
          if (x < from - 1e-9 || x > to + 1e-9) return;
          found.live_m[bay] = Math.max(
            found.live_m[bay] ?? 0,
            Math.abs((moved[node] ?? 0) - (base[node] ?? 0)),
          );
        });
      });
      set.forEach((x, i) => {
        const bracket = positions_m.indexOf(x);
        found.reaction_N[bracket] = Math.max(found.reaction_N[bracket] ?? 0, added(index, 'reactions_N', i));
      });
      for (let e = 0; e < nodes.length - 1; e++) {
        const moment = added(index, 'momentLeft_Nm', e);
        found.sagging_Nm = Math.max(found.sagging_Nm, moment);
        found.hogging_Nm = Math.min(found.hogging_Nm, moment);
        found.shear_N = Math.max(
          found.shear_N,
          Math.abs(added(index, 'shearLeft_N', e)),
          Math.abs(added(index, 'shearRight_N', e)),
        );
      }
    }
  }
  return found;
}

/** Light enough that most of them stay where they are, heavy enough that many lift off a bracket. */
function restingShelf(number: number): DrawnShelf {
  return drawnShelf(drawsFrom(number * 15485863), { hold: 'resting', brackets: [3, 4], loads: 2 });
}

const drawnShelves = Array.from({ length: 24 }, (_, i) => restingShelf(i + 1));
const expectedFor = once(({ plan }) => restingExtremes(plan));
const checkedFor = once(({ document }) => check(document, { waysOut: false }));

/** Works a shelf out once, for all the tests that look at it. */
function once<T>(workOut: (drawn: DrawnShelf) => T): (drawn: DrawnShelf) => T {
  const known = new Map<DrawnShelf, T>();
  return (drawn) => {
    const held = known.get(drawn) ?? workOut(drawn);
    known.set(drawn, held);
    return held;
  };
}

describe('a board that only rests on its brackets', () => {
  drawnShelves.forEach((drawn, index) => {
    const number = index + 1;
    it(`drawn shelf ${number}: ${drawn.plan.positions_m.length} brackets, ${drawn.plan.loads.length} loads`, () => {
      const expected = expectedFor(drawn);
      const { analysis, verdict } = checkedFor(drawn);
      if (expected.turnsOver) expect(verdict).toBe('does-not-hold');
      const below = 1 - 1e-5;
      analysis.supports.forEach(({ reaction }, i) => {
        expect(reaction.max.value, `reaction ${i + 1}`).toBeGreaterThanOrEqual(
          (expected.reaction_N[i] ?? NaN) * below - 1e-6,
        );
      });
      expect(analysis.moment.max.value, 'sagging').toBeGreaterThanOrEqual(expected.sagging_Nm * below - 1e-6);
      expect(-analysis.moment.min.value, 'hogging').toBeGreaterThanOrEqual(
        -expected.hogging_Nm * below - 1e-6,
      );
      expect(analysis.shear.max.value, 'shear').toBeGreaterThanOrEqual(expected.shear_N * below - 1e-6);
    });
  });

  it('most of these do leave a bracket in some arrangement, and some turn over: the comparison is not idle', () => {
    expect(drawnShelves.filter((drawn) => expectedFor(drawn).lifted > 0).length).toBeGreaterThan(12);
    expect(drawnShelves.filter((drawn) => expectedFor(drawn).turnsOver).length).toBeGreaterThan(3);
  });

  it('a bay moves no more, from the line between its brackets, than is said, unless it is said not to hold', () => {
    const faults = drawnShelves.flatMap((drawn, shelf) => {
      const { analysis, verdict } = checkedFor(drawn);
      if (verdict === 'does-not-hold') return [];
      return analysis.deflection.bays.flatMap(({ live }, bay) => {
        const expected = expectedFor(drawn).live_m[bay] ?? NaN;
        return live.value >= expected * (1 - 1e-5) - 1e-9
          ? []
          : [`shelf ${shelf + 1}, bay ${bay + 1}: ${live.value}, moves ${expected}`];
      });
    });
    expect(faults).toEqual([]);
  });
});
