import type { BracketShelfInput } from '../../shared/check-document/index.ts';

/** A document without fault that has a value in most fields. The shelf is invented. */
export const soundShelf: BracketShelfInput = {
  schema: 1,
  element: 'bracket-shelf',
  title: 'Shelf in the pantry',
  code: 'nds-asd',
  units: 'inch-pound',
  conditions: { moisture: 'dry' },
  board: {
    material: 'sugar-maple',
    basis: 'clear-wood',
    appearance: 'small-knots',
    length: '96 in',
    depth: '9-1/4 in',
    thickness: '3/4 in',
    nosing: { material: 'sugar-maple', height: '1-1/2 in', thickness: '3/4 in', flush: 'top' },
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
    species: 'spruce-pine-fir',
    studs: { first: '0 in', spacing: '16 in' },
    studWidth: '1-1/2 in',
    studDepth: '3-1/2 in',
    coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
  },
  loads: [
    { name: 'Jars', kind: 'line', amount: '18 lbf/ft', duration: 'permanent' },
    { name: 'Pot', kind: 'point', amount: '22 lbf', at: '48 in', duration: 'ten-years' },
    { name: 'Hand leaning', kind: 'roaming', amount: '50 lbf', duration: 'seven-days' },
  ],
  limits: { live: 'L/360', longTerm: 'L/240' },
};
