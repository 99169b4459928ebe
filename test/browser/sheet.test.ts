import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { addressOf } from '../../server/check/addresses.ts';
import { demoCheck } from '../../server/demo.ts';
import { findProgram } from '../run/programs.ts';
import { closeBrackets, crowdedLoads } from '../server/drawings/documents.ts';
import { pagesOf as textsOfPages } from '../server/sheets/pdf/read-pdf.ts';
import { expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

const sheetAddress = (document: unknown): string => addressOf(document).replace('/check?', '/sheet?');
const demoSheet = sheetAddress({ ...demoCheck, date: '2026-03-14', preparedBy: 'A. Nyone' });
const crowdedSheet = sheetAddress({
  ...demoCheck,
  loads: crowdedLoads,
  brackets: { ...demoCheck.brackets, positions: closeBrackets },
});

const example = (name: string): string =>
  sheetAddress(
    JSON.parse(readFileSync(new URL(`../../docs/examples/${name}.json`, import.meta.url), 'utf8')),
  );
const examples = ['display-shelf', 'coat-rail', 'stool-overhang', 'stone-counter'];

/** How many pages a PDF has, by the count its own page tree states. */
const pagesOf = (pdf: Buffer): number =>
  Math.max(...[...pdf.toString('latin1').matchAll(/\/Count (\d+)/g)].map(([, count]) => Number(count)));

describeInBrowser('the sheet in a browser', ({ visit }) => {
  it.each([
    ['a desk', { viewport: { width: 1440, height: 900 } }],
    ['a phone', { viewport: { width: 360, height: 740 } }],
  ])('has nothing that shuts people out, on %s', async (_, options) => {
    const page = await visit(demoSheet, options);
    await expectOpenToAll(page);
  });

  it('has enough contrast in the dark', async () => {
    const page = await visit(demoSheet, { colorScheme: 'dark' });
    await expectOpenToAll(page, ['color-contrast']);
  });

  it.each([320, 360, 768, 1440])('fits a screen of %d pixels', async (width) => {
    const page = await visit(demoSheet, { viewport: { width, height: 800 } });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
    const layouts = await page.evaluate<string[]>(
      `[...document.querySelectorAll('.sheet-answer svg.drawing')]
        .filter((each) => each.getBoundingClientRect().width > 0)
        .map((each) => each.getAttribute('class'))`,
    );
    expect(layouts).toEqual([`drawing drawing-elevation-${width <= 700 ? 'narrow' : 'wide'}`]);
  });

  it.each([
    ['the demo', demoSheet],
    ['a crowded shelf', crowdedSheet],
  ])(
    'keeps every label of its drawings inside and apart, as the browser measures them: %s',
    async (_, address) => {
      const page = await visit(address);
      const faults = await page.evaluate<string[]>(`
      [...document.querySelectorAll('svg.drawing')].filter((svg) => svg.getBoundingClientRect().width > 0).flatMap((svg) => {
        const frame = svg.getBoundingClientRect();
        const texts = [...svg.querySelectorAll('text')].map((each) => [each.textContent, each.getBoundingClientRect()]);
        const out = texts.filter(([, box]) => box.left < frame.left - 1 || box.right > frame.right + 1 ||
          box.top < frame.top - 2 || box.bottom > frame.bottom + 2).map(([words]) => 'outside: ' + words);
        const meet = texts.flatMap(([a, p], i) => texts.slice(i + 1).filter(([, q]) =>
          p.left < q.right - 1 && q.left < p.right - 1 && p.top < q.bottom - 5 && q.top < p.bottom - 5)
          .map(([b]) => 'meet: ' + a + ' | ' + b));
        return [...out, ...meet];
      })`);
      expect(faults).toEqual([]);
    },
  );

  it.each(['light', 'dark'] as const)(
    'says at the edge of a table that there is more beyond it, in the %s',
    async (colorScheme) => {
      const page = await visit(demoSheet, { viewport: { width: 360, height: 4000 }, colorScheme });
      const table = page.locator('.sheet-scroll:has(.sheet-checks)');
      const { wide, room } = await page.evaluate<{ wide: number; room: number }>(
        `(({ scrollWidth, clientWidth }) => ({ wide: scrollWidth, room: clientWidth }))(document.querySelector('.sheet-scroll:has(.sheet-checks)'))`,
      );
      expect(wide).toBeGreaterThan(room);
      // A band without words: between the caption and the edge. Its last pixels are shaded until the end is reached.
      const band = async (): Promise<Buffer> => {
        const box = await table.boundingBox();
        const clip = { x: (box?.x ?? 0) + room - 8, y: (box?.y ?? 0) + 2, width: 8, height: 4 };
        return page.screenshot({ clip, animations: 'disabled' });
      };
      const begun = await band();
      await page.evaluate(`document.querySelector('.sheet-scroll:has(.sheet-checks)').scrollLeft = 9999`);
      const ended = await band();
      expect(begun.equals(ended)).toBe(false);
      await page.evaluate(
        `document.querySelector('.sheet-scroll:has(.sheet-checks)').style.background = 'var(--paper)'`,
      );
      expect(ended.equals(await band())).toBe(true);
    },
  );

  it('sets its formulas in the font that has the signs for them', async () => {
    const page = await visit(demoSheet);
    expect(await page.evaluate(`document.fonts.check("16px 'Noto Sans Math'")`)).toBe(true);
    const wide = await page.evaluate<string[]>(
      `[...document.querySelectorAll('.step-side')]
        .filter((side) => side.scrollWidth > side.clientWidth + 1)
        .map((side) => side.closest('.sheet-step').querySelector('.step-caption').textContent)`,
    );
    expect(wide).toEqual([]);
  });

  it.each(['letter', 'a4'])('prints on %s without running over an edge', async (paper) => {
    const size = paper === 'a4' ? { width: 794, height: 1123 } : { width: 816, height: 1056 };
    const page = await visit(`${demoSheet}&paper=${paper}`, { viewport: size });
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.sheet-bar').isVisible()).toBe(false);
    const printable = size.width - (28 * 96) / 25.4;
    await page.setViewportSize({ width: Math.floor(printable), height: size.height });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(
      Math.floor(printable),
    );
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect(pagesOf(pdf)).toBeGreaterThanOrEqual(6);
    expect(pagesOf(pdf)).toBeLessThanOrEqual(17);
    const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString('latin1')) ?? [];
    const points = paper === 'a4' ? [595, 842] : [612, 792];
    expect(Math.abs(Number(width) - (points[0] ?? 0))).toBeLessThan(1);
    expect(Math.abs(Number(height) - (points[1] ?? 0))).toBeLessThan(1);
  });

  const mm = 96 / 25.4;
  const bottomOnPaper = async (
    address: string,
    paper: 'letter' | 'a4',
    selector: string,
  ): Promise<number> => {
    const [width, height] = paper === 'a4' ? [210 * mm, 297 * mm] : [816, 1056];
    const page = await visit(`${address}&paper=${paper}`, {
      viewport: { width: Math.floor(width - 28 * mm), height: Math.floor(height) },
    });
    await page.emulateMedia({ media: 'print' });
    const bottom = await page.evaluate<number>(
      `document.querySelector(${JSON.stringify(selector)}).getBoundingClientRect().bottom + scrollY`,
    );
    return height - 34 * mm - bottom;
  };

  it.each(['letter', 'a4'] as const)(
    'keeps the answer, its drawing, the cautions and the checks on the first page of %s, with room for two more',
    async (paper) => {
      expect(await bottomOnPaper(demoSheet, paper, '.sheet-checks')).toBeGreaterThan(40);
    },
  );

  it.each(examples.flatMap((name) => [[name, 'letter'] as const, [name, 'a4'] as const]))(
    'keeps the checks of each element on the first page: %s on %s',
    async (name, paper) => {
      expect(await bottomOnPaper(example(name), paper, '.sheet-checks')).toBeGreaterThan(0);
    },
  );

  it.skipIf(findProgram('pdftotext') === undefined)(
    'leaves no heading of a chapter at the foot of a page, wherever on it its drawing comes to stand',
    async () => {
      const page = await visit(`${example('stool-overhang')}&paper=letter`);
      const titles = await page.locator('.sheet-section > h2').allInnerTexts();
      expect(titles.length).toBeGreaterThan(5);
      const margins = /Shelf and overhang check: a calculation aid|Sheet \d+ of \d+/g;
      for (const down_mm of [0, 40, 80, 120, 160, 200]) {
        await page.evaluate(`document.querySelector('.sheet-reading').style.paddingTop = '${down_mm}mm'`);
        const pages = await textsOfPages(await page.pdf({ preferCSSPageSize: true }));
        for (const ending of pages.map((text) => text.replace(margins, '').replace(/\s+/g, '')))
          expect(titles.filter((title) => ending.endsWith(title.replace(/\s+/g, '')))).toEqual([]);
      }
    },
  );

  it('is set in its own letters, which it brings along', async () => {
    const page = await visit(demoSheet);
    for (const weight of [400, 600])
      expect(await page.evaluate(`document.fonts.check("${weight} 16px 'Source Sans 3'")`)).toBe(true);
    const family = `getComputedStyle(document.querySelector('.sheet-checks td')).fontFamily`;
    expect(await page.evaluate(family)).toMatch(/^"?Source Sans 3"?,/);
  });

  it('keeps the cautions on the first page however crowded the drawing is', async () => {
    expect(await bottomOnPaper(crowdedSheet, 'letter', '.sheet-cautions')).toBeGreaterThan(0);
  });

  it.each(['light', 'dark'] as const)(
    'edges labels on tones in the colour of its paper, in the %s',
    async (colorScheme) => {
      const page = await visit(example('stool-overhang'), { colorScheme });
      const ground = `getComputedStyle(document.querySelector('.sheet')).backgroundColor`;
      const edges = `[...document.querySelectorAll('.drawing .clear')].map((each) => getComputedStyle(each).stroke)`;
      const isEdged = async (): Promise<void> => {
        const [colour, strokes] = await Promise.all([
          page.evaluate<string>(ground),
          page.evaluate<string[]>(edges),
        ]);
        expect(strokes.length).toBeGreaterThan(1);
        expect(new Set(strokes)).toEqual(new Set([colour]));
      };
      await isEdged();
      await page.emulateMedia({ media: 'print', colorScheme });
      await isEdged();
    },
  );

  it('prints black on white, whatever the screen looks like', async () => {
    const page = await visit(demoSheet, { colorScheme: 'dark' });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const colours = await page.evaluate<string[]>(
      `['color', 'backgroundColor'].map((name) => getComputedStyle(document.documentElement)[name])`,
    );
    expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  });
});
