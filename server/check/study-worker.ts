import { parentPort } from 'node:worker_threads';
import { check, DocumentError, props } from '../../calc/index.ts';
import type { CheckResult, FieldError, PropsAnswer } from '../../shared/check-result.ts';

/** What may be asked of the thread. */
export interface StudyOrder {
  readonly study: 'check' | 'props';
  readonly document: unknown;
}

/** What it answers: what was worked out, what is wrong with the document, or that it is at fault itself. */
export type Studied =
  | { readonly study: 'check'; readonly result: CheckResult }
  | { readonly study: 'props'; readonly result: PropsAnswer }
  | { readonly study: 'refused'; readonly errors: readonly FieldError[] }
  | { readonly study: 'fault'; readonly message: string };

parentPort?.on('message', (order: StudyOrder) => {
  parentPort?.postMessage(studied(order));
});

function studied({ study, document }: StudyOrder): Studied {
  try {
    if (study === 'props') return { study, result: props(document) };
    return { study, result: check(document) };
  } catch (error) {
    if (error instanceof DocumentError) return { study: 'refused', errors: error.errors };
    return { study: 'fault', message: error instanceof Error ? error.message : String(error) };
  }
}
