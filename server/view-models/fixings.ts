import type { WallDocument } from '../../shared/check-document/index.ts';
import type { CheckResult, FixingResult } from '../../shared/check-result.ts';
import type { Drawing } from '../drawings/index.ts';
import { missesOf } from '../drawings/misses.ts';
import { percent } from './checks.ts';

/** One bracket on the wall. */
interface FixingView {
  readonly bracket: string;
  readonly stud: string;
  readonly miss: string;
  /** Further off than its screws allow. */
  readonly isOff: boolean;
  readonly tension: string;
  readonly shear: string;
  readonly used: string;
  readonly isOver: boolean;
}

/** How the brackets are held by the wall: one of them enlarged, and a row for each. */
export interface FixingsView {
  readonly caption: string;
  /** What the rows are, for a reader of the screen. */
  readonly group: string;
  readonly details: readonly Drawing[];
  readonly rows: readonly FixingView[];
}

const nothing = '–';
const captions: Readonly<Record<WallDocument['element'], string>> = {
  'bracket-shelf': 'Every bracket; pull and shear are those of its highest screw',
  'wall-fixing': 'Pull and shear are those of the highest screw',
};
const groups: Readonly<Record<WallDocument['element'], string>> = {
  'bracket-shelf': 'Every bracket',
  'wall-fixing': 'The plate',
};

/** The fixings of a check; none where they were not worked out. */
export function fixingViews(
  document: WallDocument,
  result: CheckResult,
  details: readonly Drawing[],
): FixingsView[] {
  if (result.fixings.length === 0) return [];
  const off = new Set(missesOf(document, result).map(({ bracket }) => bracket));
  const open = result.checks.find(({ id }) => id === 'fixing')?.outcome === 'cannot-say';
  return [
    {
      details,
      caption: captions[document.element],
      group: groups[document.element],
      rows: result.fixings.map((fixing) => rowOf(fixing, off.has(fixing.bracket), open)),
    },
  ];
}

function rowOf(fixing: FixingResult, isOff: boolean, isOpen: boolean): FixingView {
  const { bracket, stud, miss, tension, shear, ratio } = fixing;
  return {
    bracket: String(bracket),
    stud: stud?.shown ?? nothing,
    miss: miss?.shown ?? nothing,
    isOff,
    tension: tension.shown,
    shear: shear.shown,
    used: isOff ? 'off its stud' : ratio !== null ? percent(ratio) : isOpen ? 'cannot say' : 'nothing holds',
    isOver: isOff || (ratio === null ? !isOpen : ratio > 1),
  };
}
