import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { demoAddress } from '../../../../server/check/addresses.ts';
import { createPdfWorkers, type PdfWorkers } from '../../../../server/sheets/pdf/workers.ts';
import { serve } from '../../serve.ts';

/** A thread that does what its task says: answers, ends, never answers, or says that it can't. */
const file = pathToFileURL(join(import.meta.dirname, 'obedient-thread.mjs'));
const task = (order: string): { template: 'sheet'; data: object; made_s: number } => ({
  template: 'sheet',
  data: { order },
  made_s: 0,
});

let workers: PdfWorkers | undefined;
afterEach(() => workers?.close());

const start = (options: object = {}): PdfWorkers =>
  (workers = createPdfWorkers({ file, threads: 1, ...options }));
const waiting = (): AbortSignal => new AbortController().signal;

describe('the threads that set PDFs', () => {
  it('say clearly that one died, and the next sheet is set by a new one', async () => {
    const pdfs = start();
    await expect(pdfs.make(task('end'), waiting())).rejects.toMatchObject({ fault: 'ended' });
    expect(Buffer.from(await pdfs.make(task('answer'), waiting())).toString()).toBe('1');
  });

  it('give up what takes too long, and go on', async () => {
    const pdfs = start();
    await expect(pdfs.make(task('never'), waiting(), 300)).rejects.toMatchObject({ fault: 'too-slow' });
    expect(Buffer.from(await pdfs.make(task('answer'), waiting())).toString()).toBe('1');
  });

  it('pass on that a sheet could not be set, and keep the thread', async () => {
    const pdfs = start();
    await expect(pdfs.make(task('refuse'), waiting())).rejects.toMatchObject({
      fault: 'not-set',
      message: 'refused',
    });
    expect(Buffer.from(await pdfs.make(task('answer'), waiting())).toString()).toBe('2');
  });

  it('end work that nobody waits for, begun or not', async () => {
    const pdfs = start();
    const [begun, queued] = [new AbortController(), new AbortController()];
    const first = pdfs.make(task('never'), begun.signal);
    const second = pdfs.make(task('answer'), queued.signal);
    queued.abort();
    await expect(second).rejects.toMatchObject({ fault: 'cancelled' });
    begun.abort();
    await expect(first).rejects.toMatchObject({ fault: 'cancelled' });
    expect(Buffer.from(await pdfs.make(task('answer'), waiting())).toString()).toBe('1');
  });

  it('refuse more than may wait', async () => {
    const pdfs = start({ mostWaiting: 1 });
    const gone = new AbortController();
    const begun = [pdfs.make(task('never'), gone.signal), pdfs.make(task('never'), gone.signal)];
    await expect(pdfs.make(task('answer'), waiting())).rejects.toMatchObject({ fault: 'busy' });
    gone.abort();
    await Promise.allSettled(begun);
  });

  it('replace a thread after so many documents', async () => {
    const pdfs = start({ documentsEach: 2 });
    const counts: string[] = [];
    for (let i = 0; i < 4; i++)
      counts.push(Buffer.from(await pdfs.make(task('answer'), waiting())).toString());
    expect(counts).toEqual(['1', '2', '1', '2']);
  });

  it('are asked for by a page that says so where there is no PDF', async () => {
    const pdfs = start({ file: pathToFileURL(join(import.meta.dirname, 'no-such-thread.mjs')) });
    const served = await serve(undefined, { pdfs });
    const response = await fetch(served.home + demoAddress.replace('/check?', '/sheet.pdf?'));
    expect(response.status).toBe(503);
    expect(response.headers.get('retry-after')).toBe('10');
    expect(await response.text()).toContain('There is no PDF of this sheet');
    expect(served.faults).toHaveLength(1);
    await served.close();
  });
});
