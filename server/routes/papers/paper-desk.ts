import type { Request, Response } from 'express';
import type { JobPaperMaker } from '../../papers/make-job-paper.ts';
import type { Audience, Works } from '../../papers/works.ts';
import { fileName } from '../../sheets/file-name.ts';
import type { Actor } from '../../store/actor.ts';
import { readChecks, type Check } from '../../store/checks.ts';
import { listIssued, type IssuedSheet } from '../../store/issued.ts';
import type { Store } from '../../store/open-store.ts';
import type { Templates } from '../../templates.ts';
import { papersPage, type PapersPlace } from '../../view-models/jobs/papers-page.ts';
import { dayAndTime } from '../../view-models/jobs/times.ts';
import { sendFailure } from '../failures.ts';

/** What PDFs of whole jobs are made with. */
export interface PaperDesk {
  readonly store: Store;
  readonly templates: Templates;
  readonly works: Works;
  readonly maker: JobPaperMaker;
}

/** A job that somebody wants on paper, or has had put there. */
export interface PaperSubject extends PapersPlace {
  readonly actor: Actor;
  /** The link it is asked for by; empty for the office's own people. */
  readonly linkId: string;
}

/** A check is some ten pages and takes the setter 18 MB while it sets them: so many take about 1 GB and half a minute. */
const mostChecks = 60;

const tooMany = {
  heading: 'Many PDFs are being made just now',
  message: 'Wait until one of them is done, then begin this one. Nothing was changed.',
};

/** Begins to make a PDF of a job, and sends whoever asked to where its progress is told. */
export async function beginPaper(
  { store, templates, works, maker }: PaperDesk,
  subject: PaperSubject,
  asked: string,
  response: Response,
): Promise<void> {
  const { job, actor, address } = subject;
  const paper = asked === 'a4' ? 'a4' : 'letter';
  const checks = await readChecks(store, actor, job.id);
  if (checks.length > mostChecks) {
    const message = `The job has ${checks.length} checks, and a PDF of a whole job takes at most ${mostChecks}. Make PDFs of the checks by themselves, from their sheets, or share the checks out to several jobs.`;
    sendFailure(templates, response, 422, { heading: 'That is too much for one PDF', message });
    return;
  }
  const issued = await listIssued(store, actor, job.id);
  const now = store.now();
  const order = {
    job,
    paper,
    checks: checks.map((check) => ({ ...check, issued: newestIssued(check, issued) })),
    made: dayAndTime(now.toISOString()),
    made_s: Math.floor(now.getTime() / 1000),
    hasNotes: !subject.isShared,
  } as const;
  const about = {
    audience: audienceOf(subject),
    paper,
    checks: checks.length,
    fileName: `job-${job.number}-${fileName(job.name)}.pdf`,
  };
  const work = works.begin(about, (tell, signal) => maker.make(order, tell, signal));
  if (work === undefined) sendFailure(templates, response.set('Retry-After', '10'), 429, tooMany);
  else response.redirect(303, `${address}/papers/${work.id}`);
}

/** Tells how far a PDF is: a page, or the part of it that changes. */
export function showPaper(
  { templates, works }: PaperDesk,
  subject: PaperSubject,
  id: string,
  request: Request,
  response: Response,
): void {
  const work = works.find(audienceOf(subject), id);
  const page = papersPage(subject, work);
  response.vary('HX-Request');
  // The page swaps in what has the status 200; that a PDF is not kept any more stands in its words.
  if (request.get('HX-Request') === 'true') response.send(templates.partial('papers-state', page));
  else response.status(work === undefined ? 404 : 200).send(templates.page('papers', page));
}

/** Sends a PDF that is ready; until it is, the page that says how far it is. */
export function sendPaper({ works }: PaperDesk, subject: PaperSubject, id: string, response: Response): void {
  const work = works.find(audienceOf(subject), id);
  if (work?.state.is !== 'ready') {
    response.redirect(303, `${subject.address}/papers/${encodeURIComponent(id)}`);
    return;
  }
  response.attachment(work.fileName).type('application/pdf').send(Buffer.from(work.state.pdf));
}

/** Ends the making of a PDF; once it is over, nothing changes. */
export function cancelPaper(
  { works }: PaperDesk,
  subject: PaperSubject,
  id: string,
  response: Response,
): void {
  works.cancel(audienceOf(subject), id);
  response.redirect(303, `${subject.address}/papers/${encodeURIComponent(id)}`);
}

/** The newest sheet issued of a check, and whether the check has been changed since. */
function newestIssued({ id, changedAt }: Check, issued: readonly IssuedSheet[]): string {
  const newest = issued.find(({ checkId, isSuperseded }) => checkId === id && !isSuperseded);
  if (newest === undefined) return '';
  return `${newest.revision}, ${newest.date}${changedAt > newest.madeAt ? '; changed since' : ''}`;
}

function audienceOf({ actor, job, linkId }: PaperSubject): Audience {
  return { officeId: actor.officeId, jobId: job.id, linkId };
}
