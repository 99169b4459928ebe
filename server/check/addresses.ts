import { demoCheck } from '../demo.ts';
import { fillForm, queryOf } from '../form/index.ts';
import { startChecks } from '../start-checks.ts';

/** The address of the check of a document. */
export function addressOf(document: unknown): string {
  return `/check?${queryOf(fillForm(document))}`;
}

export const demoAddress: string = addressOf(demoCheck);
export const startAddress: string = addressOf(startChecks['bracket-shelf']);
export const startOverhangAddress: string = addressOf(startChecks['counter-overhang']);
export const startRunAddress: string = addressOf(startChecks['counter-run']);
export const startFixingAddress: string = addressOf(startChecks['wall-fixing']);
