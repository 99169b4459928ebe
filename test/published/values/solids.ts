import * as solids from '../../../calc/mechanics/solids.ts';
import { published, type PublishedValue } from './published-value.ts';
import { foot, inch, pound, poundPerCubicFoot } from './units.ts';

/** Density on which the AISC and pipe tables of weights stand. */
const steel = 490 * poundPerCubicFoot;
/** Water as the tables of tank volumes take it. */
const water = 62.4 * poundPerCubicFoot;
const memory = true;

/** A 4 in standard pipe: outside 4.500 in, wall 0.237 in, 10.79 lb for each foot (ASME B36.10). */
const pipe = { D: 4.5 * inch, t: 0.237 * inch };
/** A 4-1/2 in round bar: 54.07 lb for each foot (490 lb/ft³). */
const bottom = (54.07 * 0.237) / 12;

export const solidValues: readonly PublishedValue[] = [
  published(solids.discMass, { rho: steel, D: 1 * inch, t: 1 * foot }, 2.67 * pound, {
    tolerance: 2e-3,
    source: 'AISC Manual, weights of square and round bars: 1 in round, 2.67 lb for each foot',
    why: 'three figures',
    memory,
  }),
  published(solids.blockMass, { rho: steel, b: 1 * foot, h: 1 * foot, d: 1 * inch }, 40.83 * pound, {
    tolerance: 2e-4,
    source: 'AISC Manual, weights of plates: 1 in thick, 40.83 lb for each square foot',
    why: 'four figures',
    memory,
  }),
  published(
    solids.vesselMass,
    { rho: 0, D: 7.25 * inch, h: 6.125 * inch, t: 0.125 * inch, rho_in: water, f_in: 1 },
    8.34 * pound,
    {
      tolerance: 1e-3,
      source: 'the wine gallon: a cylinder 7 in wide and 6 in deep, 231 in³, and 8.34 lb of water',
      why: 'three figures; 231 in³ stands on π = 22/7. The vessel itself is without weight here',
      memory,
    },
  ),
  published(
    solids.vesselMass,
    { rho: steel, ...pipe, h: 1 * foot + pipe.t, rho_in: 0, f_in: 0 },
    (10.79 + bottom) * pound,
    {
      tolerance: 1.5e-3,
      source:
        'ASME B36.10, NPS 4 standard pipe, 10.79 lb for each foot, on a round of AISC round bar, 54.07 lb for each foot',
      why: 'tables of pipe stand on 0.2833 lb/in³, of bars on 490 lb/ft³: 0.1 % apart',
      memory,
    },
  ),
  published(
    solids.vesselMass,
    { rho: steel, ...pipe, h: 1 * foot + pipe.t, rho_in: water, f_in: 0.5 },
    (10.79 + bottom + 5.51 / 2) * pound,
    {
      tolerance: 1.5e-3,
      source: 'the same pipe half full: NPS 4 standard pipe holds 5.51 lb of water for each foot',
      why: 'as above',
      memory,
    },
  ),
  published(
    solids.bowlMass,
    { rho: 0, D: 24.5 * inch, h: 6.25 * inch, t: 0.25 * inch, rho_in: water, f_in: 1 },
    0.1309 * 2 ** 3 * 62.4 * pound,
    {
      tolerance: 5e-4,
      source:
        'ASME tank heads, 2 : 1 ellipsoidal: volume 0.1309 D³, inside diameter 2 ft, inside depth a quarter of it',
      why: 'four figures of π/24',
      memory,
    },
  ),
  published(
    solids.bowlMass,
    { rho: steel, D: 12 * inch, h: 6 * inch, t: 0.25 * inch, rho_in: 0, f_in: 0 },
    ((904.78 - 796.33) / 2) * (490 / 1728) * pound,
    {
      tolerance: 3e-4,
      source: "Machinery's Handbook, volumes of spheres: 12 in, 904.78 in³; 11-1/2 in, 796.33 in³",
      why: 'a difference of numbers of five figures',
      memory,
    },
  ),
  published(
    solids.bowlMass,
    { rho: steel, D: 12 * inch, h: 6 * inch, t: 0.25 * inch, rho_in: water, f_in: 0.5 },
    (((904.78 - 796.33) / 2) * 490 + (796.33 / 4) * 62.4) * (pound / 1728),
    {
      tolerance: 3e-4,
      source:
        "Machinery's Handbook, volumes of spheres: 12 in, 904.78 in³; 11-1/2 in, 796.33 in³; half full of water",
      why: 'a difference of numbers of five figures',
      memory,
    },
  ),
  published(solids.weightOfMany, { n_c: 10, m: pound, g_0: 9.80665 }, 10 * 4.448222, {
    tolerance: 1e-6,
    source: 'NIST SP 811 (2008), Appendix B.8: pound-force, 4.448 222 N',
    why: 'printed to seven figures',
    memory,
  }),
];
