import { z } from 'zod';
import { boardSchema } from './board.ts';
import { bracketsSchema } from './bracket.ts';
import { headSchema } from './head.ts';
import { limitField } from './limit.ts';
import { loadsSchema } from './load.ts';
import { wallSchema } from './wall.ts';

/** A board on brackets along a wall. */
export const bracketShelfSchema = z.strictObject({
  ...headSchema,
  element: z.literal('bracket-shelf'),
  board: boardSchema,
  brackets: bracketsSchema,
  wall: wallSchema.optional(),
  loads: loadsSchema.optional(),
  limits: z.strictObject({ live: limitField.optional(), longTerm: limitField.optional() }).optional(),
});

/** As it is written: quantities are text. */
export type BracketShelfInput = z.input<typeof bracketShelfSchema>;
/** As it is computed with: quantities are SI numbers. */
export type BracketShelfDocument = z.output<typeof bracketShelfSchema>;
