import type { CheckResult } from '../../shared/check-result.ts';
import { canonicalJson } from '../sheets/canonical-json.ts';
import { digestOf } from '../sheets/fingerprint.ts';
import type { Paper } from '../sheets/paper.ts';
import type { Job } from '../store/jobs.ts';
import type { JobWords } from '../store/tables.ts';

/** The word by which a file says that it is one of these. */
export const issuedKind = 'issued-sheet';

/** The words of a job that are printed on its sheets. Notes are the office's own. */
type PrintedJob = Omit<JobWords, 'preparedBy' | 'checkedBy' | 'notes'> & { readonly number: number };

/** Who stands on a sheet, and its day. */
export interface SheetNames {
  readonly title: string;
  readonly preparedBy: string;
  readonly checkedBy: string;
  /** `2026-03-14` */
  readonly date: string;
}

/** Everything that makes an issued sheet what it is. The digest of its canonical JSON is the sheet's fingerprint. */
export interface FrozenDocument extends SheetNames {
  readonly schema: 1;
  readonly kind: typeof issuedKind;
  /** Chance text that no other sheet has, of whatever office. */
  readonly id: string;
  readonly number: string;
  readonly revision: string;
  readonly job: PrintedJob;
  readonly check: Readonly<Record<string, unknown>>;
  readonly result: CheckResult;
  readonly edition: CheckResult['edition'];
}

/** The words of a job that are frozen. */
export function printedJob({
  number,
  name,
  client,
  address,
  reference,
  edition,
  authority,
}: Job): PrintedJob {
  return { number, name, client, address, reference, edition, authority };
}

/** Puts a frozen document together. Ways out are other checks than the one that is issued, so there are none in it. */
export function frozenDocument(parts: Omit<FrozenDocument, 'schema' | 'kind' | 'edition'>): FrozenDocument {
  const result = { ...parts.result, remedies: [] };
  return { schema: 1, kind: issuedKind, ...parts, result, edition: parts.result.edition };
}

/** A digest of what a sheet says, whatever its id, revision and day: it tells whether there is anything to issue anew. */
export function contentDigest(frozen: FrozenDocument, paper: Paper): string {
  const check = { ...frozen.check, date: undefined };
  const left = { id: undefined, revision: undefined, date: undefined };
  return digestOf(canonicalJson({ ...frozen, ...left, check, paper }));
}
