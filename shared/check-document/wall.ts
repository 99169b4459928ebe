import { z } from 'zod';
import { choiceField, listField, quantityField, textField } from './field.ts';
import { positionRange } from './board.ts';

const place = quantityField(
  'length',
  positionRange,
  'Place of a stud centre line from the left end of the board',
);

const studs = z.union(
  [
    z.strictObject({
      first: place,
      spacing: quantityField('length', { from: 0.1, to: 2 }, 'Spacing of the studs, centre to centre'),
    }),
    z.strictObject({ at: listField(place, { from: 1, to: 60 }, 'places of stud centre lines') }),
  ],
  { error: 'It takes { "first", "spacing" } for a regular grid, or { "at": [...] } for measured places.' },
);

/** The wall behind the shelf. */
export const wallSchema = z.strictObject({
  framing: choiceField(
    ['wood-stud', 'blocking', 'sheathing', 'metal-stud', 'masonry', 'concrete', 'hollow'],
    'What the screws go into',
  ).optional(),
  species: textField(80, 'Species of the framing, or the panel of a sheathing').optional(),
  grade: textField(40, 'Grade of the studs; "Stud" where nothing is said').optional(),
  grain: choiceField(
    ['side', 'end'],
    'Whether the screws go into the side of the wood, across its fibres, or into its end',
  ).optional(),
  sheathing: quantityField(
    'length',
    { from: 0.003, to: 0.1 },
    'Thickness of the sheathing the screws go into',
  ).optional(),
  blockingHeight: quantityField(
    'length',
    { from: 0.01, to: 1.5 },
    'Height of the blocking the screws go into, up the wall',
  ).optional(),
  height: quantityField('length', { from: 1, to: 8 }, 'Height of the wall, floor to ceiling').optional(),
  bracketHeight: quantityField(
    'length',
    { from: 0, to: 8 },
    'Height of the brackets above the floor',
  ).optional(),
  bearing: z
    .strictObject({
      allowable: quantityField(
        'stress',
        { from: 1e3, to: 1e8 },
        'What the covering may carry in bearing under the plate',
      ),
      source: textField(200, 'Who states it'),
    })
    .optional(),
  studs: studs.optional(),
  studWidth: quantityField('length', { from: 0.01, to: 0.3 }, 'Width of a stud, along the wall').optional(),
  studDepth: quantityField('length', { from: 0.01, to: 0.6 }, 'Depth of a stud, into the wall').optional(),
  coverings: listField(
    z.strictObject({
      material: textField(40, 'What covers the wall'),
      thickness: quantityField('length', { from: 0, to: 0.1, above: true }, 'Thickness of the covering'),
    }),
    { from: 0, to: 6 },
    'coverings of the framing, in any order',
  ).optional(),
});
