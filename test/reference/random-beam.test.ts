import { describe, expect, it } from 'vitest';
import { solved } from '../calc/mechanics/solved-beam.ts';
import { denseBeam } from './dense-beam.ts';
import { drawsFrom, type Draws } from './draws.ts';

/*
 * Any beam against the dense displacement method (ml-matrix): supports rigid and springs, hinges, overhangs, part loads and
 * points, with and without shear. Both are exact, so they agree to what double precision leaves of a dense solution.
 */
function drawnBeam(draws: Draws) {
  const count = Math.round(draws.between(2, 6));
  let x = draws.one(0, draws.between(0.05, 0.4));
  const places = Array.from({ length: count }, (_, i) =>
    i === 0 ? x : (x = Math.round((x + draws.between(0.15, 1.2)) * 1000) / 1000),
  );
  const length_m = Math.round((x + draws.one(0, draws.between(0.05, 0.5))) * 1000) / 1000;
  const soft = draws.one(true, false);
  const supports = places.map((at_m) => ({
    at_m,
    stiffness_Npm: soft ? draws.one(Infinity, draws.between(2e3, 2e5)) : Infinity,
  }));
  const hinges =
    count > 2 && draws.one(true, false, false) ? [Math.floor(draws.between(1, count - 1.001))] : [];
  const pair = (): [number, number] => {
    const [a, b] = [draws.between(0, length_m), draws.between(0, length_m)].sort((p, q) => p - q);
    return [a ?? 0, b ?? length_m];
  };
  const lines = Array.from({ length: Math.round(draws.between(0, 3)) }, () => {
    const [from_m, to_m] = pair();
    return { from_m, to_m, load_Npm: draws.between(-50, 400) };
  }).filter(({ from_m, to_m }) => to_m > from_m);
  const points = Array.from({ length: Math.round(draws.between(0, 3)) }, () => ({
    at_m: draws.one(draws.between(0, length_m), 0, length_m, places[1] ?? 0),
    load_N: draws.between(-100, 300),
  }));
  return {
    beam: {
      length_m,
      supports,
      hinges,
      EI_Nm2: draws.between(300, 9000),
      GA_N: draws.one(Infinity, draws.between(2e4, 4e6)),
    },
    load: { lines, points },
  };
}

describe('any beam against the dense displacement method', () => {
  for (let number = 1; number <= 60; number++) {
    it(`drawn beam ${number}`, () => {
      const { beam, load } = drawnBeam(drawsFrom(number * 6101));
      const breaks_m = [
        ...load.lines.flatMap(({ from_m, to_m }) => [from_m, to_m]),
        ...load.points.map(({ at_m }) => at_m),
      ];
      const dense = denseBeam({ ...beam, breaks_m, step_m: 0.25 });
      const expected = dense.solve(load);
      const found = solved(beam, load);
      const near = (what: string, a: number, b: number, scale: number): void =>
        expect(Math.abs(a - b), `${what}: ${a}, dense ${b}`).toBeLessThanOrEqual(1e-6 * scale + 1e-12);
      const most = (values: Float64Array): number => Math.max(...Array.from(values, Math.abs));
      const [force, moment, moved] = [
        Math.max(most(expected.reactions_N), most(expected.shearLeft_N)),
        Math.max(most(expected.momentLeft_Nm), most(expected.momentRight_Nm)),
        most(expected.movement_m),
      ];
      found.reactions.forEach((reaction, i) =>
        near(`reaction ${i}`, reaction, expected.reactions_N[i] ?? NaN, force),
      );
      dense.nodes_m.forEach((x, node) => {
        near(`movement at ${x}`, found.movement(x), expected.movement_m[node] ?? NaN, moved);
        if (node === 0) return;
        near(`moment at ${x}`, found.moment(x), expected.momentRight_Nm[node - 1] ?? NaN, moment);
        near(`shear left of ${x}`, found.shearLeft(x), expected.shearRight_N[node - 1] ?? NaN, force);
        if (node < dense.nodes_m.length - 1) {
          near(`shear right of ${x}`, found.shearRight(x), expected.shearLeft_N[node] ?? NaN, force);
        }
      });
    });
  }
});
