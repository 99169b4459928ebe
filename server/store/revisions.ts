import type { Selectable } from 'kysely';
import { z } from 'zod';
import type { Actor } from './actor.ts';
import type { Check } from './checks.ts';
import type { Store } from './open-store.ts';
import type { Standing, Tables } from './tables.ts';

/** A check as it is to be kept. */
export interface CheckSave {
  readonly form: string;
  readonly standing: Standing;
  /** Version that was read, or that the same page saved last. */
  readonly base: number;
  /** The opened page it comes from; empty where it comes from none. */
  readonly editor: string;
  /** Counts the saves of one page, so that one that was held up on its way can't undo a later one. */
  readonly turn: number;
  /** How it came about, where not by writing in the form; empty otherwise. */
  readonly reason: string;
}

/** A check as it once was. */
export type Revision = Readonly<Selectable<Tables['revision']>>;

/** One page of a history, and what each revision on it differs from. */
export interface RevisionPage {
  /** Newest first. */
  readonly revisions: readonly (Revision & { readonly formBefore: string })[];
  readonly page: number;
  readonly pages: number;
}

const pageSize = 30;
const joinedFor_ms = 5 * 60_000;
const names = z.array(z.string());

/**
 * Keeps a save in the history: what goes on changing the same field of the same page, without a pause, is one revision;
 * anything else begins the next. To be called inside the transaction of the save.
 *
 * @param before the check as it was
 * @param fields names of the fields that the save changes
 * @returns number of the revision
 */
export async function keepRevision(
  store: Store,
  actor: Actor,
  before: Check,
  save: CheckSave,
  fields: readonly string[],
): Promise<number> {
  const at = store.now();
  const savedAt = at.toISOString();
  const kept = { form: save.form, version: before.version + 1, standing: save.standing.standing, savedAt };
  const last = await readRevision(store, actor, before.id, before.lastRevision);
  const goesOn =
    last !== undefined &&
    save.reason === '' &&
    save.editor !== '' &&
    last.editor === save.editor &&
    last.savedBy === actor.name &&
    at.getTime() - Date.parse(last.savedAt) < joinedFor_ms &&
    isWithin(fields, last.changed);
  if (goesOn) {
    await store.db
      .updateTable('revision')
      .set(kept)
      .where('checkId', '=', before.id)
      .where('number', '=', last.number)
      .execute();
    return last.number;
  }
  const number = before.lastRevision + 1;
  await store.db
    .insertInto('revision')
    .values({
      ...kept,
      checkId: before.id,
      officeId: actor.officeId,
      number,
      changed: JSON.stringify(fields),
      reason: save.reason,
      editor: save.editor,
      madeAt: savedAt,
      savedBy: actor.name,
    })
    .execute();
  return number;
}

/** One revision of a check; undefined: there is none. */
export async function readRevision(
  store: Store,
  { officeId }: Actor,
  checkId: string,
  number: number,
): Promise<Revision | undefined> {
  return store.db
    .selectFrom('revision')
    .selectAll()
    .where('checkId', '=', checkId)
    .where('officeId', '=', officeId)
    .where('number', '=', number)
    .executeTakeFirst();
}

/** The history of a check, newest first. */
export async function listRevisions(
  store: Store,
  { officeId }: Actor,
  check: Check,
  asked: number,
): Promise<RevisionPage> {
  const pages = Math.max(1, Math.ceil(check.lastRevision / pageSize));
  const page = Math.min(Math.max(1, asked), pages);
  const newest = check.lastRevision - (page - 1) * pageSize;
  const rows = await store.db
    .selectFrom('revision')
    .selectAll()
    .where('checkId', '=', check.id)
    .where('officeId', '=', officeId)
    .where('number', '<=', newest)
    .orderBy('number', 'desc')
    .limit(pageSize + 1)
    .execute();
  const revisions = rows
    .slice(0, pageSize)
    .map((row, index) => ({ ...row, formBefore: rows[index + 1]?.form ?? row.form }));
  return { revisions, page, pages };
}

function isWithin(fields: readonly string[], changed: string): boolean {
  const known = new Set(names.parse(JSON.parse(changed)));
  return fields.every((field) => known.has(field));
}
