import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { drawsFrom } from './draws.ts';
import { drawnShelf, type DrawnShelf } from './drawn-shelf.ts';
import { everyArrangement, type Extremes } from './every-arrangement.ts';

/*
 * The envelopes of a shelf against every arrangement of its loads, one by one, in an independent dense model (ml-matrix).
 * Too small a value would be a wrong pass: nothing may be below by more than rounding. What the grid misses between its
 * nodes is second order in their distance, so nothing may be above by more than 1 % (a parabola read at 12 places a
 * bay, its top between two of them, reads 0.7 % low).
 */
const below = 1e-6;
const above = 0.01;

interface Compared {
  readonly what: string;
  readonly found: number;
  readonly expected: number;
  /** What counts as nothing beside it. */
  readonly scale: number;
}

function faultsOf({ document, plan }: DrawnShelf, expected: Extremes): string[] {
  const { analysis } = check(document, { waysOut: false });
  const force = Math.max(...expected.reactionMax_N.map(Math.abs));
  const moment = Math.max(expected.sagging_Nm, -expected.hogging_Nm);
  const movement = Math.max(...expected.longTerm_m);
  const compared: Compared[] = [
    ...analysis.supports.flatMap(({ reaction }, i) => [
      {
        what: `reaction ${i + 1} max`,
        found: reaction.max.value,
        expected: expected.reactionMax_N[i] ?? NaN,
        scale: force,
      },
      {
        what: `reaction ${i + 1} min`,
        found: -reaction.min.value,
        expected: -(expected.reactionMin_N[i] ?? NaN),
        scale: force,
      },
    ]),
    { what: 'sagging', found: analysis.moment.max.value, expected: expected.sagging_Nm, scale: moment },
    { what: 'hogging', found: -analysis.moment.min.value, expected: -expected.hogging_Nm, scale: moment },
    { what: 'shear', found: analysis.shear.max.value, expected: expected.shear_N, scale: force },
    ...analysis.deflection.bays.flatMap((bay, i) => [
      {
        what: `bay ${i + 1} live`,
        found: bay.live.value,
        expected: expected.live_m[i] ?? NaN,
        scale: movement,
      },
      {
        what: `bay ${i + 1} long-term`,
        found: bay.longTerm.value,
        expected: expected.longTerm_m[i] ?? NaN,
        scale: movement,
      },
    ]),
  ];
  expect(analysis.deflection.bays.length).toBe(expected.live_m.length);
  const rounding = 1e-8;
  return compared
    .filter(
      ({ found, expected: value, scale }) =>
        !(found >= value - Math.abs(value) * below - scale * rounding) ||
        !(found <= value + Math.abs(value) * above + scale * 1e-3),
    )
    .map(({ what, found, expected: value }) => `${what}: ${found} where every arrangement gives ${value}`)
    .concat(plan.positions_m.length === analysis.supports.length ? [] : ['wrong number of supports']);
}

const step = (shelf: DrawnShelf): number => shelf.plan.length_m / 60;

describe('a shelf against every arrangement of its loads', () => {
  for (let number = 1; number <= 32; number++) {
    const drawn = drawnShelf(drawsFrom(number * 7919));
    it(`drawn shelf ${number}: ${drawn.plan.positions_m.length} brackets, ${drawn.plan.loads.length} loads`, () => {
      expect(faultsOf(drawn, everyArrangement(drawn.plan, step(drawn)))).toEqual([]);
    });
  }

  for (let number = 1; number <= 8; number++) {
    const drawn = drawnShelf(drawsFrom(number * 104729), { jointed: true, brackets: [3, 5] });
    it(`drawn shelf ${number} in two lengths`, () => {
      expect(faultsOf(drawn, everyArrangement(drawn.plan, step(drawn)))).toEqual([]);
    });
  }

  for (let number = 1; number <= 8; number++) {
    const drawn = drawnShelf(drawsFrom(number * 1299709), { steel: true });
    it(`drawn shelf ${number} on steel arms: the worse of soft and rigid`, () => {
      const soft = everyArrangement(drawn.plan, step(drawn));
      const rigid = everyArrangement({ ...drawn.plan, spring_Npm: Infinity }, step(drawn));
      const worse = (a: number[], b: number[], pick: (...values: number[]) => number) =>
        a.map((x, i) => pick(x, b[i] ?? x));
      expect(
        faultsOf(drawn, {
          reactionMax_N: worse(soft.reactionMax_N, rigid.reactionMax_N, Math.max),
          reactionMin_N: worse(soft.reactionMin_N, rigid.reactionMin_N, Math.min),
          sagging_Nm: Math.max(soft.sagging_Nm, rigid.sagging_Nm),
          hogging_Nm: Math.min(soft.hogging_Nm, rigid.hogging_Nm),
          shear_N: Math.max(soft.shear_N, rigid.shear_N),
          live_m: worse(soft.live_m, rigid.live_m, Math.max),
          longTerm_m: worse(soft.longTerm_m, rigid.longTerm_m, Math.max),
          liveFromStart_m: Math.max(soft.liveFromStart_m, rigid.liveFromStart_m),
        }),
      ).toEqual([]);
      expect(check(drawn.document).analysis.deflection.live.value).toBeGreaterThanOrEqual(
        soft.liveFromStart_m * (1 - below),
      );
    });
  }
});
