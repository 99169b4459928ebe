import { describe, expect, it } from 'vitest';
import { topMeshes } from '../../../calc/elements/counter-overhang/analysed.ts';
import { readOverhang } from '../../../calc/elements/counter-overhang/read-overhang.ts';
import { trialOf, type Trial } from '../../../calc/elements/counter-overhang/trial.ts';
import { readDocument, type CounterOverhangInput } from '../../../shared/check-document/index.ts';
import { counter } from './counter-documents.ts';

/* A top whose screws are loose is a top without screws: worked out on its own, with screws that hold beside it or not. */

const topOn = (front: string): CounterOverhangInput =>
  counter({
    base: { front, foot: front, weightAt: '6 in' },
    props: [
      { kind: 'leg', at: '1 in', to: '34 in', allowable: '500 lbf' },
      { kind: 'bracket', at: '71 in', to: '33 in', allowable: '500 lbf' },
    ],
    loads: [
      { kind: 'area', amount: '10 psf', duration: 'ten-years', sustained: 0.3 },
      { kind: 'person', amount: '250 lbf', patch: '4 in', duration: 'seven-days' },
    ],
  });
const screws = {
  ...{ fastener: 'wood-screw-10', length: '1-1/2 in', through: '3/4 in' },
  at: [['30 in', '2 in'] satisfies [string, string]],
};

/** What every place asks of a top, by the places; each by itself. */
function asked(document: CounterOverhangInput): Trial[] {
  const reading = readDocument(document);
  if (!reading.ok || reading.document.element !== 'counter-overhang') throw new Error('a sound counter');
  const read = readOverhang(reading.document);
  if (!read.ok) throw new Error('a counter that can be worked out');
  const { overhang } = read;
  const model = topMeshes(overhang, 'stiff').scout;
  const places = [0.86, 0.4, 0.06].flatMap((y_m) =>
    Array.from({ length: 12 }, (_, k) => ({ x_m: 0.06 + k * 0.155, y_m })),
  );
  return (['nowhere', 'overhangs', 'everywhere'] as const).flatMap((served) =>
    places.map((place) => {
      const trial = trialOf(overhang, model);
      trial.tryCases([{ served, people: [place] }]);
      return trial;
    }),
  );
}

describe('a top with loose screws', () => {
  // By its own weight the back of the second top rises, and its screw pulls.
  it.each(['24 in', '13 in'])('asks what it asks without screws, on a base of %s', (front) => {
    const top = topOn(front);
    const held = asked({ ...top, screws });
    asked(top).forEach(({ tips, onBound }, index) => {
      expect(tips.size).toBe(0);
      expect(held[index]?.tips.size).toBe(0);
      const [bare, loose] = [onBound, held[index]?.onBound].map((each) => each?.get('screws-loose'));
      expect(bare?.size).toBeGreaterThan(10);
      expect([...(loose?.keys() ?? [])].sort()).toEqual([...(bare?.keys() ?? [])].sort());
      bare?.forEach(({ value }, name) => {
        const other = loose?.get(name)?.value ?? NaN;
        expect(Math.abs(other - value), name).toBeLessThanOrEqual(1e-6 * Math.abs(value) + 1e-9);
      });
    });
  });
});
