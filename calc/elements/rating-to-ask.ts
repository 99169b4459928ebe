import { poundForce, type UnitSystem } from '../../shared/quantity/index.ts';

/** What is used of a rating that is asked for. */
const used = 0.9;

/**
 * The rating to ask for where something carries a load: with a tenth left over, rounded up to 25 lbf or 100 N (common practice,
 * no source).
 *
 * @param load_N the most it carries
 * @returns the rating as a document takes it
 */
export function ratingToAskFor(load_N: number, system: UnitSystem): string {
  const [step_N, size, unit] = system === 'metric' ? [100, 100, 'N'] : [25 * poundForce, 25, 'lbf'];
  return `${Math.max(1, Math.ceil(load_N / used / step_N - 1e-9)) * size} ${unit}`;
}
