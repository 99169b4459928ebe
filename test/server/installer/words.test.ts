import { describe, expect, it } from 'vitest';
import { jobOf } from '../../../server/installer/job.ts';
import { loadWords } from '../../../server/installer/load-words.ts';
import { workSteps } from '../../../server/installer/steps.ts';
import { plainShelf, shelf } from '../drawings/documents.ts';

const stepsOf = (changes: Parameters<typeof shelf>[0] = {}): string[] => {
  const document = shelf(changes);
  return workSteps(document, jobOf(document));
};
const { brackets, wall, loads } = plainShelf;
const line = { name: 'Books', kind: 'line' as const, amount: '18 lbf/ft' };

describe('the order of work', () => {
  it('begins with finding studs, wires and pipes, and ends with the label', () => {
    const steps = stepsOf();
    expect(steps[0]).toBe('Find the studs and probe them. Find wires and pipes before drilling.');
    expect(steps.at(-1)).toBe('Stick the label behind the shelf.');
  });

  it('says heights, drill, depth, screws and how many in all', () => {
    const words = stepsOf().join('\n');
    expect(words).toContain('the holes 1 in and 7 in up');
    // #10 in light wood: 70 % of a root of 0.152 in is 0.106 in; a 3 in screw through a plate of 1/4 in goes 2-3/4 in deep.
    expect(words).toContain('Drill 7/64 in, 2-3/4 in deep from the wall’s face');
    expect(words).toContain('Screw each bracket on: 2 × #10 wood screw, 3 in; 8 in all.');
    expect(words).toContain('its left end 8 in left of bracket 1');
  });

  it('lets solid wood move on its arms, and leaves a panel alone', () => {
    const slot = 'Slot all but the rear hole';
    expect(stepsOf().join('\n')).toContain(slot);
    const board = {
      material: 'plywood',
      basis: 'panel',
      length: '96 in',
      depth: '10 in',
      thickness: '3/4 in',
    } as const;
    expect(stepsOf({ board }).join('\n')).toContain('Screw up into it');
    expect(stepsOf({ board }).join('\n')).not.toContain(slot);
    expect(stepsOf({ brackets: { ...brackets, hold: 'resting' } }).join('\n')).not.toContain(
      'Screw up into it',
    );
  });

  it.each([
    ['blocking', 'Find the blocking and probe it.'],
    ['sheathing', 'Make sure what the wall is sheathed with.'],
    ['metal-stud', 'Find the studs and both their edges.'],
    ['masonry', 'Find wires and pipes before drilling.'],
  ] as const)('says what to look for in %s', (framing, words) => {
    expect(stepsOf({ wall: { framing } })[0]).toContain(words);
  });

  it('gives the way to a report where the values are from one, and asks for no hole for a nail', () => {
    const allowable = { tension: '300 lbf', shear: '250 lbf', report: 'a report' };
    const listed = { ...brackets, screws: { ...brackets.screws, fastener: 'listed', allowable } };
    expect(stepsOf({ brackets: listed, wall: { framing: 'masonry' } }).join('\n')).toContain(
      'Drill as the report of the screw or anchor says.',
    );
    const nails = { ...brackets, screws: { ...brackets.screws, fastener: 'common-nail-16d' } };
    expect(stepsOf({ brackets: nails }).join('\n')).toMatch(/No holes are needed\.[^]*Nail each bracket on/);
  });

  it('turns lag screws in, into a hole of NDS 12.1.4', () => {
    const lags = { ...brackets, screws: { ...brackets.screws, fastener: 'lag-screw-1/4' } };
    const words = stepsOf({ brackets: lags, wall: { ...wall, species: 'spruce-pine-fir' } }).join('\n');
    // 40 to 70 % of 1/4 in is 0.100 to 0.175 in.
    expect(words).toContain('Drill 9/64 in');
    expect(words).toContain('Turn them in, never hammer.');
  });
});

describe('the heaviest load in plain words', () => {
  // The classes of load duration of NDS 2018 Table 2.3.2, each a time in all.
  it.each([
    ['ten-years', ', ten years at most.'],
    ['two-months', ', two months at most.'],
    ['seven-days', ', seven days at most.'],
  ] as const)('says how long a load of %s may stand there', (duration, words) => {
    const { sentences } = loadWords(shelf({ loads: [{ ...line, duration }] }));
    expect(sentences[0]).toBe(`No more than 18 lb a foot, spread front to back${words}`);
  });

  it('is what was checked', () => {
    expect(loadWords(shelf())).toEqual({
      sentences: [
        'No more than 18 lb a foot, spread front to back.',
        'At 48 in from the left: Stock pot, 22 lb.',
        'One hand may press on the front edge with 50 lb at most, now and then; nothing is hung from it.',
      ],
      label: 'No more than 18 lb a foot, spread front to back',
    });
  });

  it('is never added up over loads of different kinds, nor read off one that must be there', () => {
    const short = { ...line, amount: '10 lbf/ft', duration: 'seven-days' as const };
    expect(loadWords(shelf({ loads: [line, short] })).sentences.slice(0, 2)).toEqual([
      'No more than 18 lb a foot, spread front to back.',
      'More than this only as the calculation sheet has it.',
    ]);
    const fixed = { ...line, arrangement: 'fixed' as const };
    expect(loadWords(shelf({ loads: [fixed] })).label).toBe('Fill it exactly as the calculation sheet says');
  });

  it('keeps to the part of the board that was checked', () => {
    const part = { ...line, from: '10 in', to: '96 in' };
    expect(loadWords(shelf({ loads: [part] })).sentences[0]).toBe(
      'Nothing from 0 in to 10 in; no more than 18 lb a foot from 10 in to 96 in, spread front to back.',
    );
    expect(loadWords(shelf({ loads: [part] })).label).toBe('Fill it only as the calculation sheet says');
  });

  it('allows nothing where nothing was checked', () => {
    const words = loadWords(shelf({ loads: loads.slice(1, 2) }));
    expect(words.sentences[0]).toBe('Nothing was checked that lies along the board.');
    expect(words.sentences.at(-1)).toBe('Nobody leans on the front edge, and nothing is hung from it.');
  });

  it('names a short hand as short', () => {
    const knock = {
      name: 'A knock',
      kind: 'roaming' as const,
      amount: '40 lbf',
      duration: 'impact' as const,
    };
    expect(loadWords(shelf({ loads: [line, knock] })).sentences.at(-1)).toContain(
      '40 lb at most, for a moment',
    );
  });
});
