import type { Actor } from './actor.ts';
import { changedFields } from './changed-fields.ts';
import { readCheck, standingOnly, type Check } from './checks.ts';
import type { Store } from './open-store.ts';
import { keepRevision, type CheckSave } from './revisions.ts';

/**
 * What came of a save, with the check as it now is. `stale`: somebody else saved since, and nothing was written. `late`: a
 * later save of the same page was here first.
 */
export interface Saved {
  readonly kind: 'saved' | 'unchanged' | 'stale' | 'late';
  readonly check: Check;
}

const mostTries = 4;

/**
 * Saves a check and its revision together, if nobody but this page has saved since.
 *
 * @returns undefined where the office has no such check
 */
export async function saveCheck(
  store: Store,
  actor: Actor,
  jobId: string,
  id: string,
  save: CheckSave,
): Promise<Saved | undefined> {
  for (let tries = 0; tries < mostTries; tries++) {
    const check = await readCheck(store, actor, jobId, id);
    if (check === undefined || check.isDeleted === 1) return undefined;
    const isSamePage = save.editor !== '' && save.editor === check.editor;
    if (isSamePage && save.turn <= check.turn) return { kind: 'late', check };
    if (!isSamePage && save.base !== check.version) return { kind: 'stale', check };
    if (save.form === check.form) return { kind: 'unchanged', check };
    const saved = await write(store, actor, check, save);
    if (saved !== undefined) return { kind: 'saved', check: saved };
  }
  throw new Error('A check could not be saved: others kept saving it at the same moment.');
}

/** @returns undefined where somebody saved between the reading and the writing */
function write(store: Store, actor: Actor, before: Check, save: CheckSave): Promise<Check | undefined> {
  const at = store.now().toISOString();
  const fields = changedFields(before.form, save.form).map(({ name }) => name);
  return store.db.transaction().execute(async (db) => {
    const written = await db
      .updateTable('jobCheck')
      .set({
        ...standingOnly(save.standing),
        form: save.form,
        version: before.version + 1,
        editor: save.editor,
        turn: save.turn,
        changedAt: at,
        changedBy: actor.name,
      })
      .where('id', '=', before.id)
      .where('version', '=', before.version)
      .executeTakeFirst();
    if (written.numUpdatedRows === 0n) return undefined;
    const lastRevision = await keepRevision({ ...store, db }, actor, before, save, fields);
    await db.updateTable('job').set({ changedAt: at }).where('id', '=', before.jobId).execute();
    return db
      .updateTable('jobCheck')
      .set({ lastRevision })
      .where('id', '=', before.id)
      .returningAll()
      .executeTakeFirstOrThrow();
  });
}
