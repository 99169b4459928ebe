import { gravity, inch, psi } from './documents.ts';

/*
 * Sugar maple with small sound knots, by hand. Wood Handbook FPL-GTR-282 (2021): Table 5-3b at 12 %: stiffness 1.83 Mpsi
 * (apparent: + 10 %), specific gravity 0.63; green: bending 9 400, shear 1 460, compression across 640 psi; Table 5-1:
 * G_LT / E_L 0.063 (memory). ASTM D245 (memory, proved in clear-wood-design-values.test.ts).
 */
export const maple = {
  E_Pa: 1.1 * 1.83e6 * 0.9 * psi,
  G_Pa: 0.063 * 1.1 * 1.83e6 * 0.9 * psi,
  density_kgm3: 1.12 * 630,
  gravity: 0.63,
  bending_psi: ((9400 * (1 - 1.645 * 0.16)) / 2.3) * 0.45 * 1.25,
  shear_psi: ((1460 * (1 - 1.645 * 0.14)) / 2.3) * 0.5 * 1.08,
  bearing_psi: (640 / 1.67) * 1.5,
  across_psi: (670 * (1 - 1.645 * 0.25)) / 2.3,
} as const;

/** A plain maple board: depth and thickness in inches. */
export function mapleBoard(depth_in: number, thickness_in: number) {
  const [b, t] = [depth_in * inch, thickness_in * inch];
  return {
    EI: (maple.E_Pa * b * t ** 3) / 12,
    GA: (5 / 6) * maple.G_Pa * b * t,
    weight_Npm: maple.density_kgm3 * gravity * b * t,
    S: (b * t * t) / 6,
    A: b * t,
  };
}
