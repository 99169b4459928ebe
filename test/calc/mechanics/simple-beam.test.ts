import { describe, expect, it } from 'vitest';
import { simpleBeamGive } from '../../../calc/mechanics/simple-beam.ts';

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
