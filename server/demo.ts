import type { BracketShelfInput } from '../shared/check-document/index.ts';

/** The check that stands ready on first opening. The house and its owner are invented. */
export const demoCheck: BracketShelfInput = {
  schema: 1,
  element: 'bracket-shelf',
  title: 'Display shelf over the sideboard',
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
    positions: ['4 in', '36 in', '60 in', '92 in'],
    arm: '9 in',
    armWidth: '1 in',
    hold: 'screwed',
    capacity: {
      basis: 'rated',
      allowable: '250 lbf',
      at: '5 in',
      source: 'maker of the brackets, catalogue sheet',
    },
    plate: { height: '8 in', width: '1-1/4 in', thickness: '1/4 in' },
    screws: { fastener: 'wood-screw-10', length: '3 in', heights: ['7 in', '1 in'], perHeight: 1 },
  },
  wall: {
    framing: 'wood-stud',
    species: 'spruce-pine-fir',
    studs: { at: ['4 in', '20 in', '36 in', '60 in', '76 in', '92 in'] },
    studWidth: '1-1/2 in',
    studDepth: '3-1/2 in',
    coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
  },
  loads: [
    { name: 'Plates and jugs', kind: 'line', amount: '18 lbf/ft', duration: 'permanent' },
    { name: 'Stock pot', kind: 'point', amount: '22 lbf', at: '48 in', duration: 'ten-years' },
    { name: 'Hand leaning', kind: 'roaming', amount: '50 lbf', duration: 'seven-days' },
  ],
  limits: { live: '1/8 in', longTerm: '1/8 in' },
};
