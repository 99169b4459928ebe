import { isRepeated, tolerance_m, type Report } from './conflict.ts';
import type { SoundWallFixing } from './sound.ts';

/** Plate, screws and wall as far as they are sound. */
export type SoundFixing = Pick<SoundWallFixing, 'plate' | 'screws' | 'wall'>;

/** Where a document has its plate and screws. */
export interface FixingPaths {
  readonly plate: string;
  readonly screws: string;
}
export const shelfPaths: FixingPaths = { plate: '/brackets/plate', screws: '/brackets/screws' };
export const wallFixingPaths: FixingPaths = { plate: '/plate', screws: '/screws' };

const usualStudWidth_m = 0.0381;

/** What does not fit together between a plate, its screws and the wall. */
export function fixingConflicts(parts: SoundFixing, paths: FixingPaths, report: Report): void {
  screwConflicts(parts, paths, report);
  heightConflicts(parts, paths, report);
  wallConflicts(parts, report);
}

function screwConflicts({ plate, screws, wall }: SoundFixing, paths: FixingPaths, report: Report): void {
  const { length, thread, across, fastener, allowable } = screws ?? {};
  const coverings = (wall?.coverings ?? []).reduce((sum, each) => sum + (each?.thickness ?? 0), 0);
  const before = (plate?.thickness ?? 0) + coverings;
  if (length !== undefined && length <= before + tolerance_m) {
    report(
      `${paths.screws}/length`,
      `A screw of this length ends in the plate and the wall covering, ${report.shown(before)} together.`,
      `${paths.plate}/thickness`,
      '/wall/coverings',
    );
  }
  if (thread !== undefined && length !== undefined && thread > length + tolerance_m) {
    report(
      `${paths.screws}/thread`,
      `The screw is only ${report.shown(length)} long.`,
      `${paths.screws}/length`,
    );
  }
  if (across !== undefined && plate?.width !== undefined && across >= plate.width) {
    report(
      `${paths.screws}/across`,
      `The plate is only ${report.shown(plate.width)} wide.`,
      `${paths.plate}/width`,
    );
  }
  if (fastener === 'listed' && allowable === undefined) {
    report(
      `${paths.screws}/allowable`,
      'A listed screw takes its allowable pull and shear and the report they stand in.',
    );
  }
}

function heightConflicts({ plate, screws }: SoundFixing, paths: FixingPaths, report: Report): void {
  const heights = screws?.heights;
  heights?.forEach((height, index) => {
    const path = `${paths.screws}/heights/${index}`;
    if (height !== undefined && plate?.height !== undefined && height > plate.height + tolerance_m) {
      report(path, `The plate is only ${report.shown(plate.height)} high.`);
    }
    if (isRepeated(heights, index)) {
      report(path, 'There is another screw at this height; "perHeight" says how many stand side by side.');
    }
  });
  if (heights !== undefined && heights.length > 0 && heights.every((height) => height === 0)) {
    report(
      `${paths.screws}/heights/0`,
      'Screws at the very lower end of the plate hold no couple: it takes a height above it.',
    );
  }
}

function wallConflicts({ wall }: SoundFixing, report: Report): void {
  const { framing, grain, studs } = wall ?? {};
  if (grain === 'end' && framing !== undefined && framing !== 'wood-stud' && framing !== 'blocking') {
    report('/wall/grain', 'Only the wood of studs or blocking has an end that screws can go into.');
  }
  const width = wall?.studWidth ?? usualStudWidth_m;
  if (studs === undefined) return;
  if ('spacing' in studs && studs.spacing !== undefined && studs.spacing <= width) {
    report('/wall/studs/spacing', `Studs ${report.shown(width)} wide would overlap.`, '/wall/studWidth');
  }
  if (!('at' in studs)) return;
  const places = (studs.at ?? []).flatMap((at, index) => (at === undefined ? [] : [{ at, index }]));
  places.forEach(({ at, index }, order) => {
    const path = `/wall/studs/at/${index}`;
    const before = places.slice(0, order);
    const overlapped = before.find((each) => Math.abs(each.at - at) < width - tolerance_m);
    if (overlapped !== undefined) {
      const why = `It overlaps stud ${overlapped.index + 1}: studs are ${report.shown(width)} wide.`;
      report(path, why, '/wall/studWidth');
      return;
    }
    const last = before.at(-1);
    if (last !== undefined && at < last.at) {
      report(path, `Studs are listed from the left: this one stands left of stud ${last.index + 1}.`);
    }
  });
}
