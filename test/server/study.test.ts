import { afterAll, describe, expect, it } from 'vitest';
import { check, DocumentError, layouts, reach } from '../../calc/index.ts';
import { knownAnswer } from '../../server/check/known-answers.ts';
import { sentForm } from '../../server/check/check-state.ts';
import { isLargeShelf, takesItsTime } from '../../server/check/pace.ts';
import { openStudy } from '../../server/check/study.ts';
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
    let isDone = false;
    const turn = (): void => {
      turns++;
      if (!isDone) setImmediate(turn);
    };
    turn();
    const form = sentForm(fillForm(demoCheck));
    const pages = 20;
    await Promise.all(
      Array.from({ length: pages }, () => study.page({ page: 'check', form, region: 'page' })),
    );
    isDone = true;
    // Where the pages are made here, the loop comes round once or twice for each.
    expect(turns).toBeGreaterThan(20 * pages);
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

  it('lets no page wait for a large shelf', async () => {
    const loads = Array.from({ length: 12 }, (_, k) => ({
      name: `Jar ${k}`,
      kind: 'roaming' as const,
      amount: `${k + 1} lbf`,
      duration: 'ten-years' as const,
    }));
    const large = { ...demoCheck, loads, brackets: { ...demoCheck.brackets, hold: 'resting' as const } };
    expect([large, demoCheck, { element: 'bracket-shelf' }, counter, null].map(isLargeShelf)).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
    const order: string[] = [];
    const largeForm = sentForm(fillForm(large));
    const form = sentForm(fillForm(demoCheck));
    const pageOf = (each: typeof form) => study.page({ page: 'check', form: each, region: 'answer' });
    const [shown] = await Promise.all([
      pageOf(largeForm).then((page) => (order.push('large'), page)),
      pageOf(form).then(() => order.push('usual')),
    ]);
    expect(order).toEqual(['usual', 'large']);
    expect(shown.hasAnswer).toBe(true);
    const { verdict } = check(large);
    expect((await study.standing(largeForm)).standing).toBe(verdict);
  });

  it('lets no counter wait for a search around a shelf', async () => {
    const gone = new AbortController();
    const order: string[] = [];
    const searches = Promise.all(
      [0, 1, 2, 3].map((turn) =>
        study
          .search('reach', { ...demoCheck, title: `search ${turn}` }, gone.signal)
          .then(() => order.push('search'))
          .catch(() => order.push('cancelled')),
      ),
    );
    await study.check({ ...counter, title: 'while shelves are searched' }).then(() => order.push('check'));
    gone.abort();
    await searches;
    expect(order.indexOf('check')).toBeLessThan(3);
  });

  it('is for what takes its time', () => {
    expect(takesItsTime(counter)).toBe(true);
    for (const other of [startChecks['bracket-shelf'], null, 'counter-overhang', {}])
      expect(takesItsTime(other)).toBe(false);
  });
});
