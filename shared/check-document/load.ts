import { z } from 'zod';
import {
  choiceField,
  kindAdvice,
  listField,
  numberField,
  quantityField,
  textField,
  wholeNumberField,
} from './field.ts';
import { depthRange, positionRange } from './board.ts';

/** Load duration classes, longest first. */
export const durations = [
  'permanent',
  'ten-years',
  'two-months',
  'seven-days',
  'ten-minutes',
  'impact',
] as const;
export type Duration = (typeof durations)[number];

const sizeRange = { from: 0.0005, to: 2 };
const size = (meaning: string) => quantityField('length', sizeRange, meaning).optional();

/** Things of one sort that stand on the shelf; sizes left out come from the list of common contents. */
const thingSchema = z.strictObject({
  thing: textField(40, 'Which of the common contents: see the catalogue'),
  count: wholeNumberField(1, 10_000, 'How many of them'),
  diameter: size('Outside diameter'),
  width: size('Width or spine thickness'),
  height: size('Height'),
  depth: size('Depth, front to back'),
  wall: size('Thickness of the material'),
  density: quantityField('density', { from: 1, to: 25_000 }, 'Density of the material').optional(),
  fill: numberField(0, 1, 'The share of the inside that is full').optional(),
  fillDensity: quantityField('density', { from: 1, to: 25_000 }, 'Density of what it holds').optional(),
  each: quantityField('mass', { from: 0.001, to: 500 }, 'Weight of one, where it was weighed').optional(),
});

const common = {
  name: textField(80, 'What the load is').optional(),
  duration: choiceField(durations, 'How long the load lasts in all').optional(),
  arrangement: choiceField(
    ['free', 'fixed'],
    'Whether it comes and goes, or is always there in full',
  ).optional(),
  sustained: numberField(0, 1, 'The share of the load that stays for years, and so creeps').optional(),
};
const eccentricity = quantityField(
  'length',
  { from: 0, to: depthRange.to },
  'Distance of the load from the wall finish',
);
const position = quantityField('length', positionRange, 'Distance from the left end of the board');

const things = listField(
  thingSchema,
  { from: 1, to: 30 },
  'sorts of things that make up the load, in place of an amount',
).optional();

const lineLoad = z.strictObject({
  ...common,
  kind: z.literal('line'),
  amount: quantityField('line-load', { from: 0, to: 50_000 }, 'Load for each length of board', {
    kind: 'force',
    told: 'is a weight in all, not one for each length: say so under “Its weight” (in a document, "total").',
  }).optional(),
  total: quantityField(
    'force',
    { from: 0, to: 50_000 },
    'Weight in all, spread evenly from end to end of the load, in place of an amount',
  ).optional(),
  things,
  from: position.optional(),
  to: position.optional(),
  eccentricity: eccentricity.optional(),
});

const areaLoad = z.strictObject({
  ...common,
  kind: z.literal('area'),
  amount: quantityField('area-load', { from: 0, to: 50_000 }, 'Load on each area of the top'),
  from: position.optional(),
  to: position.optional(),
});

const pointLoad = z.strictObject({
  ...common,
  kind: z.literal('point'),
  amount: quantityField('force', { from: 0, to: 50_000 }, 'Weight of it').optional(),
  things,
  at: position,
  eccentricity: eccentricity.optional(),
});

const roamingLoad = z.strictObject({
  ...common,
  kind: z.literal('roaming'),
  amount: quantityField('force', { from: 0, to: 50_000 }, 'Weight of it, anywhere along the front edge'),
});

const loadKinds = ['line', 'area', 'point', 'roaming'] as const;

/** One load on the shelf. */
const loadSchema = z.discriminatedUnion('kind', [lineLoad, areaLoad, pointLoad, roamingLoad], {
  error: kindAdvice('kind', loadKinds),
});

export const loadsSchema = listField(loadSchema, { from: 0, to: 40 }, 'loads');
