import { sentForm, type SentForm } from '../../check/check-state.ts';
import type { Desk } from '../../desk.ts';
import { textsOf } from '../../form/index.ts';
import { notWorkedOut } from '../../check/standing.ts';
import { readJob } from '../../store/jobs.ts';
import type { CheckSave } from '../../store/revisions.ts';
import { saveCheck, type Saved } from '../../store/save-check.ts';
import { ThreadError } from '../../threads/thread-error.ts';
import { troubleOf } from '../../store/trouble.ts';
import type { Action, Asked } from '../../visits/action.ts';
import {
  checkAddress,
  keepingView,
  keptPlace,
  notSavedView,
  trailTo,
} from '../../view-models/jobs/kept-check.ts';
import { wholeNumber } from '../../visits/whole-number.ts';
import { wantedBy } from '../check.ts';
import { sendFailure, sendNothing } from '../failures.ts';
import { untilGone } from '../until-gone.ts';

/**
 * `POST /jobs/:job/checks/:check`: works the form out and saves it, unless somebody else has saved since. Where it can't be
 * kept, the answer comes all the same, and says that it is not saved; where it can't be worked out, it is kept all the same.
 * Whoever sent it may have gone on to another page meanwhile, so that nothing of it ends with them but the page.
 */
export function saveKeptCheck(desk: Desk): Action {
  return {
    method: 'post',
    path: '/jobs/:job/checks/:check',
    needs: 'member',
    act: async (asked) => {
      const { read, ...sent } = readSent(asked.fields);
      const gone = untilGone(asked.response);
      const keep = (save: CheckSave): Promise<Saved | undefined> =>
        saveCheck(desk.store, asked.visit.actor, asked.part('job'), asked.part('check'), save);
      const standing = await desk.study.standing(read, true).catch(async (error: unknown) => {
        await keep({ ...sent, standing: notWorkedOut(read) });
        throw error;
      });
      const save = { ...sent, standing };
      try {
        const saved = await keep(save);
        if (saved === undefined) sendNothing(desk.templates, asked.response);
        else await sendSaved(desk, asked, { form: read, save, gone }, saved);
      } catch (error) {
        const trouble = troubleOf(error);
        if (trouble === undefined) throw error;
        await sendNotSaved(desk, asked, { form: read, save, gone }, trouble.message).catch(
          (later: unknown) => {
            throw later instanceof ThreadError ? error : later;
          },
        );
      }
    },
  };
}

/** What was sent, how it is saved, and when whoever sent it has gone: the save goes on then, its page is not made. */
interface Sent {
  readonly form: SentForm;
  readonly save: CheckSave;
  readonly gone: AbortSignal;
}

async function sendSaved(
  desk: Desk,
  { visit, part, request, response }: Asked,
  { form, save, gone }: Sent,
  saved: Saved,
): Promise<void> {
  const wanted = wantedBy(request);
  const { region } = wanted;
  if (region === 'page' && saved.kind !== 'stale') {
    const focus = form.at === '' ? '' : `?at=${encodeURIComponent(form.at)}`;
    response.redirect(303, checkAddress(saved.check) + focus);
    return;
  }
  const job = region === 'page' ? await readJob(desk.store, visit.actor, part('job')) : undefined;
  const trail = job === undefined ? [] : [trailTo(job, saved.check)];
  const keeping = keepingView(saved, form.query, String(save.base), desk.store.now());
  const place = keptPlace(checkAddress(saved.check), visit.token, save.editor, keeping, trail);
  const page = await desk.study.page({ page: 'check', form, ...wanted, place }, gone).catch(threadErrorOf);
  if (page instanceof ThreadError) {
    const [status, words] = withoutPage[saved.kind === 'stale' ? 'stale' : 'saved'];
    sendFailure(desk.templates, response, status, words);
    return;
  }
  response.status(region === 'page' ? 409 : page.hasAnswer ? 200 : 422);
  response.type('html').send(page.html);
}

/** What became of a save whose page could not be made. */
const withoutPage = {
  saved: [
    503,
    {
      heading: 'It is saved',
      message:
        'What you wrote is kept, but its page could not be made just now. Load the check again in a moment.',
    },
  ],
  stale: [
    409,
    {
      heading: 'It is not saved',
      message:
        'This check was saved from another window after it was opened here, so what you wrote was not saved. Go back, and send it again in a moment to see both.',
    },
  ],
} as const;

function threadErrorOf(error: unknown): ThreadError {
  if (error instanceof ThreadError) return error;
  throw error;
}

async function sendNotSaved(
  desk: Desk,
  { visit, part, request, response }: Asked,
  { form, save, gone }: Sent,
  reason: string,
): Promise<void> {
  const wanted = wantedBy(request);
  const { region } = wanted;
  const address = checkAddress({ jobId: part('job'), id: part('check') });
  const keeping = notSavedView(`${reason} It is tried again with the next change.`, String(save.base));
  const place = keptPlace(address, visit.token, save.editor, keeping);
  const { html, hasAnswer } = await desk.study.page({ page: 'check', form, ...wanted, place }, gone);
  response.status(region === 'page' ? 503 : hasAnswer ? 200 : 422);
  response.type('html').send(html);
}

/** The check that was sent, and which version of it, from which page, for the how manieth time. */
function readSent(fields: URLSearchParams): Omit<CheckSave, 'standing'> & { readonly read: SentForm } {
  const read = sentForm(textsOf(fields.toString()));
  const turn = wholeNumber(fields.get('save.turn'));
  return {
    read,
    form: read.query,
    base: wholeNumber(fields.get('save.over') ?? fields.get('save.base')),
    editor: turn > 0 ? (fields.get('save.editor') ?? '').slice(0, 40) : '',
    turn,
    reason: '',
  };
}
