import {
  readShelfDocument,
  type BracketShelfDocument,
  type BracketShelfInput,
} from '../../../shared/check-document/index.ts';

/** A shelf with its own numbers, so that a drawing test knows where everything lies. */
export const plainShelf = {
  schema: 1,
  element: 'bracket-shelf',
  title: 'A shelf to be drawn',
  units: 'inch-pound',
  board: {
    material: 'sugar-maple',
    basis: 'clear-wood',
    appearance: 'small-knots',
    length: '96 in',
    depth: '9-1/4 in',
    thickness: '3/4 in',
    nosing: { height: '1-1/2 in', thickness: '3/4 in', flush: 'top' },
  },
  brackets: {
    positions: ['8 in', '32 in', '64 in', '88 in'],
    arm: '8 in',
    armWidth: '1 in',
    hold: 'screwed',
    capacity: { basis: 'rated', allowable: '150 lbf', at: '4 in' },
    plate: { height: '8 in', width: '1-1/4 in', thickness: '1/4 in' },
    screws: { fastener: 'wood-screw-10', length: '3 in', heights: ['7 in', '1 in'], perHeight: 1 },
  },
  wall: {
    framing: 'wood-stud',
    studs: { first: '0 in', spacing: '16 in' },
    coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
  },
  loads: [
    { name: 'Plates and jugs', kind: 'line', amount: '18 lbf/ft' },
    { name: 'Stock pot', kind: 'point', amount: '22 lbf', at: '48 in' },
    { name: 'Hand leaning', kind: 'roaming', amount: '50 lbf' },
  ],
} satisfies BracketShelfInput;

/** The plain shelf with some of it changed, as it is computed with. */
export function shelf(changes: Partial<BracketShelfInput> = {}): BracketShelfDocument {
  const reading = readShelfDocument({ ...plainShelf, ...changes });
  if (!reading.ok)
    throw new Error(reading.errors.map(({ path, message }) => `${path} ${message}`).join('\n'));
  return reading.document;
}

/** Ten weights close together, part-length contents over each other, and more than one thing that roams. */
export const crowdedLoads: NonNullable<BracketShelfInput['loads']> = [
  { name: 'Plates and jugs', kind: 'line', amount: '18 lbf/ft' },
  { name: 'Bottles of wine in their racks', kind: 'line', amount: '10 lbf/ft', from: '10 in', to: '40 in' },
  { name: 'Books', kind: 'line', amount: '25 lbf/ft', from: '50 in', to: '60 in' },
  ...[0, 3, 48, 50, 51, 52, 70, 90, 94, 96].map((at) => ({
    name: `A heavy jar of pickled walnuts, no. ${at}`,
    kind: 'point' as const,
    amount: '5 lbf',
    at: `${at} in`,
  })),
  { name: 'Hand leaning', kind: 'roaming', amount: '50 lbf' },
  { name: 'Cat', kind: 'roaming', amount: '12 lbf' },
];

/** Brackets every four inches. */
export const closeBrackets = Array.from({ length: 24 }, (_, index) => `${2 + index * 4} in`);
