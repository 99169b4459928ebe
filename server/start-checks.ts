import type {
  BracketShelfInput,
  CounterOverhangInput,
  CounterRunInput,
  WallFixingInput,
} from '../shared/check-document/index.ts';

/** What a new check holds: a short shelf on three brackets, with every size in plain sight to be changed. */
const startCheck: BracketShelfInput = {
  schema: 1,
  element: 'bracket-shelf',
  units: 'inch-pound',
  board: { length: '40 in', depth: '7-1/4 in', thickness: '1-1/2 in' },
  brackets: {
    positions: ['4 in', '20 in', '36 in'],
    arm: '6-1/2 in',
    armWidth: '1 in',
    hold: 'screwed',
    capacity: { basis: 'unknown' },
    plate: { height: '8 in', width: '1-1/4 in' },
    screws: { fastener: 'wood-screw-10', length: '3 in', heights: ['7 in', '1 in'] },
  },
  wall: {
    framing: 'wood-stud',
    studs: { first: '4 in', spacing: '16 in' },
    coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
  },
  loads: [
    { name: 'Contents', kind: 'line', amount: '20 lbf/ft', duration: 'permanent' },
    { name: 'Hand leaning', kind: 'roaming', amount: '50 lbf', duration: 'seven-days' },
  ],
  limits: { live: 'L/360', longTerm: 'L/240' },
};

/** A new fixing on its own: a plate with two screws on a stud, under a load that hangs from it. */
const startFixing: WallFixingInput = {
  schema: 1,
  element: 'wall-fixing',
  units: 'inch-pound',
  plate: { height: '8 in', width: '1-1/4 in' },
  screws: { fastener: 'wood-screw-10', length: '3 in', heights: ['7 in', '1 in'] },
  wall: { framing: 'wood-stud', coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }] },
  loads: [{ name: 'What hangs on it', shear: '40 lbf', couple: '160 lbf.in', duration: 'ten-years' }],
};

/** A new counter: a maple top that runs past its base for stools, on brackets. */
const startOverhang: CounterOverhangInput = {
  schema: 1,
  element: 'counter-overhang',
  units: 'inch-pound',
  top: {
    build: 'edge-glued-staves',
    material: 'sugar-maple',
    appearance: 'nearly-clear',
    staves: 'along',
    length: '72 in',
    depth: '36 in',
    thickness: '1-1/2 in',
  },
  base: {
    from: '0 in',
    to: '72 in',
    back: '0 in',
    front: '24 in',
    panels: ['0 in', '36 in', '72 in'],
    rail: { thickness: '3/4 in' },
    weight: '200 lbf',
    foot: '24 in',
    height: '34-1/2 in',
    heldToFloor: true,
    anchorPull: '400 lbf',
    anchorPullFront: '400 lbf',
  },
  screws: {
    fastener: 'wood-screw-10',
    length: '1-3/4 in',
    through: '3/4 in',
    at: [
      ['3 in', '2 in'],
      ['33 in', '2 in'],
      ['39 in', '2 in'],
      ['69 in', '2 in'],
    ],
  },
  props: [],
  loads: [
    { name: 'Serving', kind: 'area', amount: '10 psf', duration: 'ten-years', sustained: 0.3 },
    { name: 'Person at the edge', kind: 'person', amount: '250 lbf', duration: 'seven-days' },
  ],
  limits: { live: '1/4 in', longTerm: 'L/240' },
};

/** New panels under stone: two sheets of plywood over the opening of a dishwasher. */
const startRun: CounterRunInput = {
  schema: 1,
  element: 'counter-run',
  units: 'inch-pound',
  substrate: {
    material: 'birch-plywood',
    thickness: '1-7/8 in',
    sheets: 2,
    bond: 'structural',
    grain: 'along',
  },
  opening: '24 in',
  depth: '25 in',
  rails: 'none',
  finish: { kind: 'natural-stone', thickness: '3/8 in', bed: '1/8 in' },
  loads: [
    { name: 'On the counter', kind: 'area', amount: '10 psf', duration: 'ten-years', sustained: 0.3 },
    { name: 'Somebody standing', kind: 'person', amount: '300 lbf', duration: 'seven-days' },
  ],
};

/** What a new check of each element holds. */
export const startChecks = {
  'bracket-shelf': startCheck,
  'wall-fixing': startFixing,
  'counter-overhang': startOverhang,
  'counter-run': startRun,
} as const;
