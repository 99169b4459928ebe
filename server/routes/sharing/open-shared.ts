import type { Request, Response } from 'express';
import { readJob, type Job } from '../../store/jobs.ts';
import type { Store } from '../../store/open-store.ts';
import { openLink, type ShareLink } from '../../store/share-links.ts';
import type { FrontDesk } from '../accounts/sign-in.ts';
import { sendFailure } from '../failures.ts';

/** A job that is shown to whoever has the link. */
export interface Shared {
  readonly job: Job;
  /** Whose job it is, to read by. */
  readonly actor: { readonly officeId: string; readonly name: string };
  readonly linkId: string;
  readonly address: string;
}

/** The job of the link in the address; where it leads nowhere that has been said. */
export async function openShared(
  { store, templates }: Pick<FrontDesk, 'store' | 'templates'>,
  request: Request,
  response: Response,
): Promise<Shared | undefined> {
  response.set({ 'Cache-Control': 'no-store', 'X-Robots-Tag': 'noindex, nofollow' });
  const key = partOf(request, 'key');
  const link = await openLink(store, key);
  if (link === undefined) {
    sendFailure(templates, response, 404, unknown);
    return undefined;
  }
  const found = link === 'over' ? undefined : await jobOf(store, link);
  if (found === undefined) sendFailure(templates, response, 410, over);
  return found === undefined ? undefined : { ...found, address: `/shared/${key}` };
}

async function jobOf(store: Store, link: ShareLink): Promise<Omit<Shared, 'address'> | undefined> {
  const actor = { officeId: link.officeId, name: '' };
  const job = await readJob(store, actor, link.jobId);
  return job === undefined || job.isDeleted === 1 ? undefined : { job, actor, linkId: link.id };
}

/** A part of an address by its name. */
export function partOf(request: Request, name: string): string {
  const part: unknown = request.params[name];
  return typeof part === 'string' && !part.includes('\0') ? part : '';
}

const unknown = {
  heading: 'This link leads nowhere',
  message: 'It may be cut short: take the whole of it from where it was sent to you.',
};
const over = {
  heading: 'This link has ended',
  message: 'It was taken back or has run out. Ask whoever sent it for another.',
};
