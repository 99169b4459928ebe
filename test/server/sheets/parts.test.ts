import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fingerprint } from '../../../server/sheets/fingerprint.ts';
import { runningHead } from '../../../server/sheets/running-head.ts';
import { loadTemplates } from '../../../server/templates.ts';
import { createTypesetter } from '../../../server/typeset/index.ts';
import { prosePieces, tableValue } from '../../../server/view-models/sheet-prose.ts';
import { findFormulas } from '../../ledger/find-formulas.ts';

describe('the fingerprint', () => {
  const document = { title: 'A', board: { length: '96 in', depth: '9 in' }, loads: [{ amount: '1 lbf' }] };

  it('is the same for the same document, however its fields are ordered', () => {
    const turned = { loads: [{ amount: '1 lbf' }], board: { depth: '9 in', length: '96 in' }, title: 'A' };
    expect(fingerprint(turned, '1')).toBe(fingerprint(document, '1'));
  });

  it('is another one for another value, another order of a list, or another version', () => {
    const marks = [
      fingerprint(document, '1'),
      fingerprint(document, '2'),
      fingerprint({ ...document, title: 'B' }, '1'),
      fingerprint({ ...document, loads: [{ amount: '1 lbf' }, { amount: '2 lbf' }] }, '1'),
      fingerprint({ ...document, loads: [{ amount: '2 lbf' }, { amount: '1 lbf' }] }, '1'),
    ];
    expect(new Set(marks).size).toBe(marks.length);
  });
});

describe('the running head', () => {
  it('keeps a title inside its string', () => {
    const css = runningHead('a"; } * { display: none } /*', '1 2');
    expect(css).toContain('content: "a\\22 \\3b  \\7d  \\2a  \\7b  display\\3a  none \\7d  \\2f \\2a "');
    expect(css).toContain('content: "1 2"');
    expect(css.match(/\{/g)).toHaveLength(6);
  });

  it('keeps letters beyond ASCII, lines and nothing too long', () => {
    expect(runningHead('é\n😀', '')).toContain('"\\e9 \\a \\1f600 "');
    expect(runningHead('x'.repeat(500), '')).not.toContain('x'.repeat(121));
  });
});

describe('prose', () => {
  const templates = loadTemplates(join(import.meta.dirname, '..', '..', '..', 'views'));
  const set = (sentence: string): string =>
    templates.partial('prose', prosePieces(sentence, createTypesetter()));

  it('sets symbols as symbols and leaves words alone', () => {
    expect(set('C_D of the shortest load')).toMatch(
      /^<math [^>]*>.*<mi>C<\/mi><mi>D<\/mi>.*<\/math> of the shortest load$/s,
    );
    expect(set('r_s over Delta_b')).toMatch(
      /^<math .*<\/math> over <math .*>Δ<\/mi>.*<mi>b<\/mi>.*<\/math>$/s,
    );
    for (const words of ['my_shelf_name', 'wood-screw-10', 'a_b-c', 'x']) expect(set(words)).toBe(words);
  });

  it('leaves no symbol of a formula as it is typed, in its caption nor in its source', async () => {
    const typesetter = createTypesetter();
    const words = (await findFormulas()).flatMap(({ formula: { caption, cited } }) =>
      [caption, cited].flatMap((sentence) => prosePieces(sentence, typesetter).map((piece) => piece.words)),
    );
    const asTyped = /\w+_\w+|\b(?:alpha|delta|omega|phi|psi|rho|sigma|tau|theta)\b/i;
    expect(words.filter((each) => asTyped.test(each))).toEqual([]);
  });

  it('escapes everything else', () => {
    expect(set('<b> C_D & "x"')).toMatch(/^&lt;b&gt; <math .*<\/math> &amp; &quot;x&quot;$/s);
  });

  it('writes values as they are set: powers of ten, a true minus, the unit held to its number', () => {
    expect(tableValue('1.336e8 lbf·in²')).toBe('1.336 × 10⁸ lbf·in²');
    expect(tableValue('-2e-5 m')).toBe('−2 × 10⁻⁵ m');
    expect(tableValue('3/32 in (0.099 in)')).toBe('3/32\u00a0in (0.099\u00a0in)');
    expect(tableValue('1-1/2 in, -8.3 lbf, 43 %')).toBe('1-1/2\u00a0in, −8.3\u00a0lbf, 43\u00a0%');
    expect(tableValue('shelf 3e, 2e8a, wood-screw-10')).toBe('shelf 3e, 2e8a, wood-screw-10');
  });
});
