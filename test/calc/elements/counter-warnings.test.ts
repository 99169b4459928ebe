import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { CounterOverhangInput, CounterRunInput } from '../../../shared/check-document/index.ts';
import { counter } from './counter-documents.ts';

/** One stool, somebody light who may be anywhere, a base on its panels: there is nothing to warn of. */
const quiet = counter({
  top: { length: '40 in' },
  base: { to: '40 in', panels: ['0 in', '40 in'] },
  screws: { length: '1-1/2 in', at: [['20 in', '2 in']] },
  loads: [
    { kind: 'area', amount: '1 psf', duration: 'ten-years' },
    { kind: 'person', amount: '10 lbf', duration: 'seven-days' },
  ],
});
const person = (more: Partial<Extract<Load, { kind: 'person' }>>): CounterOverhangInput['loads'] => [
  { kind: 'area', amount: '1 psf', duration: 'ten-years' },
  { kind: 'person', amount: '10 lbf', duration: 'seven-days', ...more },
];
type Load = NonNullable<CounterOverhangInput['loads']>[number];
const long = (length: string): CounterOverhangInput => ({
  ...quiet,
  top: { ...quiet.top, length },
  base: { ...quiet.base, to: length, panels: ['0 in', length] },
});
const propped = (kind: 'bracket' | 'corbel' | 'leg'): CounterOverhangInput => ({
  ...quiet,
  props: [
    {
      ...{ kind, at: '20 in', to: '34 in', allowable: '500 lbf' },
      ...(kind === 'leg' ? {} : { gives: '0.1 in' }),
    },
  ],
});
/** What bends under its rating by nobody knows how much. */
const stiff = (kind: 'bracket' | 'corbel'): CounterOverhangInput => ({
  ...quiet,
  props: [{ kind, at: '20 in', to: '34 in', allowable: '500 lbf' }],
});

const cases: readonly (readonly [string, CounterOverhangInput, RegExp])[] = [
  ['three stools', long('72 in'), /^Two people are counted at once, though 3 stools fit/],
  ['four stools', long('96 in'), /^Two people are counted at once, though 4 stools fit/],
  ['a person who stays', { ...quiet, loads: person({ at: '12 in' }) }, /^One person .* stays 12 in along/],
  [
    'a person who stays, three stools',
    { ...long('72 in'), loads: person({ at: '12 in' }) },
    /^One person .* stays 12 in along/,
  ],
  [
    'a person for years',
    { ...quiet, loads: person({ duration: 'ten-years' }) },
    /stays for years counts for strength alone/,
  ],
  ['an impact', { ...quiet, loads: person({ duration: 'impact' }) }, /impact: .* not their weight/],
  ['a bracket', propped('bracket'), /bears on its brackets, corbels or legs is not checked/],
  ['a corbel', propped('corbel'), /bears on its brackets, corbels or legs is not checked/],
  ['a leg', propped('leg'), /bears on its brackets, corbels or legs is not checked/],
  [
    'fasteners in a floor that holds nothing',
    { ...quiet, base: { ...quiet.base, anchorPull: '300 lbf' } },
    /fasteners into the floor does not count/,
  ],
  [
    'fasteners of a base that is said to stand free',
    { ...quiet, base: { ...quiet.base, anchorPull: '300 lbf', heldToFloor: false } },
    /fasteners into the floor does not count/,
  ],
  [
    'fasteners along its foot alone, in a floor that holds nothing',
    { ...quiet, base: { ...quiet.base, anchorPullFront: '300 lbf' } },
    /fasteners into the floor does not count/,
  ],
  [
    'a push of nothing',
    { ...quiet, base: { ...quiet.base, push: '0 lbf' } },
    /^Nobody is taken to push sideways/,
  ],
  [
    'a person of no weight',
    { ...quiet, loads: person({ amount: '0 lbf' }) },
    /^No person at the edge is counted/,
  ],
  [
    'three stools and a person of no weight',
    { ...long('72 in'), loads: person({ amount: '0 lbf' }) },
    /^No person at the edge is counted/,
  ],
  [
    'nothing served',
    {
      ...quiet,
      loads: [
        { kind: 'area', amount: '0 psf' },
        { kind: 'person', amount: '10 lbf' },
      ],
    },
    /^Nothing is counted as served/,
  ],
  [
    'a wet place',
    { ...quiet, conditions: { moisture: 'wet' } },
    /^In a wet place use screws, metal and glue/,
  ],
  ['no panels', { ...quiet, base: { ...quiet.base, panels: [] } }, /^No upright panels are given/],
];

const nothing: readonly (readonly [string, CounterOverhangInput])[] = [
  ['one stool', quiet],
  ['two stools', long('71 in')],
  ['a person who is there for ten minutes', { ...quiet, loads: person({ duration: 'ten-minutes' }) }],
  [
    'a flat bar',
    {
      ...quiet,
      props: [
        { kind: 'flat-bar', at: '20 in', from: '4 in', to: '34 in', width: '2 in', thickness: '3/8 in' },
      ],
    },
  ],
  [
    'a base held to the floor',
    { ...quiet, base: { ...quiet.base, anchorPull: '300 lbf', heldToFloor: true } },
  ],
  ['panels nobody spoke of', { ...quiet, base: { ...quiet.base, panels: undefined } }],
];

describe('a counter overhang warns of', () => {
  it.each(cases)('%s, and of nothing else', (_, document, words) => {
    const { warnings } = check(document);
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatch(words);
  });
});

it('a counter overhang warns of a rating that is only wanted', () => {
  const wanted: CounterOverhangInput = {
    ...quiet,
    props: [{ kind: 'leg', at: '20 in', to: '34 in', allowable: '500 lbf', source: 'wanted by this check' }],
  };
  expect(check(wanted).warnings).toContainEqual(expect.stringMatching(/^Nobody has rated these props yet/));
});

it('a counter overhang on rails that nothing carries cannot be vouched for', () => {
  const { verdict, checks } = check({ ...quiet, base: { ...quiet.base, panels: [] } });
  expect(checks.find(({ id }) => id === 'rail')).toMatchObject({ outcome: 'cannot-say', demand: null });
  expect(verdict).not.toBe('holds');
  expect(check(quiet).checks.map(({ id }) => id)).not.toContain('rail');
});

it.each(['bracket', 'corbel'] as const)(
  'a counter overhang warns of a %s of which nobody says how far it gives',
  (kind) => {
    const words = /^Brackets and corbels are taken as stiff: one that gives leaves more to the wood/;
    expect(check(stiff(kind)).warnings).toContainEqual(expect.stringMatching(words));
    expect(check(propped(kind)).warnings).not.toContainEqual(expect.stringMatching(words));
    expect(check(propped('leg')).warnings).not.toContainEqual(expect.stringMatching(words));
  },
);

describe('a counter overhang has nothing to warn of with', () => {
  it.each(nothing)('%s', (_, document) => {
    expect(check(document).warnings).toEqual([]);
  });
});

describe('a counter run warns of', () => {
  const standing = (duration: 'impact' | 'seven-days', amount = '100 lbf'): CounterRunInput => ({
    schema: 1,
    element: 'counter-run',
    substrate: { material: 'mdf', thickness: '25 mm' },
    opening: '24 in',
    depth: '24 in',
    loads: [
      { kind: 'area', amount: '10 psf', duration: 'ten-years' },
      { kind: 'person', amount, duration },
    ],
  });

  it('an impact, whose amount is no weight', () => {
    const { warnings } = check(standing('impact'));
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatch(/impact: .* not their weight/);
    expect(check(standing('seven-days')).warnings).toEqual([]);
  });

  it('somebody of no weight, as if nobody was given', () => {
    expect(check(standing('seven-days', '0 lbf')).warnings).toEqual([
      expect.stringMatching(/^Nobody standing on the counter is counted/),
    ]);
  });
});
