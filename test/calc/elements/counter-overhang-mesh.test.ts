import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { ndsAsd } from '../../../calc/codes/nds-asd/index.ts';
import { topModel } from '../../../calc/elements/counter-overhang/plate-model.ts';
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
      (side) => searchCombination(overhang, topModel(overhang, side), combination).worst.get('bar 0')?.value,
    );
    expect(soft).toBeGreaterThan(stiff);
    const bar = check(bars).checks.find(({ id }) => id === 'prop');
    // Bending of the bar at its face, by hand: E t / 2 times the curvature; steel of 200 GPa, 1/2 in (Roark, pure bending).
    expect(bar?.demand?.value ?? NaN).toBeGreaterThan(((200e9 * 0.5 * 0.0254) / 2) * soft * 0.98);
  });
});

describe('a mesh twice as fine', () => {
  it.each([
    ['no props', start],
    ['brackets', propped],
    ['flat bars', bars],
  ])('moves the governing values by less than a fifteenth: %s', (_, document) => {
    const reading = readDocument(document);
    if (!reading.ok || reading.document.element !== 'counter-overhang') throw new Error('not a counter');
    const read = readOverhang(reading.document);
    if (!read.ok) throw new Error('not read');
    const { overhang } = read;
    const combination = overhang.code.combinations(['ten-years', 'seven-days']).at(-1);
    if (combination === undefined) throw new Error('no combination');
    const [coarse, fine] = [1, 2].map((finer) =>
      searchCombination(overhang, topModel(overhang, 'stiff', finer), combination),
    );
    for (const effect of ['along', 'across', 'edge stool', 'rail'] as const) {
      const [before, after] = [coarse, fine].map((found) => found?.worst.get(effect)?.value ?? NaN);
      expect(Math.abs((before ?? NaN) / (after ?? NaN) - 1), effect).toBeLessThan(1 / 15);
    }
  });
});
