import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addressOf } from '../../../server/check/addresses.ts';
import { openStudy, type Study } from '../../../server/check/study.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { ThreadError } from '../../../server/threads/thread-error.ts';
import { plainText } from '../page-text.ts';
import { serve, type Served } from '../serve.ts';
import { formOf, visitor, type Visitor } from './visitor.ts';

const real = openStudy();
let isBusy = false;
let isPageBusy = false;
const orBusy = <Asked extends readonly unknown[], T>(ask: (...asked: Asked) => Promise<T>) => {
  return (...asked: Asked): Promise<T> =>
    isBusy ? Promise.reject(new ThreadError('busy', 'Too much is waiting.')) : ask(...asked);
};
const study: Study = {
  ...real,
  check: orBusy(real.check),
  standing: orBusy(real.standing),
  page: (...asked) =>
    isPageBusy
      ? Promise.reject(new ThreadError('busy', 'Too much is waiting.'))
      : orBusy(real.page)(...asked),
};
const htmx = { 'HX-Request': 'true', 'HX-Target': 'section#answer' };

let served: Served;
let someone: Visitor;
beforeAll(async () => {
  served = await serve(undefined, { study });
  someone = visitor(served);
});
afterAll(async () => {
  await served.close();
  await real.close();
});

/** A job with a counter in it. */
async function counterInJob(title: string): Promise<{ job: string; check: string }> {
  const job = await someone.beginJob({ name: title });
  const sent = addressOf({ ...startChecks['counter-overhang'], title }).replace('/check?', '');
  const kept = await someone.send('/keep', { job: job.replace('/jobs/', ''), check: sent });
  return { job, check: kept.headers.get('location') ?? '' };
}

describe('a counter in a job', () => {
  it('is saved, kept, shown and put in a file while others are answered', async () => {
    const { job, check } = await counterInJob('Island');
    const form = formOf(await someone.page(check));
    const token = await someone.token();
    const order: string[] = [];
    const ask = async (what: string, path: string, body?: URLSearchParams): Promise<Response> => {
      const sent = body === undefined ? {} : { method: 'POST', body };
      const response = await fetch(served.home + path, { ...sent, headers: htmx, redirect: 'manual' });
      order.push(what);
      return response;
    };
    form.set('top.depth', '37 in');
    form.set('token', token);
    const save = ask('saved', check, form);
    const kept = new URLSearchParams({
      token,
      job: job.replace('/jobs/', ''),
      check: addressOf({ ...startChecks['counter-overhang'], title: 'Another' }).replace('/check?', ''),
    });
    const keep = ask('kept', '/keep', kept);
    await ask('health', '/health');
    expect((await save).status).toBe(200);
    expect((await keep).status).toBe(303);
    expect(order[0]).toBe('health');
    const file = (await (await someone.get(`${job}/file`)).json()) as { checks: { document: object }[] };
    expect(file.checks.map(({ document }) => document)).toMatchObject([
      { top: { depth: '37 in' } },
      { title: 'Another' },
    ]);
  });

  it('is kept where it can’t be worked out just now, and worked out when its job is looked at', async () => {
    const { job, check } = await counterInJob('Peninsula');
    const form = formOf(await someone.page(check));
    form.set('top.depth', '37 in');
    isBusy = true;
    const response = await someone.send(check, form, htmx);
    const list = await someone.get(job);
    isBusy = false;
    expect(response.status).toBe(503);
    expect(plainText(await response.text())).toContain('Try again in a moment');
    expect(list.status).toBe(503);
    expect(formOf(await someone.page(check)).get('top.depth')).toBe('37 in');
    const shown = plainText(await someone.page(job));
    expect(shown).toContain('% used');
    expect(shown).not.toContain('Unfinished');
  });

  it('says what became of a save whose page can’t be made just now', async () => {
    const { check } = await counterInJob('Breakfast bar');
    const form = formOf(await someone.page(check));
    form.set('top.depth', '37 in');
    isPageBusy = true;
    const saved = await someone.send(check, form, htmx);
    const stale = await someone.send(check, form);
    isPageBusy = false;
    expect(saved.status).toBe(503);
    expect(plainText(await saved.text())).toContain('What you wrote is kept');
    expect(stale.status).toBe(409);
    expect(plainText(await stale.text())).toContain('what you wrote was not saved');
    expect(formOf(await someone.page(check)).get('top.depth')).toBe('37 in');
  });
});
