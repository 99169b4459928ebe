import type { Desk } from '../../desk.ts';
import { readJobForm } from '../../jobs/job-words.ts';
import { sentForm } from '../../check/check-state.ts';
import { textsOf, written } from '../../form/index.ts';
import { insertCheck } from '../../store/checks.ts';
import { insertJob } from '../../store/jobs.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { jobFormPage } from '../../view-models/jobs/job-form-page.ts';
import { checkAddress } from '../../view-models/jobs/kept-check.ts';

/** `GET` and `POST /jobs/new`: the form for a job, empty but for the check that was sent along. */
export function showNewJob(desk: Desk, method: 'get' | 'post'): Action {
  return {
    method,
    path: '/jobs/new',
    needs: 'member',
    act: (asked) => sendForm(desk, asked, 200, fromCheck(asked), new Map()),
  };
}

/** `POST /jobs`: begins a job, and puts the check in it that was sent along. */
export function beginJob(desk: Desk): Action {
  return {
    method: 'post',
    path: '/jobs',
    needs: 'member',
    act: async (asked) => {
      const { visit, fields, response } = asked;
      const reading = readJobForm(fields);
      if (!reading.ok) {
        sendForm(desk, asked, 422, (name) => fields.get(name) ?? '', reading.errors);
        return;
      }
      const sent = fields.get('check') ?? '';
      const form = sentForm(textsOf(sent));
      const standing = sent === '' ? undefined : await desk.study.standing(form);
      const address = await desk.store.db.transaction().execute(async (db) => {
        const inside = { ...desk.store, db };
        const job = await insertJob(inside, visit.actor, reading.words);
        if (standing === undefined) return `/jobs/${job.id}`;
        const check = { form: form.query, standing, reason: '' };
        const made = await insertCheck(inside, visit.actor, job.id, check);
        return made === undefined ? `/jobs/${job.id}` : checkAddress(made);
      });
      response.redirect(303, address);
    },
  };
}

/** What a check that goes into a job says of the job: its title for a name, and its people. */
function fromCheck({ fields }: Asked): (name: string) => string {
  const texts = textsOf(fields.get('check') ?? '');
  const said = new Map([
    ['name', written(texts, 'title')],
    ['preparedBy', written(texts, 'preparedBy')],
    ['checkedBy', written(texts, 'checkedBy')],
  ]);
  return (name) => said.get(name) ?? '';
}

function sendForm(
  desk: Desk,
  { visit, fields, response }: Asked,
  status: number,
  said: (name: string) => string,
  errors: ReadonlyMap<string, string>,
): void {
  const check = fields.get('check') ?? '';
  const model = jobFormPage(
    { job: undefined, written: said, errors, theirs: undefined, check },
    visit.token,
    desk.store.now(),
  );
  response.status(status).send(desk.templates.page('job-form', model));
}
