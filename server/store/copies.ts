import type { Actor } from './actor.ts';
import { insertCheck, readCheck, readChecks, type Check } from './checks.ts';
import { insertJob, readJob, type Job } from './jobs.ts';
import type { Store } from './open-store.ts';

/** Adds a copy of a check at the end of its job. @returns undefined where there is no such check */
export async function duplicateCheck(
  store: Store,
  actor: Actor,
  jobId: string,
  id: string,
): Promise<Check | undefined> {
  return store.db.transaction().execute(async (db) => {
    const inside = { ...store, db };
    const check = await readCheck(inside, actor, jobId, id);
    if (check === undefined) return undefined;
    const reason = `copied from check ${check.number}`;
    return insertCheck(inside, actor, jobId, { form: check.form, standing: check, reason });
  });
}

/** Makes a copy of a job and of its checks as they are now. @returns undefined where there is no such job */
export async function duplicateJob(store: Store, actor: Actor, id: string): Promise<Job | undefined> {
  return store.db.transaction().execute(async (db) => {
    const inside = { ...store, db };
    const job = await readJob(inside, actor, id);
    if (job === undefined) return undefined;
    const copy = await insertJob(inside, actor, { ...job, name: copyName(job.name) });
    for (const check of await readChecks(inside, actor, id)) {
      const reason = `copied from job ${job.number}, check ${check.number}`;
      await insertCheck(inside, actor, copy.id, { form: check.form, standing: check, reason });
    }
    return copy;
  });
}

const longestName = 120;

function copyName(name: string): string {
  const end = ', copy';
  return name.slice(0, longestName - end.length) + end;
}
