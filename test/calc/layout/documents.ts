import type { CheckResult } from '../../../shared/check-result.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { soundShelf } from '../../properties/sound-shelf.ts';

const { nosing: _, ...board } = soundShelf.board;

const sturdy = {
  positions: ['16 in', '48 in', '80 in'],
  capacity: { basis: 'rated' as const, allowable: '400 lbf', at: '4 in' },
  screws: { fastener: 'lag-screw-1/4', length: '3-1/2 in', heights: ['7 in', '1 in'], perHeight: 1 },
} satisfies Partial<BracketShelfInput['brackets']>;

interface Changes {
  readonly board?: Partial<BracketShelfInput['board']>;
  readonly brackets?: Partial<BracketShelfInput['brackets']>;
  readonly wall?: Partial<NonNullable<BracketShelfInput['wall']>>;
  readonly loads?: BracketShelfInput['loads'];
  readonly limits?: BracketShelfInput['limits'];
}

/** A stiff board 8 ft long, without a nosing, on studs 16 in apart. Invented. */
export function studShelf({ board: changed, brackets, wall, ...others }: Changes = {}): BracketShelfInput {
  return {
    ...soundShelf,
    ...others,
    board: { ...board, thickness: '1-1/2 in', ...changed },
    brackets: { ...soundShelf.brackets, ...sturdy, ...brackets },
    wall: { framing: 'wood-stud', ...soundShelf.wall, ...wall },
  };
}

/** The worst share of its limit that a shelf moves, as its result tells it. */
export function movementOf({ checks }: CheckResult): number {
  const movements = checks.filter(({ id }) => id === 'deflection-live' || id === 'deflection-long-term');
  return Math.max(...movements.map(({ ratio }) => ratio ?? NaN));
}

/** The most that any check uses, as a result tells it. */
export function mostUsed({ checks }: CheckResult): number {
  return Math.max(...checks.map(({ ratio, outcome }) => ratio ?? (outcome === 'holds' ? 0 : Infinity)));
}
