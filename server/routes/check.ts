import type { Request, RequestHandler, Response } from 'express';
import { startAddress } from '../check/addresses.ts';
import { checkState, type CheckState } from '../check/check-state.ts';
import { textsOf, written } from '../form/index.ts';
import type { Views } from '../views.ts';
import { checkPage, type CheckPage } from '../view-models/check-page.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';

/** `GET /check`: the address is the check. After one of the form's buttons it goes on to the address of what came of it. */
export function showCheck(views: Views): RequestHandler {
  return (request, response) => {
    const sent = textsOf(queryOfRequest(request));
    if (sent.size === 0) {
      response.redirect(303, startAddress);
      return;
    }
    const state = checkState(sent);
    const isPressed = written(sent, 'do') !== '' && !state.isTooLong;
    if (isPressed && regionWanted(request) === 'page') {
      const isVerdict = state.at === 'verdict';
      const focus = isVerdict ? '#verdict' : state.at === '' ? '' : `&at=${encodeURIComponent(state.at)}`;
      response.redirect(303, `/check?${state.query}${focus}`);
      return;
    }
    sendCheck(views, request, response, state);
  };
}

/** `POST /check`: the same for a check that is too long for an address. */
export function showLongCheck(views: Views): RequestHandler {
  return (request, response) => {
    const sent = textsOf(new TextDecoder().decode(bytesOf(request)));
    sendCheck(views, request, response, checkState(sent));
  };
}

/** Sends as much of the page as was asked for: all of it, form and answer, or the answer alone. */
export function sendCheck(views: Views, request: Request, response: Response, state: CheckState): void {
  const page = checkPage(state, views.typesetter);
  const region = regionWanted(request);
  response
    .status(state.answer.ok ? 200 : 422)
    .vary('HX-Request')
    .vary('HX-Target')
    .set('Cache-Control', 'no-cache');
  if (region !== 'page') response.set('HX-Push-Url', state.isTooLong ? 'false' : `/check?${state.query}`);
  response.send(renderCheck(views, region, page));
}

/** A region of the page, or all of it. */
export function renderCheck(views: Views, region: Region, page: CheckPage): string {
  if (region === 'page') return views.templates.page('check', page);
  return region === 'answer'
    ? views.templates.partial('answer', page.answer)
    : views.templates.partial('work', page);
}

type Region = 'page' | 'work' | 'answer';

/** The region that will be replaced by what is sent; a page that is restored from history is wanted whole. */
export function regionWanted(request: Request): Region {
  if (request.get('HX-Request') !== 'true') return 'page';
  const target = request.get('HX-Target') ?? '';
  if (target.endsWith('#answer')) return 'answer';
  return target.endsWith('#work') ? 'work' : 'page';
}
