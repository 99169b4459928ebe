import type { Desk } from '../../desk.ts';
import { newId } from '../../store/ids.ts';
import { readCheck } from '../../store/checks.ts';
import { listIssuedOfCheck } from '../../store/issued.ts';
import { readJob } from '../../store/jobs.ts';
import type { Action } from '../../visits/action.ts';
import {
  checkAddress,
  issuingView,
  keptPlace,
  savedView,
  trailTo,
} from '../../view-models/jobs/kept-check.ts';
import { textsOf } from '../../form/index.ts';
import { sentForm } from '../../check/check-state.ts';
import { sendNothing } from '../failures.ts';
import { untilGone } from '../until-gone.ts';

/** `GET /jobs/:job/checks/:check`: the page of a check that saves itself. */
export function showKeptCheck(desk: Desk): Action {
  return {
    method: 'get',
    path: '/jobs/:job/checks/:check',
    needs: 'reader',
    act: async ({ visit, part, query, response }) => {
      const job = await readJob(desk.store, visit.actor, part('job'));
      const check = await readCheck(desk.store, visit.actor, part('job'), part('check'));
      if (job === undefined || check === undefined || check.isDeleted === 1) {
        sendNothing(desk.templates, response);
        return;
      }
      const texts = textsOf(check.form).set('at', query.get('at') ?? '');
      const keeping = savedView(check, desk.store.now());
      const trail = [trailTo(job, check)];
      const sheets = await listIssuedOfCheck(desk.store, visit.actor, check.id);
      const issuing = [issuingView(check, sheets, visit)];
      const place = keptPlace(checkAddress(check), visit.token, newId(), keeping, trail, issuing);
      const order = { page: 'check', form: sentForm(texts), region: 'page', place } as const;
      const { html } = await desk.study.page(order, untilGone(response));
      response.type('html').send(html);
    },
  };
}
