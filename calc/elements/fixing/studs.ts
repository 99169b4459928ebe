import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import { edgeAlong, leastPlacedDiameter_m } from '../../standards/nds-2018/12.5-placement.ts';
import type { Fixing } from './fixing.ts';
import { inch } from '../../../shared/quantity/index.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

const usualWidth_m = 1.5 * inch;

/** Centre lines of the studs along a board, in order; empty where none are given. */
export function studLines(wall: Wall | undefined, length_m: number): number[] {
  const studs = wall?.studs;
  if (studs === undefined) return [];
  if ('at' in studs) return [...studs.at].sort((a, b) => a - b);
  const lines: number[] = [];
  const first = studs.first - Math.floor(studs.first / studs.spacing) * studs.spacing;
  for (let at = first; at <= length_m + 1e-9; at += studs.spacing) lines.push(at);
  return lines;
}

/** Whether brackets have to meet studs: not on blocking, sheathing or solid walls. */
export function needsStuds(wall: Wall | undefined): boolean {
  const framing = wall?.framing ?? 'wood-stud';
  return wall !== undefined && (framing === 'wood-stud' || framing === 'metal-stud');
}

/** How far a bracket misses the nearest stud; null where it isn't known. */
export interface StudMiss {
  readonly stud_m: number | null;
  readonly miss_m: number | null;
}

/** The nearest stud of a bracket. */
export function nearestStud(lines: readonly number[], at_m: number): StudMiss {
  let stud_m: number | null = null;
  for (const line of lines) {
    if (stud_m === null || Math.abs(line - at_m) < Math.abs(stud_m - at_m)) stud_m = line;
  }
  return { stud_m, miss_m: stud_m === null ? null : Math.abs(stud_m - at_m) };
}

/** The edge distance that the outer screws of a plate need in a stud, and what they have of it where nothing misses. */
export function edgesOf(
  wall: Wall | undefined,
  { fastener, across_m }: Fixing,
): { readonly needed_m: number; readonly centred_m: number } {
  const width_m = wall?.studWidth ?? usualWidth_m;
  const D = fastener?.diameter_m ?? 0;
  return {
    needed_m: Math.max(width_m / 4, D < leastPlacedDiameter_m ? 0 : edgeAlong * D),
    centred_m: width_m / 2 - across_m / 2,
  };
}
