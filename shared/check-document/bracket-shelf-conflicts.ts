import type { FieldError } from '../check-result.ts';
import { show } from '../quantity/index.ts';
import type { SoundDocument } from './sound.ts';

const inches = (metres: number): string => show(metres, 'm', 'inch-pound');
const tolerance_m = 1e-9;
const closest_m = 0.001;

/** Takes a conflict down, unless one of the fields it comes from is at fault itself. */
type Report = (path: string, message: string, ...from: readonly string[]) => void;

/**
 * What does not fit together between the fields of a bracket shelf. Each rule looks only at fields that are sound by
 * themselves, so that it can run on a document with other errors in it.
 *
 * @param document the sound parts of the document
 * @param faults the errors of single fields: what is missing because it is at fault is not called missing
 */
export function bracketShelfConflicts(document: SoundDocument, faults: readonly FieldError[]): FieldError[] {
  const errors: FieldError[] = [];
  const atFault = (field: string): boolean =>
    faults.some(({ path }) => path === field || path.startsWith(`${field}/`));
  const report: Report = (path, message, ...from) => {
    if (![path, ...from].some(atFault)) errors.push({ path, message });
  };
  boardConflicts(document, report);
  bracketConflicts(document, report);
  fixingConflicts(document, report);
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

function boardConflicts({ board, brackets }: SoundDocument, report: Report): void {
  if (board === undefined) return;
  const { length, depth, thickness, box, layers } = board;
  if (thickness !== undefined && depth !== undefined && thickness > depth) {
    report(
      '/board/thickness',
      `It is more than the depth of the board, ${inches(depth)}: are the two the wrong way round?`,
    );
  }
  if (box !== undefined && layers !== undefined) {
    report('/board/layers', 'A board is a hollow box or layered, not both: leave one out.');
  }
  if (box?.skin !== undefined && thickness !== undefined && 2 * box.skin >= thickness) {
    report('/board/box/skin', `Two skins leave no room for a frame in a board ${inches(thickness)} thick.`);
  }
  if (
    box?.frame !== undefined &&
    depth !== undefined &&
    (box.members ?? 2) * box.frame > depth + tolerance_m
  ) {
    report(
      '/board/box/frame',
      `${box.members ?? 2} members of this width don't fit in a depth of ${inches(depth)}.`,
      '/board/box/members',
    );
  }
  const thicknesses = layers?.map((layer) => layer?.thickness);
  if (thickness !== undefined && thicknesses?.every((each) => each !== undefined)) {
    const sum = thicknesses.reduce((total, each) => total + each, 0);
    if (Math.abs(sum - thickness) > 1e-5) {
      report(
        '/board/layers',
        `The layers add up to ${inches(sum)}, the board is ${inches(thickness)} thick.`,
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

/** Whether an earlier one in a list is at the same place. */
function isRepeated(places: readonly (number | undefined)[] | undefined, index: number): boolean {
  const place = places?.[index];
  if (places === undefined || place === undefined) return false;
  return places.slice(0, index).some((other) => other !== undefined && Math.abs(other - place) < closest_m);
}

function bracketConflicts({ board, brackets }: SoundDocument, report: Report): void {
  if (brackets === undefined) return;
  const length = board?.length;
  brackets.positions?.forEach((position, index) => {
    if (position === undefined) return;
    const path = `/brackets/positions/${index}`;
    if (length !== undefined && position > length + tolerance_m) {
      report(path, `It is off the board, which ends at ${inches(length)}.`);
    }
    const first = brackets.positions?.findIndex(
      (other) =>
        other !== undefined && Math.abs(other - position) < Math.max(closest_m, brackets.armWidth ?? 0),
    );
    if (first !== undefined && first < index) report(path, `Bracket ${first + 1} is already at this place.`);
  });
  const { capacity, arm, boardScrews, plate, screws } = brackets;
  if (capacity?.basis === 'rated') {
    const { allowable, ultimate, factor } = capacity;
    if (allowable === undefined && (ultimate === undefined || factor === undefined)) {
      report(
        '/brackets/capacity/allowable',
        'It takes the allowable load of one bracket, or else "ultimate" with a "factor".',
        '/brackets/capacity/ultimate',
        '/brackets/capacity/factor',
      );
    }
    if (allowable !== undefined && ultimate !== undefined) {
      report(
        '/brackets/capacity/ultimate',
        'Give the allowable load or a test load with a factor, not both.',
      );
    }
    if (factor !== undefined && ultimate === undefined) {
      report(
        '/brackets/capacity/factor',
        'A factor goes with a test load, "ultimate"; an allowable load has its safety inside it.',
        '/brackets/capacity/ultimate',
      );
    }
  }
  const strut = capacity?.basis === 'steel' ? capacity.strut : undefined;
  if (strut?.at !== undefined && arm !== undefined && strut.at > arm + tolerance_m) {
    report('/brackets/capacity/strut/at', `The arm is only ${inches(arm)} long.`);
  }
  const depth = board?.depth === undefined ? undefined : overallDepth({ ...board, depth: board.depth });
  boardScrews?.at?.forEach((at, index) => {
    if (at !== undefined && depth !== undefined && at >= depth) {
      report(
        `/brackets/boardScrews/at/${index}`,
        `It is in front of the board, which is ${inches(depth)} deep in all.`,
      );
      return;
    }
    const path = `/brackets/boardScrews/at/${index}`;
    if (at !== undefined && arm !== undefined && at > arm + tolerance_m) {
      report(path, `The arm is only ${inches(arm)} long.`);
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
  screws?.heights?.forEach((height, index) => {
    const path = `/brackets/screws/heights/${index}`;
    if (height !== undefined && plate?.height !== undefined && height > plate.height + tolerance_m) {
      report(path, `The plate is only ${inches(plate.height)} high.`);
    }
    if (isRepeated(screws.heights, index)) {
      report(path, 'There is another screw at this height; "perHeight" says how many stand side by side.');
    }
  });
}

function fixingConflicts({ brackets, wall }: SoundDocument, report: Report): void {
  const { plate, screws } = brackets ?? {};
  const { length, thread, across, heights, fastener, allowable } = screws ?? {};
  const coverings = (wall?.coverings ?? []).reduce((sum, each) => sum + (each?.thickness ?? 0), 0);
  const before = (plate?.thickness ?? 0) + coverings;
  if (length !== undefined && length <= before + tolerance_m) {
    report(
      '/brackets/screws/length',
      `A screw of this length ends in the plate and the wall covering, ${inches(before)} together.`,
      '/brackets/plate/thickness',
      '/wall/coverings',
    );
  }
  if (thread !== undefined && length !== undefined && thread > length + tolerance_m) {
    report('/brackets/screws/thread', `The screw is only ${inches(length)} long.`, '/brackets/screws/length');
  }
  if (across !== undefined && plate?.width !== undefined && across >= plate.width) {
    report(
      '/brackets/screws/across',
      `The plate is only ${inches(plate.width)} wide.`,
      '/brackets/plate/width',
    );
  }
  if (heights !== undefined && heights.length > 0 && heights.every((height) => height === 0)) {
    report(
      '/brackets/screws/heights/0',
      'Screws at the very lower end of the plate hold no couple: it takes a height above it.',
    );
  }
  if (fastener === 'listed' && allowable === undefined) {
    report(
      '/brackets/screws/allowable',
      'A listed screw takes its allowable pull and shear and the report they stand in.',
    );
  }
  const studWidth = wall?.studWidth ?? 0.0381;
  const studs = wall?.studs;
  if (
    studs !== undefined &&
    'spacing' in studs &&
    studs.spacing !== undefined &&
    studs.spacing <= studWidth
  ) {
    report('/wall/studs/spacing', `Studs ${inches(studWidth)} wide would overlap.`, '/wall/studWidth');
  }
  if (studs !== undefined && 'at' in studs) {
    const places = (studs.at ?? []).flatMap((at, index) => (at === undefined ? [] : [{ at, index }]));
    for (const { at, index } of places) {
      const other = places.find((each) => each.index < index && Math.abs(each.at - at) < studWidth);
      if (other !== undefined) {
        report(
          `/wall/studs/at/${index}`,
          `It overlaps stud ${other.index + 1}: studs are ${inches(studWidth)} wide.`,
          '/wall/studWidth',
        );
      }
    }
  }
}

function loadConflicts({ board, loads }: SoundDocument, report: Report): void {
  const length = board?.length;
  const depth = board?.depth === undefined ? undefined : overallDepth({ ...board, depth: board.depth });
  const offBoard = length === undefined ? '' : `It is off the board, which ends at ${inches(length)}.`;
  loads?.forEach((load, index) => {
    const path = `/loads/${index}`;
    if (load === undefined || load.kind === undefined) return;
    if (load.kind === 'line' || load.kind === 'point') {
      if (load.amount === undefined && load.things === undefined) {
        report(
          `${path}/amount`,
          'It takes an amount, or a list of "things" that stand there.',
          `${path}/things`,
        );
      }
      if (load.amount !== undefined && load.things !== undefined) {
        report(`${path}/amount`, 'Give an amount or a list of things, not both.');
      }
      if (load.eccentricity !== undefined && depth !== undefined && load.eccentricity > depth + tolerance_m) {
        report(
          `${path}/eccentricity`,
          `It is in front of the board, which is ${inches(depth)} deep in all.`,
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
