import type { Desk } from '../../desk.ts';
import { readJobForm } from '../../jobs/job-words.ts';
import { changeJob, readJob } from '../../store/jobs.ts';
import type { Action } from '../../visits/action.ts';
import { wholeNumber } from '../../visits/whole-number.ts';
import { jobFormPage } from '../../view-models/jobs/job-form-page.ts';
import { sendNothing } from '../failures.ts';

/** `GET /jobs/:job/edit`: the words of a job, to be changed. */
export function showJobForm(desk: Desk): Action {
  return {
    method: 'get',
    path: '/jobs/:job/edit',
    needs: 'member',
    act: async ({ visit, part, response }) => {
      const job = await readJob(desk.store, visit.actor, part('job'));
      if (job === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const about = { job, errors: new Map<string, string>(), theirs: undefined, check: '' };
      const model = jobFormPage({ ...about, written: (name) => job[name] }, visit.token);
      response.send(desk.templates.page('job-form', model));
    },
  };
}

/** `POST /jobs/:job/edit`: changes the words of a job, unless somebody else has since. */
export function editJob(desk: Desk): Action {
  return {
    method: 'post',
    path: '/jobs/:job/edit',
    needs: 'member',
    act: async ({ visit, part, fields, response }) => {
      const job = await readJob(desk.store, visit.actor, part('job'));
      if (job === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const version = wholeNumber(fields.get('version'));
      const reading = readJobForm(fields);
      const change = reading.ok
        ? await changeJob(desk.store, visit.actor, job.id, version, reading.words)
        : undefined;
      if (change?.kind === 'changed') {
        response.redirect(303, `/jobs/${job.id}`);
        return;
      }
      const errors = reading.ok ? new Map<string, string>() : reading.errors;
      const about = { job: { ...job, version }, errors, theirs: change?.job, check: '' };
      const model = jobFormPage({ ...about, written: (name) => fields.get(name) ?? '' }, visit.token);
      response.status(change === undefined ? 422 : 409).send(desk.templates.page('job-form', model));
    },
  };
}
