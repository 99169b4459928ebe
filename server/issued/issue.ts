import { sentForm } from '../check/check-state.ts';
import { studiedState } from '../check/studied-state.ts';
import type { Checked } from '../check/answer-to.ts';
import type { Study } from '../check/study.ts';
import type { Desk } from '../desk.ts';
import { textsOf } from '../form/index.ts';
import { canonicalJson } from '../sheets/canonical-json.ts';
import { digestOf } from '../sheets/fingerprint.ts';
import { paperOf, type Paper } from '../sheets/paper.ts';
import type { PaperSetter } from '../sheets/pdf/set-sheet.ts';
import type { Actor } from '../store/actor.ts';
import type { Check } from '../store/checks.ts';
import { newId } from '../store/ids.ts';
import { insertIssued, listIssuedOfCheck, type IssuedSheet, type SeenVersions } from '../store/issued.ts';
import type { Job } from '../store/jobs.ts';
import { issuedHead } from '../view-models/sheet-head.ts';
import { version } from '../../calc/version.ts';
import type { FieldError } from '../../shared/check-result.ts';
import { contentDigest, frozenDocument, printedJob, type SheetNames } from './frozen-document.ts';
import { revisionLetters } from './revision-letters.ts';

/** What issuing works with. */
export interface IssueDesk extends Desk {
  readonly setter: PaperSetter;
}

/** A check worked out under the names it is to be issued with. */
export interface Proof {
  readonly checked: Checked;
  /** The document as it was written. */
  readonly document: Readonly<Record<string, unknown>>;
  readonly query: string;
}

/** What came of working a check out to be issued. */
export type ProofReading =
  | { readonly ok: true; readonly proof: Proof }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly query: string };

/** Works a check out under the names it is to be issued with. */
export async function proofOf(study: Study, form: string, names: SheetNames): Promise<ProofReading> {
  const { title, preparedBy, checkedBy, date } = names;
  const texts = textsOf(form);
  for (const [name, text] of Object.entries({ title, preparedBy, checkedBy, date })) texts.set(name, text);
  const { answer, reading, query } = await studiedState(study, sentForm(texts), { waysOut: false });
  if (!answer.ok) return { ok: false, errors: answer.errors, query };
  return { ok: true, proof: { checked: answer, document: reading.document, query } };
}

/** A sheet that somebody wants to issue. */
export interface IssueOrder {
  readonly job: Job;
  readonly check: Check;
  /** What job and check were when whoever issues it looked at them. */
  readonly seen: SeenVersions;
  readonly proof: Proof;
  readonly names: SheetNames;
  /** Anything but a paper is the one that goes with the units. */
  readonly paper: string;
  /** The revision of which it is known that it says the same, where it is to be issued all the same. */
  readonly insist: string;
}

/**
 * What came of it. `same`: the newest revision says the same, so nothing was issued. `crowded`: others kept issuing the same
 * check at the same moment.
 */
export type IssueOutcome =
  | { readonly kind: 'issued'; readonly id: string }
  | { readonly kind: 'same'; readonly as: IssuedSheet }
  | { readonly kind: 'stale' | 'crowded' };

const mostTries = 8;

/**
 * Issues a sheet under the next revision of its check. Its PDF is set before anything is written, so that no transaction waits
 * for it; where somebody else took the revision meanwhile, it is all made again for the next one.
 *
 * @throws PdfError where the PDF can't be made
 */
export async function issueSheet(
  desk: IssueDesk,
  actor: Actor,
  order: IssueOrder,
  signal: AbortSignal,
): Promise<IssueOutcome> {
  const paper = paperOf(order.paper, order.proof.checked.document.units ?? 'inch-pound');
  for (let tries = 0; tries < mostTries; tries++) {
    const [newest] = await listIssuedOfCheck(desk.store, actor, order.check.id);
    const revisionNumber = (newest?.revisionNumber ?? 0) + 1;
    const { frozen, content } = freeze(order, paper, revisionNumber);
    if (newest?.contentDigest === content && newest.revision !== order.insist) {
      return { kind: 'same', as: newest };
    }
    const sheet = await setFrozen(desk, order, frozen, paper, signal);
    const { id, number, revision, title, date, result } = frozen;
    const outcome = await insertIssued(
      desk.store,
      actor,
      {
        ...sheet,
        id,
        number,
        revision,
        title,
        date,
        paper,
        revisionNumber,
        jobId: order.job.id,
        checkId: order.check.id,
        checkNumber: order.check.number,
        verdict: result.verdict,
        tool: version,
        contentDigest: content,
      },
      order.seen,
    );
    if (outcome === 'issued') return { kind: 'issued', id };
    if (outcome === 'stale') return { kind: 'stale' };
  }
  return { kind: 'crowded' };
}

function freeze({ job, check, proof, names }: IssueOrder, paper: Paper, revisionNumber: number) {
  const frozen = frozenDocument({
    id: newId(),
    number: `${job.number}-${check.number}`,
    revision: revisionLetters(revisionNumber),
    ...names,
    job: printedJob(job),
    check: proof.document,
    result: proof.checked.result,
  });
  return { frozen, content: contentDigest(frozen, paper) };
}

/** The document, the page and the PDF of a sheet, as they are kept from then on. */
async function setFrozen(
  { study, setter }: IssueDesk,
  { proof }: IssueOrder,
  frozen: ReturnType<typeof frozenDocument>,
  paper: Paper,
  signal: AbortSignal,
) {
  const document = canonicalJson(frozen);
  const fingerprint = digestOf(document);
  const head = issuedHead({ ...frozen, fingerprint });
  const { checked, query } = proof;
  const context = { paper, fingerprint, query };
  const { pdf } = await setter.sheet({ checked, context, head }, signal);
  const { html } = await study.page({ page: 'issued', checked, context, head }, signal);
  return { document, fingerprint, page: html.toString(), pdf, pdfDigest: digestOf(pdf) };
}
