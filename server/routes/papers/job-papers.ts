import { readJob } from '../../store/jobs.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { sendNothing } from '../failures.ts';
import {
  beginPaper,
  cancelPaper,
  sendPaper,
  showPaper,
  type PaperDesk,
  type PaperSubject,
} from './paper-desk.ts';

/** The PDF of a whole job: begin it, see how far it is, take it, cancel it. Whoever may look at the job may have it. */
export function paperActions(desk: PaperDesk): Action[] {
  const forJob =
    (act: (subject: PaperSubject, asked: Asked) => Promise<void> | void) =>
    async (asked: Asked): Promise<void> => {
      const { visit, part, response } = asked;
      const job = await readJob(desk.store, visit.actor, part('job'));
      if (job === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const { actor, token } = visit;
      await act({ job, actor, token, address: `/jobs/${job.id}`, linkId: '', isShared: false }, asked);
    };
  return [
    {
      method: 'post',
      path: '/jobs/:job/papers',
      needs: 'reader',
      act: forJob((subject, { fields, response }) =>
        beginPaper(desk, subject, fields.get('paper') ?? '', response),
      ),
    },
    {
      method: 'get',
      path: '/jobs/:job/papers/:work',
      needs: 'reader',
      act: forJob((subject, { part, request, response }) =>
        showPaper(desk, subject, part('work'), request, response),
      ),
    },
    {
      method: 'get',
      path: '/jobs/:job/papers/:work/file',
      needs: 'reader',
      act: forJob((subject, { part, response }) => sendPaper(desk, subject, part('work'), response)),
    },
    {
      method: 'post',
      path: '/jobs/:job/papers/:work/cancel',
      needs: 'reader',
      act: forJob((subject, { part, response }) => cancelPaper(desk, subject, part('work'), response)),
    },
  ];
}
