import { inch, parseQuantity, type UnitSystem } from '../../shared/quantity/index.ts';

/** Metres of a size that is written here. */
export function metresOf(size: string): number {
  const parsed = parseQuantity(size, 'length');
  return parsed.ok ? parsed.value : 0;
}

type Sizes = Readonly<Record<UnitSystem, readonly string[]>>;

/**
 * Thicknesses of dressed boards. Inches: nominal 1, 5/4, 6/4, 2, 10/4 and 3 as PS 20 (softwood) and the hardwood rules have
 * them (from memory); millimetres: common practice, no source.
 */
export const boardThicknesses: Sizes = {
  'inch-pound': ['3/4 in', '1 in', '1-1/4 in', '1-1/2 in', '2 in', '2-1/2 in'],
  metric: ['18 mm', '20 mm', '22 mm', '27 mm', '32 mm', '40 mm', '45 mm', '60 mm'],
};

/** Thicknesses of graded lumber: nominal 2, 3 and 4 in, dressed (PS 20, from memory); in both systems, as it is sold. */
export const lumberThicknesses: Sizes = {
  'inch-pound': ['1-1/2 in', '2-1/2 in', '3-1/2 in'],
  metric: ['38 mm', '64 mm', '89 mm'],
};

/** Thicknesses of panels (common practice, no source). */
export const panelThicknesses: Sizes = {
  'inch-pound': ['1/2 in', '5/8 in', '3/4 in', '1 in', '1-1/8 in', '1-1/2 in'],
  metric: ['12 mm', '15 mm', '18 mm', '22 mm', '25 mm', '30 mm', '38 mm'],
};

/** Thicknesses of flat bars of steel (common practice, no source). */
export const plateThicknesses: Sizes = {
  'inch-pound': ['1/8 in', '3/16 in', '1/4 in', '3/8 in', '1/2 in'],
  metric: ['3 mm', '4 mm', '5 mm', '6 mm', '8 mm', '10 mm', '12 mm'],
};

/** Thicknesses of counter tops (common practice, no source). */
export const topThicknesses: Sizes = {
  'inch-pound': ['1-1/4 in', '1-1/2 in', '1-3/4 in', '2 in', '2-1/4 in', '2-1/2 in', '3 in'],
  metric: ['27 mm', '32 mm', '38 mm', '40 mm', '50 mm', '60 mm', '80 mm'],
};

/** Heights of a nosing ripped or bought as nominal 1×2, 1×3 and 1×4 (PS 20, from memory), and its thickness. */
export const nosingHeights: Sizes = {
  'inch-pound': ['1-1/2 in', '2-1/2 in', '3-1/2 in'],
  metric: ['40 mm', '60 mm', '90 mm'],
};
export const nosingThickness: Readonly<Record<UnitSystem, string>> = {
  'inch-pound': '3/4 in',
  metric: '20 mm',
};

/** Steps in which screws get longer (common practice, no source). */
export const screwStep_m: Readonly<Record<UnitSystem, number>> = { 'inch-pound': 0.5 * inch, metric: 0.01 };

/** Steps in which arms get longer (common practice, no source). */
export const armStep_m: Readonly<Record<UnitSystem, number>> = { 'inch-pound': inch, metric: 0.025 };

/** Panels that a shop stocks, by their catalogue names (common practice, no source). */
export const stockedPanels: readonly string[] = ['particleboard', 'mdf', 'osb', 'plywood', 'birch-plywood'];
