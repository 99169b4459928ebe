import { version } from '../../calc/version.ts';
import { sentForm, type SentForm } from '../check/check-state.ts';
import { notWorkedOut } from '../check/standing.ts';
import type { Desk } from '../desk.ts';
import { textsOf } from '../form/index.ts';
import type { Actor } from '../store/actor.ts';
import { restandCheck, type Check } from '../store/checks.ts';
import type { Store } from '../store/open-store.ts';
import type { Standing } from '../store/tables.ts';
import { troubleOf } from '../store/trouble.ts';
import { ThreadError } from '../threads/thread-error.ts';

/**
 * Works out again what another version of the tool had worked out, and notes how those checks stand now. Where nothing can be
 * written they are worked out all the same, and noted another time.
 */
export async function standAnew(
  { store, study }: Pick<Desk, 'store' | 'study'>,
  actor: Actor,
  checks: readonly Check[],
): Promise<Check[]> {
  const now: Check[] = [];
  for (const check of checks) {
    if (check.tool === version) {
      now.push(check);
      continue;
    }
    const form = sentForm(textsOf(check.form));
    const standing = await standingNow(study, form);
    if (standing !== null) await note(store, actor, check, standing);
    now.push({ ...check, ...(standing ?? notWorkedOut(form)) });
  }
  return now;
}

/** Null where the tool itself fails at a check: the others still stand in their list, and its own page says what failed. */
async function standingNow(study: Desk['study'], form: SentForm): Promise<Standing | null> {
  try {
    return await study.standing(form);
  } catch (error) {
    if (error instanceof ThreadError) throw error;
    return null;
  }
}

async function note(store: Store, actor: Actor, check: Check, standing: Standing): Promise<void> {
  try {
    await restandCheck(store, actor, check, standing);
  } catch (error) {
    if (troubleOf(error) === undefined) throw error;
  }
}
