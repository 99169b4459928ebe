import { answerOf, refusalOf } from './answer-to.ts';
import { withAnswer, type CheckState, type SentForm } from './check-state.ts';
import type { CheckWish, Study } from './study.ts';

/**
 * Has a form that was sent checked in the study, so that nobody else waits for it.
 *
 * @throws ThreadError where no answer comes
 */
export async function studiedState(study: Study, form: SentForm, wish?: CheckWish): Promise<CheckState> {
  const { document } = form.reading;
  return withAnswer(form, answerOf(document, await study.check(document, wish).catch(refusalOf)));
}
