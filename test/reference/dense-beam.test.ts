import { describe, expect, it } from 'vitest';
import { denseBeam } from './dense-beam.ts';

/* The measuring stick measured: the dense model against AISC Manual Table 3-23 and 3-22c. */
describe('the dense model itself', () => {
  const [L, EI, w] = [2, 900, 300];
  const beamOf = (supports: number[], length: number, GA = Infinity) =>
    denseBeam({
      length_m: length,
      EI_Nm2: EI,
      GA_N: GA,
      supports: supports.map((at_m) => ({ at_m })),
      breaks_m: supports.flatMap((x, i) => (i === 0 ? [] : [(x + (supports[i - 1] ?? 0)) / 2])),
      step_m: 0.1,
    });

  it('gives the simple beam, bending and shear (case 1; Wood Handbook ch. 9)', () => {
    const GA = 2e4;
    const state = beamOf([0, L], L, GA).solve({ lines: [{ from_m: 0, to_m: L, load_Npm: w }] });
    expect(Math.max(...state.movement_m)).toBeCloseTo(
      (5 * w * L ** 4) / (384 * EI) + (w * L ** 2) / (8 * GA),
      12,
    );
    expect(Math.max(...state.momentLeft_Nm)).toBeCloseTo((w * L ** 2) / 8, 8);
    expect(state.shearLeft_N[0]).toBeCloseTo((w * L) / 2, 8);
  });

  it('gives the overhang with a load at its tip (case 26)', () => {
    const [a, P] = [0.5, 100];
    const state = beamOf([0, L], L + a).solve({ points: [{ at_m: L + a, load_N: P }] });
    expect(state.movement_m[state.movement_m.length - 1]).toBeCloseTo((P * a * a * (L + a)) / (3 * EI), 12);
    expect(state.reactions_N[0]).toBeCloseTo((-P * a) / L, 8);
  });

  it('gives three equal spans (Table 3-22c)', () => {
    const state = beamOf([0, L, 2 * L, 3 * L], 3 * L).solve({
      lines: [{ from_m: 0, to_m: 3 * L, load_Npm: w }],
    });
    [0.4, 1.1, 1.1, 0.4].forEach((c, i) => expect((state.reactions_N[i] ?? NaN) / (w * L)).toBeCloseTo(c, 9));
  });

  it('cuts the beam at a hinge: two simple spans', () => {
    const beam = denseBeam({
      length_m: 2 * L,
      EI_Nm2: EI,
      GA_N: Infinity,
      supports: [{ at_m: 0 }, { at_m: L }, { at_m: 2 * L }],
      hinges: [1],
      breaks_m: [],
      step_m: 0.1,
    });
    const state = beam.solve({ lines: [{ from_m: 0, to_m: L, load_Npm: w }] });
    expect(Math.max(...state.momentLeft_Nm)).toBeCloseTo((w * L ** 2) / 8, 8);
    expect(state.reactions_N[2]).toBeCloseTo(0, 8);
  });
});
