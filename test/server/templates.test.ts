import { join } from 'node:path';
import { layouts, reach } from '../../calc/index.ts';
import { leaks, loosened } from './page-text.ts';
import { describe, expect, it } from 'vitest';
import type { CheckState } from '../../server/check/check-state.ts';
import { checkInPlace } from '../../server/check/in-place.ts';
import { shelf } from './fixtures/shelf.ts';
import { demoCheck } from '../../server/demo.ts';
import { fillForm } from '../../server/form/index.ts';
import { loadTemplates } from '../../server/templates.ts';
import { createTypesetter } from '../../server/typeset/index.ts';
import { checkPage } from '../../server/view-models/check-page.ts';
import { percent } from '../../server/view-models/checks.ts';
import { layoutsView } from '../../server/view-models/layouts.ts';
import { reachView } from '../../server/view-models/reach.ts';
import { fullResult } from './fixtures/result.ts';

const templates = loadTemplates(join(import.meta.dirname, '..', '..', 'views'));
const typesetter = createTypesetter();

/** The demo check with every branch of the form in use. */
const everything = {
  ...shelf,
  date: '2026-03-14',
  preparedBy: 'A. N. Other',
  checkedBy: 'S. O. Else',
  conditions: { moisture: 'dry', temperature: 'ordinary' },
  board: {
    ...shelf.board,
    rail: { height: '1-1/2 in', thickness: '3/4 in', flush: 'bottom' },
    layers: [{ thickness: '3/8 in' }, { thickness: '3/8 in', material: 'plywood' }],
    bond: 'structural',
    joints: ['32 in'],
  },
  brackets: {
    ...shelf.brackets,
    capacity: {
      basis: 'steel',
      width: '1 in',
      thickness: '1/4 in',
      strut: { at: '6 in', drop: '6 in', width: '1 in', thickness: '1/4 in' },
    },
    boardScrews: { fastener: 'wood-screw-8', at: ['2 in', '6 in'] },
  },
  wall: { ...shelf.wall, studs: { at: ['8 in', '32 in'] } },
  loads: [
    {
      kind: 'line',
      things: [
        { thing: 'dinner-plate', count: 12 },
        { thing: 'jug', count: 2, each: '3 lb' },
      ],
    },
    { kind: 'area', amount: '5 psf' },
    { kind: 'roaming', amount: '50 lbf' },
  ],
};

function answered(document: object): CheckState {
  const state = checkInPlace(fillForm(document));
  const { answer } = state;
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  if (answer.element !== 'bracket-shelf') throw new Error('it is no shelf');
  return { ...state, answer: { ...answer, result: fullResult } };
}

describe('every region of the check page', () => {
  it.each([
    ['a shelf', shelf],
    ['a check that uses every branch of the form', everything],
  ])('shows all there is to show of %s', (_name, document) => {
    const page = checkPage(answered(document), typesetter);
    const whole = templates.page('check', page);
    expect(whole).not.toMatch(leaks);
    expect(whole).toContain(templates.partial('answer', page.answer));
    expect(whole).toContain(templates.partial('work', page));
    for (const { title, note } of fullResult.checks) {
      expect(whole).toContain(title);
      expect(whole).toContain(note);
    }
    for (const { what } of fullResult.remedies) expect(whole).toContain(what);
    expect(whole).toContain('<math');
  });

  it('puts what fails first, then what cannot be said, then the rest by how much is used', () => {
    const { answer } = checkPage(answered(shelf), typesetter);
    const titles = answer.results.flatMap(({ checks }) => checks.map(({ title }) => title));
    expect(titles).toEqual([
      'Tipping forward',
      'Bracket rating',
      'Screws in the wall',
      'Bending of the board',
    ]);
  });

  it('says of movements, and of nothing else, in the line itself how much they are and may be', () => {
    const limits = { live: 'L/360', longTerm: 'none' };
    const { answer } = checkPage(checkInPlace(fillForm({ ...demoCheck, limits })), typesetter);
    const lines = answer.results.flatMap(({ checks }) => checks).filter(({ amounts }) => amounts !== '');
    expect(lines.map(({ id }) => id)).toEqual(['check:deflection-live']);
    // Twice the 4 in that stand out, over 360.
    expect(lines[0]?.amounts).toMatch(/\(0\.\d+\u00a0in\); limit 1\/32\u00a0in \(0\.022\u00a0in\)$/);
    const whole = templates.page(
      'check',
      checkPage(checkInPlace(fillForm({ ...demoCheck, limits })), typesetter),
    );
    expect(loosened(whole)).toContain(`<span class="check-amounts">${lines[0]?.amounts}</span>`);
  });

  it('has no two elements of one id', () => {
    const whole = templates.page('check', checkPage(answered(everything), typesetter));
    const ids = [...whole.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it('labels every field, and every description it names is there', () => {
    const whole = templates.page('check', checkPage(answered(everything), typesetter));
    const ids = new Set([...whole.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]));
    const labels = new Set([...whole.matchAll(/<label for="([^"]+)"/g)].map((match) => match[1]));
    for (const [, id] of whole.matchAll(/<(?:select|input type="(?:text|date)") id="([^"]+)"/g)) {
      expect(labels).toContain(id);
    }
    for (const [, names = ''] of whole.matchAll(/aria-describedby="([^"]+)"/g)) {
      for (const name of names.split(' ')) expect(ids).toContain(name);
    }
  });
});

describe('what is worked out beside the answer', () => {
  const state = checkInPlace(fillForm(shelf));

  it.each([true, false])('shows the layouts, as a part of the page or alone: %s', (isPart) => {
    const views = [layoutsView(state, 96 * 0.0254, layouts(shelf))];
    const shown = templates.partial('outlook', { layouts: views, reaches: [], isPart, hasErrors: false });
    expect(shown).not.toMatch(leaks);
    expect(views[0]?.proposals.length).toBe(3);
    for (const { places } of views[0]?.proposals ?? []) expect(shown).toContain(places);
    expect(shown.includes('value="set:')).toBe(isPart);
    expect(shown.includes('href="/check?')).toBe(!isPart);
  });

  it('shows the three limits', () => {
    const views = [reachView(reach(shelf))];
    const shown = templates.partial('outlook', {
      layouts: [],
      reaches: views,
      isPart: true,
      hasErrors: false,
    });
    expect(shown).not.toMatch(leaks);
    for (const { title, value } of views[0]?.limits ?? []) {
      expect(shown).toContain(title);
      expect(shown).toContain(value);
    }
  });

  it('says so where there is no answer', () => {
    const shown = templates.partial('outlook', { layouts: [], reaches: [], isPart: true, hasErrors: true });
    expect(shown).toContain('put right');
  });
});

describe('a template', () => {
  it('that is given too little throws rather than showing a gap', () => {
    expect(() => templates.partial('button', { doing: 'x', label: 'y', hasFocus: false })).toThrow('about');
  });

  it('that is not there is named', () => {
    expect(() => templates.page('no-such-page', {})).toThrow('no-such-page');
  });
});

describe('how much is used', () => {
  it.each([
    [0.43, '43\u00a0%'],
    [1, '100\u00a0%'],
    [1.0001, '100.01\u00a0%'],
    [0.9999, '99.99\u00a0%'],
    [1.004, '100.4\u00a0%'],
    [0.00001, '0\u00a0%'],
    [1e9, 'over 9900\u00a0%'],
  ])('of %d is %s: over the whole never reads as the whole', (ratio, expected) => {
    expect(percent(ratio)).toBe(expected);
  });
});
