import { demoCheck } from '../demo.ts';
import { fillForm, queryOf } from '../form/index.ts';
import { startCheck } from '../start-check.ts';

/** The address of the check of a document. */
export function addressOf(document: unknown): string {
  return `/check?${queryOf(fillForm(document))}`;
}

export const demoAddress: string = addressOf(demoCheck);
export const startAddress: string = addressOf(startCheck);
