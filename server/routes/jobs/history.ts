import type { Desk } from '../../desk.ts';
import { sentForm } from '../../check/check-state.ts';
import { textsOf } from '../../form/index.ts';
import { readCheck } from '../../store/checks.ts';
import { readJob } from '../../store/jobs.ts';
import { listRevisions, readRevision } from '../../store/revisions.ts';
import { saveCheck } from '../../store/save-check.ts';
import type { Action } from '../../visits/action.ts';
import { wholeNumber } from '../../visits/whole-number.ts';
import { historyPage } from '../../view-models/jobs/history-page.ts';
import { checkAddress, keepingView, keptPlace, trailTo } from '../../view-models/jobs/kept-check.ts';
import { sendNothing } from '../failures.ts';

/** `GET /jobs/:job/checks/:check/history`: what changed in a check, and when. */
export function showHistory(desk: Desk): Action {
  return {
    method: 'get',
    path: '/jobs/:job/checks/:check/history',
    needs: 'reader',
    act: async ({ visit, part, query, response }) => {
      const job = await readJob(desk.store, visit.actor, part('job'));
      const check = await readCheck(desk.store, visit.actor, part('job'), part('check'));
      if (job === undefined || check === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const page = wholeNumber(query.get('page'));
      const revisions = await listRevisions(desk.store, visit.actor, check, page);
      response.send(desk.templates.page('history', historyPage(job, check, revisions, visit)));
    },
  };
}

/** `POST /jobs/:job/checks/:check/restore`: puts a check back to a revision, as a new one. */
export function restoreRevision(desk: Desk): Action {
  return {
    method: 'post',
    path: '/jobs/:job/checks/:check/restore',
    needs: 'member',
    act: async ({ visit, part, fields, response }) => {
      const job = await readJob(desk.store, visit.actor, part('job'));
      const number = wholeNumber(fields.get('revision'));
      const revision = await readRevision(desk.store, visit.actor, part('check'), number);
      if (job === undefined || revision === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const base = wholeNumber(fields.get('version'));
      const form = sentForm(textsOf(revision.form));
      const saved = await saveCheck(desk.store, visit.actor, part('job'), part('check'), {
        form: revision.form,
        standing: await desk.study.standing(form, true),
        base,
        editor: '',
        turn: 0,
        reason: `put back to revision ${revision.number}`,
      });
      if (saved === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      if (saved.kind !== 'stale') {
        response.redirect(303, checkAddress(saved.check));
        return;
      }
      const keeping = keepingView(saved, form.query, String(base), desk.store.now());
      const trail = [trailTo(job, saved.check)];
      const place = keptPlace(checkAddress(saved.check), visit.token, '', keeping, trail);
      const { html } = await desk.study.page({ page: 'check', form, region: 'page', place });
      response.status(409).type('html').send(html);
    },
  };
}
