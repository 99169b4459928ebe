import { afterAll, describe, expect, it } from 'vitest';
import { check, DocumentError, layouts, reach } from '../../calc/index.ts';
import { knownAnswer } from '../../server/check/known-answers.ts';
import { openStudy, takesItsTime } from '../../server/check/study.ts';
import { demoCheck } from '../../server/demo.ts';
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
