import type { Request, Response } from 'express';
import { sentForm } from '../check/check-state.ts';
import { studiedState } from '../check/studied-state.ts';
import { textsOf, written } from '../form/index.ts';
import { sheetOf, type AskedSheet } from '../sheets/sheet-of.ts';
import { sheetErrors } from '../view-models/sheet-page.ts';
import { queryOfRequest } from './page-body.ts';
import type { CheckDesk } from '../views.ts';
import { untilGone } from './until-gone.ts';

/**
 * The check in a sheet's address. Without one the answer is the way home; with errors in it, 422 and the way back: then
 * nothing is left to do.
 */
export async function askedSheet(
  { templates, study }: CheckDesk,
  request: Request,
  response: Response,
): Promise<AskedSheet | undefined> {
  const texts = textsOf(queryOfRequest(request));
  const paper = written(texts, 'paper');
  texts.delete('paper');
  if (texts.size === 0) {
    response.redirect(303, '/');
    return undefined;
  }
  const wish = { waysOut: false, signal: untilGone(response) };
  const reading = sheetOf(await studiedState(study, sentForm(texts), wish), paper);
  if (reading.ok) return reading.sheet;
  response.status(422).send(templates.page('sheet-errors', sheetErrors(reading.errors, reading.query)));
  return undefined;
}
