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

  it('is checked, and holds', () => {
    expect(check(example()).verdict).toBe('holds');
  });
});
