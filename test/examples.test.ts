import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { check } from '../calc/index.ts';
import { demoCheck } from '../server/demo.ts';

const example = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../docs/examples/${name}.json`, import.meta.url), 'utf8'));

describe('the examples of the README', () => {
  it('the shelf is the demo check', () => {
    expect(example('display-shelf')).toEqual(demoCheck);
  });

  it.each(['display-shelf', 'coat-rail', 'stool-overhang', 'stone-counter'])(
    '%s is checked, and holds',
    (name) => {
      expect(check(example(name)).verdict).toBe('holds');
    },
  );
});
