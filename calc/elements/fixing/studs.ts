import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

const usualWidth_m = 1.5 * 0.0254;

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

/** How far a bracket misses the nearest stud. */
export interface StudMiss {
  readonly stud_m: number | null;
  readonly miss_m: number | null;
  /** How far it may miss: the outer screws within the middle half of the stud. */
  readonly allowed_m: number;
}

/** The nearest stud of a bracket. */
export function nearestStud(
  wall: Wall | undefined,
  lines: readonly number[],
  at_m: number,
  across_m: number,
): StudMiss {
  const allowed_m = Math.max(0, (wall?.studWidth ?? usualWidth_m) / 4 - across_m / 2);
  let stud_m: number | null = null;
  for (const line of lines) {
    if (stud_m === null || Math.abs(line - at_m) < Math.abs(stud_m - at_m)) stud_m = line;
  }
  return { stud_m, miss_m: stud_m === null ? null : Math.abs(stud_m - at_m), allowed_m };
}
