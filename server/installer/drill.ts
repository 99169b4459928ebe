import { inch, type UnitSystem } from '../../shared/quantity/index.ts';

/** A drill as it is sold. */
export interface Drill {
  readonly size_m: number;
  /** `7/64 in`, `3.5 mm`. */
  readonly words: string;
}

const sixtyFourth_m = inch / 64;
const halfMillimetre_m = 0.0005;

/** Steps in which drills are common, and the largest of them. */
const series: Readonly<
  Record<UnitSystem, { readonly step_m: number; readonly least: number; readonly most: number }>
> = {
  'inch-pound': { step_m: sixtyFourth_m, least: 3, most: 64 },
  metric: { step_m: halfMillimetre_m, least: 2, most: 50 },
};

/**
 * The common drill nearest the middle of a range of diameters, by 1/64 in or 0.5 mm. One that lies within the range comes
 * before a nearer one outside.
 */
export function drillFor(from_m: number, to_m: number, units: UnitSystem): Drill {
  const { step_m, least, most } = series[units];
  const middle = (from_m + to_m) / 2;
  const sizes = Array.from({ length: most - least + 1 }, (_, index) => least + index);
  const inside = sizes.filter((count) => count * step_m >= from_m - 1e-9 && count * step_m <= to_m + 1e-9);
  const candidates = inside.length > 0 ? inside : sizes;
  const count = candidates.reduce((best, each) =>
    Math.abs(each * step_m - middle) < Math.abs(best * step_m - middle) - 1e-12 ? each : best,
  );
  return { size_m: count * step_m, words: words(count, units) };
}

function words(count: number, units: UnitSystem): string {
  if (units === 'metric') return `${count / 2} mm`;
  let [over, under] = [count, 64];
  while (over % 2 === 0 && under > 1) [over, under] = [over / 2, under / 2];
  return under === 1 ? `${over} in` : `${over}/${under} in`;
}
