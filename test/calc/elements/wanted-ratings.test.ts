import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { ratingToAskFor } from '../../../calc/elements/rating-to-ask.ts';
import { demoCheck } from '../../../server/demo.ts';
import { startChecks } from '../../../server/start-checks.ts';
import type { Check } from '../../../shared/check-result.ts';

type Found = Pick<Check, 'ratio' | 'outcome' | 'note'>;

const bracketOf = (capacity: object): Found => {
  const { checks } = check({ ...demoCheck, brackets: { ...demoCheck.brackets, capacity } });
  return checks.find(({ id }) => id === 'bracket') ?? { ratio: null, outcome: 'cannot-say', note: '' };
};
const propOf = (prop: object): Found => {
  const { checks } = check({ ...startChecks['counter-overhang'], props: [prop] });
  return checks.find(({ id }) => id === 'prop') ?? { ratio: null, outcome: 'cannot-say', note: '' };
};
const pounds = (note: string): number => Number(/(\d+) lbf or more/.exec(note)?.[1]);

describe('the rating to ask for', () => {
  // By hand: 100 lbf with a tenth left over is 111.1, in steps of 25 lbf 125; 900 N is 1000 N in steps of 100 N.
  it.each([
    [100 * 4.4482216, 'inch-pound', '125 lbf'],
    [90 * 4.4482216, 'inch-pound', '100 lbf'],
    [0, 'inch-pound', '25 lbf'],
    [900, 'metric', '1000 N'],
    [901, 'metric', '1100 N'],
  ] as const)('of %d N in %s is %s', (load_N, system, rating) => {
    expect(ratingToAskFor(load_N, system)).toBe(rating);
  });

  it.each([
    ['unknown', { basis: 'unknown' }],
    ['cast iron', { basis: 'unknown', what: 'cast iron' }],
    ['rated too low', { basis: 'rated', allowable: '25 lbf', at: '4-1/2 in' }],
  ])('is named for brackets that are %s, and is enough with hardly any to spare', (_, capacity) => {
    const { outcome, note } = bracketOf(capacity);
    expect(outcome).not.toBe('holds');
    expect(note).toContain('4-1/2 in from the wall');
    const wanted = pounds(note);
    const rated = (allowable: number): Found =>
      bracketOf({ basis: 'rated', allowable: `${allowable} lbf`, at: '4-1/2 in' });
    expect(rated(wanted)).toMatchObject({ outcome: 'holds', note: '' });
    expect(rated(wanted).ratio).toBeLessThanOrEqual(0.9);
    expect(rated(wanted - 25).ratio).toBeGreaterThan(0.9);
  });

  it.each(['bracket', 'corbel', 'leg'])(
    'is named for a %s under an overhang, and is enough for its load and its couple',
    (kind) => {
      const place = { kind, at: '36 in', to: '34 in' };
      const { outcome, note } = propOf(place);
      expect(outcome).toBe('cannot-say');
      const wanted = pounds(note);
      const rated = propOf({ ...place, allowable: `${wanted} lbf` });
      expect(rated.outcome).toBe('holds');
      expect(rated.ratio).toBeLessThanOrEqual(0.9);
      expect(propOf({ ...place, allowable: `${wanted - 25} lbf` }).ratio).toBeGreaterThan(0.9);
    },
  );

  it('says what to look for on the packaging', () => {
    expect(bracketOf({ basis: 'unknown' }).note).toContain('"working load"');
    expect(() => bracketOf({ basis: 'rated' })).toThrow(/half of it where that is for a pair/);
    expect(() => bracketOf({ basis: 'rated', allowable: '100 lbf', factor: 3 })).toThrow(/broke on a test/);
  });
});
