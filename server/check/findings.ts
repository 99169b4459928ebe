import { check, layouts, props, reach } from '../../calc/index.ts';
import type { CheckResult, Layouts, PropsAnswer, Reach } from '../../shared/check-result.ts';
import type { PageOrder } from '../pages/page-orders.ts';
import type { Standing } from '../store/tables.ts';
import type { SentForm } from './check-state.ts';

/** A page in UTF-8. */
export interface MadePage<Bytes extends Uint8Array = Uint8Array<ArrayBuffer>> {
  readonly html: Bytes;
  /** Whether it shows an answer, and not what is to be put right first. */
  readonly hasAnswer: boolean;
}

/** What can be worked out, and what comes of it. */
export interface Findings {
  readonly check: CheckResult;
  readonly layouts: Layouts;
  readonly reach: Reach;
  readonly props: PropsAnswer;
  readonly standing: Standing;
  readonly page: MadePage;
}

/** What can be searched for around a check. */
export type Search = 'layouts' | 'reach' | 'props';

/** What is to be worked out of a document. */
export interface DocumentOrder {
  readonly study: 'check' | Search;
  readonly document: unknown;
  /** Whether ways out are wanted with a check. */
  readonly waysOut: boolean;
}

/** How a form stands. */
export interface StandingOrder {
  readonly study: 'standing';
  readonly form: SentForm;
  /** Whether its page is wanted next, so that ways out are looked for, and all is remembered for that. */
  readonly isShownNext: boolean;
}

/** What is to be worked out, or shown. */
export type StudyOrder =
  | DocumentOrder
  | StandingOrder
  | {
      readonly study: 'page';
      readonly page: PageOrder;
      /** What came of the check, where that took its time; null where it is still to be worked out, or was already. */
      readonly known: CheckResult | null;
    };

/** What came of it. */
export interface Found<S extends keyof Findings> {
  readonly study: S;
  readonly result: Findings[S];
}

export type AnyFound = { [S in keyof Findings]: Found<S> }[keyof Findings];

/** Works something out of a document. @throws DocumentError with every error of the document */
export function workOut({ study, document, waysOut }: DocumentOrder): AnyFound {
  if (study === 'layouts') return { study, result: layouts(document) };
  if (study === 'reach') return { study, result: reach(document) };
  if (study === 'props') return { study, result: props(document) };
  return { study, result: check(document, { waysOut }) };
}
