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
import { answerTo, type Answer } from './answer-to.ts';

/** A check as it stands: the form as it was filled in, what was read from it, and what came of that. */
export interface CheckState {
  readonly texts: Texts;
  readonly reading: FormReading;
  readonly answer: Answer;
  /** The field or button that gets the focus; empty for none. */
  readonly at: string;
  /** What stands after `?` in every address of this check. */
  readonly query: string;
  /** Whether that is too long for an address. */
  readonly isTooLong: boolean;
}

/** Servers and browsers both take addresses up to here; ours takes 64 kB of header in all. */
export const longestQuery = 48_000;

/**
 * Does what the form says, in the order in which it says it, and checks what is left.
 *
 * @param waysOut whether ways out are looked for; paper has no place for them
 */
export function checkState(filledIn: Texts, waysOut = true): CheckState {
  const { sent, pressed, reading } = readSent(filledIn);
  const unknown = unknownNames(sent);
  const query = queryOf(reading.entries);
  const answer = withUnknown(answerTo(reading.document, waysOut), unknown);
  const at = pressed.at === '' ? written(sent, 'at') : pressed.at;
  return { texts: pressed.texts, reading, answer, at, query, isTooLong: query.length > longestQuery };
}

/** The document that will be checked of a form as it was sent. */
export function documentOf(filledIn: Texts): unknown {
  return readSent(filledIn).reading.document;
}

function readSent(filledIn: Texts) {
  const sent = switchElement(filledIn);
  const pressed = act(withStarts(switchUnits(sent)), written(sent, 'do'));
  return { sent, pressed, reading: readForm(pressed.texts) };
}

function withUnknown(answer: Answer, unknown: readonly string[]): Answer {
  if (unknown.length === 0) return answer;
  const errors = unknown.slice(0, 20).map((name) => ({
    path: '',
    message: `The address has a field that no check has: "${name.slice(0, 80)}". Nothing was read from it.`,
  }));
  return answer.ok
    ? { ok: false, errors, sound: answer.document }
    : { ok: false, errors: [...errors, ...answer.errors], sound: answer.sound };
}
