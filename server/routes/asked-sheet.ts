import type { Request, Response } from 'express';
import type { Checked } from '../check/answer-to.ts';
import { checkState } from '../check/check-state.ts';
import { textsOf, written } from '../form/index.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { paperOf } from '../sheets/paper.ts';
import type { Templates } from '../templates.ts';
import type { SheetContext } from '../view-models/sheet.ts';
import { sheetErrors } from '../view-models/sheet-page.ts';
import { queryOfRequest } from './page-body.ts';

/** A check that somebody wants on paper, worked out. */
export interface AskedSheet {
  readonly checked: Checked;
  readonly context: SheetContext;
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
  const asked = written(texts, 'paper');
  texts.delete('paper');
  if (texts.size === 0) {
    response.redirect(303, '/');
    return undefined;
  }
  const { answer, reading, query } = checkState(texts, false);
  if (!answer.ok) {
    response.status(422).send(templates.page('sheet-errors', sheetErrors(answer.errors, query)));
    return undefined;
  }
  const { document, result } = answer;
  return {
    checked: answer,
    context: {
      paper: paperOf(asked, document.units ?? 'inch-pound'),
      fingerprint: fingerprint(reading.document, result.edition.tool),
      query,
    },
  };
}
