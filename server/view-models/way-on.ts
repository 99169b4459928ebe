import { addressOf } from '../check/addresses.ts';
import type { CheckState } from '../check/check-state.ts';
import { changesTo, queryOf, readForm, setFields } from '../form/index.ts';

/** How a changed check is gone to: by a button of the form, by a link to its address. */
export interface WayOn {
  readonly doing: string;
  readonly hasDoing: boolean;
  readonly address: string;
}

/** The way on to a changed document; what was written in other fields stays as it was written. */
export function wayOnTo({ reading, texts }: CheckState, document: unknown): WayOn {
  const changes = changesTo(texts, document);
  if (changes === null) return { doing: '', hasDoing: false, address: addressOf(document) };
  const { entries } = readForm(setFields(texts, changes));
  const query = queryOf(reading.entries.length === 0 ? [] : entries);
  return { doing: `set:${changes}`, hasDoing: true, address: `/check?${query}` };
}
