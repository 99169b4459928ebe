import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { Store } from '../store/open-store.ts';

/** Reads the store's secret, or makes it where there is none yet. Nobody outside the store knows it. */
export async function readSecret(store: Store): Promise<string> {
  const name = 'token secret';
  await store.db
    .insertInto('setting')
    .values({ name, value: randomBytes(32).toString('hex') })
    .onConflict((conflict) => conflict.column('name').doNothing())
    .execute();
  const { value } = await store.db
    .selectFrom('setting')
    .select('value')
    .where('name', '=', name)
    .executeTakeFirstOrThrow();
  return value;
}

/** The token of a session's forms. */
export function tokenFor(secret: string, session: string): string {
  return createHmac('sha256', secret).update(`form ${session}`).digest('hex').slice(0, 40);
}

/** Whether a token is the one expected, in a time that tells nothing of how much of it is right. */
export function isToken(given: string, expected: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(expected)];
  return a.length === b.length && timingSafeEqual(a, b);
}
