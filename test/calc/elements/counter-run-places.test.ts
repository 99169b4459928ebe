import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { findPanel } from '../../../calc/catalogue/index.ts';
import { ndsAsd } from '../../../calc/codes/nds-asd/index.ts';
import { readRun, type Run } from '../../../calc/elements/counter-run/run.ts';
import { modelOf, settled, statesOf } from '../../../calc/elements/counter-run/solve.ts';
import { addedLoads, averagedMoment, momentsOf, preparedLoad } from '../../../calc/mechanics/plate/index.ts';
import { readDocument, type CounterRunInput } from '../../../shared/check-document/index.ts';
import { inch, psi } from './documents.ts';

/** Plywood 3/4 in under somebody of 300 lbf on a square of 4 in, and 10 psf. */
function plywood(opening: string, depth: string, rails: 'none' | 'both'): CounterRunInput {
  return {
    ...{ schema: 1, element: 'counter-run', substrate: { material: 'plywood', thickness: '3/4 in' } },
    ...{ opening, depth, rails },
    ...(rails === 'both' && {
      rail: { thickness: '3/4 in', height: '3-1/2 in', material: 'sugar-maple', seat: '3/4 in' },
    }),
  };
}

function runOf(document: CounterRunInput): Run {
  const reading = readDocument(document);
  if (!reading.ok || reading.document.element !== 'counter-run') throw new Error('not a run');
  const read = readRun(reading.document);
  if (!read.ok) throw new Error('not read');
  return read.run;
}

const everything = ndsAsd.combinations(['ten-years', 'seven-days']).slice(-1);
const statesAt = (run: Run, finer: number) =>
  everything.flatMap((combination) => statesOf(run, modelOf(run, finer), combination));

describe('somebody on a counter run', () => {
  it.each([
    ['10 in', '59 in', 'none'],
    ['36 in', '40 in', 'both'],
  ] as const)(
    'asks the same of a mesh two and a half times as fine within a twentieth: %s by %s, rails %s',
    (opening, depth, rails) => {
      const run = runOf(plywood(opening, depth, rails));
      const [usual, fine] = [1, 2.5].map((finer) => statesAt(run, finer));
      for (const pick of ['end_Npm', 'alongSpan_N'] as const) {
        const [less, more] = [usual, fine].map((states) =>
          Math.max(...(states ?? []).map((each) => each[pick])),
        );
        expect((more ?? NaN) / (less ?? NaN), pick).toBeLessThan(1.05);
        expect((more ?? NaN) / (less ?? NaN), pick).toBeGreaterThan(0.9);
      }
    },
    20_000,
  );

  it.each([
    ['midway between the sides, nearer to a rail', '36 in', '40 in', 'y', 'acrossSpan_N'],
    ['in the middle of the depth, nearer to a side', '48 in', '12 in', 'x', 'alongSpan_N'],
  ] as const)(
    'asks most %s: every place tried, none asks a twentieth more',
    (_, opening, depth, way, pick) => {
      const run = runOf(plywood(opening, depth, 'both'));
      const { person, span_m, depth_m, thickness_m } = run;
      if (person === null) throw new Error('nobody there');
      const half = person.patch_m / 2;
      const fine = modelOf(run, 2);
      const even = fine.serving === null ? fine.dead : addedLoads(fine.dead, fine.serving);
      const anywhere = Array.from({ length: 13 }, (__, k) => {
        const [x, y] =
          way === 'x'
            ? [half + ((span_m / 2 - half) * k) / 12, depth_m / 2]
            : [span_m / 2, half + ((depth_m / 2 - half) * k) / 12];
        const patch = { kind: 'patch', fromX_m: x - half, toX_m: x + half, fromY_m: y - half } as const;
        const feet = preparedLoad(fine.plate, [{ ...patch, toY_m: y + half, load_N: person.load_N }]);
        const moments = momentsOf(fine.plate, settled(fine, addedLoads(even, feet)).field);
        return Math.max(
          ...fine.mesh.x_m.flatMap((___, i) =>
            fine.mesh.y_m.map((____, j) =>
              Math.abs(averagedMoment(moments, pick === 'alongSpan_N' ? 'x' : 'y', [i, j], thickness_m)),
            ),
          ),
        );
      });
      const tried = Math.max(...statesAt(run, 1).map((each) => each[pick]));
      expect(Math.max(...anywhere) / tried).toBeLessThan(1.05);
      expect(Math.max(...anywhere) / tried).toBeGreaterThan(0.9);
    },
    20_000,
  );
});

describe('panels press on what they lie on', () => {
  const pressure = (document: CounterRunInput) => {
    const found = check(document).checks.find(({ id }) => id === 'bearing');
    return { demand: (found?.demand?.value ?? NaN) / psi, where: found?.where };
  };
  const weight_psi = (name: string): number => {
    const found = findPanel(name, 0.75 * inch);
    if (!found.ok) throw new Error(`no ${name}`);
    return (found.row.density_kgm3 * 9.80665 * 0.75 * inch) / psi;
  };

  it('on a cabinet side 3/4 in thick: 300 lbf on 4 in of it, and q L / 2', () => {
    const { demand, where } = pressure(plywood('24 in', '25 in', 'none'));
    const byHand = (300 / 4 + ((10 / 144 + weight_psi('plywood')) * 24) / 2) / 0.75;
    // At its corners a plate presses somewhat harder than a strip.
    expect(demand / byHand).toBeGreaterThan(0.99);
    expect(demand / byHand).toBeLessThan(1.03);
    expect(where).toBe('on a cabinet side; somebody standing over it');
  });

  it('on a thin rail: half of what is on 12 in of depth, over 1/2 in', () => {
    const { demand, where } = pressure({
      ...plywood('96 in', '12 in', 'both'),
      substrate: { material: 'mdf', thickness: '3/4 in' },
      rail: { thickness: '1/2 in', height: '11 in', material: 'sugar-maple', seat: '3/4 in' },
      loads: [{ kind: 'area', amount: '40 psf', duration: 'ten-years' }],
    });
    const byHand = ((40 / 144 + weight_psi('mdf')) * 6) / 0.5;
    expect(demand / byHand).toBeGreaterThan(0.95);
    expect(demand / byHand).toBeLessThan(1.1);
    expect(where).toBe('on a rail; nobody there');
  });

  it('on a thin rail with somebody over it: 300 lbf on 4 in of it and half of what is on the depth, over 1/2 in', () => {
    const { demand, where } = pressure({
      ...plywood('60 in', '24 in', 'both'),
      rail: { thickness: '1/2 in', height: '11 in', material: 'sugar-maple', seat: '3/4 in' },
    });
    const byHand = (300 / 4 + (10 / 144 + weight_psi('plywood')) * 12) / 0.5;
    expect(demand / byHand).toBeGreaterThan(0.98);
    expect(demand / byHand).toBeLessThan(1.02);
    expect(where).toBe('on a rail; somebody standing over it');
  });

  it('which the wood bears or does not: 160 psi of softwood plywood, without C_D (NDS 3.10.2; memory)', () => {
    const found = check(plywood('24 in', '25 in', 'none')).checks.find(({ id }) => id === 'bearing');
    expect((found?.capacity?.value ?? NaN) / psi).toBeGreaterThan(159);
    expect((found?.capacity?.value ?? NaN) / psi).toBeLessThan(161);
  });
});
