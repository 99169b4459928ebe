import { inch } from './units.ts';

/** Section properties of dressed lumber as printed: area in in², the rest in in³ and in⁴; x is the strong axis. */
interface DressedSize {
  readonly width_m: number;
  readonly depth_m: number;
  readonly area_m2: number;
  readonly strong: { readonly S_m3: number; readonly I_m4: number };
  readonly weak: { readonly S_m3: number; readonly I_m4: number };
}

function size(
  width: number,
  depth: number,
  [area, Sxx, Ixx, Syy, Iyy]: [number, number, number, number, number],
): DressedSize {
  return {
    width_m: width * inch,
    depth_m: depth * inch,
    area_m2: area * inch ** 2,
    strong: { S_m3: Sxx * inch ** 3, I_m4: Ixx * inch ** 4 },
    weak: { S_m3: Syy * inch ** 3, I_m4: Iyy * inch ** 4 },
  };
}

/** NDS Supplement 2018, Table 1B: section properties of standard dressed (S4S) sawn lumber. Printed to four figures. */
export const dressed = {
  '1x10': size(0.75, 9.25, [6.938, 10.7, 49.47, 0.867, 0.325]),
  '2x4': size(1.5, 3.5, [5.25, 3.063, 5.359, 1.313, 0.984]),
  '2x6': size(1.5, 5.5, [8.25, 7.563, 20.8, 2.063, 1.547]),
  '2x8': size(1.5, 7.25, [10.88, 13.14, 47.63, 2.719, 2.039]),
  '2x10': size(1.5, 9.25, [13.88, 21.39, 98.93, 3.469, 2.602]),
  '2x12': size(1.5, 11.25, [16.88, 31.64, 178, 4.219, 3.164]),
} as const;

export const dressedSource = 'NDS Supplement 2018, Table 1B';

/** Half the last of four figures, and a little. */
export const fourFigures = 6e-4;
