import type { FormView } from './form-view.ts';
import { fieldPart, type Section } from './model.ts';

/** How still the shelf must be. */
export function limitsSection(form: FormView): Section {
  return {
    id: 'limits',
    title: 'How still it must be',
    parts: [
      fieldPart(
        form.text('limits.live', {
          label: 'Under what comes and goes',
          hint: 'A share of the span (L/360), an amount (1/4 in), or none.',
          list: 'list:limits',
        }),
      ),
      fieldPart(
        form.text('limits.longTerm', {
          label: 'Over the years',
          hint: 'With creep, its own weight included.',
          list: 'list:limits',
        }),
      ),
    ],
  };
}
