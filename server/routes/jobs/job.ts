import type { Desk } from '../../desk.ts';
import { standAnew } from '../../jobs/stand-anew.ts';
import { readChecks } from '../../store/checks.ts';
import { listIssued } from '../../store/issued.ts';
import { readJob } from '../../store/jobs.ts';
import type { Action } from '../../visits/action.ts';
import { jobPage } from '../../view-models/jobs/job-page.ts';
import { sendNothing } from '../failures.ts';

/** `GET /jobs/:job`: a job and its checks. */
export function showJob(desk: Desk): Action {
  return {
    method: 'get',
    path: '/jobs/:job',
    needs: 'reader',
    act: async ({ visit, part, query, response }) => {
      const job = await readJob(desk.store, visit.actor, part('job'));
      if (job === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const checks = await standAnew(desk, visit.actor, await readChecks(desk.store, visit.actor, job.id));
      const deleted = /^[0-9a-f]{24}$/.exec(query.get('gone') ?? '')?.[0] ?? '';
      const issued = await listIssued(desk.store, visit.actor, job.id);
      const model = jobPage(job, checks, issued, visit, deleted, desk.store.now());
      response.send(desk.templates.page('job', model));
    },
  };
}
