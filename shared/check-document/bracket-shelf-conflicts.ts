import type { FieldError } from '../check-result.ts';
import { closest_m, isRepeated, reporter, tolerance_m, type Report } from './conflict.ts';
import { fixingConflicts, shelfPaths } from './fixing-conflicts.ts';
import type { SoundShelf } from './sound.ts';

/**
 * What does not fit together between the fields of a bracket shelf. Each rule looks only at fields that are sound by
 * themselves, so that it can run on a document with other errors in it.
 *
 * @param document the sound parts of the document
 * @param faults the errors of single fields: what is missing because it is at fault is not called missing
 */
export function bracketShelfConflicts(document: SoundShelf, faults: readonly FieldError[]): FieldError[] {
  const { errors, report } = reporter(faults, document.units);
  boardConflicts(document, report);
  stripConflicts(document, report);
  bracketConflicts(document, report);
  fixingConflicts({ ...document.brackets, wall: document.wall }, shelfPaths, report);
  loadConflicts(document, report);
  return errors;
}

/** Depth from the wall finish to the front face, nosing and rail included. */
export function overallDepth(board: {
  readonly depth: number;
  readonly nosing?: { readonly thickness?: number } | undefined;
  readonly rail?: { readonly thickness?: number } | undefined;
}): number {
  return board.depth + (board.nosing?.thickness ?? 0) + (board.rail?.thickness ?? 0);
}

function boardConflicts({ board, brackets }: SoundShelf, report: Report): void {
  if (board === undefined) return;
  const { length, depth, thickness, box, layers } = board;
  if (thickness !== undefined && depth !== undefined && thickness > depth) {
    report(
      '/board/thickness',
      `It is more than the depth of the board, ${report.shown(depth)}: are the two the wrong way round?`,
    );
  }
  if (box !== undefined && layers !== undefined) {
    report('/board/layers', 'A board is a hollow box or layered, not both: leave one out.');
  }
  if (box?.skin !== undefined && thickness !== undefined && 2 * box.skin >= thickness) {
    report(
      '/board/box/skin',
      `Two skins leave no room for a frame in a board ${report.shown(thickness)} thick.`,
    );
  }
  if (
    box?.frame !== undefined &&
    depth !== undefined &&
    (box.members ?? 2) * box.frame > depth + tolerance_m
  ) {
    report(
      '/board/box/frame',
      `${box.members ?? 2} members of this width don't fit in a depth of ${report.shown(depth)}.`,
      '/board/box/members',
    );
  }
  const thicknesses = layers?.map((layer) => layer?.thickness);
  if (thickness !== undefined && thicknesses?.every((each) => each !== undefined)) {
    const sum = thicknesses.reduce((total, each) => total + each, 0);
    if (Math.abs(sum - thickness) > 1e-5) {
      report(
        '/board/layers',
        `The layers add up to ${report.shown(sum)}, the board is ${report.shown(thickness)} thick.`,
      );
    }
  }
  board.joints?.forEach((joint, index) => {
    if (joint === undefined) return;
    const path = `/board/joints/${index}`;
    if (length !== undefined && (joint <= 0 || joint >= length))
      report(path, 'A joint lies between the ends of the board.');
    const reach = Math.max(closest_m, (brackets?.armWidth ?? 0) / 2);
    const positions = brackets?.positions?.filter((position) => position !== undefined);
    if (positions !== undefined && !positions.some((position) => Math.abs(position - joint) <= reach)) {
      const why = 'A joint must lie over a bracket: nothing else carries the ends that meet there.';
      report(path, why, '/brackets/positions', '/brackets/armWidth');
    }
    if (isRepeated(board.joints, index)) report(path, 'There is another joint at this place.');
    if (positions !== undefined && positions.length > 0) {
      const isInner = joint > Math.min(...positions) + reach && joint < Math.max(...positions) - reach;
      if (!isInner)
        report(path, 'A joint lies over an inner bracket: each length needs two brackets to stand on.');
    }
    if (brackets !== undefined && brackets.hold !== 'screwed') {
      report(
        path,
        'A board in two lengths must be screwed to its brackets: "hold" takes "screwed".',
        '/brackets/hold',
      );
    }
  });
}

/** A strip that hangs down to where the arms are would be cut away there, and counts as whole. */
function stripConflicts({ board, brackets }: SoundShelf, report: Report): void {
  const thickness = board?.thickness;
  const arm = brackets?.arm;
  if (board === undefined || thickness === undefined || arm === undefined) return;
  const { depth, nosing, rail } = board;
  const hangs = (strip: typeof rail): boolean =>
    strip?.height !== undefined && strip.flush !== 'bottom' && strip.height > thickness + tolerance_m;
  if (hangs(rail)) {
    report(
      '/board/rail/height',
      `It hangs down where every arm starts, and would be cut away there: it takes no more than the board is thick, ${report.shown(thickness)}, or flush with the bottom.`,
      ...['/board/rail/flush', '/board/thickness', '/brackets/arm'],
    );
  }
  const behind = depth === undefined ? Infinity : depth + (rail?.thickness ?? 0);
  if (hangs(nosing) && arm > behind + tolerance_m) {
    report(
      '/board/nosing/height',
      `It hangs down where the arms, ${report.shown(arm)} long, reach under it, and would be cut away there: it takes no more than the board is thick, ${report.shown(thickness)}, or flush with the bottom, or arms of at most ${report.shown(behind)}.`,
      ...['/board/nosing/flush', '/board/thickness', '/board/depth', '/board/rail', '/brackets/arm'],
    );
  }
}

function bracketConflicts({ board, brackets }: SoundShelf, report: Report): void {
  if (brackets === undefined) return;
  const length = board?.length;
  brackets.positions?.forEach((position, index) => {
    if (position === undefined) return;
    const path = `/brackets/positions/${index}`;
    if (length !== undefined && position > length + tolerance_m) {
      report(path, `It is off the board, which ends at ${report.shown(length)}.`);
    }
    const first = brackets.positions?.findIndex(
      (other) =>
        other !== undefined && Math.abs(other - position) < Math.max(closest_m, brackets.armWidth ?? 0),
    );
    if (first !== undefined && first < index) report(path, `Bracket ${first + 1} is already at this place.`);
  });
  const { capacity, arm, boardScrews } = brackets;
  if (capacity?.basis === 'rated') {
    const { allowable, ultimate, factor } = capacity;
    if (allowable === undefined && (ultimate === undefined || factor === undefined)) {
      report(
        '/brackets/capacity/allowable',
        'It takes the allowable load of one bracket ("load rating", "working load" or "weight capacity" on the packaging; half of it where that is for a pair), or else the load at which one broke on a test ("ultimate" or "breaking load") and what that is divided by ("safety factor").',
        '/brackets/capacity/ultimate',
        '/brackets/capacity/factor',
      );
    }
    if (allowable !== undefined && ultimate !== undefined) {
      report(
        '/brackets/capacity/ultimate',
        'Give the load one bracket may carry, or the load at which one broke on a test and its safety factor, not both.',
      );
    }
    if (factor !== undefined && ultimate === undefined) {
      report(
        '/brackets/capacity/factor',
        'A safety factor goes with a load at which one broke on a test ("ultimate"); a load it may carry has its safety inside it.',
        '/brackets/capacity/ultimate',
      );
    }
  }
  const strut = capacity?.basis === 'steel' ? capacity.strut : undefined;
  if (strut?.at !== undefined && arm !== undefined && strut.at > arm + tolerance_m) {
    report('/brackets/capacity/strut/at', `The arm is only ${report.shown(arm)} long.`);
  }
  const depth = board?.depth === undefined ? undefined : overallDepth({ ...board, depth: board.depth });
  boardScrews?.at?.forEach((at, index) => {
    if (at !== undefined && depth !== undefined && at >= depth) {
      report(
        `/brackets/boardScrews/at/${index}`,
        `It is in front of the board, which is ${report.shown(depth)} deep in all.`,
      );
      return;
    }
    const path = `/brackets/boardScrews/at/${index}`;
    if (at !== undefined && arm !== undefined && at > arm + tolerance_m) {
      report(path, `The arm is only ${report.shown(arm)} long.`);
    }
    if (isRepeated(boardScrews.at, index)) report(path, 'There is another screw at this place.');
  });
  const through = (board?.thickness ?? Infinity) + (boardScrews?.armThickness ?? 0);
  if (boardScrews?.length !== undefined && boardScrews.length >= through) {
    report(
      '/brackets/boardScrews/length',
      'A screw of this length comes out through the top of the board.',
      '/brackets/boardScrews/armThickness',
    );
  }
}

function loadConflicts({ board, loads }: SoundShelf, report: Report): void {
  const length = board?.length;
  const depth = board?.depth === undefined ? undefined : overallDepth({ ...board, depth: board.depth });
  const offBoard = length === undefined ? '' : `It is off the board, which ends at ${report.shown(length)}.`;
  loads?.forEach((load, index) => {
    const path = `/loads/${index}`;
    if (load === undefined || load.kind === undefined) return;
    if (load.kind === 'line' || load.kind === 'point') {
      const total = load.kind === 'line' ? load.total : undefined;
      const ways = [load.amount, total, load.things].filter((way) => way !== undefined).length;
      if (ways === 0) {
        const words = load.kind === 'line' ? 'an amount, a weight in all ("total"),' : 'an amount,';
        report(
          `${path}/amount`,
          `It takes ${words} or a list of "things" that stand there.`,
          `${path}/total`,
          `${path}/things`,
        );
      }
      if (ways > 1) {
        const words =
          total === undefined
            ? 'an amount or a list of things, not both'
            : 'an amount, a weight in all or a list of things, not two of them';
        report(`${path}/amount`, `Give ${words}.`);
      }
      if (load.eccentricity !== undefined && depth !== undefined && load.eccentricity > depth + tolerance_m) {
        report(
          `${path}/eccentricity`,
          `It is in front of the board, which is ${report.shown(depth)} deep in all.`,
          '/board/nosing',
          '/board/rail',
        );
      }
    }
    if (
      load.kind === 'point' &&
      load.at !== undefined &&
      length !== undefined &&
      load.at > length + tolerance_m
    ) {
      report(`${path}/at`, offBoard);
    }
    if (load.kind === 'line' || load.kind === 'area') {
      if (load.to !== undefined && length !== undefined && load.to > length + tolerance_m)
        report(`${path}/to`, offBoard);
      const to = load.to ?? length;
      if (load.from !== undefined && to !== undefined && load.from >= to) {
        report(`${path}/from`, 'It takes a place left of where the load ends.');
      }
    }
  });
}
