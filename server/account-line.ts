import { parseArgs } from 'node:util';
import { makeOwner } from './accounts/make-owner.ts';
import { hashPassword, newPassword } from './accounts/password.ts';
import { openStore, type Store } from './store/open-store.ts';
import { changePassword, personOfName } from './store/people.ts';
import { readSettings } from './settings.ts';

const usage = `npm run account -- owner --office "Office" --name "A. Person" --sign-in person@example.org
  makes an owner, and the office where there is none of that name; prints a password once
npm run account -- password --sign-in person@example.org
  gives somebody a new password, and signs them out everywhere
The store is the one of DATA_DIR or DATABASE_URL.`;

const options = {
  office: { type: 'string', default: '' },
  name: { type: 'string', default: '' },
  'sign-in': { type: 'string', default: '' },
} as const;

await main().catch((error: unknown) => fail(error instanceof Error ? error.message : String(error)));

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({ options, allowPositionals: true });
  const [what] = positionals;
  if (positionals.length !== 1 || (what !== 'owner' && what !== 'password')) fail(usage);
  const reading = readSettings({ ...process.env, HOST: '' });
  if (!reading.ok) fail(reading.message);
  const store = await openStore(reading.settings);
  const signInName = values['sign-in'].trim();
  const made =
    what === 'owner'
      ? await makeOwner(store, { office: values.office.trim(), name: values.name.trim(), signInName })
      : await givePassword(store, signInName);
  await store.close();
  if (!made.ok) fail(made.message);
  console.log(`Sign-in name: ${signInName.toLowerCase()}`);
  console.log(`Password:     ${made.password}`);
  console.log('It is shown this once. Change it at /account after signing in.');
}

async function givePassword(store: Store, signInName: string): ReturnType<typeof makeOwner> {
  const person = await personOfName(store, signInName);
  if (person === undefined) return { ok: false, message: `Nobody signs in as "${signInName}".` };
  const password = newPassword();
  await changePassword(store, person, person.id, await hashPassword(password), '');
  return { ok: true, password };
}

function fail(message: string): never {
  console.error(message);
  process.exit(1);
}
