import type { Request, Response } from 'express';
import type { Checked } from '../check/answer-to.ts';
import { checkState } from '../check/check-state.ts';
import { textsOf, written, type Texts } from '../form/index.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { paperOf } from '../sheets/paper.ts';
import type { Templates } from '../templates.ts';
import type { FieldError } from '../../shared/check-result.ts';
import type { SheetContext } from '../view-models/sheet.ts';
import { sheetErrors } from '../view-models/sheet-page.ts';
import { queryOfRequest } from './page-body.ts';

/** A check that somebody wants on paper, worked out. */
export interface AskedSheet {
  readonly checked: Checked;
  readonly context: SheetContext;
}

/** What came of working a check out for paper; with errors in it, it has no sheet. */
export type SheetReading =
  | { readonly ok: true; readonly sheet: AskedSheet }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly query: string };

/**
 * Works a check out for paper.
 *
 * @param paper what was asked for; anything else is the paper that goes with the units
 */
export function sheetOf(texts: Texts, paper: string): SheetReading {
  const { answer, reading, query } = checkState(texts, false);
  if (!answer.ok) return { ok: false, errors: answer.errors, query };
  const { document, result } = answer;
  const context = {
    paper: paperOf(paper, document.units ?? 'inch-pound'),
    fingerprint: fingerprint(reading.document, result.edition.tool),
    query,
  };
  return { ok: true, sheet: { checked: answer, context } };
}

/**
 * The check in a sheet's address. Without one the answer is the way home; with errors in it, 422 and the way back: then
 * nothing is left to do.
 */
export function askedSheet(
  templates: Templates,
  request: Request,
  response: Response,
): AskedSheet | undefined {
  const texts = textsOf(queryOfRequest(request));
  const paper = written(texts, 'paper');
  texts.delete('paper');
  if (texts.size === 0) {
    response.redirect(303, '/');
    return undefined;
  }
  const reading = sheetOf(texts, paper);
  if (reading.ok) return reading.sheet;
  response.status(422).send(templates.page('sheet-errors', sheetErrors(reading.errors, reading.query)));
  return undefined;
}
