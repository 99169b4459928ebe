import { expect, it } from 'vitest';
import { makeOwner } from '../../../server/accounts/make-owner.ts';
import { localOffice } from '../../../server/store/offices.ts';
import { makeJob, noWords } from '../../../server/store/jobs.ts';
import {
  addPerson,
  changePassword,
  changePerson,
  hasOwner,
  listPeople,
  personOfName,
  type Person,
} from '../../../server/store/people.ts';
import { beginSession, clearSessions, endSession, readSession } from '../../../server/store/sessions.ts';
import { keyHash } from '../../../server/store/secret-keys.ts';
import { listLinks, makeLink, openLink, revokeLink } from '../../../server/store/share-links.ts';
import type { Store } from '../../../server/store/open-store.ts';
import { here, onBoth, there } from './both.ts';

const hour_ms = 3_600_000;
const day_ms = 24 * hour_ms;

async function add(
  store: Store,
  actor: typeof here,
  signInName: string,
  role: Person['role'],
): Promise<Person> {
  const person = await addPerson(store, actor, { name: signInName, signInName, password: 'kept', role });
  if (person === undefined) throw new Error('taken');
  return person;
}

onBoth('accounts', ({ open, clock }) => {
  const later = (by_ms: number): void => void (clock.now = new Date(clock.now.getTime() + by_ms));

  it('have names that are taken once, whatever the case and the office', async () => {
    const store = await open();
    expect(await hasOwner(store)).toBe(false);
    await add(store, here, 'Mason@example.org', 'owner');
    const again = { name: 'x', signInName: 'mason@EXAMPLE.org', password: 'y', role: 'owner' } as const;
    expect(await addPerson(store, there, again)).toBeUndefined();
    expect((await personOfName(store, 'MASON@example.org'))?.officeId).toBe(here.officeId);
    expect(await listPeople(store, there)).toEqual([]);
    expect(await hasOwner(store)).toBe(true);
  });

  it('are changed by their own office alone, which keeps an owner', async () => {
    const store = await open();
    const one = await add(store, here, 'one@example.org', 'owner');
    const two = await add(store, here, 'two@example.org', 'owner');
    expect(await changePerson(store, there, one.id, { role: 'reader' })).toBe('nobody');
    expect(await changePassword(store, there, one.id, 'other', '')).toBe(false);
    const both = await Promise.all([
      changePerson(store, here, one.id, { isActive: 0 }),
      changePerson(store, here, two.id, { role: 'member' }),
    ]);
    expect(both.toSorted()).toEqual(['changed', 'last-owner']);
    const owners = (await listPeople(store, here)).filter(
      (each) => each.role === 'owner' && each.isActive === 1,
    );
    expect(owners).toHaveLength(1);
  });

  it('have sessions that end unused, by age, and with whoever is shut out', async () => {
    const store = await open();
    await add(store, here, 'owner@example.org', 'owner');
    const person = await add(store, here, 'one@example.org', 'member');
    const unused = await beginSession(store, person);
    later(7 * day_ms + 1);
    expect(await readSession(store, unused)).toBeUndefined();
    const used = await beginSession(store, person);
    for (let days = 0; days < 30; days += 6) {
      expect((await readSession(store, used))?.person.id).toBe(person.id);
      later(6 * day_ms);
    }
    later(1);
    expect(await readSession(store, used)).toBeUndefined();
    const [first, second] = [await beginSession(store, person), await beginSession(store, person)];
    await endSession(store, keyHash(first));
    expect(await readSession(store, first)).toBeUndefined();
    await changePerson(store, here, person.id, { role: 'reader' });
    expect((await readSession(store, second))?.person.role).toBe('reader');
    await changePerson(store, here, person.id, { isActive: 0 });
    expect(await readSession(store, second)).toBeUndefined();
    expect(await readSession(store, 'no such key')).toBeUndefined();
  });

  it('leave no ended sessions behind', async () => {
    const store = await open();
    const person = await add(store, here, 'one@example.org', 'owner');
    await beginSession(store, person);
    later(8 * day_ms);
    const fresh = await beginSession(store, person);
    await clearSessions(store);
    const left = await store.db.selectFrom('session').select('keyHash').execute();
    expect(left).toEqual([{ keyHash: keyHash(fresh) }]);
  });

  it('of the first owner take over what was kept before anybody signed in', async () => {
    const store = await open();
    const words = { office: 'Office', name: 'A. Person', signInName: 'first@example.org' };
    expect((await makeOwner(store, words)).ok).toBe(true);
    expect((await personOfName(store, 'first@example.org'))?.officeId).toBe(localOffice);
    await makeOwner(store, { ...words, signInName: 'second@example.org' });
    await makeOwner(store, { ...words, office: 'Other', signInName: 'third@example.org' });
    expect((await personOfName(store, 'second@example.org'))?.officeId).toBe(localOffice);
    expect((await personOfName(store, 'third@example.org'))?.officeId).not.toBe(localOffice);
    const taken = await makeOwner(store, { ...words, office: 'Third', signInName: 'first@example.org' });
    expect(taken).toEqual({ ok: false, message: expect.stringContaining('is taken') as string });
    const wrong = await makeOwner(store, { ...words, name: '' });
    expect(wrong).toEqual({ ok: false, message: expect.stringContaining('--name') as string });
  });
});

onBoth('links to a job', ({ open, clock }) => {
  it('lead to it until they run out or are taken back, by its own office alone', async () => {
    const store = await open();
    const job = await makeJob(store, here, { ...noWords, name: 'Kitchen' });
    expect(await makeLink(store, there, job.id, 'Them', 30)).toBeUndefined();
    const [one, two] = [
      await makeLink(store, here, job.id, 'One', 2),
      await makeLink(store, here, job.id, 'Two', 9),
    ];
    expect(await openLink(store, one ?? '')).toMatchObject({ jobId: job.id, officeId: here.officeId });
    expect(await openLink(store, 'no such key')).toBeUndefined();
    expect(await listLinks(store, there, job.id)).toEqual([]);
    clock.now = new Date(clock.now.getTime() + 2 * day_ms);
    expect(await openLink(store, one ?? '')).toBe('over');
    const [left] = await listLinks(store, here, job.id);
    expect(left?.label).toBe('Two');
    expect(await revokeLink(store, there, job.id, left?.id ?? '')).toBe(false);
    expect(await revokeLink(store, here, job.id, left?.id ?? '')).toBe(true);
    expect(await openLink(store, two ?? '')).toBe('over');
    expect(await listLinks(store, here, job.id)).toEqual([]);
  });
});
