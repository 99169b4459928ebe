import { z } from 'zod';
import { kindAdvice, quantityField, textField } from './field.ts';
import { metalPart } from './screws.ts';

const place = { from: 0, to: 6 };
const at = quantityField('length', place, 'Place of the prop from the left end of the top');
const to = quantityField('length', place, 'Where it ends under the overhang, from the back edge of the top');
const allowable = quantityField('force', { from: 0, to: 50_000 }, 'Load it is rated for');
const gives = quantityField(
  'length',
  { from: 0, to: 0.05 },
  'How far its end moves under that load',
).optional();
const source = textField(200, 'Who states the rating').optional();

const flatBar = z.strictObject({
  kind: z.literal('flat-bar'),
  at,
  from: quantityField('length', place, 'Where the bar begins, from the back edge of the top'),
  to,
  width: quantityField('length', { from: 0.005, to: 0.3 }, 'Width of the bar'),
  thickness: quantityField('length', metalPart, 'Thickness of the bar, up and down'),
  metal: textField(40, 'Grade of steel: see the catalogue').optional(),
});
const bracket = z.strictObject({
  kind: z.literal('bracket'),
  at,
  to,
  allowable: allowable.optional(),
  gives,
  source,
});
const corbel = z.strictObject({
  kind: z.literal('corbel'),
  at,
  to,
  allowable: allowable.optional(),
  gives,
  source,
});
const leg = z.strictObject({
  kind: z.literal('leg'),
  at,
  to: quantityField('length', place, 'Where it stands, from the back edge of the top'),
  allowable: allowable.optional(),
  source,
});

/** Something under the overhang that carries it. */
export const counterPropSchema = z.discriminatedUnion('kind', [flatBar, bracket, corbel, leg], {
  error: kindAdvice('kind', ['flat-bar', 'bracket', 'corbel', 'leg']),
});
