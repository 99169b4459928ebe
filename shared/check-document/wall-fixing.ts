import { z } from 'zod';
import { positionRange } from './board.ts';
import { choiceField, listField, quantityField, textField } from './field.ts';
import { headSchema } from './head.ts';
import { durations } from './load.ts';
import { plateSchema, screwsSchema } from './screws.ts';
import { wallSchema } from './wall.ts';

const forceRange = { from: 0, to: 50_000 };

/** What acts on the plate, about the wall finish; together with every load that lasts as long or longer. */
const fixingLoad = z.strictObject({
  name: textField(80, 'What the load is').optional(),
  shear: quantityField('force', forceRange, 'Force along the wall, down').optional(),
  pull: quantityField('force', forceRange, 'Force away from the wall').optional(),
  couple: quantityField(
    'couple',
    { from: 0, to: 50_000 },
    'Couple that pulls the upper end of the plate from the wall',
  ).optional(),
  duration: choiceField(durations, 'How long the load lasts in all').optional(),
});

/** A plate screwed to a wall, with given forces on it. */
export const wallFixingSchema = z.strictObject({
  ...headSchema,
  element: z.literal('wall-fixing'),
  plate: plateSchema,
  screws: screwsSchema,
  wall: wallSchema,
  position: quantityField(
    'length',
    positionRange,
    'Place of the middle of the plate along the wall, measured as the studs are',
  ).optional(),
  loads: listField(fixingLoad, { from: 1, to: 40 }, 'loads on the plate'),
});

/** As it is written: quantities are text. */
export type WallFixingInput = z.input<typeof wallFixingSchema>;
/** As it is computed with: quantities are SI numbers. */
export type WallFixingDocument = z.output<typeof wallFixingSchema>;
