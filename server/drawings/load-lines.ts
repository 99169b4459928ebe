import type { UnitSystem } from '../../shared/quantity/index.ts';
import { dimensionText } from './lettering.ts';
import type { DrawnLoads } from './loads.ts';

/** A line in which loads press on the board, m from the wall finish, and what presses there. */
export interface LoadLine {
  readonly place: number;
  readonly words: string;
}

const most = 3;

/** The lines the loads act in, the nearest to the wall first. Where there are many, the first two and the last. */
export function loadLines({ bands, weights, roaming }: DrawnLoads, units: UnitSystem): LoadLine[] {
  const names = new Map<number, string[]>();
  for (const { name, fromWall } of [...bands, ...weights, ...roaming]) {
    const place = Number(fromWall.toFixed(5));
    names.set(place, [...(names.get(place) ?? []), name]);
  }
  const lines = [...names]
    .toSorted(([a], [b]) => a - b)
    .map(([place, called]): LoadLine => ({
      place,
      words: `${dimensionText(place, units)}: ${called.join(', ')}`,
    }));
  return lines.length <= most ? lines : [...lines.slice(0, most - 1), ...lines.slice(-1)];
}
