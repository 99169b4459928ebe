import { issueSheet, proofOf, type IssueDesk, type ProofReading } from '../../issued/issue.ts';
import { readIssueForm, type IssueForm } from '../../issued/issue-form.ts';
import { textsOf, written } from '../../form/index.ts';
import { readCheck, type Check } from '../../store/checks.ts';
import { listIssuedOfCheck } from '../../store/issued.ts';
import { readJob, type Job } from '../../store/jobs.ts';
import { issuedAddress } from '../../view-models/issued/issued-rows.ts';
import { issuePage, type IssueView } from '../../view-models/issued/issue-page.ts';
import { checkAddress } from '../../view-models/jobs/kept-check.ts';
import { dayOf } from '../../view-models/jobs/times.ts';
import { sheetErrors } from '../../view-models/sheet-page.ts';
import { titleOf } from '../../view-models/sheet-head.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { sendNothing } from '../failures.ts';
import { withPdfFor } from '../sheet-pdf.ts';

/** What the pages of issued sheets work with. */
export interface IssuedDesk extends IssueDesk {
  readonly report: (error: unknown) => void;
}

const path = '/jobs/:job/checks/:check/issue';

/** `GET /jobs/:job/checks/:check/issue`: what will be frozen, before it is. */
export function showIssue(desk: IssuedDesk): Action {
  return {
    method: 'get',
    path,
    needs: 'member',
    act: async (asked) => {
      const found = await readBoth(desk, asked);
      if (found !== undefined) {
        const form = usualForm(found, desk.store.now());
        await sendPage(desk, asked, found, { status: 200, form, errors: new Map(), objection: 'none' });
      }
    },
  };
}

/** `POST /jobs/:job/checks/:check/issue`: issues a sheet, and goes on to it; or says why there is none. */
export function issue(desk: IssuedDesk): Action {
  return {
    method: 'post',
    path,
    needs: 'member',
    act: async (asked) => {
      const found = await readBoth(desk, asked);
      if (found === undefined) return;
      const { form, errors } = readIssueForm(asked.fields);
      if (errors.size > 0) {
        await sendPage(desk, asked, found, { status: 422, form, errors, objection: 'none' });
        return;
      }
      const { job, check } = found;
      if (form.seen.check !== check.version || form.seen.job !== job.version) {
        await sendPage(desk, asked, found, { status: 409, form, errors, objection: 'stale' });
        return;
      }
      const reading = await proofOf(desk.study, check.form, form);
      if (!reading.ok) {
        sendErrors(desk, asked, check, reading);
        return;
      }
      const { title, preparedBy, checkedBy, date, paper, insist, seen } = form;
      const names = { title, preparedBy, checkedBy, date };
      const order = { job, check, seen, proof: reading.proof, names, paper, insist };
      await withPdfFor(
        desk,
        asked.response,
        (signal) => issueSheet(desk, asked.visit.actor, order, signal),
        async (outcome) => {
          if (outcome.kind === 'issued') asked.response.redirect(303, issuedAddress(outcome));
          else {
            const now = (await readBoth(desk, asked)) ?? found;
            await sendPage(desk, asked, now, { status: 409, form, errors, objection: outcome.kind });
          }
        },
        'No sheet was issued, since its PDF could not be made',
      );
    },
  };
}

interface Both {
  readonly job: Job;
  readonly check: Check;
}

/** The check and its job; undefined, and answered, where one is not there or deleted. */
async function readBoth(
  { store, templates }: IssuedDesk,
  { visit, part, response }: Asked,
): Promise<Both | undefined> {
  const job = await readJob(store, visit.actor, part('job'));
  const check = await readCheck(store, visit.actor, part('job'), part('check'));
  if (job !== undefined && job.isDeleted === 0 && check?.isDeleted === 0) return { job, check };
  sendNothing(templates, response);
  return undefined;
}

/** The form as it is before anybody changed it: the names of the check, or else of the job, and today. */
function usualForm({ job, check }: Both, now: Date): IssueForm {
  const texts = textsOf(check.form);
  return {
    title: written(texts, 'title'),
    preparedBy: written(texts, 'preparedBy') || job.preparedBy,
    checkedBy: written(texts, 'checkedBy') || job.checkedBy,
    date: dayOf(now),
    paper: '',
    insist: '',
    seen: { check: check.version, job: job.version },
  };
}

async function sendPage(
  desk: IssuedDesk,
  asked: Asked,
  { job, check }: Both,
  { status, form, ...about }: Pick<IssueView, 'form' | 'errors' | 'objection'> & { readonly status: number },
): Promise<void> {
  const { visit, response } = asked;
  const reading = await proofOf(desk.study, check.form, usualForm({ job, check }, desk.store.now()));
  if (!reading.ok) {
    sendErrors(desk, asked, check, reading);
    return;
  }
  const { proof } = reading;
  const issued = await listIssuedOfCheck(desk.store, visit.actor, check.id);
  const isFresh = status === 200;
  const shown = {
    ...form,
    title: form.title || (isFresh ? titleOf(proof.checked) : ''),
    paper: form.paper || (issued[0]?.paper ?? ''),
  };
  const view = { job, check, proof, form: shown, issued, token: visit.token, ...about };
  response.status(status).send(desk.templates.page('issue', issuePage(view)));
}

/** A check that can't be worked out is not issued: the page says what is to be put right in it. */
function sendErrors(
  { templates }: IssuedDesk,
  { response }: Asked,
  check: Check,
  { errors, query }: Exclude<ProofReading, { readonly ok: true }>,
): void {
  const model = { ...sheetErrors(errors, query), backAddress: checkAddress(check) };
  response.status(422).send(templates.page('sheet-errors', model));
}
