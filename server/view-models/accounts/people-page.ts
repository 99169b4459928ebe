import type { Person } from '../../store/people.ts';
import { roles, type Role } from '../../store/tables.ts';
import type { Visit } from '../../visits/visit.ts';
import { pageFrame, type PageFrame } from '../page.ts';
import { roleWords } from './role-words.ts';

/** What came of the last change, and what was written in the form. */
export interface PeopleNews {
  readonly error: string;
  /** A password that was just made, to be passed on: one, or none. */
  readonly given: readonly { readonly signInName: string; readonly password: string }[];
  readonly name: string;
  readonly signInName: string;
  readonly nameError: string;
  readonly signInError: string;
}

export const noNews: PeopleNews = {
  error: '',
  given: [],
  name: '',
  signInName: '',
  nameError: '',
  signInError: '',
};

interface PersonRow {
  readonly address: string;
  readonly name: string;
  readonly signInName: string;
  readonly isActive: boolean;
  readonly roles: readonly { readonly value: Role; readonly label: string; readonly isChosen: boolean }[];
}

export interface PeoplePage extends PageFrame, PeopleNews {
  readonly token: string;
  readonly office: string;
  readonly hasError: boolean;
  readonly hasNameError: boolean;
  readonly hasSignInError: boolean;
  readonly rows: readonly PersonRow[];
  readonly roles: PersonRow['roles'];
}

/** The people of an office, for its owners. */
export function peoplePage(people: readonly Person[], visit: Visit, news: PeopleNews): PeoplePage {
  const choices = (chosen: Role): PersonRow['roles'] =>
    roles.map((value) => ({ value, label: roleWords[value], isChosen: value === chosen }));
  return {
    ...pageFrame('People'),
    ...news,
    token: visit.token,
    office: visit.person?.office ?? '',
    hasError: news.error !== '',
    hasNameError: news.nameError !== '',
    hasSignInError: news.signInError !== '',
    rows: people.map(({ id, name, signInName, isActive, role }) => ({
      address: `/people/${id}`,
      name,
      signInName,
      isActive: isActive === 1,
      roles: choices(role),
    })),
    roles: choices('member'),
  };
}
