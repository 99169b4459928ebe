import type { Request, RequestHandler, Response } from 'express';
import { startAddress } from '../check/addresses.ts';
import { sentForm, type SentForm } from '../check/check-state.ts';
import { textsOf, written } from '../form/index.ts';
import type { Opened } from '../view-models/checks.ts';
import type { CheckDesk } from '../views.ts';
import type { Region } from '../pages/page-orders.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';
import { untilGone } from './until-gone.ts';

/** `GET /check`: the address is the check. After one of the form's buttons it goes on to the address of what came of it. */
export function showCheck(desk: CheckDesk): RequestHandler {
  return async (request, response) => {
    const sent = textsOf(queryOfRequest(request));
    if (sent.size === 0) {
      response.redirect(303, startAddress);
      return;
    }
    const form = sentForm(sent);
    const isPressed = written(sent, 'do') !== '' && !form.isTooLong;
    if (isPressed && wantedBy(request).region === 'page') {
      const isVerdict = form.at === 'verdict';
      const focus = isVerdict ? '#verdict' : form.at === '' ? '' : `&at=${encodeURIComponent(form.at)}`;
      response.redirect(303, `/check?${form.query}${focus}`);
      return;
    }
    await sendCheck(desk, request, response, form);
  };
}

/** `POST /check`: the same for a check that is too long for an address. */
export function showLongCheck(desk: CheckDesk): RequestHandler {
  return (request, response) =>
    sendCheck(desk, request, response, sentForm(textsOf(new TextDecoder().decode(bytesOf(request)))));
}

/** Checks a form and sends as much of the page as was asked for: all of it, form and answer, or the answer alone. */
export async function sendCheck(
  desk: CheckDesk,
  request: Request,
  response: Response,
  form: SentForm,
): Promise<void> {
  const wanted = wantedBy(request);
  const { html, hasAnswer } = await desk.study.page({ page: 'check', form, ...wanted }, untilGone(response));
  response
    .status(hasAnswer ? 200 : 422)
    .vary('HX-Request')
    .vary('HX-Target')
    .vary(openedHeader)
    .set('Cache-Control', 'no-cache');
  if (wanted.region !== 'page')
    response.set('HX-Push-Url', form.isTooLong ? 'false' : `/check?${form.query}`);
  response.type('html').send(html);
}

/** The checks that are open on the page, by their ids. */
const openedHeader = 'Opened-Checks';

/**
 * The region that will be replaced by what is sent; a page that is restored from history is wanted whole. A page has all lines of
 * working, since it may be read without a script; a region those that are read, and fetches others as they are opened.
 */
export function wantedBy(request: Request): { readonly region: Region; readonly opened: Opened } {
  const region = regionOf(request);
  return { region, opened: region === 'page' ? 'all' : (request.get(openedHeader) ?? '').split(',') };
}

function regionOf(request: Request): Region {
  if (request.get('HX-Request') !== 'true') return 'page';
  const target = request.get('HX-Target') ?? '';
  if (target.endsWith('#answer')) return 'answer';
  return target.endsWith('#work') ? 'work' : 'page';
}
