import { listed, lowerFirst } from '../words.ts';
import { z } from 'zod';
import {
  parseQuantity,
  showEnd,
  unitAdvice,
  unitOfKind,
  type Kind,
  type UnitSystem,
} from '../quantity/index.ts';

/** The range a field takes, in SI, and how it is written in a message. */
interface Range {
  readonly from: number;
  readonly to: number;
  readonly above?: boolean;
}

/**
 * A quantity with its unit, as text in the document and as an SI number in the checked document.
 *
 * @param kind what it is a quantity of
 * @param range the smallest and largest value taken, in SI; `above` leaves the smallest out
 * @param meaning one line for the published schema
 * @param other what a quantity of another kind is told, where people write one
 */
export function quantityField(
  kind: Kind,
  range: Range,
  meaning: string,
  other?: { readonly kind: Kind; readonly told: string },
) {
  const unit = unitOfKind[kind];
  const ends = (system: UnitSystem): string =>
    `${showEnd(range.from, unit, system, 'up')} to ${showEnd(range.to, unit, system, 'down')}`;
  const bounds = `${range.above ? 'more than' : 'from'} ${ends('inch-pound')} (${ends('metric')})`;
  return z
    .string({
      // What is missing, as in a form, is no number that should have been text.
      error: ({ input }) => `It takes ${unitAdvice[kind]}${input === undefined ? '' : ', written as text'}.`,
    })
    .transform((text, context) => {
      const parsed = parseQuantity(text, kind);
      if (!parsed.ok) {
        const isOther = other !== undefined && parseQuantity(text, other.kind).ok;
        const message = isOther ? `"${text}" ${other.told} It takes ${unitAdvice[kind]}.` : parsed.message;
        context.addIssue({ code: 'custom', message });
        return z.NEVER;
      }
      const tooLow = range.above ? parsed.value <= range.from : parsed.value < range.from;
      if (tooLow || parsed.value > range.to) {
        context.addIssue({
          code: 'custom',
          message: `"${text}" is outside what this field takes: ${bounds}.`,
        });
        return z.NEVER;
      }
      return parsed.value;
    })
    .meta({ description: `${meaning}; ${unitAdvice[kind]}`, 'x-quantity': kind });
}

/** A piece of text that a person reads, on one line: a title, a name. */
export function textField(longest: number, meaning: string) {
  const error = `It takes text (${lowerFirst(meaning)}).`;
  return z
    .string({ error })
    .trim()
    .min(1, { error })
    .max(longest, { error: `It takes at most ${longest} characters.` })
    .regex(/^\P{Cc}*$/u, { error: 'It takes plain text on one line, without control characters.' })
    .meta({ description: meaning });
}

/** A pure number between two others, both taken. */
export function numberField(from: number, to: number, meaning: string) {
  const error = `It takes a number from ${from} to ${to}, without a unit.`;
  return z.number({ error }).min(from, { error }).max(to, { error }).meta({ description: meaning });
}

/** A whole number between two others, both taken. */
export function wholeNumberField(from: number, to: number, meaning: string) {
  const error = `It takes a whole number from ${from} to ${to}.`;
  return z.int({ error }).min(from, { error }).max(to, { error }).meta({ description: meaning });
}

/** One of a closed set of words. */
export function choiceField<const T extends readonly [string, ...string[]]>(words: T, meaning: string) {
  return z.enum(words, { error: `It takes ${quoted(words)}.` }).meta({ description: meaning });
}

/**
 * A list of alike items.
 *
 * @param item the schema of one
 * @param count the fewest and the most it takes; `few` says why there can't be fewer, where that helps
 * @param items what one list holds, in the plural: "places of brackets"
 */
export function listField<Item extends z.ZodType>(
  item: Item,
  count: { readonly from: number; readonly to: number; readonly few?: string },
  items: string,
) {
  const error = `It takes a list of ${count.from === 0 ? 'at most' : `${count.from} to`} ${count.to} ${items}.`;
  return z
    .array(item, { error })
    .min(count.from, { error: count.few ?? error })
    .max(count.to, { error })
    .meta({ description: `A list of ${items}` });
}

/** What a group of fields takes whose other fields depend on one of them. */
export function kindAdvice(key: string, words: readonly string[]) {
  return (issue: { readonly code?: string | undefined }): string =>
    issue.code === 'invalid_union'
      ? `It takes ${quoted(words)}.`
      : `It takes a group of fields, of which "${key}" is ${quoted(words)}.`;
}

/** `a, b or c`, each in quotation marks. */
export function quoted(words: readonly string[], last: 'or' | 'and' = 'or'): string {
  return listed(
    words.map((word) => `"${word}"`),
    last,
  );
}
