import { describe, expect, it } from 'vitest';
import { check, DocumentError } from '../../calc/index.ts';
import { fixing } from '../calc/elements/wall-fixing-documents.ts';

type Changes = Parameters<typeof fixing>[0];

function errorsOf(document: unknown): readonly (readonly [string, string])[] {
  try {
    check(document);
  } catch (error) {
    if (error instanceof DocumentError) return error.errors.map(({ path, message }) => [path, message]);
    throw error;
  }
  return [];
}

const gypsum = [{ material: 'gypsum-board', thickness: '1/2 in' }];
const allowable = { tension: '200 lbf', shear: '100 lbf', report: 'report of the anchor' };

/** What is wrong, where it is told, and in what words. */
const conflicts: readonly (readonly [string, Changes, string, RegExp])[] = [
  [
    'a screw that ends in the covering',
    { screws: { length: '3/4 in' }, wall: { coverings: gypsum } },
    '/screws/length',
    /ends in the plate and the wall covering, 3\/4 in together/,
  ],
  ['a thread longer than the screw', { screws: { thread: '4 in' } }, '/screws/thread', /only 3 in long/],
  [
    'a screw above the plate',
    { screws: { heights: ['9 in', '1 in'] } },
    '/screws/heights/0',
    /only 8 in high/,
  ],
  ['no screw above the lower end', { screws: { heights: ['0 in'] } }, '/screws/heights/0', /hold no couple/],
  [
    'two screws at one height',
    { screws: { heights: ['7 in', '7 in'] } },
    '/screws/heights/1',
    /another screw/,
  ],
  [
    'screws wider apart than the plate',
    { screws: { perHeight: 2, across: '2 in' } },
    '/screws/across',
    /only 2 in wide/,
  ],
  [
    'a listed screw without its values',
    { screws: { fastener: 'listed' } },
    '/screws/allowable',
    /the report/,
  ],
  [
    'values without a report',
    { screws: { fastener: 'listed', allowable: { ...allowable, report: ' ' } } },
    '/screws/allowable/report',
    /It takes text/,
  ],
  ['a screw toed in', { screws: { driven: 'toe' } }, '/screws/driven', /Only nails are toed in/],
  [
    'an unknown fastener',
    { screws: { fastener: 'lag-screw-1/5' } },
    '/screws/fastener',
    /a fastener, or "listed"/,
  ],
  ['an unknown wood', { wall: { species: 'spruce-pine-fur' } }, '/wall/species', /a framing wood/],
  ['an unknown metal', { plate: { metal: 'unobtainium' } }, '/plate/metal', /a metal/],
  [
    'the end of a wall of masonry',
    { wall: { framing: 'masonry', grain: 'end' } },
    '/wall/grain',
    /has an end/,
  ],
  [
    'studs that overlap',
    { position: '0 in', wall: { studs: { at: ['0 in', '1 in'] } } },
    '/wall/studs/at/1',
    /overlaps stud 1: studs are 1-1\/2 in wide/,
  ],
  [
    'studs closer than they are wide',
    { position: '0 in', wall: { studWidth: '6 in', studs: { first: '0 in', spacing: '5 in' } } },
    '/wall/studs/spacing',
    /would overlap/,
  ],
  [
    'studs out of order',
    { position: '0 in', wall: { studs: { at: ['0 in', '32 in', '16 in'] } } },
    '/wall/studs/at/2',
    /left of stud 2/,
  ],
  [
    'studs, and no place of the plate among them',
    { wall: { studs: { at: ['0 in', '16 in'] } } },
    '/position',
    /the place of the plate among them/,
  ],
  ['a load that does nothing', { loads: [{ name: 'Air' }] }, '/loads/0/shear', /a shear, a pull or a couple/],
  ['a load of nothing', { loads: [{ shear: '0 lbf' }] }, '/loads/0/shear', /a shear, a pull or a couple/],
  ['no load at all', { loads: [] }, '/loads', /1 to 40 loads/],
  ['a bare number', { loads: [{ shear: '60' }] }, '/loads/0/shear', /unit/],
  [
    'a force as a couple',
    { loads: [{ couple: '60 lbf' }] },
    '/loads/0/couple',
    /"lbf" is not a unit this field knows/,
  ],
  ['a plate of no width', { plate: { width: '0 in' } }, '/plate/width', /outside what this field takes/],
];

describe('a wall fixing with something wrong in it', () => {
  it.each(conflicts)('%s', (_, changes, path, message) => {
    expect(errorsOf(fixing(changes))).toEqual([[path, expect.stringMatching(message)]]);
  });

  it('tells everything at once: single fields, what does not fit together, unknown names', () => {
    const document = fixing({
      plate: { width: 'wide' },
      screws: { fastener: 'nail', thread: '4 in' },
      loads: [{ shear: 'heavy' }],
    });
    expect(errorsOf(document).map(([path]) => path)).toEqual([
      '/plate/width',
      '/loads/0/shear',
      '/screws/thread',
      '/screws/fastener',
    ]);
  });

  it('a quantity that is missing is not called a number without quotation marks', () => {
    const { height: _, ...plate } = fixing().plate;
    expect(errorsOf({ ...fixing(), plate })).toEqual([
      [
        '/plate/height',
        'It is missing. It takes a length with its unit, such as 96 in, 8 ft 4-1/2 in or 2.4 m.',
      ],
    ]);
  });

  it('the fields of a shelf are no fields of it', () => {
    expect(errorsOf({ ...fixing(), board: {} }).map(([path]) => path)).toEqual(['/board']);
  });

  it('needs its plate, screws, wall and loads', () => {
    expect(errorsOf({ schema: 1, element: 'wall-fixing' }).map(([path]) => path)).toEqual([
      '/plate',
      '/screws',
      '/wall',
      '/loads',
    ]);
  });
});
