import { z } from 'zod';
import { finishSchema } from './counter-finish.ts';
import { areaLoadFields, personFields } from './counter-loads.ts';
import { choiceField, kindAdvice, listField, numberField, quantityField, textField } from './field.ts';
import { headSchema } from './head.ts';
import { limitField } from './limit.ts';

const substrate = z.strictObject({
  material: textField(80, 'The panel under the tile or stone, by its usual name').optional(),
  thickness: quantityField('length', { from: 0.006, to: 0.15 }, 'Thickness of all its sheets together'),
  sheets: numberField(1, 4, 'Of how many equal sheets it is laid, one on another').optional(),
  bond: choiceField(['none', 'structural'], 'Whether those sheets are glued to act as one').optional(),
  grain: choiceField(
    ['along', 'across'],
    'Whether the face grain runs along the span or across it',
  ).optional(),
});

const areaLoad = z.strictObject({ kind: z.literal('area'), ...areaLoadFields });
const personLoad = z.strictObject({
  kind: z.literal('person'),
  ...personFields('Weight of somebody who stands on the counter'),
});
const load = z.discriminatedUnion('kind', [areaLoad, personLoad], {
  error: kindAdvice('kind', ['area', 'person']),
});

const rail = z
  .strictObject({
    thickness: quantityField('length', { from: 0.01, to: 0.15 }, 'Thickness of each rail'),
    height: quantityField('length', { from: 0.015, to: 0.6 }, 'Height of each rail'),
    material: textField(80, 'The wood of the rails').optional(),
    seat: quantityField(
      'length',
      { from: 0.003, to: 0.3 },
      'How much of each end of a rail, not notched itself, rests on something, as on a cleat or in a notch of the side',
    ).optional(),
  })
  .meta({ description: 'The rails under the long edges, all alike: each a beam between the cabinet sides' });

/** Panels that carry tile or stone over an opening or between cabinet sides. x runs along the span, y from the back edge. */
export const counterRunSchema = z.strictObject({
  ...headSchema,
  element: z.literal('counter-run'),
  substrate,
  opening: quantityField('length', { from: 0.15, to: 3 }, 'Clear span between cabinet sides'),
  depth: quantityField('length', { from: 0.15, to: 1.5 }, 'Depth of the counter, back to front'),
  rails: choiceField(['none', 'front', 'back', 'both'], 'Rails under its long edges').optional(),
  rail: rail.optional(),
  finish: finishSchema.optional(),
  loads: listField(load, { from: 0, to: 4 }, 'loads: what stands on the counter, and a person').optional(),
  bow: z
    .strictObject({
      measured: quantityField(
        'length',
        { from: 0.0001, to: 0.1 },
        'How far the middle of the present counter hangs below a straightedge over its ends',
      ),
    })
    .meta({ description: 'A sag that is there already' })
    .optional(),
  limits: z.strictObject({ live: limitField.optional(), longTerm: limitField.optional() }).optional(),
});

/** As it is written: quantities are text. */
export type CounterRunInput = z.input<typeof counterRunSchema>;
/** As it is computed with: quantities are SI numbers. */
export type CounterRunDocument = z.output<typeof counterRunSchema>;
