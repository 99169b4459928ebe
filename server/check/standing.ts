import { version } from '../../calc/version.ts';
import { written } from '../form/index.ts';
import type { Standing } from '../store/tables.ts';
import type { CheckState, SentForm } from './check-state.ts';

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
