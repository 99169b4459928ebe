import { describe, expect, it } from 'vitest';
import { WorkError, type Progress } from '../../../server/papers/make-job-paper.ts';
import { createWorks, type Audience, type Works, type WorksRules } from '../../../server/papers/works.ts';

const own: Audience = { officeId: 'here', jobId: 'kitchen', linkId: '' };
const about = (audience: Audience = own, paper = 'letter') => ({
  audience,
  paper,
  checks: 3,
  fileName: 'job.pdf',
});
const rules: WorksRules = {
  mostGoing: 4,
  mostGoingOfOffice: 3,
  mostGoingOfLinks: 1,
  kept_ms: 1000,
  mostKeptOfOffice: 2,
  mostKeptBytes: 25,
};

/** A work that waits to be told what comes of it. */
function pending() {
  let resolve: (pdf: Uint8Array) => void = () => undefined;
  let reject: (error: Error) => void = () => undefined;
  const promise = new Promise<Uint8Array>((done, failed) => ([resolve, reject] = [done, failed]));
  let tell: (progress: Progress) => void = () => undefined;
  let signal = new AbortController().signal;
  const doing: Parameters<Works['begin']>[1] = (told, ending) => {
    [tell, signal] = [told, ending];
    return promise;
  };
  return {
    doing,
    resolve: (pdf: Uint8Array) => resolve(pdf),
    reject: (error: Error) => reject(error),
    tell: (progress: Progress) => tell(progress),
    isEnded: () => signal.aborted,
  };
}

function start(some: Partial<WorksRules> = {}) {
  const faults: unknown[] = [];
  const clock = { now_ms: 0 };
  const works = createWorks(
    (fault) => faults.push(fault),
    { ...rules, ...some },
    () => clock.now_ms,
  );
  const done = async (audience: Audience, bytes = 1): Promise<string> => {
    const id = works.begin(about(audience), () => Promise.resolve(new Uint8Array(bytes)))?.id ?? '';
    await new Promise(setImmediate);
    return id;
  };
  return { works, faults, clock, done };
}

const stateOf = (works: Works, id = '', audience = own): string | undefined =>
  works.find(audience, id)?.state.is;

describe('works', () => {
  it('tell how far they are, and then what came of them', async () => {
    const { works } = start();
    const { doing, resolve, tell } = pending();
    const id = works.begin(about(), doing)?.id ?? '';
    expect(works.find(own, id)?.state).toEqual({ is: 'going', progress: { at: 'checks', done: 0 } });
    tell({ at: 'checks', done: 2 });
    expect(works.find(own, id)?.state).toEqual({ is: 'going', progress: { at: 'checks', done: 2 } });
    resolve(new Uint8Array([7]));
    await new Promise(setImmediate);
    expect(works.find(own, id)?.state).toEqual({ is: 'ready', pdf: new Uint8Array([7]) });
  });

  it('are one where the same is asked for again while it goes on, and another on other paper', () => {
    const { works } = start();
    const first = works.begin(about(), pending().doing);
    expect(works.begin(about(), pending().doing)?.id).toBe(first?.id);
    expect(works.begin(about(own, 'a4'), pending().doing)?.id).not.toBe(first?.id);
  });

  it('are seen and ended by those alone for whom they are', () => {
    const { works } = start();
    const { doing, isEnded } = pending();
    const id = works.begin(about(), doing)?.id ?? '';
    const others = [
      { ...own, officeId: 'there' },
      { ...own, jobId: 'hall' },
      { ...own, linkId: 'link' },
    ];
    for (const other of others) {
      expect(works.find(other, id)).toBeUndefined();
      works.cancel(other, id);
    }
    expect(isEnded()).toBe(false);
    expect(stateOf(works, id)).toBe('going');
  });

  it('are ended by cancelling, once and for all, and that is no fault', async () => {
    const { works, faults } = start();
    const { doing, isEnded, reject, tell } = pending();
    const id = works.begin(about(), doing)?.id ?? '';
    works.cancel(own, id);
    works.cancel(own, id);
    works.cancel(own, 'no such work');
    tell({ at: 'pages' });
    reject(new WorkError('cancelled', '1-1', new Error('gone')));
    await new Promise(setImmediate);
    expect(isEnded()).toBe(true);
    expect(stateOf(works, id)).toBe('cancelled');
    expect(faults).toEqual([]);
  });

  it('say which check they failed at, and a fault of the program is reported', async () => {
    const { works, faults } = start();
    const error = new WorkError('not-set', '1-2', new Error('broken'));
    const id = works.begin(about(), () => Promise.reject(error))?.id ?? '';
    await new Promise(setImmediate);
    expect(works.find(own, id)?.state).toEqual({ is: 'failed', error });
    const busy = new WorkError('busy', '', new Error('busy'));
    works.begin(about(own, 'a4'), () => Promise.reject(busy));
    await new Promise(setImmediate);
    expect(faults).toEqual([error]);
  });

  it('are refused where too many go on: altogether, in an office, and by links', () => {
    const { works } = start();
    const begin = (officeId: string, jobId: string, linkId = ''): boolean =>
      works.begin(about({ officeId, jobId, linkId }), pending().doing) !== undefined;
    expect([begin('here', '1', 'link'), begin('here', '2', 'link'), begin('here', '3', 'other')]).toEqual([
      true,
      false,
      false,
    ]);
    expect([begin('here', '1'), begin('here', '2'), begin('here', '3')]).toEqual([true, true, false]);
    expect([begin('there', '1'), begin('elsewhere', '1')]).toEqual([true, false]);
  });

  it('are kept for a while, so many of an office, the newest', async () => {
    const { works, clock, done } = start();
    const ids: string[] = [];
    for (const jobId of ['1', '2', '3']) {
      clock.now_ms += 10;
      ids.push(await done({ ...own, jobId }));
    }
    const states = () => ids.map((id, index) => stateOf(works, id, { ...own, jobId: String(index + 1) }));
    expect(states()).toEqual([undefined, 'ready', 'ready']);
    clock.now_ms = 1025;
    expect(states()).toEqual([undefined, undefined, 'ready']);
  });

  it('are kept up to so much memory in all', async () => {
    const { works, clock, done } = start();
    const old = await done(own, 15);
    clock.now_ms = 10;
    const other = { ...own, officeId: 'there' };
    const young = await done(other, 15);
    expect([stateOf(works, old), stateOf(works, young, other)]).toEqual([undefined, 'ready']);
  });

  it('all end where the program does', () => {
    const { works } = start();
    const { doing, isEnded } = pending();
    works.begin(about(), doing);
    works.close();
    expect(isEnded()).toBe(true);
  });
});
