import { nameFault } from '../../accounts/sign-in-name.ts';
import { readJob } from '../../store/jobs.ts';
import { listLinks, makeLink, revokeLink } from '../../store/share-links.ts';
import { linksPage, type LinksNews } from '../../view-models/accounts/links-page.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { wholeNumber } from '../../visits/whole-number.ts';
import type { FrontDesk } from '../accounts/sign-in.ts';
import { sendNothing } from '../failures.ts';

const mostDays = 366;

/** Links that show a job to whoever has them: see them, make one, take one back. */
export function linkActions(desk: FrontDesk): Action[] {
  const show = async (asked: Asked, status: number, news: LinksNews): Promise<void> => {
    const { visit, part, response } = asked;
    const job = await readJob(desk.store, visit.actor, part('job'));
    if (job === undefined || job.isDeleted === 1) {
      sendNothing(desk.templates, response);
      return;
    }
    const links = await listLinks(desk.store, visit.actor, job.id);
    response.status(status).send(desk.templates.page('links', linksPage(job, links, visit, news)));
  };
  return [
    {
      method: 'get',
      path: '/jobs/:job/links',
      needs: 'member',
      act: (asked) => show(asked, 200, { made: [], label: '', error: '' }),
    },
    {
      method: 'post',
      path: '/jobs/:job/links',
      needs: 'member',
      act: async (asked) => {
        const { visit, part, fields } = asked;
        const label = (fields.get('label') ?? '').trim();
        const days = wholeNumber(fields.get('days'));
        const error = nameFault(label);
        if (error !== '' || days < 1 || days > mostDays) {
          const said = error === '' ? `It takes from 1 to ${mostDays} days.` : `For whom it is: ${error}`;
          await show(asked, 422, { made: [], label, error: said });
          return;
        }
        const key = await makeLink(desk.store, visit.actor, part('job'), label, days);
        const made = key === undefined ? [] : [{ address: `${desk.site.origin}/shared/${key}` }];
        await show(asked, 200, { made, label: '', error: '' });
      },
    },
    {
      method: 'post',
      path: '/jobs/:job/links/:link/revoke',
      needs: 'member',
      act: async ({ visit, part, response }) => {
        const isDone = await revokeLink(desk.store, visit.actor, part('job'), part('link'));
        if (isDone) response.redirect(303, `/jobs/${part('job')}/links`);
        else sendNothing(desk.templates, response);
      },
    },
  ];
}
