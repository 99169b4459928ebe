import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { findPanel } from '../../../calc/catalogue/index.ts';
import { ndsAsd } from '../../../calc/codes/nds-asd/index.ts';
import { railForces } from '../../../calc/elements/counter-run/rails.ts';
import { readRun, type Run } from '../../../calc/elements/counter-run/run.ts';
import { modelOf, settled, statesOf } from '../../../calc/elements/counter-run/solve.ts';
import { readDocument, type CounterRunInput } from '../../../shared/check-document/index.ts';
import { addedLoads, preparedLoad } from '../../../calc/mechanics/plate/index.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { errorPaths } from './error-paths.ts';

const inch = 0.0254;
const psf = 47.88025898;
/** MDF 3/4 in, 12 in deep over 96 in: between two rails next to all of it rests on them. */
const long: CounterRunInput = {
  schema: 1,
  element: 'counter-run',
  substrate: { material: 'mdf', thickness: '3/4 in' },
  ...{ opening: '96 in', depth: '12 in', rails: 'both' },
  rail: { thickness: '3 in', height: '11 in', material: 'sugar-maple', seat: '3 in' },
  loads: [{ kind: 'area', amount: '40 psf', duration: 'ten-years', sustained: 0 }],
};

function runOf(document: CounterRunInput): Run {
  const reading = readDocument(document);
  if (!reading.ok || reading.document.element !== 'counter-run') throw new Error('not a run');
  const read = readRun(reading.document);
  if (!read.ok) throw new Error('not read');
  return read.run;
}

const forcesOf = (run: Run) => {
  const combination = ndsAsd.combinations(['ten-years']).at(-1);
  if (combination === undefined) throw new Error('no combination');
  const [state] = statesOf(run, modelOf(run), combination);
  const [front] = state?.rails ?? [];
  if (state === undefined || front === undefined) throw new Error('no rail');
  return { state, front };
};

describe('rails under the long edges', () => {
  it('each carry half of a long counter: w L² / 8 and w L / 2, less what the sides carry (AISC Manual Table 3-23)', () => {
    const run = runOf(long);
    const { front } = forcesOf(run);
    const density = findPanel('mdf', 0.75 * inch);
    if (!density.ok || run.rail === null) throw new Error('no MDF');
    const q = 40 * psf + density.row.density_kgm3 * 9.80665 * 0.75 * inch;
    const w = (q * 12 * inch) / 2;
    // Its own weight by hand: maple 3 in by 11 in, whatever it weighs; span from the middle of one seat to the other.
    const own = run.rail.material.density_kgm3 * 9.80665 * 3 * 11 * inch ** 2;
    const L = 99 * inch;
    expect(front.moment_Nm / (((w + own) * L ** 2) / 8)).toBeGreaterThan(0.96);
    expect(front.moment_Nm / (((w + own) * L ** 2) / 8)).toBeLessThan(1.02);
    // At each end a triangle of half the depth rests on the side (yield lines at 45°): a quarter of the depth less for a rail.
    const end = w * (48 - 12 / 4) * inch + (own * L) / 2;
    expect(front.end_N / end).toBeGreaterThan(0.97);
    expect(front.end_N / end).toBeLessThan(1.03);
  });

  it('bend with the panels as beams side by side: 5 q d L⁴ / 384 (EI of the panel + EI of both rails)', () => {
    const slender = { thickness: '1 in', height: '3-1/2 in', material: 'sugar-maple' };
    const run = runOf({ ...long, depth: '6 in', opening: '60 in', rail: slender });
    if (run.rail === null) throw new Error('no rail');
    const { state } = forcesOf(run);
    const q = 40 * psf + run.panel.material.density_kgm3 * 9.80665 * 0.75 * inch;
    const b = 6 * inch;
    const ofPanel = (run.panel.material.E_Pa * b * (0.75 * inch) ** 3) / 12;
    const inBending = (run.rail.material.E_Pa * inch * (3.5 * inch) ** 3) / 12;
    // Shear adds q L² / 8 GA to 5 q L⁴ / 384 EI, with five sixths of the section (Wood Handbook, chapter 9).
    const GA = (5 / 6) * (run.rail.material.G_Pa ?? NaN) * 3.5 * inch ** 2;
    const ofRail = inBending / (1 + (384 * inBending) / (40 * GA * (60 * inch) ** 2));
    const byHand = (5 * q * b * (60 * inch) ** 4) / (384 * (ofPanel + 2 * ofRail));
    expect(state.movement_m / byHand).toBeGreaterThan(0.98);
    expect(state.movement_m / byHand).toBeLessThan(1.02);
  });

  it('and the cabinet sides together carry all that is there', () => {
    const run = runOf({ ...long, opening: '40 in', depth: '25 in' });
    const model = modelOf(run);
    const { forces_N } = settled(model, model.dead);
    const total = forces_N.reduce((sum, force) => sum + force, 0);
    expect(total / (run.dead_Npm2 * 40 * 25 * inch ** 2)).toBeCloseTo(1, 8);
  });

  it('carry one load as a simple beam does: P a b / L, and P b / L at the nearer end (AISC Manual Table 3-23)', () => {
    const { rail } = runOf(long);
    if (rail === null) throw new Error('no rail');
    const light = { ...rail, weight_Npm: 0, seat_m: null, span_m: 2 };
    const { moment_Nm, end_N } = railForces(light, 'front', [{ x_m: 0.5, force_N: 1000 }]);
    expect(moment_Nm).toBeCloseTo((1000 * 0.5 * 1.5) / 2, 9);
    expect(end_N).toBeCloseTo(750, 9);
  });

  it('that are too weak fail the counter, and say which rail and who stands where', () => {
    const thin: CounterRunInput = {
      ...long,
      rail: { thickness: '3/4 in', height: '1-1/2 in', material: 'sugar-maple', seat: '3/4 in' },
      loads: [{ kind: 'person', amount: '300 lbf', duration: 'seven-days' }],
    };
    const result = check(thin);
    expect(result.verdict).toBe('does-not-hold');
    const bending = result.checks.find(({ id }) => id === 'rail-bending');
    expect(bending?.outcome).toBe('does-not-hold');
    expect(bending?.where).toMatch(/^(front|back) rail; somebody standing/);
  });

  it('press on their seats with what they carry at an end over thickness and seat', () => {
    const result = check(long);
    const { front } = forcesOf(runOf(long));
    const seat = result.checks.find(({ id }) => id === 'rail-seat');
    expect((seat?.demand?.value ?? NaN) / (front.end_N / (9 * inch ** 2))).toBeCloseTo(1, 6);
  });

  it('carry most at an end under somebody part of the way along: within a thirtieth of every place of the edge', () => {
    const run = runOf({
      ...startChecks['counter-run'],
      ...{ opening: '60 in', rails: 'both' },
      rail: { thickness: '3/4 in', height: '5-1/2 in', material: 'sugar-maple', seat: '3/4 in' },
    });
    const { rail, person, depth_m, span_m } = run;
    const combination = ndsAsd.combinations(['ten-years', 'seven-days']).at(-1);
    if (rail === null || person === null || combination === undefined) throw new Error('no rail');
    const model = modelOf(run);
    const tried = statesOf(run, model, combination).flatMap(({ rails }) => rails.map(({ end_N }) => end_N));
    const half = person.patch_m / 2;
    const even = model.serving === null ? model.dead : addedLoads(model.dead, model.serving);
    const anywhere = Array.from({ length: 40 }, (_, k) => {
      const x_m = half + ((span_m / 2 - half) * k) / 39;
      const patch = { kind: 'patch', fromX_m: x_m - half, toX_m: x_m + half } as const;
      const feet = { ...patch, fromY_m: depth_m - 2 * half, toY_m: depth_m, load_N: person.load_N };
      const { forces_N } = settled(model, addedLoads(even, preparedLoad(model.plate, [feet])));
      const front = model.rails.find(({ edge }) => edge === 'front');
      const pressed = (front?.places ?? []).map((each) => ({
        x_m: each.x_m,
        force_N: forces_N[each.support] ?? 0,
      }));
      return railForces(rail, 'front', pressed).end_N;
    });
    expect(Math.max(...tried) / Math.max(...anywhere)).toBeGreaterThan(29 / 30);
  });

  it('on which a bow was measured say nothing of the panels', () => {
    const bow = check({ ...long, bow: { measured: '1/8 in' } }).checks.find(({ id }) => id === 'bow');
    expect(bow?.outcome).toBe('cannot-say');
  });

  it('are refused where there are none, and where their size is half given', () => {
    expect(errorPaths({ ...long, rails: 'none' })).toEqual(['/rail']);
    expect(errorPaths({ ...long, rail: { thickness: '3/4 in' } })).toEqual(['/rail/height']);
    expect(errorPaths({ ...long, rail: { ...long.rail, material: 'unheard-of' } })).toEqual([
      '/rail/material',
    ]);
  });
});
