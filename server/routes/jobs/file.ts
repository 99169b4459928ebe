import type { Desk } from '../../desk.ts';
import { bringJobIn, jobFile, readJobFile } from '../../jobs/job-file.ts';
import { standAnew } from '../../jobs/stand-anew.ts';
import { readChecks } from '../../store/checks.ts';
import { readJob } from '../../store/jobs.ts';
import type { Action } from '../../visits/action.ts';
import { fileName } from '../../sheets/file-name.ts';
import { sendNothing } from '../failures.ts';
import { sendNotOpened } from '../open.ts';

/** `GET /jobs/:job/file`: a job with its checks as one JSON document. */
export function sendJobFile(desk: Desk): Action {
  return {
    method: 'get',
    path: '/jobs/:job/file',
    needs: 'reader',
    act: async ({ visit, part, response }) => {
      const job = await readJob(desk.store, visit.actor, part('job'));
      if (job === undefined) {
        sendNothing(desk.templates, response);
        return;
      }
      const checks = await standAnew(desk, visit.actor, await readChecks(desk.store, visit.actor, job.id));
      const file = jobFile(job, checks);
      response
        .attachment(`job-${job.number}-${fileName(job.name)}.json`)
        .type('application/json')
        .send(`${JSON.stringify(file, null, 2)}\n`);
    },
  };
}

/** `POST /jobs/bring`: brings a job in from a file, as a new job. */
export function bringJob(desk: Desk): Action {
  return {
    method: 'post',
    path: '/jobs/bring',
    needs: 'member',
    act: async ({ visit, file, response }) => {
      const bytes = file('job');
      if (bytes.length === 0) {
        sendNotOpened(desk, response, 400, 'No file was chosen, or it is empty.');
        return;
      }
      const reading = readJobFile(bytes);
      if (!reading.ok) {
        const message = 'The file is no job that can be brought in. Nothing was kept of it.';
        sendNotOpened(desk, response, reading.status, message, reading.errors);
        return;
      }
      const job = await bringJobIn(desk, visit.actor, reading.words, reading.forms);
      response.redirect(303, `/jobs/${job.id}`);
    },
  };
}
