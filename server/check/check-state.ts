import {
  act,
  queryOf,
  readForm,
  switchElement,
  switchUnits,
  unknownNames,
  withStarts,
  written,
  type FormReading,
  type Texts,
} from '../form/index.ts';
import type { Answer } from './answer-to.ts';

/** A form as it stands once what it says has been done, and what was read from it. */
export interface SentForm {
  readonly texts: Texts;
  readonly reading: FormReading;
  /** Names of fields that no check has. */
  readonly unknown: readonly string[];
  /** The field or button that gets the focus; empty for none. */
  readonly at: string;
  /** What stands after `?` in every address of this check. */
  readonly query: string;
  /** Whether that is too long for an address. */
  readonly isTooLong: boolean;
}

/** A check as it stands: its form, and what came of that. */
export interface CheckState extends SentForm {
  readonly answer: Answer;
}

/** Servers and browsers both take addresses up to here; ours takes 64 kB of header in all. */
export const longestQuery = 48_000;

/** Does what the form says, in the order in which it says it, and reads what is left. */
export function sentForm(filledIn: Texts): SentForm {
  const sent = switchElement(filledIn);
  const pressed = act(withStarts(switchUnits(sent)), written(sent, 'do'));
  const reading = readForm(pressed.texts);
  const query = queryOf(reading.entries);
  return {
    texts: pressed.texts,
    reading,
    unknown: unknownNames(sent),
    at: pressed.at === '' ? written(sent, 'at') : pressed.at,
    query,
    isTooLong: query.length > longestQuery,
  };
}

/** A form with the answer to it; fields that no check has are errors beside those of the document. */
export function withAnswer(form: SentForm, answer: Answer): CheckState {
  if (form.unknown.length === 0) return { ...form, answer };
  const errors = form.unknown.slice(0, 20).map((name) => ({
    path: '',
    message: `The address has a field that no check has: "${name.slice(0, 80)}". Nothing was read from it.`,
  }));
  const found = answer.ok
    ? { ok: false as const, errors, sound: answer.document }
    : { ok: false as const, errors: [...errors, ...answer.errors], sound: answer.sound };
  return { ...form, answer: found };
}
