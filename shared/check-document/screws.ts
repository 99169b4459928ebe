import { z } from 'zod';
import { choiceField, listField, quantityField, textField, wholeNumberField } from './field.ts';

/** Sizes of metal parts. */
export const metalPart = { from: 0.0005, to: 0.1 };

/** Fasteners the tables know, by kind and size. */
export const fastener = textField(40, 'Which fastener: see the catalogue');
export const screwLength = quantityField('length', { from: 0.005, to: 0.3 }, 'Length of the screw');

/** The plate of a bracket, or a plate alone, on the wall. */
export const plateSchema = z.strictObject({
  height: quantityField('length', { from: 0.01, to: 1.5 }, 'Height of the plate on the wall'),
  width: quantityField('length', { from: 0.005, to: 0.5 }, 'Width of the plate'),
  thickness: quantityField('length', metalPart, 'Thickness of the plate').optional(),
  metal: textField(
    40,
    'Metal of the plate, where its bending is to be checked: see the catalogue',
  ).optional(),
});

const allowable = z
  .strictObject({
    tension: quantityField('force', { from: 0, to: 100_000 }, 'Allowable pull on one screw or anchor'),
    shear: quantityField('force', { from: 0, to: 100_000 }, 'Allowable shear on one screw or anchor'),
    report: textField(200, 'The report or approval the two values stand in'),
  })
  .meta({
    description: 'Allowable values of a listed screw or an approved anchor, as its report gives them',
  });

/** The screws of one plate into the wall. */
export const screwsSchema = z.strictObject({
  fastener: fastener.meta({
    description: 'Which fastener: see the catalogue; "listed" with its allowable values',
  }),
  length: screwLength,
  thread: quantityField(
    'length',
    { from: 0.003, to: 0.3 },
    'Length of the thread, where it is known',
  ).optional(),
  driven: choiceField(
    ['straight', 'toe'],
    'Whether nails are driven straight or toed in at a slant',
  ).optional(),
  heights: listField(
    quantityField('length', { from: 0, to: 1.5 }, "Height of a screw above the plate's lower end"),
    { from: 1, to: 12 },
    'heights',
  ),
  perHeight: wholeNumberField(1, 4, 'How many screws stand side by side at each height').optional(),
  across: quantityField(
    'length',
    { from: 0.003, to: 0.5 },
    'Distance between the outer screws at one height',
  ).optional(),
  allowable: allowable.optional(),
});
