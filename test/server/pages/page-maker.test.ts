import { afterAll, describe, expect, it } from 'vitest';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { demoCheck } from '../../../server/demo.ts';
import { fillForm } from '../../../server/form/index.ts';
import { openPageMaker } from '../../../server/pages/page-maker.ts';

const pages = openPageMaker();
afterAll(() => pages.close());
const state = checkInPlace(fillForm(demoCheck));

describe('the page maker', () => {
  it('makes the page of a check, or a region of it', async () => {
    const [page, work, answer] = await Promise.all(
      (['page', 'work', 'answer'] as const).map(async (region) =>
        (await pages.make({ page: 'check', state, region })).toString(),
      ),
    );
    expect(page).toContain('<!doctype html>');
    expect(work.includes('<html')).toBe(false);
    expect(page.includes(answer)).toBe(true);
    expect(answer.includes('id="board.length"')).toBe(false);
    expect(work.includes('id="board.length"')).toBe(true);
  });

  it('lets whoever asks go on meanwhile', async () => {
    let turns = 0;
    const turning = setInterval(() => turns++, 1);
    await Promise.all(Array.from({ length: 20 }, () => pages.make({ page: 'check', state, region: 'page' })));
    clearInterval(turning);
    expect(turns).toBeGreaterThan(5);
  });

  it('says so where a page can’t be made, and makes the next', async () => {
    const nowhere = { ...state, answer: { ...state.answer, result: { checks: 'none' } } };
    // @ts-expect-error the page maker is handed what no check comes to
    const broken = pages.make({ page: 'check', state: nowhere, region: 'page' });
    await expect(broken).rejects.toThrow(/checks/);
    expect((await pages.make({ page: 'check', state, region: 'answer' })).length).toBeGreaterThan(1000);
  });

  it('gives up what nobody waits for', async () => {
    const gone = new AbortController();
    const first = pages.make({ page: 'check', state, region: 'page' });
    const second = pages.make({ page: 'check', state, region: 'page' }, gone.signal);
    gone.abort();
    await expect(second).rejects.toThrow('Nobody waits');
    expect((await first).toString()).toContain('<main');
  });
});
