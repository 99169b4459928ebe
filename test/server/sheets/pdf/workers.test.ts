import { describe, expect, it } from 'vitest';
import { demoAddress } from '../../../../server/check/addresses.ts';
import { createPdfWorkers } from '../../../../server/sheets/pdf/workers.ts';
import { serve } from '../../serve.ts';

describe('the setters of PDFs', () => {
  it('pass on why a sheet could not be set, and set the next', async () => {
    const pdfs = createPdfWorkers();
    const { signal } = new AbortController();
    await expect(pdfs.make({ template: 'sheet', json: '{}', made_s: 0 }, signal)).rejects.toMatchObject({
      fault: 'not-set',
    });
    await expect(pdfs.make({ template: 'sheet', json: '[', made_s: 0 }, signal)).rejects.toMatchObject({
      fault: 'not-set',
    });
    await pdfs.close();
  });

  it('are asked for by a page that says so where there is no PDF', async () => {
    const pdfs = createPdfWorkers(undefined, new URL('./no-such-program.mjs', import.meta.url));
    const served = await serve(undefined, { pdfs });
    const response = await fetch(served.home + demoAddress.replace('/check?', '/sheet.pdf?'));
    expect(response.status).toBe(503);
    expect(response.headers.get('retry-after')).toBe('10');
    expect(await response.text()).toContain('There is no PDF of this sheet');
    expect(served.faults).toHaveLength(1);
    await served.close();
    await pdfs.close();
  });
});
