import { describe, expect, it } from 'vitest';
import { armGive, simpleBeamGive } from '../../../calc/mechanics/simple-beam.ts';

const beam = { span_m: 2.4, EI_Nm2: 3600, GA_N: 5e5 };
const bending = { ...beam, GA_N: Infinity };

describe('a simple beam under one newton', () => {
  it('moves in the middle by L³ / 48 EI under a load there (AISC Manual Table 3-23), and L / 4 GA more by shear', () => {
    expect(simpleBeamGive(bending, 1.2, 1.2)).toBeCloseTo(2.4 ** 3 / (48 * 3600), 15);
    const shear = simpleBeamGive(beam, 1.2, 1.2) - simpleBeamGive(bending, 1.2, 1.2);
    expect(shear).toBeCloseTo(2.4 / (4 * 5e5), 15);
  });

  it('moves under the load by a² b² / 3 EI L (AISC Manual Table 3-23, load at any point)', () => {
    expect(simpleBeamGive(bending, 0.7, 0.7)).toBeCloseTo((0.7 ** 2 * 1.7 ** 2) / (3 * 3600 * 2.4), 15);
  });

  it('moves at one place under a load at another as the other way round (Maxwell)', () => {
    expect(simpleBeamGive(beam, 0.3, 1.9)).toBeCloseTo(simpleBeamGive(beam, 1.9, 0.3), 15);
  });

  it('does not move at its ends', () => {
    for (const end of [0, 2.4]) expect(simpleBeamGive(beam, end, 1.1)).toBeCloseTo(0, 15);
  });
});

describe('an arm past a pin under one newton', () => {
  const arm = { back_m: 2, EI_Nm2: 3600, GA_N: Infinity };

  it('moves at its end by a² (L + a) / 3 EI under a load there (AISC Manual Table 3-23, beam overhanging one support)', () => {
    expect(armGive(arm, 0.9, 0.9)).toBeCloseTo((0.9 ** 2 * 2.9) / (3 * 3600), 15);
  });

  it('held at its root, halfway out by 5 a³ / 48 EI under a load at its end (Table 3-23, cantilever)', () => {
    const held = { ...arm, back_m: 0 };
    expect(armGive(held, 0.45, 0.9)).toBeCloseTo((5 * 0.9 ** 3) / (48 * 3600), 15);
    expect(armGive(held, 0.9, 0.45)).toBeCloseTo(armGive(held, 0.45, 0.9), 15);
  });

  it('moves by shear too: a / GA, and a² / L GA of the beam behind', () => {
    const sheared = { ...arm, GA_N: 5e5 };
    expect(armGive(sheared, 0.9, 0.9) - armGive(arm, 0.9, 0.9)).toBeCloseTo((0.9 + 0.81 / 2) / 5e5, 15);
  });
});
