import { version } from '../../calc/version.ts';
import { sentForm, studiedState, type CheckState, type SentForm } from '../check/check-state.ts';
import type { Study } from '../check/study.ts';
import { textsOf, written } from '../form/index.ts';
import type { Standing } from '../store/tables.ts';

/** How a check stands, in the few words a list shows. */
export function standingOf(state: CheckState): Standing {
  const { answer } = state;
  const unfinished = { ...notWorkedOut(state), tool: version };
  if (!answer.ok) return unfinished;
  const { verdict, governing, checks } = answer.result;
  const governs = checks.find(({ id }) => id === governing);
  return { ...unfinished, standing: verdict, governs: governs?.title ?? '', used: governs?.ratio ?? null };
}

/** How a check stands that could not be worked out: that is done when a list shows it. */
export function notWorkedOut({ texts, reading }: SentForm): Standing {
  const element = reading.document['element'];
  return {
    element: typeof element === 'string' ? element : '',
    title: written(texts, 'title'),
    tool: '',
    standing: 'unfinished',
    governs: '',
    used: null,
  };
}

/** A form that was kept, worked out as it is now; nobody looks at its ways out. */
export function stateOf(study: Study, form: string): Promise<CheckState> {
  return studiedState(study, sentForm(textsOf(form)), { waysOut: false });
}
