import { describe, expect, it } from 'vitest';
import { topModel } from '../../calc/elements/counter-overhang/plate-model.ts';
import { readOverhang } from '../../calc/elements/counter-overhang/read-overhang.ts';
import type { Overhang } from '../../calc/elements/counter-overhang/overhang.ts';
import { walksOf } from '../../calc/elements/counter-overhang/people.ts';
import { fineMesh } from '../../calc/elements/counter-overhang/top-mesh.ts';
import { evenLoads, peopleLoads, together } from '../../calc/elements/counter-overhang/top-loads.ts';
import { settledField } from '../../calc/elements/counter-overhang/trial.ts';
import { check } from '../../calc/index.ts';
import { momentsOf } from '../../calc/mechanics/plate/index.ts';
import { readDocument, type CounterOverhangInput } from '../../shared/check-document/index.ts';
import { counter } from '../calc/elements/counter-documents.ts';

/*
 * Twisting is no check of its own (docs/decisions/009-twisting.md). This holds the reason: wherever people are, what it asks stays
 * below what the checks of bending find. Strength in twist: that of shear along the grain (Wood Handbook, chapter 5, torsion;
 * memory). At an end across the staves the fibres roll in a band as wide as the top is thick: there shear is 0.74 √(G_RT / G_LT)
 * of that at the face (Timoshenko, torsion of a broad rectangle, memory; stretched by the two moduli), 0.37 with a quarter, against 0.18 of the
 * strength (Wood Handbook, rolling shear). Together: squares of the shares add up to 1 (Wood Handbook, chapter 9, tapered beams; memory).
 */
const rollsAtEnds = 0.37 / 0.18;

const screws = (length: string, xs: readonly number[], ys: readonly number[]) => ({
  ...{ fastener: 'wood-screw-10', length, through: '3/4 in' },
  at: xs.flatMap((x) => ys.map((y): [string, string] => [`${x} in`, `${y} in`])),
});
const props = (kind: 'bracket' | 'leg', to: string, ...places: number[]) =>
  places.map((at) => ({ kind, at: `${at} in`, to, allowable: '900 lbf' }));
const loads: CounterOverhangInput['loads'] = [
  { kind: 'area', amount: '10 psf' },
  { kind: 'person', amount: '250 lbf' },
];
const wide = { length: '72 in', depth: '44 in', thickness: '1-3/4 in' } as const;
const tops: readonly (readonly [string, CounterOverhangInput])[] = [
  ['held along its back', counter({ loads, screws: screws('1-3/4 in', [3, 33, 39, 69], [2]) })],
  [
    'wide, on two brackets well in',
    counter({
      loads,
      top: wide,
      props: props('bracket', '42 in', 18, 54),
      screws: screws('2 in', [3, 36, 69], [2]),
    }),
  ],
  [
    'wide, on two brackets at its ends, staves from back to front',
    counter({
      ...{ loads, top: { ...wide, staves: 'across' }, props: props('bracket', '42 in', 6, 66) },
      screws: screws('2 in', [3, 36, 69], [2]),
    }),
  ],
  [
    'past both sides of a corner, staves from back to front',
    counter({
      loads,
      top: { staves: 'across', depth: '36 in', thickness: '1-3/4 in' },
      base: { from: '12 in', to: '72 in' },
      screws: screws('2 in', [14, 42, 70], [2, 22]),
    }),
  ],
  [
    'past its base at both ends, on legs at the corners',
    counter({
      ...{ loads, top: { length: '96 in', depth: '42 in' }, base: { from: '20 in', to: '80 in' } },
      ...{ props: props('leg', '38 in', 6, 48, 90), screws: screws('1-3/4 in', [22, 50, 78], [2]) },
    }),
  ],
];
const { appearance: _, ...size } = counter().top;
const particleboard = (staves: 'along' | 'across'): CounterOverhangInput => ({
  ...counter({ loads, base: { from: '12 in', to: '72 in' }, screws: screws('2 in', [14, 42, 70], [2, 22]) }),
  top: {
    ...size,
    ...{
      build: 'panel',
      material: 'particleboard-p5',
      thickness: '54 mm',
      sheets: 3,
      bond: 'structural',
      staves,
    },
  },
});

function overhangOf(document: CounterOverhangInput): Overhang {
  const reading = readDocument(document);
  if (!reading.ok || reading.document.element !== 'counter-overhang') throw new Error('not a counter');
  const read = readOverhang(reading.document);
  if (!read.ok) throw new Error('not read');
  return read.overhang;
}

/** Moments along and across the grain and of the twist, for each width, at every crossing under people at every edge. */
function eachMoment(overhang: Overhang, see: (along: number, across: number, twist: number) => void): void {
  const { top } = overhang;
  for (const side of ['stiff', 'soft'] as const) {
    const model = topModel(overhang, side, fineMesh(overhang, 1));
    const even = evenLoads(overhang, model).all('overhangs');
    const people = walksOf(overhang).flatMap((walk) =>
      Array.from({ length: 9 }, (_each, k) => walk.at(walk.from_m + ((walk.to_m - walk.from_m) * k) / 8)),
    );
    for (const load of peopleLoads(overhang, model, people)) {
      for (const { held, stander, share } of model.bounds) {
        const all = together(even, load, share);
        const field = settledField(overhang, held, all, stander.stand(all));
        if (field === null) continue;
        const { x_Nmpm, y_Nmpm, xy_Nmpm } = momentsOf(model.plate, field);
        x_Nmpm.forEach((x, node) => {
          const [along, across] = top.isAlong ? [x, y_Nmpm[node]] : [y_Nmpm[node], x];
          see(along ?? 0, across ?? 0, xy_Nmpm[node] ?? 0);
        });
      }
    }
  }
}

describe('twisting of a top under people', () => {
  it.each(tops)('asks less than bending does: %s', (_name, document) => {
    const overhang = overhangOf(document);
    const { material } = overhang.top.wood;
    const [Fb = NaN, Ft = NaN, Fv = NaN] = (['bending', 'tension-across', 'shear'] as const).map(
      (property) => {
        const resistance = material.resistance(property, 'seven-days');
        return resistance.ok ? resistance.value_Pa : NaN;
      },
    );
    const [along, across] = ['bending-along', 'bending-across'].map(
      (id) => check(document).checks.find((each) => each.id === id)?.ratio ?? NaN,
    );
    // Across the grain half of what is derived is as far as a top holds.
    const judged = Math.max(along ?? NaN, (across ?? NaN) / 0.5);
    let [twisted, combined] = [0, 0];
    eachMoment(overhang, (m, n, twist) => {
      const stress = (moment: number): number => (6 * Math.abs(moment)) / overhang.top.thickness_m ** 2;
      twisted = Math.max(twisted, stress(twist) / Fv);
      combined = Math.max(combined, Math.hypot(stress(m) / Fb, stress(n) / Ft, stress(twist) / Fv));
    });
    expect(twisted).toBeGreaterThan(0.1);
    expect(twisted * rollsAtEnds).toBeLessThan(judged);
    expect(combined).toBeLessThan(judged);
  });

  it.each(['along', 'across'] as const)(
    'turns the largest moment of a panel alike both ways by little: its principal moment past a corner, laid %s',
    (staves) => {
      let [straight, principal] = [0, 0];
      eachMoment(overhangOf(particleboard(staves)), (m, n, twist) => {
        straight = Math.max(straight, Math.abs(m), Math.abs(n));
        principal = Math.max(principal, Math.abs(m + n) / 2 + Math.hypot((m - n) / 2, twist));
      });
      expect(straight).toBeGreaterThan(0);
      expect(principal / straight).toBeLessThan(1.06);
    },
  );
});
