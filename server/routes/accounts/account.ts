import type { Response } from 'express';
import { hashPassword, isPassword, passwordFault } from '../../accounts/password.ts';
import { changePassword, personOfName } from '../../store/people.ts';
import { endSession } from '../../store/sessions.ts';
import { accountPage } from '../../view-models/accounts/account-page.ts';
import type { Action } from '../../visits/action.ts';
import { takeKey } from '../../visits/session-cookie.ts';
import type { Visit } from '../../visits/visit.ts';
import { sendNothing } from '../failures.ts';
import type { FrontDesk } from './sign-in.ts';

/** What everybody can do with their own account: see it, change the password, sign out. */
export function ownAccount(desk: FrontDesk): Action[] {
  const show = (response: Response, visit: Visit, status: number, error: string, said: string): void => {
    response.status(status).send(desk.templates.page('account', accountPage(visit, error, said)));
  };
  return [
    {
      method: 'get',
      path: '/account',
      needs: 'reader',
      act: ({ visit, response }) => {
        show(response, visit, 200, '', '');
      },
    },
    {
      method: 'post',
      path: '/account/password',
      needs: 'reader',
      act: async ({ visit, fields, response }) => {
        const signedIn = visit.person;
        const person = signedIn && (await personOfName(desk.store, signedIn.signInName));
        if (signedIn === undefined || person === undefined) {
          sendNothing(desk.templates, response);
          return;
        }
        const [old, fresh] = [fields.get('old') ?? '', fields.get('new') ?? ''];
        const isRight = await isPassword(old, person.password);
        const fault = isRight
          ? passwordFault(fresh, person.signInName)
          : 'That is not the password you have now.';
        if (fault !== '') {
          show(response, visit, 422, fault, '');
          return;
        }
        await changePassword(desk.store, visit.actor, person.id, await hashPassword(fresh), signedIn.keyHash);
        show(response, visit, 200, '', 'The password is changed. Other devices are signed out.');
      },
    },
    {
      method: 'post',
      path: '/sign-out',
      needs: 'reader',
      act: async ({ visit, response }) => {
        if (visit.person !== undefined) await endSession(desk.store, visit.person.keyHash);
        takeKey(response, desk.site);
        response.redirect(303, '/sign-in');
      },
    },
  ];
}
