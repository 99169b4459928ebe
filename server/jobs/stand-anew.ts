import { version } from '../../calc/version.ts';
import { sentForm } from '../check/check-state.ts';
import type { Desk } from '../desk.ts';
import { textsOf } from '../form/index.ts';
import type { Actor } from '../store/actor.ts';
import { restandCheck, type Check } from '../store/checks.ts';
import type { Store } from '../store/open-store.ts';
import type { Standing } from '../store/tables.ts';
import { troubleOf } from '../store/trouble.ts';

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
    const standing = await study.standing(sentForm(textsOf(check.form)));
    await note(store, actor, check, standing);
    now.push({ ...check, ...standing });
  }
  return now;
}

async function note(store: Store, actor: Actor, check: Check, standing: Standing): Promise<void> {
  try {
    await restandCheck(store, actor, check, standing);
  } catch (error) {
    if (troubleOf(error) === undefined) throw error;
  }
}
