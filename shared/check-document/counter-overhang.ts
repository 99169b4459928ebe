import { z } from 'zod';
import { finishSchema } from './counter-finish.ts';
import { areaLoadFields, personFields } from './counter-loads.ts';
import { counterPropSchema } from './counter-prop.ts';
import { choiceField, kindAdvice, listField, numberField, quantityField, textField } from './field.ts';
import { headSchema } from './head.ts';
import { limitField } from './limit.ts';
import { fastener, screwLength } from './screws.ts';

/** No counter is longer than a kitchen or deeper than two people can reach across. */
const placeRange = { from: 0, to: 6 };
const lineOfPlate = (meaning: string) => quantityField('length', placeRange, meaning);

const top = z.strictObject({
  build: choiceField(['edge-glued-staves', 'solid-plank', 'panel'], 'How the top is built').optional(),
  material: textField(80, 'The wood or panel of the top, by its usual name').optional(),
  appearance: choiceField(
    ['nearly-clear', 'small-knots', 'knotty'],
    'How clear the staves are; it sets the strength ratio of a clear-wood value',
  ).optional(),
  staves: choiceField(
    ['along', 'across'],
    'Whether the staves, or the face grain of a panel, run along the length or across it',
  ).optional(),
  sheets: numberField(1, 4, 'Of how many equal sheets a panel top is laid, one on another').optional(),
  bond: choiceField(['none', 'structural'], 'Whether those sheets are glued to act as one').optional(),
  finish: finishSchema.optional(),
  length: quantityField('length', { from: 0.3, to: 6 }, 'Length of the top, along the stool edge'),
  depth: quantityField('length', { from: 0.2, to: 2.5 }, 'Depth of the top, back edge to stool edge'),
  thickness: quantityField('length', { from: 0.012, to: 0.15 }, 'Thickness of the top'),
});

const rail = z
  .strictObject({
    thickness: quantityField(
      'length',
      { from: 0.01, to: 0.15 },
      'Thickness of the rail or panel under the top',
    ),
    height: quantityField(
      'length',
      { from: 0.01, to: 0.6 },
      'Height of the front rail, where it spans between panels; of the back rail too, where the top stands out there',
    ).optional(),
    material: textField(80, 'The wood of the front rail').optional(),
  })
  .meta({ description: 'The edges of the base that the top lies on' });

const base = z.strictObject({
  from: lineOfPlate('Left face of the base, from the left end of the top'),
  to: lineOfPlate('Right face of the base, from the left end of the top'),
  back: lineOfPlate('Back face of the base, from the back edge of the top'),
  front: lineOfPlate('Face of the base on the stool side, from the back edge of the top'),
  panels: listField(
    lineOfPlate('Place of an upright panel from the left end of the top'),
    { from: 0, to: 20 },
    'places of upright panels that run from back to front',
  ).optional(),
  rail: rail.optional(),
  weight: quantityField(
    'force',
    { from: 0, to: 20_000 },
    'Weight of the empty base, without the top',
  ).optional(),
  weightAt: lineOfPlate('Where that weight acts, from the back edge of the top').optional(),
  foot: lineOfPlate(
    'Outer foot on the stool side, about which the base would tip; the toe recess counts',
  ).optional(),
  height: quantityField(
    'length',
    { from: 0.3, to: 1.5 },
    'Height of the base, floor to underside of the top',
  ).optional(),
  heldToFloor: z
    .boolean({ error: 'It takes true or false.' })
    .meta({ description: 'Whether the base is fastened to the floor' })
    .optional(),
  anchorPull: quantityField(
    'force',
    { from: 0, to: 100_000 },
    'Allowable pull of the floor fasteners along the back of the base, all together',
  ).optional(),
  anchorPullFront: quantityField(
    'force',
    { from: 0, to: 100_000 },
    'Allowable pull of the floor fasteners along the outer foot on the stool side, all together',
  ).optional(),
  push: quantityField('force', { from: 0, to: 2_000 }, 'A sideways push at the top of the base').optional(),
});

const place = z
  .tuple([lineOfPlate('Place along the length'), lineOfPlate('Place from the back edge')], {
    error: 'It takes two lengths: the place along the length and the place from the back edge.',
  })
  .meta({ description: 'A place on the top: along the length, and from the back edge' });

const screws = z.strictObject({
  fastener: fastener.optional(),
  length: screwLength,
  through: quantityField(
    'length',
    { from: 0.001, to: 0.15 },
    'Thickness of the rail or cleat each screw goes through',
  ).optional(),
  cleat: textField(80, 'The wood of that rail or cleat').optional(),
  at: listField(place, { from: 1, to: 60 }, 'places of screws up into the top'),
});

const areaLoad = z.strictObject({ kind: z.literal('area'), ...areaLoadFields });
const personLoad = z.strictObject({
  kind: z.literal('person'),
  ...personFields('How hard one person leans or sits on an edge'),
  at: lineOfPlate(
    'Where on the stool edge the person stays, from the left end; anywhere where nothing is said',
  ).optional(),
});
const load = z.discriminatedUnion('kind', [areaLoad, personLoad], {
  error: kindAdvice('kind', ['area', 'person']),
});

/** A counter top that runs past its base, for stools. x runs along the stool edge from its left end, y from the back edge. */
export const counterOverhangSchema = z.strictObject({
  ...headSchema,
  element: z.literal('counter-overhang'),
  top,
  base,
  screws: screws.optional(),
  props: listField(counterPropSchema, { from: 0, to: 20 }, 'props under the overhang').optional(),
  loads: listField(load, { from: 0, to: 4 }, 'loads: what is served on the top, and people').optional(),
  limits: z.strictObject({ live: limitField.optional(), longTerm: limitField.optional() }).optional(),
});

/** As it is written: quantities are text. */
export type CounterOverhangInput = z.input<typeof counterOverhangSchema>;
/** As it is computed with: quantities are SI numbers. */
export type CounterOverhangDocument = z.output<typeof counterOverhangSchema>;
