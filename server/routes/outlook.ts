import type { Request, RequestHandler, Response } from 'express';
import { sentForm, type CheckState, type SentForm } from '../check/check-state.ts';
import { studiedState } from '../check/studied-state.ts';
import type { Search } from '../check/findings.ts';
import type { Study } from '../check/study.ts';
import { textsOf } from '../form/index.ts';
import type { Templates } from '../templates.ts';
import { layoutsView } from '../view-models/layouts.ts';
import { pageFrame } from '../view-models/page.ts';
import { propsView } from '../view-models/props.ts';
import { reachView } from '../view-models/reach.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';
import { untilGone } from './until-gone.ts';

const headings: Readonly<Record<Search, string>> = {
  layouts: 'Where the brackets go',
  reach: 'How far it could go',
  props: 'What it wants under it',
};

/** What one of the searches around a check is shown with. */
interface OutlookDesk {
  readonly templates: Templates;
  readonly study: Study;
  readonly outlook: Search;
}

/** `GET /layouts`, `GET /reach` and `GET /props`: the part of the answer that is worked out when it is opened, or a page of it alone. */
export function showOutlook(desk: OutlookDesk): RequestHandler {
  return (request, response) =>
    sendOutlook(desk, request, response, sentForm(textsOf(queryOfRequest(request))));
}

/** The same for a check that is too long for an address. */
export function showLongOutlook(desk: OutlookDesk): RequestHandler {
  return (request, response) =>
    sendOutlook(desk, request, response, sentForm(textsOf(new TextDecoder().decode(bytesOf(request)))));
}

async function sendOutlook(
  desk: OutlookDesk,
  request: Request,
  response: Response,
  form: SentForm,
): Promise<void> {
  const signal = untilGone(response);
  const state = await studiedState(desk.study, form, { waysOut: false, signal });
  const isPart = request.get('HX-Request') === 'true';
  const view = { ...(await outlookOf(desk, state, signal)), isPart, hasErrors: !state.answer.ok };
  response
    .status(state.answer.ok ? 200 : 422)
    .vary('HX-Request')
    .set('Cache-Control', 'no-cache');
  if (isPart) {
    response.send(desk.templates.partial('outlook', view));
    return;
  }
  const heading = headings[desk.outlook];
  const back = state.isTooLong ? '/' : `/check?${state.query}`;
  response.send(desk.templates.page('outlook', { ...pageFrame(heading), heading, back, view }));
}

/** What the search came to; nothing where it is for another element. */
async function outlookOf({ study, outlook }: OutlookDesk, state: CheckState, signal: AbortSignal) {
  const { answer, reading } = state;
  const nothing = { layouts: [], reaches: [], props: [] };
  if (!answer.ok) return nothing;
  const search = <S extends Search>(which: S) => study.search(which, reading.document, signal);
  if (answer.element === 'counter-overhang' && outlook === 'props')
    return { ...nothing, props: [propsView(state, await search(outlook))] };
  if (answer.element !== 'bracket-shelf' || outlook === 'props') return nothing;
  if (outlook === 'reach') return { ...nothing, reaches: [reachView(await search(outlook))] };
  const { length } = answer.document.board;
  return { ...nothing, layouts: [layoutsView(state, length, await search(outlook))] };
}
