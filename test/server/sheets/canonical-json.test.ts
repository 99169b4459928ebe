import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { compactJson } from '../../../server/issued/compact-json.ts';
import { canonicalJson } from '../../../server/sheets/canonical-json.ts';
import { digestOf, printedFingerprint } from '../../../server/sheets/fingerprint.ts';

describe('canonical JSON', () => {
  it('is what RFC 8785, section 3.2.2, prints of its example', () => {
    const example = {
      numbers: [Number('333333333.33333329'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
      string: '\u20ac$\u000F\u000aA\'\u0042\u0022\u005c\\"/',
      literals: [null, true, false],
    };
    expect(canonicalJson(example)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
        '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  it('sorts keys by UTF-16 code units, as in RFC 8785, section 3.2.3', () => {
    const example = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    const order = [
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ];
    const text = canonicalJson(example);
    const places = order.map((words) => text.indexOf(words));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(Math.min(...places)).toBeGreaterThan(0);
  });

  it('sorts keys that look like numbers as text too, and leaves out what is not there', () => {
    expect(canonicalJson({ b: undefined, 2: 'two', 10: 'ten', a: { z: -0, y: [] } })).toBe(
      '{"10":"ten","2":"two","a":{"y":[],"z":0}}',
    );
  });

  it.each([NaN, Infinity, undefined, () => 1])('refuses what is no JSON: %s', (value) => {
    expect(() => canonicalJson({ value: [value] })).toThrow('JSON');
  });

  it('has the digest that others work out of the same text', () => {
    const byHand = '{"check":{"board":"96 in"},"kind":"issued-sheet","revision":"A"}';
    const value = { revision: 'A', kind: 'issued-sheet', check: { board: '96 in' } };
    const digest = createHash('sha256').update(byHand, 'utf8').digest('hex');
    expect(digestOf(canonicalJson(value))).toBe(digest);
    // FIPS 180-4's example of one block.
    expect(digestOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    expect(printedFingerprint(digest).replaceAll(' ', '')).toBe(digest);
    expect(printedFingerprint(digest)).toMatch(/^(?:[0-9a-f]{4} ){15}[0-9a-f]{4}$/);
  });
});

describe('a JSON text without its layout', () => {
  it('is the text that JSON prints of its value, laid out in whatever way', () => {
    const value = { a: [1, 'two words', { b: '"quoted\\" {x: 1}\n\ttab ' }], 'c d': '\\' };
    for (const layout of [2, '\t', '\r\n ']) {
      expect(compactJson(JSON.stringify(value, null, layout))).toBe(JSON.stringify(value));
    }
  });

  it('keeps every character that is no layout', () => {
    expect(compactJson(' {"a" : 1.0,\n"a": 1e0, "\\u0061 b":"\u00a0"} ')).toBe(
      '{"a":1.0,"a":1e0,"\\u0061 b":"\u00a0"}',
    );
  });
});
