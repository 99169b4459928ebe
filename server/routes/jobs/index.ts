import type { Desk } from '../../desk.ts';
import type { Action } from '../../visits/action.ts';
import { beginCheck, keepCheck, showKeep } from './add-check.ts';
import { beginJob, showNewJob } from './begin.ts';
import { showKeptCheck } from './check.ts';
import { editJob, showJobForm } from './edit.ts';
import { bringJob, sendJobFile } from './file.ts';
import { restoreRevision, showHistory } from './history.ts';
import { showJob } from './job.ts';
import { showJobs } from './list.ts';
import { placeActions } from './place.ts';
import { saveKeptCheck } from './save.ts';

/** Everything that can be asked for about jobs and the checks in them. */
export function jobActions(desk: Desk): Action[] {
  return [
    showJobs(desk),
    showNewJob(desk, 'get'),
    showNewJob(desk, 'post'),
    beginJob(desk),
    bringJob(desk),
    showJob(desk),
    showJobForm(desk),
    editJob(desk),
    sendJobFile(desk),
    showKeep(desk),
    keepCheck(desk),
    beginCheck(desk),
    showKeptCheck(desk),
    saveKeptCheck(desk),
    showHistory(desk),
    restoreRevision(desk),
    ...placeActions(desk),
  ];
}
