import { check, layouts, props, reach } from '../../calc/index.ts';
import type { CheckResult, Layouts, PropsAnswer, Reach } from '../../shared/check-result.ts';

/** What can be worked out, and what comes of it. */
export interface Findings {
  readonly check: CheckResult;
  readonly layouts: Layouts;
  readonly reach: Reach;
  readonly props: PropsAnswer;
}

/** What is to be worked out. */
export interface StudyOrder {
  readonly study: keyof Findings;
  readonly document: unknown;
  /** Whether ways out are wanted with a check. */
  readonly waysOut: boolean;
}

/** What came of it. */
export interface Found<S extends keyof Findings> {
  readonly study: S;
  readonly result: Findings[S];
}

export type AnyFound = { [S in keyof Findings]: Found<S> }[keyof Findings];

/** Works something out. @throws DocumentError with every error of the document */
export function workOut({ study, document, waysOut }: StudyOrder): AnyFound {
  if (study === 'layouts') return { study, result: layouts(document) };
  if (study === 'reach') return { study, result: reach(document) };
  if (study === 'props') return { study, result: props(document) };
  return { study, result: check(document, { waysOut }) };
}
