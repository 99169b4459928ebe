import { describe, expect, it } from 'vitest';
import { baysOf } from '../../../calc/mechanics/bays.ts';
import { prepareBeam } from '../../../calc/mechanics/beam.ts';
import { influenceOf } from '../../../calc/mechanics/influence.ts';
import { MovingLoad } from '../../../calc/mechanics/moving-load.ts';

const [L, a, EI, GA] = [2, 0.6, 5000, 40_000];

function mostUnderLoad(supports_m: readonly number[], length_m: number, bay: number, k = Infinity): number {
  const supports = supports_m.map((at_m) => ({ at_m, stiffness_Npm: k }));
  const prepared = prepareBeam({ length_m, EI_Nm2: EI, GA_N: GA, supports, hinges: [] }, []);
  const bays = baysOf(prepared);
  const moved = bays[bay];
  if (moved === undefined) throw new Error(`there is no bay ${bay}`);
  return new MovingLoad(prepared.beam, moved, influenceOf(prepared, bays), true).mostUnderLoad();
}

describe('the most a place moves under a unit load on it', () => {
  it('is L³/48EI + L/4κGA in the middle of a simple span (AISC Manual Table 3-23, case 7, from memory, with shear)', () => {
    expect(mostUnderLoad([0, L], L, 0)).toBeCloseTo(L ** 3 / (48 * EI) + L / (4 * GA), 12);
  });

  it('is a²(L + a)/3EI + a(1 + a/L)/κGA at the tip of an overhang (case 26, from memory, with shear)', () => {
    const expected = (a * a * (L + a)) / (3 * EI) + (a * (1 + a / L)) / GA;
    expect(mostUnderLoad([0, L], L + a, 1)).toBeCloseTo(expected, 12);
    expect(mostUnderLoad([a, a + L], a + L, 0)).toBeCloseTo(expected, 12);
  });

  it('has the sinking of its supports in it: 1/2k in the middle of two springs, by statics', () => {
    const stiff = mostUnderLoad([0, L], L, 0);
    // So stiff that the middle still moves most, though its load sinks two springs and one at an end sinks one alone.
    const k = 1e9;
    expect(mostUnderLoad([0, L], L, 0, k)).toBeCloseTo(stiff + 1 / (2 * k), 12);
  });
});
