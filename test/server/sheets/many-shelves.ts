import { demoCheck } from '../../../server/demo.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';

const { board, brackets } = demoCheck;
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
        rail: { height: '2-1/2 in', thickness: '3/4 in' },
      },
    },
  },
];
