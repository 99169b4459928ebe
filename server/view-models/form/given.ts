import type { FormView } from './form-view.ts';
import { fieldPart, type Part } from './model.ts';

/** Whether a group that may be left out is given. */
export function isGiven(form: FormView, group: string): boolean {
  const by = form.written(`${group}.by`);
  return by === 'none' ? false : by === 'given' || form.anyWritten(group);
}

/** The choice whether a group is given. */
export function givenPart(form: FormView, group: string, label: string, isIt: boolean): Part {
  return fieldPart(
    form.choice(`${group}.by`, {
      label,
      options: { none: 'Not described', given: 'Described' },
      chosen: isIt ? 'given' : 'none',
      reshapes: true,
    }),
  );
}
