import type { FieldError } from '../check-result.ts';
import { reporter, tolerance_m, type Report } from './conflict.ts';
import type { SoundCounterOverhang } from './sound.ts';
import { inch } from '../quantity/index.ts';

/** What is nearer than this to the edge it should stand inside of holds nothing. */
const least_m = 0.002;
/** Less than this is an edge, not an overhang. */
const leastOverhang_m = inch;
/** What a screw is taken to go through where nothing is said. */
export const usualThrough_m = 0.75 * inch;

/**
 * What does not fit together between the fields of a counter overhang.
 *
 * @param document the sound parts of the document
 * @param faults the errors of single fields: what is missing because it is at fault is not called missing
 */
export function counterOverhangConflicts(
  document: SoundCounterOverhang,
  faults: readonly FieldError[],
): FieldError[] {
  const { errors, report } = reporter(faults, document.units);
  topConflicts(document, report);
  baseConflicts(document, report);
  screwConflicts(document, report);
  propConflicts(document, report);
  loadConflicts(document, report);
  return errors;
}

function topConflicts({ top }: SoundCounterOverhang, report: Report): void {
  const isPanel = top?.build === 'panel';
  const ofPanel = (path: string, value: unknown): void => {
    if (value !== undefined && !isPanel)
      report(path, 'Only a top built as a "panel" has this.', '/top/build');
  };
  ofPanel('/top/sheets', top?.sheets);
  ofPanel('/top/bond', top?.bond);
  ofPanel('/top/finish', top?.finish);
  if (isPanel && top.appearance !== undefined)
    report('/top/appearance', 'A panel has no knots to tell of: leave it out.', '/top/build');
  if (top?.sheets !== undefined && !Number.isInteger(top.sheets))
    report('/top/sheets', 'It takes a whole number.');
}

function baseConflicts({ top, base }: SoundCounterOverhang, report: Report): void {
  const { from, to, back, front, panels, weightAt, foot } = base ?? {};
  const { length, depth, thickness } = top ?? {};
  const past = (path: string, place: number | undefined, end: number | undefined, way: string): void => {
    if (place !== undefined && end !== undefined && place > end + tolerance_m)
      report(
        path,
        `It is outside the top, which is ${report.shown(end)} ${way}.`,
        way === 'long' ? '/top/length' : '/top/depth',
      );
  };
  past('/base/to', to, length, 'long');
  past('/base/front', front, depth, 'deep');
  if (from !== undefined && to !== undefined && from > to - 0.1)
    report(
      '/base/from',
      'It takes a place left of "to", by 4 in (100 mm) at least: a top on a line tips.',
      '/base/to',
    );
  if (back !== undefined && front !== undefined && back > front - 0.1)
    report(
      '/base/back',
      'It takes a place behind "front", by 4 in (100 mm) at least: a top on a line tips.',
      '/base/front',
    );
  panels?.forEach((panel, index) => {
    if (panel === undefined || from === undefined || to === undefined) return;
    if (panel < from - tolerance_m || panel > to + tolerance_m)
      report(
        `/base/panels/${index}`,
        `It is outside the base, which runs from ${report.shown(from)} to ${report.shown(to)}.`,
        '/base/from',
        '/base/to',
      );
  });
  if (
    weightAt !== undefined &&
    back !== undefined &&
    front !== undefined &&
    (weightAt < back || weightAt > front)
  )
    report(
      '/base/weightAt',
      `It is outside the base, which runs from ${report.shown(back)} to ${report.shown(front)} from the back edge.`,
    );
  if (foot !== undefined && back !== undefined && foot <= back + tolerance_m)
    report(
      '/base/foot',
      'The outer foot is on the stool side: it takes a place in front of the back of the base.',
      '/base/back',
    );
  if (foot !== undefined && front !== undefined && foot > front + tolerance_m)
    report(
      '/base/foot',
      `The outer foot of the base is under it: it takes a place no farther than its face, ${report.shown(front)} from the back edge. What stands farther out is a leg.`,
      '/base/front',
    );
  if (foot !== undefined && weightAt !== undefined && foot <= weightAt)
    report(
      '/base/foot',
      'The weight of the base acts in front of its foot: it would fall over by itself.',
      '/base/weightAt',
    );
  const out = [
    from,
    back,
    length === undefined || to === undefined ? undefined : length - to,
    depth === undefined || front === undefined ? undefined : depth - front,
  ];
  if (out.every((each) => each !== undefined && each < leastOverhang_m))
    report(
      '/base/front',
      `Nothing stands out past the base: it takes a place ${report.shown(leastOverhang_m)} or more behind the stool edge.`,
      '/top/depth',
    );
  if (thickness !== undefined && depth !== undefined && thickness > depth / 4)
    report(
      '/top/thickness',
      `It is much for a top ${report.shown(depth)} deep: are the two the wrong way round?`,
    );
}

function screwConflicts({ top, base, screws }: SoundCounterOverhang, report: Report): void {
  const { from, to, back, front } = base ?? {};
  screws?.at?.forEach((at, index) => {
    const [x, y] = at ?? [];
    if (x === undefined || y === undefined) return;
    if (from === undefined || to === undefined || back === undefined || front === undefined) return;
    if (x < from - tolerance_m || x > to + tolerance_m || y < back - tolerance_m || y > front + tolerance_m)
      report(
        `/screws/at/${index}`,
        `There is nothing under the top there: the base runs from ${report.shown(from)} to ${report.shown(to)} and from ${report.shown(back)} to ${report.shown(front)}.`,
        '/base',
      );
    const first = screws.at?.findIndex(
      (other) =>
        other?.[0] !== undefined && other[1] !== undefined && Math.hypot(other[0] - x, other[1] - y) < 0.005,
    );
    if (first !== undefined && first < index)
      report(`/screws/at/${index}`, `Screw ${first + 1} is already at this place.`);
  });
  const through = screws?.through ?? 0;
  if (screws?.length === undefined) return;
  if (screws.length <= through + least_m)
    report(
      '/screws/length',
      `A screw of this length ends in the rail, which is ${report.shown(through)} thick.`,
      '/screws/through',
    );
  if (
    top?.thickness !== undefined &&
    screws.length >= (screws.through ?? Math.min(usualThrough_m, screws.length / 2)) + top.thickness
  )
    report(
      '/screws/length',
      'A screw of this length comes out through the face of the top.',
      '/screws/through',
    );
}

function propConflicts({ top, base, props }: SoundCounterOverhang, report: Report): void {
  const { length, depth } = top ?? {};
  const front = base?.front;
  props?.forEach((prop, index) => {
    if (prop === undefined) return;
    const path = `/props/${index}`;
    const { at, to } = prop;
    if (at !== undefined && length !== undefined && at > length + tolerance_m)
      report(
        `${path}/at`,
        `It is beyond the edge of the top, which is ${report.shown(length)} long.`,
        '/top/length',
      );
    if (
      (prop.kind === 'bracket' || prop.kind === 'corbel' || prop.kind === 'flat-bar') &&
      at !== undefined &&
      base?.from !== undefined &&
      base.to !== undefined &&
      (at < base.from - tolerance_m || at > base.to + tolerance_m)
    )
      report(
        `${path}/at`,
        `There is no base there to hold it, which runs from ${report.shown(base.from)} to ${report.shown(base.to)}. A leg can stand there.`,
        '/base',
      );
    if (to !== undefined && depth !== undefined && to > depth + tolerance_m)
      report(
        `${path}/to`,
        `It is beyond the edge of the top, which is ${report.shown(depth)} deep.`,
        '/top/depth',
      );
    if (to !== undefined && front !== undefined && to <= front + 0.01)
      report(
        `${path}/to`,
        `It ends over the base, whose face is at ${report.shown(front)}: it takes a place under the overhang.`,
        '/base/front',
      );
    if (
      prop.kind === 'flat-bar' &&
      prop.from !== undefined &&
      front !== undefined &&
      prop.from > front - 0.05
    )
      report(
        `${path}/from`,
        'A bar is held only where it runs back over the base: it takes a place 2 in (50 mm) or more behind the face.',
        '/base/front',
      );
    const first = props.findIndex(
      (other) => other?.at !== undefined && at !== undefined && Math.abs(other.at - at) < 0.01,
    );
    if (first < index && first !== -1) report(`${path}/at`, `Prop ${first + 1} is already at this place.`);
  });
}

function loadConflicts({ top, loads }: SoundCounterOverhang, report: Report): void {
  const length = top?.length;
  for (const kind of ['area', 'person'] as const) {
    const first = loads?.findIndex((load) => load?.kind === kind) ?? -1;
    loads?.forEach((load, index) => {
      if (load?.kind === kind && index > first)
        report(
          `/loads/${index}/kind`,
          kind === 'area'
            ? `Load ${first + 1} is already spread over the top: add the two.`
            : 'There is a person already; a second one is put beside them where two stools fit.',
        );
    });
  }
  loads?.forEach((load, index) => {
    if (load?.kind !== 'person' || load.at === undefined || length === undefined) return;
    if (load.at > length + tolerance_m)
      report(
        `/loads/${index}/at`,
        `It is off the top, which is ${report.shown(length)} long.`,
        '/top/length',
      );
  });
}
