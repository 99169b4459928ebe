import { check } from '../../../calc/index.ts';
import type { Check, CheckResult } from '../../../shared/check-result.ts';
import type {
  BracketShelfInput,
  CounterOverhangInput,
  CounterRunInput,
} from '../../../shared/check-document/index.ts';

export const inch = 0.0254;
export const foot = 12 * inch;
export const poundForce = 4.4482216152605;
export const psi = poundForce / inch ** 2;
export const gravity = 9.80665;

export type Load = NonNullable<BracketShelfInput['loads']>[number];

/** A plain maple board on two brackets, screwed to them, with a rating far above what is asked of it. */
const plainShelf = {
  schema: 1,
  element: 'bracket-shelf',
  code: 'nds-asd',
  units: 'inch-pound',
  conditions: { moisture: 'dry', temperature: 'ordinary' },
  board: {
    material: 'sugar-maple',
    basis: 'clear-wood',
    appearance: 'small-knots',
    length: '48 in',
    depth: '10 in',
    thickness: '3/4 in',
  },
  brackets: {
    positions: ['8 in', '40 in'],
    arm: '10 in',
    armWidth: '1 in',
    hold: 'screwed',
    capacity: { basis: 'rated', allowable: '400 lbf', at: '5 in' },
  },
  loads: [],
  limits: { live: 'L/360', longTerm: 'L/240' },
} as const satisfies BracketShelfInput;

interface Changes {
  readonly board?: Partial<BracketShelfInput['board']>;
  readonly brackets?: Partial<BracketShelfInput['brackets']>;
  readonly loads?: BracketShelfInput['loads'];
  readonly limits?: BracketShelfInput['limits'];
  readonly conditions?: BracketShelfInput['conditions'];
  readonly wall?: BracketShelfInput['wall'];
  readonly units?: BracketShelfInput['units'];
}

/** The plain shelf with some of its fields changed. */
export function shelf({ board, brackets, ...others }: Changes = {}): BracketShelfInput {
  return {
    ...plainShelf,
    ...others,
    board: { ...plainShelf.board, ...board },
    brackets: { ...plainShelf.brackets, ...brackets },
  };
}

/** The one check of a result with an id; fails where there is none. */
function checkOf(result: CheckResult, id: string): Check {
  const found = result.checks.filter((each) => each.id === id);
  const [only] = found;
  if (only === undefined || found.length > 1) throw new Error(`${found.length} checks are called ${id}`);
  return only;
}

/** One check of a shelf or a counter, its numbers laid bare. */
export function judge(document: BracketShelfInput | CounterOverhangInput | CounterRunInput, id: string) {
  const found = checkOf(check(document, { waysOut: false }), id);
  return {
    demand: found.demand?.value ?? NaN,
    capacity: found.capacity?.value ?? NaN,
    ratio: found.ratio,
    outcome: found.outcome,
    where: found.where,
    note: found.note,
  };
}

/** A line load on the whole board unless it has ends. */
export function line(amount: string, more: Partial<Extract<Load, { kind: 'line' }>> = {}): Load {
  return { kind: 'line', amount, duration: 'permanent', arrangement: 'fixed', ...more };
}
