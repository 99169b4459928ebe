import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstSlip } from '../../shared/check-document/json-position.ts';
import { readJson } from '../../shared/check-document/index.ts';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('where a text stops being JSON', () => {
  it.each<[string, number]>([
    ['', 0],
    ['shelf', 0],
    ['{"a": 1,,}', 8],
    ['{"a": 1,}', 8],
    ['[1, 2', 5],
    ['[1 2]', 3],
    ['{"a" 1}', 5],
    ['{a: 1}', 1],
    ['{"a": NaN}', 6],
    ['{"a": 01}', 7],
    ['[1]]', 3],
    ['["a\nb"]', 1],
    [String.raw`["\x"]`, 1],
    ["['a']", 1],
    ['{"a": 1} // note', 9],
  ])('%j: at %d', (text, position) => {
    expect(isJson(text)).toBe(false);
    expect(firstSlip(text)).toBe(position);
  });

  it('is found for every text that the parser of the language refuses, and for no other', () => {
    const cut = fc.tuple(
      fc.json(),
      fc.nat(),
      fc.nat(3),
      fc.constantFrom('', ',', '"', ']', '}', '1', ':', '\\', '\u0001', '\u0085', ' '),
    );
    fc.assert(
      fc.property(cut, ([json, at, away, put]) => {
        const place = at % (json.length + 1);
        const text = json.slice(0, place) + put + json.slice(place + away);
        const slip = firstSlip(text);
        expect(slip === undefined).toBe(isJson(text));
        // Nothing before the slip is at fault: what comes before it can still become JSON or ends inside a token.
        if (slip !== undefined) expect(slip).toBeLessThanOrEqual(text.length);
      }),
      { numRuns: 5000 },
    );
  });

  it('is found soon in long and deep texts', () => {
    const start = performance.now();
    expect(firstSlip('['.repeat(1_000_000))).toBe(1_000_000);
    expect(firstSlip(`"${'a\\n'.repeat(330_000)}`)).toBe(0);
    expect(firstSlip(`"${'a'.repeat(1_000_000)}`)).toBe(0);
    expect(firstSlip(`${' '.repeat(1_000_000)}x`)).toBe(1_000_000);
    expect(performance.now() - start).toBeLessThan(5000);
  });
});

describe('the bytes of a JSON text', () => {
  it('give the value that the text holds', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = JSON.stringify(value);
        expect(readJson(bytes(text))).toEqual({ ok: true, value: JSON.parse(text) as unknown });
        expect(readJson(bytes(`\u{FEFF}${text}\n`))).toEqual({
          ok: true,
          value: JSON.parse(text) as unknown,
        });
      }),
    );
  });

  it.each<[string, Uint8Array, string]>([
    ['nothing', bytes(''), 'It is not JSON: there is nothing in it.'],
    ['blanks', bytes(' \n\t'), 'It is not JSON: there is nothing in it.'],
    ['half', bytes('{"a":\n  [1'), 'It is not JSON: it ends too early.'],
    [
      'a slip',
      bytes('{"a":\n  [1 2]}'),
      "It is not JSON: what begins at line 2, column 6 can't stand there.",
    ],
    ['another encoding', new Uint8Array([0x22, 0xe9, 0x22]), 'It is not JSON: the text is not UTF-8.'],
  ])('of %s are refused', (_what, given, message) => {
    expect(readJson(given)).toEqual({ ok: false, message });
  });
});
