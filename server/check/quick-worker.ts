import { join } from 'node:path';
import { parentPort } from 'node:worker_threads';
import { makePage } from '../pages/page-orders.ts';
import { loadTemplates } from '../templates.ts';
import { createTypesetter } from '../typeset/index.ts';
import { workOut, type AnyFound, type StudyOrder } from './findings.ts';
import { rememberedInPlace, stateInPlace } from './in-place.ts';
import { standingOf } from './standing.ts';
import { studied } from './studied.ts';

/* The thread of what is done in hundredths of a second: shelves, fixings, and the pages of every check. */
const views = {
  templates: loadTemplates(join(import.meta.dirname, '..', '..', 'views')),
  typesetter: createTypesetter(),
};
const encoder = new TextEncoder();

parentPort?.on('message', (order: StudyOrder) => {
  const answer = studied(() => workOutOrShow(order));
  parentPort?.postMessage(answer, answer.study === 'page' ? [answer.result.html.buffer] : []);
});

function workOutOrShow(order: StudyOrder): AnyFound {
  const { study } = order;
  if (study === 'standing') {
    const { form, isShownNext } = order;
    return { study, result: standingOf(isShownNext ? rememberedInPlace(form) : stateInPlace(form, false)) };
  }
  if (study !== 'page') return workOut(order);
  const { html, hasAnswer } = makePage(order.page, order.known, views);
  return { study, result: { html: encoder.encode(html), hasAnswer } };
}
