import { LRUCache } from 'lru-cache';
import { check } from '../../calc/index.ts';
import type { Texts } from '../form/index.ts';
import { answerOf, refusalOf, type Answer } from './answer-to.ts';
import { sentForm, withAnswer, type CheckState, type SentForm } from './check-state.ts';
import { knownAnswer } from './known-answers.ts';

/**
 * Checks a form in place, for threads, where nobody else waits.
 *
 * @param waysOut whether ways out are looked for; paper has no place for them
 */
export function checkInPlace(filledIn: Texts, waysOut = true): CheckState {
  return stateInPlace(sentForm(filledIn), waysOut);
}

/** The same for a form that was read. */
export function stateInPlace(form: SentForm, waysOut = true): CheckState {
  return withAnswer(form, answerTo(form.reading.document, waysOut));
}

/** Each is about 100 kB; what was saved is shown at once. */
const lately = new LRUCache<string, Answer>({ max: 20 });

/** The same, ways out with it, and remembered for whoever shows it next. */
export function rememberedInPlace(form: SentForm): CheckState {
  const { document } = form.reading;
  const key = JSON.stringify(document);
  const answer = lately.get(key) ?? answerTo(document, true);
  lately.set(key, answer);
  return withAnswer(form, answer);
}

function answerTo(untrusted: unknown, waysOut: boolean): Answer {
  try {
    return answerOf(untrusted, knownAnswer(untrusted) ?? check(untrusted, { waysOut }));
  } catch (error) {
    return answerOf(untrusted, refusalOf(error));
  }
}
