import { z } from 'zod';
import { choiceField, listField, quantityField, textField, wholeNumberField } from './field.ts';

/** Nothing on a shelf is thinner than a veneer, and no board is longer than a room. */
const lengthRange = { from: 0.3, to: 12 };
export const depthRange = { from: 0.05, to: 1.2 };
const thicknessRange = { from: 0.005, to: 0.15 };
export const positionRange = { from: 0, to: 12 };

const bases = ['clear-wood', 'graded', 'panel'] as const;
const appearances = ['nearly-clear', 'small-knots', 'knotty'] as const;

const material = textField(
  80,
  'What it is made of: a species, a lumber combination or a panel, by its usual name',
);
const basis = choiceField(
  bases,
  'Where its strength comes from: clear-wood tests, a grade stamp, or a panel standard',
);
const appearance = choiceField(
  appearances,
  'How clear the face is; it sets the strength ratio of a clear-wood value',
);
const grade = textField(40, 'The grade stamped on the lumber');

/** A strip glued along an edge of the board. */
const strip = z
  .strictObject({
    material: material.optional(),
    basis: basis.optional(),
    appearance: appearance.optional(),
    grade: grade.optional(),
    height: quantityField('length', thicknessRange, 'Height of the strip'),
    thickness: quantityField('length', thicknessRange, 'Thickness of the strip, front to back'),
    flush: choiceField(['top', 'bottom'], 'Which face of the board the strip is flush with').optional(),
  })
  .meta({ description: 'A strip glued along the front or back edge, full length' });

const box = z
  .strictObject({
    skin: quantityField('length', thicknessRange, 'Thickness of the top skin and of the bottom skin'),
    frameMaterial: material.optional(),
    frameBasis: basis.optional(),
    frameAppearance: appearance.optional(),
    frameGrade: grade.optional(),
    frame: quantityField('length', { from: 0.01, to: 0.3 }, 'Width of each lengthwise frame member'),
    members: wholeNumberField(2, 8, 'How many frame members run along the board').optional(),
  })
  .meta({ description: 'A hollow box: two skins glued to lengthwise frame members' });

const layer = z.strictObject({
  material: material.optional(),
  basis: basis.optional(),
  appearance: appearance.optional(),
  grade: grade.optional(),
  thickness: quantityField('length', thicknessRange, 'Thickness of the layer'),
});

/** The board of a shelf. `depth` leaves out the nosing and the back rail. */
export const boardSchema = z.strictObject({
  material: material.optional(),
  basis: basis.optional(),
  appearance: appearance.optional(),
  grade: grade.optional(),
  length: quantityField('length', lengthRange, 'Length of the board'),
  depth: quantityField('length', depthRange, 'Depth of the board, wall to front, without nosing or rail'),
  thickness: quantityField(
    'length',
    thicknessRange,
    'Thickness of the board; of the whole box where it is one',
  ),
  nosing: strip.optional(),
  rail: strip.optional(),
  box: box.optional(),
  layers: listField(
    layer,
    { from: 2, to: 8 },
    'layers, from the top down; their thicknesses add up to the thickness of the board',
  ).optional(),
  bond: choiceField(['none', 'structural'], 'Whether the layers are glued to act as one').optional(),
  joints: listField(
    quantityField('length', positionRange, 'Place of a joint from the left end'),
    { from: 0, to: 8 },
    'places where one length of board ends and the next begins, each over a bracket',
  ).optional(),
});
