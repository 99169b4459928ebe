import { demoCheck } from '../../demo.ts';
import type { Desk } from '../../desk.ts';
import { sentForm } from '../../check/check-state.ts';
import { elementNamed, fillForm, queryOf, textsOf, usualElement } from '../../form/index.ts';
import { startChecks } from '../../start-checks.ts';
import { addCheck } from '../../store/checks.ts';
import { readJob } from '../../store/jobs.ts';
import { listJobs } from '../../store/job-list.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { keepPage } from '../../view-models/jobs/keep-page.ts';
import { checkAddress } from '../../view-models/jobs/kept-check.ts';
import { sendNothing } from '../failures.ts';

/** `POST /jobs/:job/checks`: adds a check of an element to begin with, or the demo check, with the job's people. */
export function beginCheck(desk: Desk): Action {
  return {
    method: 'post',
    path: '/jobs/:job/checks',
    needs: 'member',
    act: async (asked) => {
      const job = await readJob(desk.store, asked.visit.actor, asked.part('job'));
      if (job === undefined) {
        sendNothing(desk.templates, asked.response);
        return;
      }
      const from = asked.fields.get('from');
      const begun = from === 'demo' ? demoCheck : startChecks[elementNamed(from) ?? usualElement];
      const { preparedBy, checkedBy } = job;
      const people = Object.entries({ preparedBy, checkedBy }).filter(([, name]) => name !== '');
      const document = { ...begun, ...Object.fromEntries(people) };
      await add(desk, asked, job.id, queryOf(fillForm(document)));
    },
  };
}

/** `GET /keep?<a check's query>`: the jobs a check can be put in. */
export function showKeep(desk: Desk): Action {
  return {
    method: 'get',
    path: '/keep',
    needs: 'member',
    act: (asked) => sendKeep(desk, asked, asked.query.toString(), ''),
  };
}

/** `POST /keep`: puts a check in a job, or looks for the job among many. */
export function keepCheck(desk: Desk): Action {
  return {
    method: 'post',
    path: '/keep',
    needs: 'member',
    act: (asked) => {
      const { fields } = asked;
      const [job, form] = [fields.get('job'), fields.get('check') ?? ''];
      if (job !== null) return add(desk, asked, job, form);
      return sendKeep(desk, asked, form, (fields.get('search') ?? '').slice(0, 200));
    },
  };
}

async function sendKeep(desk: Desk, { visit, response }: Asked, form: string, search: string): Promise<void> {
  const asked = { place: 'open', search, sort: 'changed', page: 1 } as const;
  const found = await listJobs(desk.store, visit.actor, asked);
  const page = keepPage(sentForm(textsOf(form)), found, search, visit.token);
  response.send(desk.templates.page('keep', page));
}

async function add(desk: Desk, { visit, response }: Asked, jobId: string, form: string): Promise<void> {
  const sent = sentForm(textsOf(form));
  const check = { form: sent.query, standing: await desk.study.standing(sent), reason: '' };
  const made = await addCheck(desk.store, visit.actor, jobId, check);
  if (made === undefined) sendNothing(desk.templates, response);
  else response.redirect(303, checkAddress(made));
}
