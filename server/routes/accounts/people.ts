import { hashPassword, newPassword } from '../../accounts/password.ts';
import { nameFault, signInNameFault } from '../../accounts/sign-in-name.ts';
import { addPerson, changePassword, changePerson, listPeople } from '../../store/people.ts';
import { roles, type Role } from '../../store/tables.ts';
import { noNews, peoplePage, type PeopleNews } from '../../view-models/accounts/people-page.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { sendNothing } from '../failures.ts';
import type { FrontDesk } from './sign-in.ts';

/** What an owner does with the people of the office: lets them in, says what they may, shuts them out. */
export function peopleActions(desk: FrontDesk): Action[] {
  const show = async ({ visit, response }: Asked, status: number, news: PeopleNews): Promise<void> => {
    const people = await listPeople(desk.store, visit.actor);
    response.status(status).send(desk.templates.page('people', peoplePage(people, visit, news)));
  };
  const change = (word: string, read: (asked: Asked) => Parameters<typeof changePerson>[3]): Action => ({
    method: 'post',
    path: `/people/:person/${word}`,
    needs: 'owner',
    act: async (asked) => {
      const came = await changePerson(desk.store, asked.visit.actor, asked.part('person'), read(asked));
      if (came === 'nobody') sendNothing(desk.templates, asked.response);
      else if (came === 'changed') asked.response.redirect(303, '/people');
      else
        await show(asked, 409, {
          ...noNews,
          error: 'An office keeps at least one owner. Nothing was changed.',
        });
    },
  });
  return [
    { method: 'get', path: '/people', needs: 'owner', act: (asked) => show(asked, 200, noNews) },
    {
      method: 'post',
      path: '/people',
      needs: 'owner',
      act: async (asked) => {
        const [name, signInName] = ['name', 'sign-in'].map((field) => (asked.fields.get(field) ?? '').trim());
        const written = { name: name ?? '', signInName: signInName ?? '' };
        const nameError = nameFault(written.name);
        const signInError = signInNameFault(written.signInName);
        if (nameError !== '' || signInError !== '') {
          await show(asked, 422, { ...noNews, ...written, nameError, signInError });
          return;
        }
        const password = newPassword();
        const person = { ...written, password: await hashPassword(password), role: roleOf(asked) };
        const added = await addPerson(desk.store, asked.visit.actor, person);
        if (added === undefined) {
          await show(asked, 422, { ...noNews, ...written, signInError: 'That sign-in name is taken.' });
        } else {
          await show(asked, 200, { ...noNews, given: [{ signInName: added.signInName, password }] });
        }
      },
    },
    change('role', (asked) => ({ role: roleOf(asked) })),
    change('shut-out', () => ({ isActive: 0 })),
    change('let-in', () => ({ isActive: 1 })),
    {
      method: 'post',
      path: '/people/:person/password',
      needs: 'owner',
      act: async (asked) => {
        const password = newPassword();
        const kept = await hashPassword(password);
        const id = asked.part('person');
        const people = await listPeople(desk.store, asked.visit.actor);
        const person = people.find((each) => each.id === id);
        if (person === undefined) {
          sendNothing(desk.templates, asked.response);
          return;
        }
        await changePassword(desk.store, asked.visit.actor, id, kept, asked.visit.person?.keyHash ?? '');
        await show(asked, 200, { ...noNews, given: [{ signInName: person.signInName, password }] });
      },
    },
  ];
}

/** The role that was chosen; the least where none was. */
function roleOf({ fields }: Asked): Role {
  return roles.find((role) => role === fields.get('role')) ?? 'reader';
}
