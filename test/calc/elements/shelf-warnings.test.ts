import { expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { line, shelf, type Load } from './documents.ts';

const hand: Load = { kind: 'roaming', amount: '25 lbf', duration: 'seven-days' };
const on = (changes: Parameters<typeof shelf>[0]) => check(shelf({ loads: [hand], ...changes })).warnings;
const bar = { basis: 'steel', metal: 'a36', width: '1 in', thickness: '1/4 in' } as const;

it('a shelf with a hand on it has nothing to warn of', () => {
  expect(on({})).toEqual([]);
  expect(on({ brackets: { capacity: bar } })).toEqual([]);
});

it.each([
  ['no hand', { loads: [line('10 lbf/ft')] }, /^No leaning hand is counted/],
  ['a hand of no weight', { loads: [{ ...hand, amount: '0 lbf' }] }, /^No leaning hand is counted/],
  ['a wet place', { conditions: { moisture: 'wet' } }, /^In a wet place use screws, metal and glue/],
  [
    'an arm wider than its bar',
    { brackets: { armWidth: '2 in', capacity: bar } },
    /a wider arm than its bar/,
  ],
  [
    'screws that pass less than the bar',
    {
      brackets: {
        capacity: bar,
        boardScrews: { fastener: 'wood-screw-8', at: ['3 in'], armThickness: '1/8 in' },
      },
    },
    /less to pass than the bar is thick/,
  ],
] satisfies [string, Parameters<typeof shelf>[0], RegExp][])('it warns of %s', (_, changes, words) => {
  const warnings = on(changes);
  expect(warnings).toHaveLength(1);
  expect(warnings[0]).toMatch(words);
});

it('that a blow counts with the factor for one, and is not doubled', () => {
  const dropped = { ...line('10 lbf/ft'), name: 'Dropped pan', duration: 'impact' } as const;
  const said = check(shelf({ loads: [dropped] }), { waysOut: false }).warnings.join(' ');
  expect(said).toContain('A blow, and strength counts as for one: Dropped pan.');
  expect(said).toContain('at least twice the weight');
  const still = check(shelf({ loads: [{ ...dropped, duration: 'seven-days' }] }), { waysOut: false });
  expect(still.warnings.join(' ')).not.toContain('A blow');
});
