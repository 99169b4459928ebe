import type { Request, RequestHandler, Response } from 'express';
import { checkState, type CheckState } from '../check/check-state.ts';
import { textsOf } from '../form/index.ts';
import type { Study } from '../check/study.ts';
import type { Templates } from '../templates.ts';
import { layoutsView } from '../view-models/layouts.ts';
import { pageFrame } from '../view-models/page.ts';
import { propsView } from '../view-models/props.ts';
import { reachView } from '../view-models/reach.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';
import { untilGone } from './until-gone.ts';

/** What may be asked about a check beside its answer. */
type Outlook = 'layouts' | 'reach' | 'props';

const titles: Readonly<Record<Outlook, string>> = {
  layouts: 'Where the brackets go',
  reach: 'How far it could go',
  props: 'What it wants under it',
};

/** `GET /layouts`, `GET /reach` and `GET /props`: the part of the answer that is worked out when it is opened, or a page of it alone. */
export function showOutlook(templates: Templates, study: Study, outlook: Outlook): RequestHandler {
  return (request, response) =>
    sendOutlook(
      { templates, study, outlook },
      request,
      response,
      checkState(textsOf(queryOfRequest(request)), false),
    );
}

/** The same for a check that is too long for an address. */
export function showLongOutlook(templates: Templates, study: Study, outlook: Outlook): RequestHandler {
  return (request, response) => {
    const sent = textsOf(new TextDecoder().decode(bytesOf(request)));
    return sendOutlook({ templates, study, outlook }, request, response, checkState(sent, false));
  };
}

interface Desk {
  readonly templates: Templates;
  readonly study: Study;
  readonly outlook: Outlook;
}

async function sendOutlook(
  { templates, study, outlook }: Desk,
  request: Request,
  response: Response,
  state: CheckState,
): Promise<void> {
  const { answer } = state;
  const isPart = request.get('HX-Request') === 'true';
  response
    .status(answer.ok ? 200 : 422)
    .vary('HX-Request')
    .set('Cache-Control', 'no-cache');
  const shelf = answer.ok && answer.element === 'bracket-shelf' ? answer : undefined;
  const layouts =
    shelf !== undefined && outlook === 'layouts' ? [layoutsView(state, shelf.document.board.length)] : [];
  const reaches = shelf !== undefined && outlook === 'reach' ? [reachView(state)] : [];
  const counter = answer.ok && answer.element === 'counter-overhang' && outlook === 'props';
  const props = counter
    ? [propsView(state, await study.props(state.reading.document, untilGone(response)))]
    : [];
  const view = { layouts, reaches, props, isPart, hasErrors: !answer.ok };
  if (isPart) {
    response.send(templates.partial('outlook', view));
    return;
  }
  const heading = titles[outlook];
  const back = state.isTooLong ? '/' : `/check?${state.query}`;
  response.send(templates.page('outlook', { ...pageFrame(heading), heading, back, view }));
}
