import { afterAll, describe, expect, it } from 'vitest';
import { check, DocumentError, layouts, reach } from '../../calc/index.ts';
import { knownAnswer } from '../../server/check/known-answers.ts';
import { sentForm } from '../../server/check/check-state.ts';
import { openStudy, takesItsTime } from '../../server/check/study.ts';
import { demoCheck } from '../../server/demo.ts';
import { fillForm } from '../../server/form/index.ts';
import { ThreadError } from '../../server/threads/thread-error.ts';
import { startChecks } from '../../server/start-checks.ts';

const study = openStudy();
afterAll(() => study.close());
const counter = { ...startChecks['counter-overhang'], title: 'worked out in a thread' };

describe('the study', () => {
  it('answers as the check does, and remembers it, while the thread that asks goes on', async () => {
    let turns = 0;
    const turning = setInterval(() => turns++, 5);
    const result = await study.check(counter);
    clearInterval(turning);
    expect(turns).toBeGreaterThan(5);
    expect(result).toEqual(check(counter));
    expect(knownAnswer(counter)).toEqual(result);
    expect(knownAnswer({ ...counter, title: 'another' })).toBeUndefined();
  });

  it('tells what is wrong with a document, and then answers the next', async () => {
    const wrong = { ...counter, top: { ...counter.top, thickness: 'thick' } };
    await expect(study.check(wrong)).rejects.toThrow(DocumentError);
    expect((await study.check(startChecks['bracket-shelf'])).element).toBe('bracket-shelf');
  });

  it('looks for the ways out of a shelf where they are wanted', async () => {
    const sags = { ...demoCheck, board: { ...demoCheck.board, thickness: '1/2 in' } };
    const both = check(sags);
    expect(both.remedies.length).toBeGreaterThan(0);
    expect(await study.check(sags)).toEqual(both);
    expect(await study.check(sags, { waysOut: false })).toEqual(check(sags, { waysOut: false }));
  });

  it('searches around a shelf', async () => {
    expect(await study.search('layouts', demoCheck)).toEqual(layouts(demoCheck));
    expect(await study.search('reach', demoCheck)).toEqual(reach(demoCheck));
    await expect(study.search('reach', counter)).rejects.toThrow(DocumentError);
  });

  it('makes the page of a check, or a region of it', async () => {
    const form = sentForm(fillForm(demoCheck));
    const made = (region: 'page' | 'work' | 'answer') => study.page({ page: 'check', form, region });
    const [page, work, answer] = await Promise.all([made('page'), made('work'), made('answer')]);
    expect([page.hasAnswer, work.hasAnswer, answer.hasAnswer]).toEqual([true, true, true]);
    expect(page.html.toString().startsWith('<!doctype html>')).toBe(true);
    expect(page.html.includes(answer.html)).toBe(true);
    expect(work.html.includes('<html')).toBe(false);
    expect([work, answer].map(({ html }) => html.includes('id="board.length"'))).toEqual([true, false]);
  });

  it('makes the page of a counter from what was worked out before, and one of what can’t be checked', async () => {
    const form = sentForm(fillForm({ ...counter, title: 'a page of it' }));
    expect(await study.standing(form, true)).toMatchObject({
      standing: 'does-not-hold',
      element: 'counter-overhang',
    });
    expect(knownAnswer(form.reading.document)).toBeDefined();
    expect((await study.page({ page: 'check', form, region: 'answer' })).html.includes('Does not hold')).toBe(
      true,
    );
    const thick = sentForm(fillForm({ ...counter, top: { ...counter.top, thickness: 'thick' } }));
    const wrong = await study.page({ page: 'check', form: thick, region: 'answer' });
    expect(wrong.hasAnswer).toBe(false);
    expect(wrong.html.includes('One thing to put right')).toBe(true);
    expect(await study.standing(thick)).toMatchObject({ standing: 'unfinished' });
  });

  it('says the same of a form whether its page is wanted next or not, and shows its ways out', async () => {
    const form = sentForm(fillForm({ ...demoCheck, board: { ...demoCheck.board, thickness: '1/2 in' } }));
    const listed = await study.standing(form);
    expect(listed.standing).toBe('does-not-hold');
    expect(await study.standing(form, true)).toEqual(listed);
    const { html } = await study.page({ page: 'check', form, region: 'answer' });
    expect(html.includes('set:')).toBe(true);
  });

  it('lets whoever asks go on while pages are made', async () => {
    let turns = 0;
    const turning = setInterval(() => turns++, 1);
    const form = sentForm(fillForm(demoCheck));
    await Promise.all(Array.from({ length: 20 }, () => study.page({ page: 'check', form, region: 'page' })));
    clearInterval(turning);
    expect(turns).toBeGreaterThan(5);
  });

  it('lets no shelf wait for a counter', async () => {
    const order: string[] = [];
    await Promise.all([
      study.check({ ...counter, title: 'begun first' }).then(() => order.push('counter')),
      study.check(demoCheck).then(() => order.push('shelf')),
    ]);
    expect(order).toEqual(['shelf', 'counter']);
  });

  it('lets no check wait for a search, and ends a search that nobody waits for', async () => {
    const gone = new AbortController();
    const order: string[] = [];
    const search = study.search('props', counter, gone.signal).then(
      () => order.push('search'),
      (error: unknown) => order.push(error instanceof ThreadError ? error.fault : 'fault'),
    );
    await study.check({ ...counter, title: 'while another searches' }).then(() => order.push('check'));
    gone.abort();
    await search;
    expect(order).toEqual(['check', 'cancelled']);
  });

  it('is for what takes its time', () => {
    expect(takesItsTime(counter)).toBe(true);
    for (const other of [startChecks['bracket-shelf'], null, 'counter-overhang', {}])
      expect(takesItsTime(other)).toBe(false);
  });
});
