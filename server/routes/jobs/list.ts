import type { Desk } from '../../desk.ts';
import { countJobs, listJobs, type JobQuery } from '../../store/job-list.ts';
import type { Action } from '../../visits/action.ts';
import { wholeNumber } from '../../visits/whole-number.ts';
import { isPlace, isSort, jobListPage } from '../../view-models/jobs/job-list-page.ts';

/** `GET /`: the office's jobs, and the ways into a check. */
export function showJobs(desk: Desk): Action {
  return {
    method: 'get',
    path: '/',
    needs: 'reader',
    act: async ({ visit, query, response }) => {
      const asked = readQuery(query);
      const [counts, page] = await Promise.all([
        countJobs(desk.store, visit.actor),
        listJobs(desk.store, visit.actor, asked),
      ]);
      const deleted = /^[0-9a-f]{24}$/.exec(query.get('gone') ?? '')?.[0] ?? '';
      const model = jobListPage(page, counts, asked, visit, deleted, desk.store.now());
      response.send(desk.templates.page('home', model));
    },
  };
}

function readQuery(query: URLSearchParams): JobQuery {
  const [place, sort] = ['place', 'sort'].map((name) => query.get(name) ?? '');
  return {
    place: place !== undefined && isPlace(place) ? place : 'open',
    search: (query.get('search') ?? '').slice(0, 200),
    sort: sort !== undefined && isSort(sort) ? sort : 'changed',
    page: wholeNumber(query.get('page')),
  };
}
