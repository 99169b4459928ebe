import type { CheckState } from '../check/check-state.ts';
import type { Typesetter } from '../typeset/index.ts';
import { answerView, type AnswerView } from './answer.ts';
import { checkForm, type CheckForm } from './form/index.ts';
import { pageFrame, type PageFrame } from './page.ts';

export interface CheckPage extends PageFrame {
  readonly form: Omit<CheckForm, 'labels'>;
  readonly method: string;
  readonly answer: AnswerView;
}

/** The page of a check: its form on one side, the answer on the other. */
export function checkPage(state: CheckState, typesetter: Typesetter): CheckPage {
  const { texts, reading, answer, at } = state;
  const form = checkForm({
    texts,
    reading,
    at,
    errors: answer.ok ? [] : answer.errors,
    sound: answer.ok ? answer.document : answer.sound,
  });
  const { labels: _, ...shown } = form;
  return {
    ...pageFrame(form.heading),
    form: shown,
    method: state.isTooLong ? 'post' : 'get',
    answer: answerView(state, form, typesetter),
  };
}
