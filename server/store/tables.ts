import type { Generated } from 'kysely';
import type { Outcome } from '../../shared/check-result.ts';
import type { Paper } from '../sheets/paper.ts';

/**
 * The tables, as the newest migration leaves them. Times are ISO 8601 in UTC; yes and no are 1 and 0; ids are chance text.
 * Every row that an office owns names it, so that no query crosses from one office to another.
 */
export interface Tables {
  readonly schemaVersion: { version: number; takenAt: string };
  readonly setting: SettingTable;
  readonly office: OfficeTable;
  readonly job: JobTable;
  readonly jobCheck: JobCheckTable;
  readonly revision: RevisionTable;
  readonly person: PersonTable;
  readonly session: SessionTable;
  readonly shareLink: ShareLinkTable;
  readonly issuedSheet: IssuedSheetTable;
}

/** What the store knows about itself. */
interface SettingTable {
  name: string;
  value: string;
}

interface OfficeTable {
  id: string;
  name: string;
  lastJobNumber: Generated<number>;
  madeAt: string;
}

/** The words of a job that its pages and sheets show. */
export interface JobWords {
  /** What the job is called. */
  readonly name: string;
  readonly client: string;
  readonly address: string;
  /** The office's own order or reference number. */
  readonly reference: string;
  readonly preparedBy: string;
  readonly checkedBy: string;
  /** The code and edition that the place has adopted. */
  readonly edition: string;
  /** The authority having jurisdiction. */
  readonly authority: string;
  readonly notes: string;
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };

interface JobTable extends Writable<JobWords> {
  id: string;
  officeId: string;
  /** Counted from 1 in each office. */
  number: number;
  version: number;
  lastCheckNumber: Generated<number>;
  isArchived: number;
  isDeleted: number;
  madeAt: string;
  changedAt: string;
  /** Lower-case letters to sort and to search by. */
  nameKey: string;
  clientKey: string;
  searchKey: string;
}

/** How a check stands: an outcome, or not yet to be worked out. */
export type StandingWord = Outcome | 'unfinished';

/** What a list says about a check without working it out again. */
export interface Standing {
  readonly element: string;
  readonly title: string;
  readonly standing: StandingWord;
  /** Title of the check that governs; empty for none. */
  readonly governs: string;
  /** How much of the governing limit is used; null where that can't be said. */
  readonly used: number | null;
  /** Version of the tool that worked it out. */
  readonly tool: string;
}

interface JobCheckTable extends Writable<Standing> {
  id: string;
  officeId: string;
  jobId: string;
  /** Counted from 1 in each job. */
  number: number;
  /** Place in the job's list. */
  place: number;
  version: number;
  /** The filled-in form, as the query of an address: the check itself. */
  form: string;
  isDeleted: number;
  lastRevision: number;
  /** The opened page that saved last, and how often it had by then. */
  editor: string;
  turn: number;
  madeAt: string;
  changedAt: string;
  changedBy: string;
}

interface RevisionTable {
  checkId: string;
  officeId: string;
  /** Counted from 1 in each check. */
  number: number;
  /** Version of the check that this revision ends with. */
  version: number;
  form: string;
  standing: StandingWord;
  /** Names of the fields that differ from the revision before, a JSON list. */
  changed: string;
  /** How it came about, where not by writing in the form. */
  reason: string;
  editor: string;
  madeAt: string;
  savedAt: string;
  savedBy: string;
}

/** What a person may do: see; see and change; or that, and say who may. Each includes those before it. */
export const roles = ['reader', 'member', 'owner'] as const;
export type Role = (typeof roles)[number];

interface PersonTable {
  id: string;
  officeId: string;
  /** As the history shows it. */
  name: string;
  /** In lower case; no two people of any office have the same. */
  signInName: string;
  /** What a password is known again by, never the password. */
  password: string;
  role: Role;
  isActive: number;
  madeAt: string;
}

interface SessionTable {
  /** Digest of the key that the browser has. */
  keyHash: string;
  personId: string;
  officeId: string;
  madeAt: string;
  seenAt: string;
}

interface ShareLinkTable {
  id: string;
  /** Digest of the key in the link. */
  keyHash: string;
  officeId: string;
  jobId: string;
  /** For whom it was made. */
  label: string;
  madeAt: string;
  madeBy: string;
  endsAt: string;
  isRevoked: number;
}

/** A sheet as it was issued. A row never changes: what supersedes it is a row of a later revision of the same check. */
interface IssuedSheetTable {
  /** Stands in the frozen document too. */
  id: string;
  officeId: string;
  jobId: string;
  checkId: string;
  /** Job and check: `14-3`. */
  number: string;
  checkNumber: number;
  /** Counted from 1 in each check, and the letters it is printed as. */
  revisionNumber: number;
  revision: string;
  title: string;
  /** Day that is printed on it. */
  date: string;
  verdict: Outcome;
  paper: Paper;
  /** Version of the tool that worked it out. */
  tool: string;
  /** Digest of what the sheet says, whatever its id, revision and day: the same where nothing changed. */
  contentDigest: string;
  /** Digest of the frozen document. */
  fingerprint: string;
  /** The frozen document, canonical JSON. */
  document: string;
  /** The sheet's page as it was set, without the frame around it: HTML of our own templates. */
  page: string;
  pdf: Uint8Array;
  pdfDigest: string;
  madeAt: string;
  madeBy: string;
}
