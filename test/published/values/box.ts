import * as box from '../../../calc/mechanics/box-formulas.ts';
import { published, type PublishedValue } from './published-value.ts';

/* Hollow boxes: members of the frame as beams on the springs that skins and the rest of the box are. */
const hand = (why: string) => ({ source: 'worked by hand', why, memory: false, tolerance: 1e-9 });
const hetenyi = (why: string) => ({
  source:
    'Hetényi, Beams on Elastic Foundation: simply supported with a load in the middle; clamped with an even load',
  why,
  memory: true,
});

export const boxValues: readonly PublishedValue[] = [
  published(
    box.skinBeside,
    { k_L: 0.5, L: 4, E_s: 16, G_s: 1, g: 1 / Math.PI },
    0.761594156 / (2 * Math.PI),
    {
      source: 'Abramowitz & Stegun, Table 4.15: tanh 1 = 0.7615941560',
      why: 'k_L L tanh x / π √(E / G) with x = 1',
      memory: true,
      tolerance: 1e-8,
    },
  ),
  published(
    box.memberStiffness,
    { E_s: 2, b_f: 1, n_g: 2, b_s: 3, h: 4, h_i: 2, E_f: 6, EI_n: 5 },
    (2 * 7 * (64 - 8) + 6 * 1 * 8) / 12 + 5,
    hand('flanges 7 wide of 2, a web 1 wide of 6, and a strip of 5'),
  ),
  published(box.memberSpring, { s: 2, r_A: 0.5, E_s: 8, t: 1, y_m: Math.PI, L: 2, GJ: 4 }, 0.5, {
    source:
      'AISC Manual, Table 3-23: an end of a clamped beam that settles takes 12 EI Δ / l³; a bar GJ (π / L)² / y² for a sine',
    why: 'two skins of 12 × 0.5 × 8 / 12 / 2³ are 1, the box 4 × (π / 2)² / π² is 1; one after the other 1/2',
    memory: true,
    tolerance: 1e-9,
  }),
  published(
    box.keptOfLine,
    { k_m: 0.25, L: 2 * Math.PI, EI_m: 4 },
    0.5,
    hand('EI (π / L)⁴ = 4 / 16, as stiff as the spring'),
  ),
  published(box.keptOverBracket, { k_m: 4, L: 20, EI_m: 1 }, 6 / 400, {
    ...hetenyi('λ = 1: w / 2 λ² of a long beam over w L² / 12'),
    tolerance: 0.01,
  }),
  published(box.memberLength, { L: 3, k_m: 64, EI_m: 1 }, 6, hand('λ⁴ = 64 / 4')),
  published(box.keptOfThing, { v: Math.PI }, Math.sinh(Math.PI) / Math.PI / (Math.cosh(Math.PI) - 1), {
    ...hetenyi('sin π = 0, cos π = −1'),
    tolerance: 1e-9,
  }),
  published(box.keptOfThing, { v: 10 }, 0.1, {
    ...hetenyi('P / 4 λ of a beam without end over P L / 4'),
    tolerance: 3e-4,
  }),
  published(
    box.skinsOfShear,
    { t: 1, EI_m: 30, h: 4, G_f: 2, b_f: 1.5, h_i: 2, L: 10 },
    1 + 1 / 6 / 2 / ((100 / 8 / 30) * 2),
    hand('w 1: curvature 1 / (2 × 1.5 × 2) at half a skin, over 10² / 8 / 30 at half the box'),
  ),
  published(
    box.countsAs,
    { k_f: 1.1, k_s: 1.2, r_m: 0.8, EI_eff: 100, EI_m: 40, phi: 0.5 },
    1.1 * 1.2 * 1.5,
    hand('0.8 of the load on 0.4 of the stiffness is 2 times the mean; half of what is above it is kept'),
  ),
  published(
    box.countsInShear,
    { n_m: 3, r_m: 0.8, phi: 0.5 },
    1.7,
    hand('0.8 on one of three is 2.4 times the mean; half of what is above it is kept'),
  ),
];
