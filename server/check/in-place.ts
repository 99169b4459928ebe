import { check } from '../../calc/index.ts';
import type { Texts } from '../form/index.ts';
import { answerOf, refusalOf, type Answer } from './answer-to.ts';
import { sentForm, withAnswer, type CheckState } from './check-state.ts';
import { knownAnswer } from './known-answers.ts';

/**
 * Checks a form in place, for threads, where nobody else waits.
 *
 * @param waysOut whether ways out are looked for; paper has no place for them
 */
export function checkInPlace(filledIn: Texts, waysOut = true): CheckState {
  const form = sentForm(filledIn);
  return withAnswer(form, answerTo(form.reading.document, waysOut));
}

function answerTo(untrusted: unknown, waysOut: boolean): Answer {
  try {
    return answerOf(untrusted, knownAnswer(untrusted) ?? check(untrusted, { waysOut }));
  } catch (error) {
    return answerOf(untrusted, refusalOf(error));
  }
}
