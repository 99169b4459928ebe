import { describe, expect, it } from 'vitest';
import { counter, mapleWeight_lbf } from './counter-documents.ts';
import { judge, psi } from './documents.ts';
import { maple } from './maple.ts';

/*
 * A top of 60 x 30 x 1-1/2 in that stands out 12 in past the right end of its base alone. Staves that run from back to front
 * are bent across there: all that is on the 12 in goes over the panel as rolling shear, 18 % of shear along the grain at least
 * (Wood Handbook, chapter 5; memory).
 */
const pressed_psi = 100 / 144;
const endOut = (staves: 'along' | 'across') =>
  counter({
    top: { appearance: 'small-knots', staves, length: '60 in', depth: '30 in' },
    base: { to: '48 in', front: '30 in', foot: '30 in', heldToFloor: true, anchorPull: '5000 lbf' },
    screws: {
      ...{ fastener: 'wood-screw-14', length: '2 in', through: '3/4 in' },
      at: [6, 15, 24].map((y) => ['2 in', `${y} in`]),
    },
    loads: [{ kind: 'area', amount: '100 psf', duration: 'ten-years' }],
  });
const own_psi = mapleWeight_lbf(60, 30, 1.5) / (60 * 30);
const overPanel_psi = (1.5 * (pressed_psi + own_psi) * 12) / 1.5;

describe('shear of a top that stands out past an end of its base', () => {
  it('rolls the fibres of staves from back to front: no less than q a over the panel, against 0.18 F_v', () => {
    const { demand, capacity } = judge(endOut('across'), 'shear');
    expect(capacity / psi / (0.18 * maple.shear_psi)).toBeCloseTo(1, 3);
    expect(demand / psi).toBeGreaterThan(overPanel_psi);
  });

  it('asks as much of them as of staves along the length that stand out past the face instead', () => {
    const turned = counter({
      top: { appearance: 'small-knots', staves: 'along', length: '30 in', depth: '60 in' },
      base: {
        ...{ to: '30 in', front: '48 in', foot: '48 in', weightAt: '24 in' },
        ...{ heldToFloor: true, anchorPull: '5000 lbf' },
      },
      screws: {
        ...{ fastener: 'wood-screw-14', length: '2 in', through: '3/4 in' },
        at: [6, 15, 24].map((x) => [`${x} in`, '2 in']),
      },
      loads: [{ kind: 'area', amount: '100 psf', duration: 'ten-years' }],
    });
    const [one, other] = [judge(endOut('across'), 'shear'), judge(turned, 'shear')];
    // At a corner a rail takes all that stands there, and a panel its part by length.
    expect(one.capacity / other.capacity).toBeCloseTo(1, 6);
    expect(one.demand / other.demand).toBeGreaterThan(0.6);
    expect(one.demand / other.demand).toBeLessThan(1.01);
  });
});
