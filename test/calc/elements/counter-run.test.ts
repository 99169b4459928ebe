import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { errorPaths } from './error-paths.ts';
import { findPanel } from '../../../calc/catalogue/index.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { readDocument, type CounterRunInput } from '../../../shared/check-document/index.ts';
import { ndsAsd } from '../../../calc/codes/nds-asd/index.ts';
import { readRun } from '../../../calc/elements/counter-run/run.ts';
import { modelOf, statesOf, type State } from '../../../calc/elements/counter-run/solve.ts';

const inch = 0.0254;
const psi = 6894.757293168;
const start: CounterRunInput = startChecks['counter-run'];
const outcome = (document: CounterRunInput, id: string) =>
  check(document).checks.find((each) => each.id === id);
/** MDF 3/4 in over 24 in, 6 in deep, on its ends alone: next to a strip. */
const strip: CounterRunInput = {
  schema: 1,
  element: 'counter-run',
  substrate: { material: 'mdf', thickness: '3/4 in' },
  opening: '24 in',
  depth: '6 in',
  loads: [{ kind: 'area', amount: '40 psf', duration: 'ten-years', sustained: 0 }],
};

describe('panels under tile or stone', () => {
  it('are a strip where they are narrow: 5 q L⁴ / 384 EI (AISC Manual Table 3-23)', () => {
    // By hand: EN 622-5 MDF over 19 mm has 2100 MPa, as thick as here 2200; 3/4 in is 19.05 mm. Weight by its density.
    const result = check(strip);
    const density = findPanel('mdf', 0.75 * inch);
    if (!density.ok) throw new Error('no MDF');
    const q = (40 / 144) * psi + density.row.density_kgm3 * 9.80665 * 0.75 * inch;
    const found =
      result.worksheet.sections.find(({ id }) => id === 'hand-check')?.steps[0]?.result.value ?? NaN;
    const even = result.analysis.even?.value ?? NaN;
    expect(even / found).toBeGreaterThan(0.97);
    expect(even / found).toBeLessThan(1.03);
    const E = (5 * q * (24 * inch) ** 4 * 12) / (384 * found * (0.75 * inch) ** 3);
    expect(E).toBeGreaterThan(1.9e9);
    expect(E).toBeLessThan(2.5e9);
  });

  it('press on each side with half of what is on them: q L / 2, no person', () => {
    // On MDF of 3/4 in, by hand: 40 psf and its weight over 24 in; shear at the face 3 v / 2 t.
    const density = findPanel('mdf', 0.75 * inch);
    if (!density.ok) throw new Error('no MDF');
    const q = (40 / 144) * psi + density.row.density_kgm3 * 9.80665 * 0.75 * inch;
    const shear = outcome(strip, 'shear')?.demand?.value ?? NaN;
    expect(shear / ((1.5 * q * 12 * inch) / (0.75 * inch))).toBeGreaterThan(0.97);
    expect(shear / ((1.5 * q * 12 * inch) / (0.75 * inch))).toBeLessThan(1.06);
  });

  it('on a mesh twice as fine are asked for the same within a thirtieth', () => {
    const particleboard: CounterRunInput = {
      ...start,
      ...{ substrate: { material: 'particleboard', thickness: '3/4 in' }, opening: '26 in' },
    };
    for (const document of [start, particleboard, { ...start, depth: '8 in' }]) {
      const reading = readDocument(document);
      if (!reading.ok || reading.document.element !== 'counter-run') throw new Error('not a run');
      const read = readRun(reading.document);
      const combination = ndsAsd.combinations(['ten-years', 'seven-days']).at(-1);
      if (!read.ok || combination === undefined) throw new Error('not read');
      const [coarse, fine] = [1, 2].map((finer) => {
        const states = statesOf(read.run, modelOf(read.run, finer), combination);
        const most = (pick: (state: State) => number): number => Math.max(...states.map(pick));
        return [
          most(({ end_Npm }) => end_Npm),
          most(({ alongSpan_N }) => alongSpan_N),
          most(({ acrossSpan_N }) => acrossSpan_N),
          most(({ movement_m }) => movement_m),
        ];
      });
      coarse?.forEach((value, k) => expect(Math.abs(value / (fine?.[k] ?? NaN) - 1)).toBeLessThan(1 / 30));
    }
  });

  it('are held to L/360 under tile and L/720 under stone, even load (ANSI A108.01; Dimension Stone Design Manual)', () => {
    for (const [kind, n] of [
      ['ceramic-tile', 360],
      ['natural-stone', 720],
    ] as const) {
      const covered: CounterRunInput = { ...strip, finish: { kind, thickness: '3/8 in' } };
      expect((outcome(covered, 'deflection-even')?.capacity?.value ?? NaN) / inch).toBeCloseTo(24 / n, 9);
    }
  });

  it('are held to the limit of tile or stone over the years too, or to L/240 where that is stricter', () => {
    const years = (document: CounterRunInput) => outcome(document, 'deflection-long-term');
    const allowed_in = (document: CounterRunInput) => (years(document)?.capacity?.value ?? NaN) / inch;
    const stone: CounterRunInput = { ...strip, finish: { kind: 'natural-stone', thickness: '3/8 in' } };
    expect(allowed_in(strip)).toBeCloseTo(24 / 240, 9);
    expect(allowed_in(stone)).toBeCloseTo(24 / 720, 9);
    expect(allowed_in({ ...stone, limits: { longTerm: 'none' } })).toBeCloseTo(24 / 720, 9);
    expect(allowed_in({ ...stone, limits: { longTerm: '1/8 in' } })).toBeCloseTo(24 / 720, 9);
    expect(allowed_in({ ...stone, limits: { longTerm: 'L/1000' } })).toBeCloseTo(24 / 1000, 9);
    // 16 in of particleboard that move 0.04 in: L/407, within L/240 and beyond L/720.
    const board: CounterRunInput = {
      ...{ schema: 1, element: 'counter-run', opening: '16 in', depth: '25 in' },
      substrate: { material: 'particleboard', thickness: '1-1/2 in', sheets: 2, bond: 'structural' },
      finish: { kind: 'natural-stone', thickness: '3/4 in' },
      loads: [
        { kind: 'area', amount: '100 psf', sustained: 1 },
        { kind: 'person', amount: '1 lbf' },
      ],
    };
    expect(years(board)?.outcome).toBe('does-not-hold');
    expect(years(board)?.clause).toMatch(/Dimension Stone Design Manual/);
  });

  it('move four times as far in two loose sheets as in one glued thickness, and less with rails', () => {
    const live = (document: CounterRunInput) => outcome(document, 'deflection-live')?.demand?.value ?? NaN;
    const loose: CounterRunInput = { ...start, substrate: { ...start.substrate, bond: 'none' } };
    expect(live(loose) / live(start)).toBeGreaterThan(3.5);
    expect(live(loose) / live(start)).toBeLessThan(4.2);
    expect(live({ ...start, rails: 'both' })).toBeLessThan(live(start));
  });

  it('can not be vouched for on rails of a size that is not given, nor on rails whose seats are not', () => {
    const wide: CounterRunInput = { ...start, opening: '96 in', rails: 'both' };
    expect(outcome(wide, 'rails')?.outcome).toBe('cannot-say');
    expect(check(wide).verdict).not.toBe('holds');
    const sized: CounterRunInput = {
      ...start,
      rails: 'both',
      rail: { thickness: '3/4 in', height: '3-1/2 in' },
    };
    expect(outcome(sized, 'rails')).toBeUndefined();
    expect(outcome(sized, 'rail-seat')?.outcome).toBe('cannot-say');
    expect(check(sized).verdict).toBe('cannot-say');
  });

  it('between two rails are held to the way between them, and everything to the span', () => {
    const wide: CounterRunInput = { ...start, opening: '96 in', rails: 'both' };
    expect((outcome(wide, 'between-rails-even')?.capacity?.value ?? NaN) / inch).toBeCloseTo(25 / 720, 9);
    expect((outcome(wide, 'deflection-even')?.capacity?.value ?? NaN) / inch).toBeCloseTo(96 / 720, 9);
  });

  it('under tile or stone are held to its limit under everything at once, somebody included (ANSI A108.01, memory)', () => {
    const demand = (id: string) => outcome(start, id)?.demand?.value ?? NaN;
    // What is there and what somebody adds are most in the same place here: the two add up.
    const sum = demand('deflection-even') + demand('deflection-live');
    expect(demand('deflection-together') / sum).toBeGreaterThan(0.95);
    expect(demand('deflection-together') / sum).toBeLessThan(1.001);
    expect((outcome(start, 'deflection-together')?.capacity?.value ?? NaN) / inch).toBeCloseTo(24 / 720, 9);
    const relaxed: CounterRunInput = { ...start, limits: { live: 'none' } };
    expect(outcome(relaxed, 'deflection-together')).toEqual(outcome(start, 'deflection-together'));
    const { finish: _, ...uncovered } = start;
    expect(outcome(uncovered, 'deflection-together')).toBeUndefined();
  });

  it('are as soft by their bow whatever is to lie on them', () => {
    const share = (document: CounterRunInput) =>
      /tells of (\d+) %/.exec(outcome({ ...document, bow: { measured: '0.1 mm' } }, 'bow')?.note ?? '')?.[1];
    const { finish: _, ...uncovered } = start;
    expect(share(start)).toMatch(/\d/);
    expect(share(start)).toBe(share(uncovered));
  });

  it('tell by their bow how stiff they are: a fifth more bow is a fifth softer', () => {
    const bowed = (measured: string) => outcome({ ...start, bow: { measured } }, 'bow')?.demand?.value ?? NaN;
    expect(bowed('0.12 mm') / bowed('0.1 mm')).toBeCloseTo(1.2, 9);
    expect(outcome({ ...start, bow: { measured: '1/4 in' } }, 'bow')?.note).toContain(
      'Replace the substrate',
    );
    expect(outcome({ ...start, bow: { measured: '0.005 in' } }, 'bow')?.note).toContain(
      'tells of stiffness alone',
    );
  });

  it('do not hold under somebody who weighs more than they bear, and say where', () => {
    const heavy: CounterRunInput = {
      ...strip,
      loads: [{ kind: 'person', amount: '1000 lbf', duration: 'seven-days' }],
    };
    const bending = outcome(heavy, 'bending-along');
    expect(bending?.outcome).toBe('does-not-hold');
    expect(bending?.where).toContain('standing in the middle');
  });

  it('do not hold where they are too soft to be worked out, and no number is made of it', () => {
    const soft: CounterRunInput = { ...strip, opening: '2.4 m', depth: '9-1/4 in', rails: 'back' };
    const result = check({ ...soft, substrate: { thickness: '3/4 in' }, loads: undefined });
    expect(result.verdict).toBe('does-not-hold');
    expect(result.analysis).toEqual({
      ...{ even: null, withPerson: null, longTerm: null },
      fields: { movement: null, acrossGrain: null },
    });
    expect(result.worksheet.sections.map(({ id }) => id)).not.toContain('hand-check');
    // Particleboard of 9-1/4 in by 2.4 m and what stands on it, by hand: 10 psf on 6.07 sq ft and 300 lbf, and its weight.
    const carried = result.checks.find(({ id }) => id === 'carried');
    expect(carried?.capacity).toBeNull();
    expect((carried?.demand?.value ?? NaN) / 4.4482216152605).toBeGreaterThan(360);
    expect((carried?.demand?.value ?? NaN) / 4.4482216152605).toBeLessThan(390);
  });

  it('say each thing that was taken where loads leave it open', () => {
    const open: CounterRunInput = {
      ...strip,
      loads: [
        { kind: 'area', amount: '10 psf' },
        { kind: 'person', amount: '300 lbf' },
      ],
    };
    const said = check(open).assumptions.join(' ');
    for (const words of [
      'up to ten years',
      '0.3 of what',
      'seven days',
      'a square of 4 in',
      'L/240',
      'one sheet',
    ])
      expect(said).toContain(words);
    const full: CounterRunInput = {
      ...open,
      loads: [
        { kind: 'area', amount: '10 psf', duration: 'permanent', sustained: 1 },
        { kind: 'person', amount: '300 lbf', duration: 'ten-minutes', patch: '3 in' },
      ],
    };
    for (const words of ['up to ten years', '0.3 of what', 'seven days', 'a square of'])
      expect(check(full).assumptions.join(' ')).not.toContain(words);
  });

  it('warn where nothing stands on them', () => {
    const bare = check({ ...strip, loads: [] }).warnings;
    expect(bare).toHaveLength(2);
  });

  it('tell what is wrong, and where', () => {
    expect(errorPaths({ ...strip, substrate: { material: 'mdff', thickness: '3/4 in' } })).toEqual([
      '/substrate/material',
    ]);
    expect(errorPaths({ ...strip, substrate: { material: 'birch-plywood', thickness: '2 in' } })).toEqual([
      '/substrate/thickness',
    ]);
    expect(errorPaths({ ...strip, opening: '1 in' })).toEqual(['/opening']);
    expect(errorPaths({ ...strip, substrate: { ...strip.substrate, sheets: 1.5 } })).toEqual([
      '/substrate/sheets',
    ]);
    expect(errorPaths({ ...strip, bow: {} })).toEqual(['/bow/measured']);
    expect(errorPaths({ ...strip, loads: [strip.loads?.[0], strip.loads?.[0]] })).toEqual(['/loads/1']);
  });
});
