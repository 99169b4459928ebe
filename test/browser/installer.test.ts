import { expect, it } from 'vitest';
import { addressOf } from '../../server/check/addresses.ts';
import { demoCheck } from '../../server/demo.ts';
import { warned } from '../server/sheets/many-shelves.ts';
import { expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

const addressFor = (document: unknown): string => addressOf(document).replace('/check?', '/installer?');
const places = ['4 in', '26 in', '48 in', '70 in', '92 in', '116 in'];
const { nosing: _, ...plainBoard } = demoCheck.board;
const sixBrackets = {
  ...demoCheck,
  board: { ...plainBoard, length: '120 in' },
  brackets: { ...demoCheck.brackets, positions: places },
  wall: { ...demoCheck.wall, studs: { at: places } },
};
const failing = {
  ...demoCheck,
  brackets: { ...demoCheck.brackets, positions: ['5 in', '38 in', '60 in', '91 in'] },
};

describeInBrowser('the installer’s sheet in a browser', ({ visit }) => {
  it.each([
    ['the demo', 'letter', demoCheck],
    ['the demo', 'a4', demoCheck],
    ['the demo in metric', 'a4', { ...demoCheck, units: 'metric' }],
    ['six brackets', 'letter', sixBrackets],
    ['six brackets', 'a4', sixBrackets],
    ['brackets off their studs', 'letter', failing],
    ['as many warnings as there may be', 'letter', warned],
    ['as many warnings as there may be', 'a4', warned],
  ])('prints %s on one page of %s', async (_name, paper, document) => {
    const page = await visit(`${addressFor(document)}&paper=${paper}`);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const pages = [...pdf.matchAll(/\/Count (\d+)/g)].map(([, count]) => Number(count));
    expect(Math.max(...pages)).toBe(1);
    const [, width] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
    expect(Math.abs(Number(width) - (paper === 'a4' ? 595 : 612))).toBeLessThan(1);
  });

  it('prints no letter under 14 points', async () => {
    const page = await visit(`${addressFor(demoCheck)}&paper=letter`, {
      viewport: { width: 725, height: 1000 },
    });
    await page.emulateMedia({ media: 'print' });
    const small = await page.evaluate<string[]>(`[...document.querySelectorAll('.installer *')]
      .filter((each) => each.checkVisibility() && [...each.childNodes].some((node) => node.nodeType === 3 && node.data.trim()))
      .filter((each) => !each.closest('desc, title'))
      .filter((each) => {
        const drawn = each.ownerSVGElement;
        const scale = drawn ? drawn.getBoundingClientRect().width / drawn.viewBox.baseVal.width : 1;
        const size = drawn ? Number(each.getAttribute('font-size')) * scale : parseFloat(getComputedStyle(each).fontSize);
        return size < 14 * 96 / 72 - 0.05;
      }).map((each) => each.textContent)`);
    expect(small).toEqual([]);
  });

  it.each([320, 360, 1440])('fits a screen of %d pixels', async (width) => {
    const page = await visit(addressFor(demoCheck), { viewport: { width, height: 740 } });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
  });

  it.each([
    ['a shelf that holds', demoCheck, { viewport: { width: 360, height: 740 } }],
    ['a shelf that does not', failing, { viewport: { width: 1440, height: 900 } }],
    ['a shelf that does not, in the dark', failing, { colorScheme: 'dark' as const }],
  ])('has nothing that shuts people out: %s', async (_name, document, options) => {
    const page = await visit(addressFor(document), options);
    await expectOpenToAll(page);
  });

  it('ticks a step by its words, and by the keyboard', async () => {
    const page = await visit(addressFor(demoCheck));
    await page.getByText('Find wires and pipes').click();
    await page.locator('.installer-steps input').nth(1).press('Space');
    expect(await page.locator('.installer-steps input:checked').count()).toBe(2);
  });
});
