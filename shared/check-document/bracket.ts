import { z } from 'zod';
import { choiceField, kindAdvice, listField, numberField, quantityField, textField } from './field.ts';
import { depthRange, positionRange } from './board.ts';
import { fastener, metalPart, plateSchema, screwLength, screwsSchema } from './screws.ts';

const barShape = {
  width: quantityField('length', metalPart, 'Width of the bar, along the board'),
  thickness: quantityField('length', metalPart, 'Thickness of the bar, up and down'),
};

const rated = z.strictObject({
  basis: z.literal('rated'),
  allowable: quantityField('force', { from: 0, to: 50_000 }, 'Load one bracket is rated for').optional(),
  ultimate: quantityField(
    'force',
    { from: 0, to: 200_000 },
    'Load at which one bracket failed on test',
  ).optional(),
  factor: numberField(1, 10, 'Safety factor on a test load').optional(),
  at: quantityField(
    'length',
    { from: 0, to: depthRange.to, above: true },
    'Distance from the wall it was rated at',
  ).optional(),
  source: textField(200, 'Who states the rating').optional(),
});

const strut = z.strictObject({
  at: quantityField(
    'length',
    { from: 0, to: depthRange.to, above: true },
    'Where the strut meets the arm, from the wall',
  ),
  drop: quantityField(
    'length',
    { from: 0, to: 1.5, above: true },
    'How far below the arm the strut meets the wall',
  ),
  ...barShape,
});

const steel = z.strictObject({
  basis: z.literal('steel'),
  metal: textField(40, 'Grade of steel: see the catalogue').optional(),
  ...barShape,
  strut: strut.optional(),
});

const unknown = z.strictObject({
  basis: z.literal('unknown'),
  what: textField(80, 'What it is made of').optional(),
});

const capacitySchema = z.discriminatedUnion('basis', [rated, steel, unknown], {
  error: kindAdvice('basis', ['rated', 'steel', 'unknown']),
});

const boardScrews = z
  .strictObject({
    fastener: fastener.optional(),
    length: screwLength.optional(),
    at: listField(
      quantityField('length', { from: 0, to: depthRange.to }, 'Distance of a screw from the wall'),
      { from: 1, to: 6 },
      'distances of screws from the wall',
    ).optional(),
    armThickness: quantityField(
      'length',
      { from: 0, to: 0.1 },
      'Thickness of the arm the screw goes up through',
    ).optional(),
    armMaterial: textField(80, '"metal", or the species of a wooden arm').optional(),
  })
  .meta({ description: 'Screws up through each arm into the board' });

/** The brackets of a shelf, alike but for their places. */
export const bracketsSchema = z.strictObject({
  positions: listField(
    quantityField('length', positionRange, 'Place of a bracket from the left end'),
    {
      from: 2,
      to: 24,
      few: 'It takes two brackets or more: a board on one bracket has nothing to stop it turning.',
    },
    'places of brackets from the left end',
  ),
  arm: quantityField(
    'length',
    { from: 0.02, to: depthRange.to },
    'How far the arm reaches under the board, from the wall',
  ),
  armWidth: quantityField('length', { from: 0.001, to: 0.3 }, 'Width of the arm under the board').optional(),
  hold: choiceField(
    ['screwed', 'resting'],
    'Whether the arm can pull the board down or only push it up',
  ).optional(),
  capacity: capacitySchema.optional(),
  boardScrews: boardScrews.optional(),
  plate: plateSchema.optional(),
  screws: screwsSchema.optional(),
});
