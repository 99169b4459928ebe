import { parentPort } from 'node:worker_threads';
import { DocumentError } from '../../shared/check-document/index.ts';
import type { FieldError } from '../../shared/check-result.ts';
import { workOut, type AnyFound, type StudyOrder } from './findings.ts';

/** What the thread answers: what was worked out, what is wrong with the document, or that it is at fault itself. */
export type Studied =
  | AnyFound
  | { readonly study: 'refused'; readonly errors: readonly FieldError[] }
  | { readonly study: 'fault'; readonly message: string };

parentPort?.on('message', (order: StudyOrder) => {
  parentPort?.postMessage(studied(order));
});

function studied(order: StudyOrder): Studied {
  try {
    return workOut(order);
  } catch (error) {
    if (error instanceof DocumentError) return { study: 'refused', errors: error.errors };
    return { study: 'fault', message: error instanceof Error ? error.message : String(error) };
  }
}
