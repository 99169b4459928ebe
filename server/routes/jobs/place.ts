import type { Desk } from '../../desk.ts';
import { duplicateCheck, duplicateJob } from '../../store/copies.ts';
import { moveCheck, placeCheck, readCheck } from '../../store/checks.ts';
import { placeJob } from '../../store/jobs.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { sendNothing } from '../failures.ts';

/** What a button does. @returns where to go on; undefined where there is no such thing */
type Doing = (asked: Asked) => Promise<string | undefined>;

/** The buttons of a job and of its checks, each at an address of its own: copy, archive, delete and undo, up and down. */
export function placeActions(desk: Desk): Action[] {
  const { store } = desk;
  const job = (word: string, go: (asked: Asked, id: string) => Promise<string | undefined>): Action =>
    button(desk, `/jobs/:job/${word}`, (asked) => go(asked, asked.part('job')));
  const check = (word: string, go: (asked: Asked, id: string) => Promise<string | undefined>): Action =>
    button(desk, `/jobs/:job/checks/:check/${word}`, async (asked) => {
      const found = await readCheck(store, asked.visit.actor, asked.part('job'), asked.part('check'));
      return found === undefined ? undefined : go(asked, found.id);
    });
  const placed =
    (place: Parameters<typeof placeJob>[3], next: (id: string) => string) =>
    async ({ visit }: Asked, id: string): Promise<string | undefined> =>
      (await placeJob(store, visit.actor, id, place)) ? next(id) : undefined;
  const jobPage = (id: string): string => `/jobs/${id}`;
  return [
    job('archive', placed({ isArchived: 1 }, jobPage)),
    job('unarchive', placed({ isArchived: 0 }, jobPage)),
    job(
      'delete',
      placed({ isDeleted: 1 }, (id) => `/?gone=${id}`),
    ),
    job('undelete', placed({ isDeleted: 0 }, jobPage)),
    job('copy', async ({ visit }, id) => {
      const copy = await duplicateJob(store, visit.actor, id);
      return copy === undefined ? undefined : jobPage(copy.id);
    }),
    check('copy', async ({ visit, part }, id) => {
      const copy = await duplicateCheck(store, visit.actor, part('job'), id);
      return copy === undefined ? undefined : jobPage(copy.jobId);
    }),
    check('delete', async ({ visit, part }, id) =>
      (await placeCheck(store, visit.actor, id, 1)) ? `${jobPage(part('job'))}?gone=${id}` : undefined,
    ),
    check('undelete', async ({ visit, part }, id) =>
      (await placeCheck(store, visit.actor, id, 0)) ? jobPage(part('job')) : undefined,
    ),
    ...(['up', 'down'] as const).map((way) =>
      check(way, async ({ visit, part }, id) => {
        await moveCheck(store, visit.actor, part('job'), id, way);
        return jobPage(part('job'));
      }),
    ),
  ];
}

function button(desk: Desk, path: string, go: Doing): Action {
  return {
    method: 'post',
    path,
    needs: 'member',
    act: async (asked) => {
      const next = await go(asked);
      if (next === undefined) sendNothing(desk.templates, asked.response);
      else asked.response.redirect(303, next);
    },
  };
}
