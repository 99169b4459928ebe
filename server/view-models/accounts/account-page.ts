import type { Visit } from '../../visits/visit.ts';
import { pageFrame, type PageFrame } from '../page.ts';
import { roleWords } from './role-words.ts';

export interface AccountPage extends PageFrame {
  readonly token: string;
  readonly name: string;
  readonly signInName: string;
  readonly office: string;
  readonly role: string;
  readonly isOwner: boolean;
  readonly error: string;
  readonly hasError: boolean;
  readonly said: string;
  readonly hasSaid: boolean;
}

/** The page of one's own account. */
export function accountPage(visit: Visit, error: string, said: string): AccountPage {
  return {
    ...pageFrame('Your account'),
    token: visit.token,
    name: visit.actor.name,
    signInName: visit.person?.signInName ?? '',
    office: visit.person?.office ?? '',
    role: roleWords[visit.role],
    isOwner: visit.role === 'owner',
    error,
    hasError: error !== '',
    said,
    hasSaid: said !== '',
  };
}
