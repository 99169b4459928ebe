import { demoCheck } from '../../../server/demo.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';

const { board, brackets, wall } = demoCheck;
const screws = { fastener: 'wood-screw-10', length: '3 in', heights: ['7 in', '1 in'] };
const report = { tension: '300 lbf', shear: '250 lbf', report: 'a test report of the maker' };
const steel = { basis: 'steel' as const, metal: 'a36', width: '1 in', thickness: '1/4 in' };

/** Shelves that between them need every part of the calculation. */
export const manyShelves: readonly { readonly name: string; readonly document: BracketShelfInput }[] = [
  { name: 'the demo', document: demoCheck },
  { name: 'metric', document: { ...demoCheck, units: 'metric' } },
  { name: 'steel arms', document: { ...demoCheck, brackets: { ...brackets, capacity: steel } } },
  {
    name: 'steel arms with struts',
    document: {
      ...demoCheck,
      brackets: {
        ...brackets,
        capacity: { ...steel, strut: { at: '6 in', drop: '6 in', width: '1 in', thickness: '1/4 in' } },
      },
    },
  },
  { name: 'resting', document: { ...demoCheck, brackets: { ...brackets, hold: 'resting' } } },
  {
    name: 'things weighed',
    document: {
      ...demoCheck,
      loads: [
        {
          name: 'Plates',
          kind: 'line',
          things: [
            { thing: 'dinner-plate', count: 30 },
            { thing: 'book', count: 12 },
          ],
        },
        { name: 'Hand leaning', kind: 'roaming', amount: '50 lbf' },
      ],
    },
  },
  {
    name: 'a hollow box in metric',
    document: {
      ...demoCheck,
      units: 'metric',
      board: { length: '2 m', depth: '250 mm', thickness: '45 mm', box: { skin: '6 mm', frame: '38 mm' } },
      brackets: { ...brackets, positions: ['0.3 m', '1.7 m'] },
      loads: [{ name: 'Records', kind: 'area', amount: '0.5 kPa' }],
    },
  },
  {
    name: 'loose layers of plywood with nothing else said',
    document: {
      ...demoCheck,
      board: {
        material: 'Plywood, softwood veneer core',
        basis: 'panel',
        length: '48 in',
        depth: '12 in',
        thickness: '1-1/2 in',
        layers: [{ thickness: '3/4 in' }, { thickness: '3/4 in' }],
      },
      brackets: { positions: ['4 in', '44 in'], arm: '10 in' },
      wall: undefined,
      loads: undefined,
      limits: undefined,
    },
  },
  {
    name: 'a nosing below and a rail behind',
    document: {
      ...demoCheck,
      board: {
        ...board,
        nosing: { height: '2 in', thickness: '3/4 in', flush: 'bottom' },
        rail: { height: '2-1/2 in', thickness: '3/4 in', flush: 'bottom' },
      },
    },
  },
  {
    name: 'lag screws side by side in blocking behind tile',
    document: {
      ...demoCheck,
      brackets: {
        ...brackets,
        plate: { height: '10 in', width: '4 in', thickness: '3/8 in' },
        screws: {
          fastener: 'lag-screw-3/8',
          length: '4 in',
          heights: ['9 in', '5 in', '1 in'],
          perHeight: 2,
          across: '3 in',
        },
      },
      wall: {
        framing: 'blocking',
        species: 'douglas-fir-larch',
        blockingHeight: '11-1/4 in',
        studDepth: '3-1/2 in',
        coverings: [
          { material: 'cement-board', thickness: '1/2 in' },
          { material: 'tile', thickness: '5/16 in' },
        ],
        bearing: { allowable: '300 psi', source: 'the maker of the board' },
      },
    },
  },
  {
    name: 'brackets off their studs',
    document: {
      ...demoCheck,
      brackets: { ...brackets, positions: ['5 in', '38 in', '60 in', '91 in'] },
    },
  },
  {
    name: 'a grid of studs in metric with brackets between them',
    document: {
      ...demoCheck,
      units: 'metric',
      brackets: { ...brackets, positions: ['150 mm', '600 mm', '1.2 m', '2.1 m'] },
      wall: { ...wall, studs: { first: '150 mm', spacing: '450 mm' } },
    },
  },
  {
    name: 'nails into studs',
    document: {
      ...demoCheck,
      brackets: { ...brackets, screws: { ...screws, fastener: 'common-nail-16d', length: '3-1/2 in' } },
    },
  },
  {
    name: 'anchors of a report in masonry',
    document: {
      ...demoCheck,
      brackets: { ...brackets, screws: { ...screws, fastener: 'listed', allowable: report } },
      wall: { framing: 'masonry', coverings: [{ material: 'plaster', thickness: '3/4 in' }] },
    },
  },
  {
    name: 'listed screws in metal studs',
    document: {
      ...demoCheck,
      brackets: {
        ...brackets,
        screws: { ...screws, fastener: 'listed', length: '1-1/2 in', allowable: report },
      },
      wall: { ...wall, framing: 'metal-stud', species: undefined, studWidth: '1-5/8 in' },
    },
  },
  {
    name: 'screws in sheathing alone',
    document: {
      ...demoCheck,
      wall: { framing: 'sheathing', species: 'osb', sheathing: '3/4 in', coverings: [] },
    },
  },
  {
    name: 'a hollow wall',
    document: {
      ...demoCheck,
      wall: { framing: 'hollow', coverings: [{ material: 'gypsum-board', thickness: '5/8 in' }] },
    },
  },
  {
    name: 'screws too short for the stud',
    document: { ...demoCheck, brackets: { ...brackets, screws: { ...screws, length: '1-1/4 in' } } },
  },
  {
    name: 'many screws in a low plate',
    document: {
      ...demoCheck,
      brackets: {
        ...brackets,
        plate: { height: '3 in', width: '1-1/4 in' },
        screws: {
          ...screws,
          heights: [
            '1/4 in',
            '1/2 in',
            '3/4 in',
            '1 in',
            '1-1/4 in',
            '1-1/2 in',
            '2 in',
            '2-1/2 in',
            '2-3/4 in',
          ],
        },
      },
    },
  },
  {
    name: 'loads of every kind that hold',
    document: {
      ...demoCheck,
      title:
        'The long shelf above the workbench in the back room, where everything is put that has no other place',
      loads: [
        { name: 'Plates', kind: 'line', amount: '9 lbf/ft', duration: 'permanent' },
        { name: 'Jars', kind: 'line', amount: '6 lbf/ft', from: '10 in', to: '40 in', duration: 'permanent' },
        { name: 'Parcels', kind: 'line', amount: '2 lbf/ft', eccentricity: '8 in', duration: 'two-months' },
        {
          name: 'Clock',
          kind: 'point',
          amount: '5 lbf',
          at: '20 in',
          eccentricity: '3 in',
          duration: 'permanent',
        },
        { name: 'Vase', kind: 'point', amount: '4 lbf', at: '70 in', duration: 'seven-days' },
        { name: 'Hand leaning', kind: 'roaming', amount: '30 lbf', duration: 'seven-days' },
        { name: 'A knock', kind: 'roaming', amount: '40 lbf', duration: 'impact' },
      ],
    },
  },
  {
    name: 'a board in two lengths with a load that is always there',
    document: {
      ...demoCheck,
      board: { ...board, joints: ['36 in'] },
      loads: [
        { name: 'Cabinet', kind: 'line', amount: '10 lbf/ft', duration: 'permanent', arrangement: 'fixed' },
        { name: 'Hand leaning', kind: 'roaming', amount: '30 lbf', duration: 'seven-days' },
      ],
    },
  },
];

/** A shelf that holds and is warned of as often as one may be: nobody leans on it, short and wide arms of thick bar, a wet place. */
export const warned: BracketShelfInput = {
  ...demoCheck,
  conditions: { moisture: 'wet' },
  brackets: {
    ...brackets,
    arm: '4-1/2 in',
    armWidth: '2 in',
    capacity: {
      ...steel,
      width: '1-1/2 in',
      thickness: '3/8 in',
      strut: { at: '3 in', drop: '6 in', width: '1 in', thickness: '1/4 in' },
    },
    boardScrews: { fastener: 'wood-screw-8', length: '3/4 in', armThickness: '1/8 in' },
  },
  loads: [{ name: 'Plates', kind: 'line', amount: '8 lbf/ft', duration: 'permanent' }],
  limits: { live: '1/2 in', longTerm: '1/2 in' },
};
