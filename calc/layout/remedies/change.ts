import type { RemedyKind } from '../../../shared/check-result.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import type { Ranked } from '../ranking.ts';
import type { Subject } from '../subject.ts';

/** A shelf in trouble: as it was written, read and judged. */
export interface Trouble extends Subject {
  readonly present: Ranked;
  /** Ids of the checks that do not hold or can't be vouched for; of those that are close, where all hold. */
  readonly pressing: ReadonlySet<string>;
  /** Judgements that may still be made: a check is answered while somebody waits. */
  readonly allowance: { left: number };
}

/** One change that could be made. */
export interface Change {
  readonly kind: RemedyKind;
  /** What to do, in one plain sentence. */
  readonly what: string;
  readonly input: BracketShelfInput;
  /** How big a change it is: the smaller are offered first. */
  readonly effort: number;
}

/** Changes of one sort, the smallest first. */
export interface Family {
  readonly touches: Touched;
  readonly changes: readonly Change[];
}

/** What a change can touch: only the wall, or everything. */
type Touched = 'wall' | 'all';

/** How big a change of each kind is, beside the others. */
export const effortOf: Readonly<Record<RemedyKind, number>> = {
  'screw-down': 0.5,
  'screw-length': 1,
  'screw-size': 2,
  'more-screws': 3,
  'thicker-plate': 3.5,
  positions: 4,
  'another-bracket': 5,
  'longer-arm': 6,
  'box-frame': 6.5,
  nosing: 7,
  'thicker-board': 8,
  'other-board': 9,
  'lighter-contents': 10,
};

const board = [
  'bending',
  'edge-strip',
  'shear',
  'glue-line',
  'torsion',
  'deflection-live',
  'deflection-long-term',
  'board-past-bracket',
];
const wall = ['fixing', 'screw-metal'];
const support = [
  ...board,
  ...wall,
  'bearing',
  'bracket',
  'bracket-lift',
  'board-screws',
  'lift-off',
  'toe-bearing',
  'stud',
  'plate',
];

/** The checks that a change of each kind can help. */
const helps: Readonly<Record<RemedyKind, readonly string[]>> = {
  'screw-down': [...board, 'lift-off', 'standing', 'tip-forward', 'tip-endwise', 'bracket', 'bearing'],
  'screw-length': wall,
  'screw-size': wall,
  'more-screws': wall,
  'thicker-plate': ['plate'],
  positions: [...support, 'bracket-on-stud'],
  'another-bracket': support,
  'longer-arm': ['board-past-bracket', 'tip-forward', 'bearing', 'bracket', 'board-screws'],
  'box-frame': [...board, 'bearing', 'box-skin'],
  nosing: board,
  'thicker-board': [...board, 'board-screws', 'bracket-lift', 'lift-off', 'tip-forward'],
  'other-board': [...board, 'bearing', 'board-screws', 'bracket-lift', 'lift-off', 'tip-forward'],
  'lighter-contents': [...support, 'box-skin', 'tip-forward'],
};

/** Whether a change of some kind can help a shelf in its trouble; first of all it has to be known what the board stands on. */
export function canHelp(kind: RemedyKind, { pressing }: Trouble): boolean {
  if (pressing.has('standing')) return canHelpWith(kind, 'standing');
  return [...pressing].some((id) => canHelpWith(kind, id));
}

/** Whether a change of some kind can help with one check. */
export function canHelpWith(kind: RemedyKind, check: string): boolean {
  return helps[kind].includes(check);
}
