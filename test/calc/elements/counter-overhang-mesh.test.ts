import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { ndsAsd } from '../../../calc/codes/nds-asd/index.ts';
import { topMeshes } from '../../../calc/elements/counter-overhang/analysed.ts';
import { readOverhang } from '../../../calc/elements/counter-overhang/read-overhang.ts';
import { searchCombination } from '../../../calc/elements/counter-overhang/search.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { readDocument, type CounterOverhangInput } from '../../../shared/check-document/index.ts';

const start: CounterOverhangInput = startChecks['counter-overhang'];
const propped: CounterOverhangInput = {
  ...start,
  props: [2, 36, 70].map((at) => ({ kind: 'bracket', at: `${at} in`, to: '34 in', allowable: '900 lbf' })),
};
const bars: CounterOverhangInput = {
  ...start,
  props: [18, 54].map((at) => ({
    ...{ kind: 'flat-bar', at: `${at} in`, from: '4 in', to: '34 in', width: '2 in', thickness: '1/2 in' },
  })),
};

describe('either side of the growth rings', () => {
  it('counts where it asks more: steel bars carry more under wood that is soft across', () => {
    const reading = readDocument(bars);
    if (!reading.ok || reading.document.element !== 'counter-overhang') throw new Error('not a counter');
    const read = readOverhang(reading.document);
    const combination = ndsAsd.combinations(['ten-years', 'seven-days']).at(-1);
    if (!read.ok || combination === undefined) throw new Error('not read');
    const { overhang } = read;
    const [stiff = NaN, soft = NaN] = (['stiff', 'soft'] as const).map(
      (side) => searchCombination(overhang, topMeshes(overhang, side), combination).worst.get('bar 0')?.value,
    );
    expect(soft).toBeGreaterThan(stiff);
    const bar = check(bars).checks.find(({ id }) => id === 'prop');
    // Bending of the bar at its face, by hand: E t / 2 times the curvature; steel of 200 GPa, 1/2 in (Roark, pure bending).
    expect(bar?.demand?.value ?? NaN).toBeGreaterThan(((200e9 * 0.5 * 0.0254) / 2) * soft * 0.98);
  });
});

describe('a mesh twice as fine', () => {
  const legs = (to: string, ...at: number[]): CounterOverhangInput['props'] =>
    at.map((each) => ({ kind: 'leg', at: `${each} in`, to, allowable: '900 lbf' }));
  const five = [2, 19, 36, 53, 70].map((at) => ({
    kind: 'bracket' as const,
    at: `${at} in`,
    to: '34 in',
    allowable: '900 lbf',
  }));
  const corner: CounterOverhangInput = {
    ...start,
    top: { ...start.top, length: '96 in', depth: '42 in' },
    base: { ...start.base, from: '20 in', to: '80 in', panels: ['20 in', '80 in'] },
    screws: {
      length: '1-3/4 in',
      ...start.screws,
      at: [22, 50, 78].map((at) => [`${at} in`, '2 in'] as [string, string]),
    },
    props: legs('38 in', 6, 48, 90),
  };
  const short = [18, 54].map((at) => ({
    kind: 'bracket' as const,
    at: `${at} in`,
    to: '30 in',
    allowable: '900 lbf',
  }));
  it.each<readonly [string, CounterOverhangInput]>([
    ['no props', start],
    ['brackets', propped],
    ['five brackets', { ...start, props: five }],
    ['short brackets', { ...start, props: short }],
    ['flat bars', bars],
    [
      'a long top, its staves from back to front',
      {
        ...start,
        top: { ...start.top, length: '200 in', staves: 'across' },
        base: { ...start.base, to: '200 in', panels: ['0 in', '100 in', '200 in'] },
      },
    ],
    [
      'an end out past a panel, staves from back to front',
      {
        ...start,
        top: {
          material: 'red-oak',
          staves: 'across',
          length: '50 in',
          depth: '30 in',
          thickness: '1-3/4 in',
        },
        base: {
          ...{ ...start.base, from: '8 in', to: '50 in', back: '0 in', front: '22 in', foot: '22 in' },
          ...{ weightAt: '11 in', panels: ['8 in', '28 in', '50 in'] },
        },
        screws: {
          ...{ fastener: 'wood-screw-10', length: '2 in', through: '3/4 in' },
          at: [10, 30, 48].flatMap((x) => [2, 20].map((y): [string, string] => [`${x} in`, `${y} in`])),
        },
      },
    ],
    ['legs in from the edge', { ...start, props: legs('32 in', 10, 62) }],
    ['both ends out, on legs', corner],
    [
      'legs under a thick top',
      { ...start, top: { ...start.top, thickness: '2.5 in' }, props: legs('34 in', 2, 70) },
    ],
  ])('raises no governing value by more than a fifteenth: %s', (_, document) => {
    const reading = readDocument(document);
    if (!reading.ok || reading.document.element !== 'counter-overhang') throw new Error('not a counter');
    const read = readOverhang(reading.document);
    if (!read.ok) throw new Error('not read');
    const { overhang } = read;
    const combination = overhang.code.combinations(['ten-years', 'seven-days']).at(-1);
    if (combination === undefined) throw new Error('no combination');
    // Bars and the wood along are asked most on the softer side of the growth rings, all else on the stiffer one.
    const sides = document === bars ? (['stiff', 'soft'] as const) : (['stiff'] as const);
    for (const side of sides) {
      const [usual, fine] = [1, 2].map((finer) =>
        searchCombination(overhang, topMeshes(overhang, side, finer), combination),
      );
      for (const effect of ['along', 'across', 'edge stool', 'rail', 'front span 1', 'prop 0'] as const) {
        const [before, after] = [usual, fine].map((found) => found?.worst.get(effect)?.value);
        if (before === undefined || after === undefined) {
          expect([effect, before, after]).toEqual(['prop 0', undefined, undefined]);
          continue;
        }
        expect(after / before, `${side} ${effect}`).toBeLessThan(1 + 1 / 15);
        expect(after / before, `${side} ${effect}`).toBeGreaterThan(1 - 1 / 8);
      }
    }
  });
});
