import { z } from 'zod';
import { bracketShelfSchema, type BracketShelfDocument } from './bracket-shelf.ts';
import { counterRunSchema, type CounterRunDocument } from './counter-run.ts';
import { counterOverhangSchema, type CounterOverhangDocument } from './counter-overhang.ts';
import { chosenSchema, isRecord } from './parts.ts';
import { wallFixingSchema, type WallFixingDocument } from './wall-fixing.ts';

/** What is left of a value where every unsound part is undefined. */
type Sound<T> = T extends readonly (infer Item)[]
  ? readonly (Sound<Item> | undefined)[]
  : T extends object
    ? { readonly [Key in keyof T]?: Sound<T[Key]> }
    : T;

type SoundElement<T extends { readonly element: string }> = Sound<Omit<T, 'element'>> &
  Readonly<Pick<T, 'element'>>;

/** Documents of which only the sound parts are there. */
export type SoundShelf = SoundElement<BracketShelfDocument>;
export type SoundWallFixing = SoundElement<WallFixingDocument>;
export type SoundCounterOverhang = SoundElement<CounterOverhangDocument>;
export type SoundCounterRun = SoundElement<CounterRunDocument>;
export type SoundDocument = SoundShelf | SoundWallFixing | SoundCounterOverhang | SoundCounterRun;

/** What is sound in a bracket shelf that has errors, so that the parts can still be held against each other. */
export function soundShelf(value: unknown): SoundShelf {
  return { ...(sound(bracketShelfSchema, value) ?? {}), element: 'bracket-shelf' };
}

/** The same of a wall fixing. */
export function soundWallFixing(value: unknown): SoundWallFixing {
  return { ...(sound(wallFixingSchema, value) ?? {}), element: 'wall-fixing' };
}

/** The same of a counter overhang. */
export function soundCounterOverhang(value: unknown): SoundCounterOverhang {
  return { ...(sound(counterOverhangSchema, value) ?? {}), element: 'counter-overhang' };
}

/** The same of a counter run. */
export function soundCounterRun(value: unknown): SoundCounterRun {
  return { ...(sound(counterRunSchema, value) ?? {}), element: 'counter-run' };
}

function sound(schema: z.core.$ZodType, value: unknown): unknown {
  const chosen = chosenSchema(schema, value);
  if (chosen === undefined || value === undefined) return undefined;
  if (chosen instanceof z.ZodObject && isRecord(value)) {
    return Object.fromEntries(
      Object.entries<z.core.$ZodType>(chosen.shape).map(([key, child]) => [
        key,
        Object.hasOwn(value, key) ? sound(child, value[key]) : undefined,
      ]),
    );
  }
  if (chosen instanceof z.ZodArray && Array.isArray(value)) {
    return value.map((item) => sound(chosen.element, item));
  }
  const parsed = z.safeParse(chosen, value);
  return parsed.success ? parsed.data : undefined;
}
