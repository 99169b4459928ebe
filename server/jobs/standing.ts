import { version } from '../../calc/version.ts';
import { checkState, type CheckState } from '../check/check-state.ts';
import { textsOf, written } from '../form/index.ts';
import type { Standing } from '../store/tables.ts';

/** How a check stands, in the few words a list shows. */
export function standingOf({ texts, reading, answer }: CheckState): Standing {
  const element = reading.document['element'];
  const head = {
    element: typeof element === 'string' ? element : '',
    title: written(texts, 'title'),
    tool: version,
  };
  if (!answer.ok) return { ...head, standing: 'unfinished', governs: '', used: null };
  const { verdict, governing, checks } = answer.result;
  const governs = checks.find(({ id }) => id === governing);
  return { ...head, standing: verdict, governs: governs?.title ?? '', used: governs?.ratio ?? null };
}

/** A form that was kept, worked out as it is now. */
export function stateOf(form: string): CheckState {
  return checkState(textsOf(form));
}
