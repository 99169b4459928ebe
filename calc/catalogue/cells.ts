import { z } from 'zod';

/** What the cells of the tables may hold. Numbers under a unit are already SI numbers when they come here. */

/** Some text. */
export const text = z.string().min(1, { error: 'is empty' });

/** A kebab-case name, with a `/` where a fraction is in it. */
export const id = z.string().regex(/^[a-z0-9]+(?:[-/][a-z0-9]+)*$/, { error: 'is not a name in kebab case' });

/** An id, or nothing. */
export const idOrNone = z.union([id, z.literal('').transform(() => null)]);

/** Names separated by semicolons. */
export const names = z.string().transform((cell) =>
  cell
    .split(';')
    .map((name) => name.trim())
    .filter((name) => name !== ''),
);

/** An SI number above zero. */
export const positive = z.number({ error: 'is empty' }).positive({ error: 'is not above zero' });

/** An SI number above zero, or nothing printed. */
export const positiveOrNone = positive.nullable();

const decimal = /^\d+(?:\.\d+)?$/;

/** A number without a unit, above zero. */
export const ratio = z.string().regex(decimal, { error: 'is not a number' }).transform(Number).pipe(positive);

/** A number without a unit, zero or above. */
export const share = z
  .string()
  .regex(decimal, { error: 'is not a number' })
  .transform(Number)
  .pipe(z.number().max(1, { error: 'is more than 1' }));

/** A number without a unit, or nothing printed. */
export const ratioOrNone = z.union([z.literal('').transform(() => null), ratio], {
  error: 'is neither a number nor empty',
});

/** Yes, or an empty cell for no. */
export const flag = z
  .enum(['yes', ''], { error: 'is neither "yes" nor empty' })
  .transform((cell) => cell === 'yes');

/** The two columns that end every table. */
export const sourced = { source: text, provenance: text };
