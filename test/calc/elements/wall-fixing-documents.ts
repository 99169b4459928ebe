import { check } from '../../../calc/index.ts';
import type { WallFixingInput } from '../../../shared/check-document/index.ts';

/** A plate with a row of lag screws up a stud, no covering, one load for ten years. Invented. */
const plainFixing = {
  schema: 1,
  element: 'wall-fixing',
  code: 'nds-asd',
  units: 'inch-pound',
  conditions: { moisture: 'dry', temperature: 'ordinary' },
  plate: { height: '8 in', width: '2 in', thickness: '1/4 in' },
  screws: { fastener: 'lag-screw-1/4', length: '3 in', heights: ['7 in', '1 in'] },
  wall: {
    framing: 'wood-stud',
    species: 'spruce-pine-fir',
    grain: 'side',
    studWidth: '1-1/2 in',
    studDepth: '3-1/2 in',
    coverings: [],
  },
  loads: [{ shear: '60 lbf', couple: '400 lbf.in', duration: 'ten-years' }],
} as const satisfies WallFixingInput;

export interface Changes {
  readonly plate?: Partial<WallFixingInput['plate']>;
  readonly screws?: Partial<WallFixingInput['screws']>;
  readonly wall?: Partial<WallFixingInput['wall']>;
  readonly loads?: WallFixingInput['loads'];
  readonly position?: string;
  readonly conditions?: WallFixingInput['conditions'];
}

/** The plain fixing with some of its fields changed. */
export function fixing({ plate, screws, wall, loads, ...others }: Changes = {}): WallFixingInput {
  return {
    ...plainFixing,
    ...others,
    plate: { ...plainFixing.plate, ...plate },
    screws: { ...plainFixing.screws, heights: ['7 in', '1 in'], ...screws },
    wall: { ...plainFixing.wall, coverings: [], ...wall },
    loads: loads ?? [...plainFixing.loads],
  };
}

/** What a fixing comes to: its one row, and its checks by name. */
export function answer(changes: Changes = {}) {
  const result = check(fixing(changes));
  const [row] = result.fixings;
  if (row === undefined) throw new Error('a wall fixing has one row');
  const named = (id: string) => {
    const found = result.checks.find((each) => each.id === id);
    if (found === undefined) throw new Error(`no check ${id}`);
    return found;
  };
  return { result, row, named };
}
