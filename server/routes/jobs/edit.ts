import type { Desk } from '../../desk.ts';
import { readJobForm } from '../../jobs/job-words.ts';
import { changeJob, hasWords, readJob } from '../../store/jobs.ts';
import type { Action, Asked } from '../../visits/action.ts';
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
      const model = jobFormPage({ ...about, written: (name) => job[name] }, visit.token, desk.store.now());
      response.send(desk.templates.page('job-form', model));
    },
  };
}

/**
 * `POST /jobs/:job/edit`: changes the words of a job, unless somebody else has since. As they are written it answers with what
 * became of them, else with the job's page.
 */
export function editJob(desk: Desk): Action {
  return {
    method: 'post',
    path: '/jobs/:job/edit',
    needs: 'member',
    act: async (asked) => {
      const { visit, part, fields, response } = asked;
      const job = await readJob(desk.store, visit.actor, part('job'));
      if (job === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const version = wholeNumber(fields.get('over') ?? fields.get('version'));
      const reading = readJobForm(fields);
      if (!reading.ok) {
        send(desk, asked, 422, { job: { ...job, version }, errors: reading.errors, theirs: undefined });
        return;
      }
      const isSame = hasWords(job, reading.words);
      const change = isSame
        ? { kind: 'changed' as const, job }
        : await changeJob(desk.store, visit.actor, job.id, version, reading.words);
      if (change?.kind === 'stale') {
        send(desk, asked, 409, { job: { ...job, version }, errors: new Map(), theirs: change.job });
      } else if (isWhileWritten(asked)) {
        send(desk, asked, 200, { job: change?.job ?? job, errors: new Map(), theirs: undefined });
      } else {
        response.redirect(303, `/jobs/${job.id}`);
      }
    },
  };
}

/** What became of a form: all of its page, or, while it is written, the part that says so. */
function send(
  desk: Desk,
  asked: Asked,
  status: 200 | 409 | 422,
  about: Pick<Parameters<typeof jobFormPage>[0], 'job' | 'errors' | 'theirs'>,
): void {
  const { visit, fields, response } = asked;
  const written = (name: string): string => fields.get(name) ?? '';
  const model = jobFormPage({ ...about, written, check: '' }, visit.token, desk.store.now());
  if (isWhileWritten(asked)) {
    // The page swaps in what has these two statuses alone.
    response.status(status === 422 ? 422 : 200).send(desk.templates.partial('job-kept', model));
  } else {
    response.status(status).send(desk.templates.page('job-form', model));
  }
}

function isWhileWritten({ request }: Asked): boolean {
  return request.get('HX-Request') === 'true';
}
