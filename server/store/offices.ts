import type { Store } from './open-store.ts';

/** The office of whoever uses the program on their own machine, without signing in. */
export const localOffice = 'local';

/** Sees to it that there is an office of an id. */
export async function ensureOffice(store: Store, id: string, name: string): Promise<void> {
  await store.db
    .insertInto('office')
    .values({ id, name, madeAt: store.now().toISOString() })
    .onConflict((conflict) => conflict.column('id').doNothing())
    .execute();
}
