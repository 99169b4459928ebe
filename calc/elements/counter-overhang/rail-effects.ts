import { freeEdges } from './people.ts';
import type { Overhang } from './overhang.ts';
import type { Carrier } from './plate-model.ts';
import { usual } from './usual.ts';

export type RailName = 'front' | 'back';

/** What one stretch of a rail between panels carries in all, and the larger force at an end of it. */
export type RailEffectName = `${RailName} ${'span' | 'end'} ${number}`;

/** The front rail, and where the top stands out past the back the rail there, which is taken to be like it. */
export function judgedRails(overhang: Overhang): readonly RailName[] {
  return freeEdges(overhang).some(({ name }) => name === 'back') ? ['front', 'back'] : ['front'];
}

/** A stretch of a rail between two panels. */
export interface Stretch {
  readonly from_m: number;
  readonly to_m: number;
  /** Past the first or the last panel. */
  readonly isEnd: boolean;
}

/** Every stretch of a rail from its left end; one without length where a panel stands at an end. */
export function stretchesOf({ panels_m, from_m, to_m }: Overhang['base']): Stretch[] {
  return Array.from({ length: panels_m.length + 1 }, (_, k) => ({
    from_m: panels_m[k - 1] ?? from_m,
    to_m: panels_m[k] ?? to_m,
    isEnd: k === 0 || k === panels_m.length,
  }));
}

/** A place of support, and a force on it. */
interface Place {
  readonly x_m: number;
  readonly y_m: number;
}

/** What the stretches of the rails carry: of the front rail alone, and their loads alone, where no height is given. */
export function railEffects(
  overhang: Overhang,
  supports: readonly Place[],
  carriers: readonly Carrier[],
  forces_N: Float64Array,
): Map<RailEffectName, Place & { readonly value: number }> {
  const { base, document } = overhang;
  const effects = new Map<RailEffectName, Place & { readonly value: number }>();
  const hasHeight = document.base.rail?.height !== undefined;
  const stretches = stretchesOf(base);
  for (const rail of hasHeight ? judgedRails(overhang) : (['front'] as const)) {
    const carried = stretches.map(() => ({ load_N: 0, moment_Nm: 0, most_N: 0, place: { x_m: 0, y_m: 0 } }));
    for (const { kind, index, place, span, share } of partsOf(base, supports, carriers)) {
      const each = carried[span];
      if (kind !== rail || each === undefined) continue;
      const part_N = share * (forces_N[index] ?? 0);
      each.load_N += part_N;
      each.moment_Nm += part_N * (place.x_m - (stretches[span]?.from_m ?? 0));
      if (part_N >= each.most_N) [each.most_N, each.place] = [part_N, place];
    }
    carried.forEach(({ load_N, moment_Nm, place: { x_m, y_m } }, k) => {
      effects.set(`${rail} span ${k}`, { value: load_N, x_m, y_m });
      if (!hasHeight) return;
      effects.set(`${rail} end ${k}`, { value: endForce(stretches[k], load_N, moment_Nm), x_m, y_m });
    });
  }
  return effects;
}

/** What a place of support puts on a stretch of its rail. */
interface Part {
  readonly kind: RailName;
  readonly index: number;
  readonly place: Place;
  readonly span: number;
  readonly share: number;
}

/** Asked for under load after load. */
const known = new WeakMap<readonly Carrier[], readonly Part[]>();

function partsOf(
  base: Overhang['base'],
  supports: readonly Place[],
  carriers: readonly Carrier[],
): readonly Part[] {
  const held = known.get(carriers);
  if (held !== undefined) return held;
  const made = supports.flatMap((place, index): Part[] => {
    const carrier = carriers[index];
    if (carrier?.kind !== 'front' && carrier?.kind !== 'back') return [];
    const { kind, length_m } = carrier;
    return spansAt(base, place.x_m, length_m).map((each) => ({ ...each, kind, index, place }));
  });
  known.set(carriers, made);
  return made;
}

/**
 * The larger force at an end of a stretch: as a simple beam between two panels, past the last one as an arm. Nothing near
 * a panel is left out: whether a rail bears on it is not known (NDS 3.4.3.1).
 *
 * @param moment_Nm of the load about the left end
 */
function endForce(stretch: Stretch | undefined, load_N: number, moment_Nm: number): number {
  if (stretch === undefined || stretch.isEnd) return load_N;
  const right_N = moment_Nm / (stretch.to_m - stretch.from_m);
  return Math.max(right_N, load_N - right_N);
}

/**
 * Which stretches of a rail between panels carry the force of a place, and which share of it; 0 is left of the first
 * panel. A panel takes what stands over its own thickness, and the rail beside it the rest.
 *
 * @param length_m how much of the rail the place stands for
 */
function spansAt(
  { panels_m, from_m, to_m }: Overhang['base'],
  x_m: number,
  length_m: number,
): { readonly span: number; readonly share: number }[] {
  const panel = panels_m.findIndex((at) => Math.abs(at - x_m) < 0.005);
  if (panel < 0) return [{ span: panels_m.filter((at) => at <= x_m + 1e-6).length, share: 1 }];
  const sides = [x_m - from_m, to_m - x_m].map((room) => room > 0.005);
  const count = sides.filter(Boolean).length;
  const over = Math.min(1, (usual.railThickness_m * count) / 2 / length_m);
  return sides.flatMap((isThere, side) =>
    isThere ? [{ span: panel + side, share: (1 - over) / count }] : [],
  );
}
