import type { ExpressionBuilder } from 'kysely';
import type { Outcome } from '../../shared/check-result.ts';
import type { Paper } from '../sheets/paper.ts';
import type { Actor } from './actor.ts';
import type { Store } from './open-store.ts';
import type { Tables } from './tables.ts';

/** An issued sheet as lists and pages name it, without what was frozen. */
export interface IssuedSheet {
  readonly id: string;
  readonly jobId: string;
  readonly checkId: string;
  /** Job and check: `14-3`. */
  readonly number: string;
  /** Counted from 1 in each check, and the letters it is printed as: `A`, `B` … */
  readonly revisionNumber: number;
  readonly revision: string;
  readonly title: string;
  /** Day that is printed on it. */
  readonly date: string;
  readonly verdict: Outcome;
  readonly paper: Paper;
  /** Version of the tool that worked it out. */
  readonly tool: string;
  /** 64 hexadecimal digits. */
  readonly fingerprint: string;
  readonly contentDigest: string;
  readonly madeAt: string;
  readonly madeBy: string;
  /** The newest revision of the same check; its own where nothing supersedes it. */
  readonly newestRevision: string;
  readonly isSuperseded: boolean;
}

/** What is written when a sheet is issued. */
export interface NewIssuedSheet extends Omit<
  IssuedSheet,
  'madeAt' | 'madeBy' | 'newestRevision' | 'isSuperseded'
> {
  readonly checkNumber: number;
  readonly document: string;
  readonly page: string;
  readonly pdf: Uint8Array;
  readonly pdfDigest: string;
}

/** The versions of job and check from which a sheet was made. */
export interface SeenVersions {
  readonly job: number;
  readonly check: number;
}

/** `taken`: somebody issued this revision first. `stale`: job or check were changed or deleted since they were read. */
export type Issuing = 'issued' | 'taken' | 'stale';

const shown = [
  'id',
  'jobId',
  'checkId',
  'number',
  'revisionNumber',
  'revision',
  'title',
  'date',
  'verdict',
  'paper',
  'tool',
  'fingerprint',
  'contentDigest',
  'madeAt',
  'madeBy',
] as const;

/**
 * Writes a sheet down as issued, all of it or nothing.
 *
 * @param seen what job and check were when the sheet was made; what was changed since is not issued unseen
 */
export async function insertIssued(
  store: Store,
  actor: Actor,
  sheet: NewIssuedSheet,
  seen: SeenVersions,
): Promise<Issuing> {
  return store.db.transaction().execute(async (db) => {
    const asSeen = await db
      .selectFrom('jobCheck')
      .innerJoin('job', 'job.id', 'jobCheck.jobId')
      .select('jobCheck.id')
      .where('jobCheck.id', '=', sheet.checkId)
      .where('jobCheck.jobId', '=', sheet.jobId)
      .where('jobCheck.officeId', '=', actor.officeId)
      .where('jobCheck.version', '=', seen.check)
      .where('jobCheck.isDeleted', '=', 0)
      .where('job.version', '=', seen.job)
      .where('job.isDeleted', '=', 0)
      .executeTakeFirst();
    if (asSeen === undefined) return 'stale';
    const written = await db
      .insertInto('issuedSheet')
      .values({
        ...sheet,
        officeId: actor.officeId,
        madeAt: store.now().toISOString(),
        madeBy: actor.name,
      })
      .onConflict((conflict) => conflict.columns(['checkId', 'revisionNumber']).doNothing())
      .returning('id')
      .executeTakeFirst();
    return written === undefined ? 'taken' : 'issued';
  });
}

/** The issued sheets of a job, by check and the newest revision first; those of deleted checks are among them. */
export async function listIssued(store: Store, { officeId }: Actor, jobId: string): Promise<IssuedSheet[]> {
  const rows = await sheets(store)
    .where('jobId', '=', jobId)
    .where('officeId', '=', officeId)
    .orderBy('checkNumber')
    .orderBy('revisionNumber', 'desc')
    .execute();
  return rows.map(issuedSheet);
}

/** The issued sheets of one check, the newest first. */
export async function listIssuedOfCheck(
  store: Store,
  { officeId }: Actor,
  checkId: string,
): Promise<IssuedSheet[]> {
  const rows = await sheets(store)
    .where('checkId', '=', checkId)
    .where('officeId', '=', officeId)
    .orderBy('revisionNumber', 'desc')
    .execute();
  return rows.map(issuedSheet);
}

/** One issued sheet; undefined: the office has none of this id. */
export async function readIssued(
  store: Store,
  { officeId }: Actor,
  id: string,
): Promise<IssuedSheet | undefined> {
  const row = await sheets(store).where('id', '=', id).where('officeId', '=', officeId).executeTakeFirst();
  return row === undefined ? undefined : issuedSheet(row);
}

/** The frozen document of a sheet, canonical JSON. @throws Error where the office has no sheet of this id */
export async function readFrozenDocument(store: Store, actor: Actor, id: string): Promise<string> {
  return (await oneIssued(store, actor, id).select('document').executeTakeFirstOrThrow()).document;
}

/** The page of a sheet as it was set: HTML. @throws Error where the office has no sheet of this id */
export async function readFrozenPage(store: Store, actor: Actor, id: string): Promise<string> {
  return (await oneIssued(store, actor, id).select('page').executeTakeFirstOrThrow()).page;
}

/** The PDF of a sheet, byte for byte. @throws Error where the office has no sheet of this id */
export async function readFrozenPdf(store: Store, actor: Actor, id: string): Promise<Buffer> {
  return Buffer.from((await oneIssued(store, actor, id).select('pdf').executeTakeFirstOrThrow()).pdf);
}

function oneIssued(store: Store, { officeId }: Actor, id: string) {
  return store.db.selectFrom('issuedSheet').where('id', '=', id).where('officeId', '=', officeId);
}

/**
 * The sheet that somebody can name by what only the sheet itself tells: its fingerprint, the digest of its PDF, or its id. Of
 * whatever office, since who asks need belong to none.
 */
export async function findIssued(
  store: Store,
  by: 'fingerprint' | 'pdfDigest' | 'id',
  secret: string,
): Promise<IssuedSheet | undefined> {
  const row = await sheets(store).where(by, '=', secret).executeTakeFirst();
  return row === undefined ? undefined : issuedSheet(row);
}

function sheets(store: Store) {
  return store.db.selectFrom('issuedSheet').select(shown).select(newestRevision);
}

/** The revision that counts, of the check whose sheet is looked at. */
function newestRevision(from: ExpressionBuilder<Tables, 'issuedSheet'>) {
  return from
    .selectFrom('issuedSheet as other')
    .select('other.revision')
    .whereRef('other.checkId', '=', 'issuedSheet.checkId')
    .orderBy('other.revisionNumber', 'desc')
    .limit(1)
    .$asScalar()
    .$notNull()
    .as('newestRevision');
}

function issuedSheet(row: Omit<IssuedSheet, 'isSuperseded'>): IssuedSheet {
  return { ...row, isSuperseded: row.newestRevision !== row.revision };
}
