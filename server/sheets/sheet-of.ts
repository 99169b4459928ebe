import type { FieldError } from '../../shared/check-result.ts';
import type { Checked } from '../check/answer-to.ts';
import type { CheckState } from '../check/check-state.ts';
import type { SheetContext } from '../view-models/sheet.ts';
import { fingerprint } from './fingerprint.ts';
import { paperOf } from './paper.ts';

/** A check that somebody wants on paper, worked out. */
export interface AskedSheet {
  readonly checked: Checked;
  readonly context: SheetContext;
}

/** What came of putting a check on paper; with errors in it, it has no sheet. */
export type SheetReading =
  | { readonly ok: true; readonly sheet: AskedSheet }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly query: string };

/**
 * A check as it goes on paper.
 *
 * @param paper what was asked for; anything else is the paper that goes with the units
 */
export function sheetOf({ answer, reading, query }: CheckState, paper: string): SheetReading {
  if (!answer.ok) return { ok: false, errors: answer.errors, query };
  const { document, result } = answer;
  const context = {
    paper: paperOf(paper, document.units ?? 'inch-pound'),
    fingerprint: fingerprint(reading.document, result.edition.tool),
    query,
  };
  return { ok: true, sheet: { checked: answer, context } };
}
