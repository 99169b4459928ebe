import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { check } from '../calc/index.ts';
import { demoCheck } from '../server/demo.ts';

const example = (): unknown =>
  JSON.parse(readFileSync(new URL('../docs/examples/display-shelf.json', import.meta.url), 'utf8'));

describe('the example of the README', () => {
  it('is the demo check', () => {
    expect(example()).toEqual(demoCheck);
  });

  it('is checked, and says what the README says: all but the wall holds', () => {
    const { verdict, checks } = check(example());
    expect(verdict).toBe('cannot-say');
    expect(checks.filter(({ outcome }) => outcome !== 'holds').map(({ id }) => id)).toEqual(['fixing']);
  });
});
