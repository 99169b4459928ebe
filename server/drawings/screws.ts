import { findFastener } from '../../calc/catalogue/index.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';

type Brackets = BracketShelfDocument['brackets'];
type Screws = NonNullable<Brackets['screws']>;

const usualDiameter_m = 0.005;
const usualHead_m = 0.009;

/** Where the screws at one height stand, m from the plate's middle line; the outer ones half the plate apart where nothing is said. */
export function screwOffsets({ plate, screws }: Pick<Brackets, 'plate' | 'screws'>): number[] {
  const count = screws?.perHeight ?? 1;
  const across_m = screws?.across ?? (plate?.width ?? 0) / 2;
  if (count === 1) return [0];
  return Array.from({ length: count }, (_, index) => (index / (count - 1) - 0.5) * across_m);
}

/** How thick the screws and their heads are drawn: as the table has them, and of a middling size where it has none. */
export function screwSizes({ fastener }: Screws): { readonly diameter_m: number; readonly head_m: number } {
  const found = findFastener(fastener);
  if (!found.ok) return { diameter_m: usualDiameter_m, head_m: usualHead_m };
  const { diameter_m, headDiameter_m } = found.row;
  return { diameter_m, head_m: headDiameter_m ?? diameter_m * 2 };
}
