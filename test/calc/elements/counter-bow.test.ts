import { describe, expect, it } from 'vitest';
import type { CounterRunInput } from '../../../shared/check-document/index.ts';
import { check } from '../../../calc/index.ts';
import { gravity, inch, judge, poundForce } from './documents.ts';

/*
 * MDF of 25 mm over 900 mm, 6 in deep: next to a strip. EN 622-5:2009, Table 3, over 19 to 30 mm: 2100 MPa; density 800 kg/m³.
 * Sound and bare it bows by 5 q L⁴ / 384 EI = 0.61 mm.
 */
const [L, depth, t] = [0.9, 6 * inch, 0.025];
const q = 800 * gravity * t;
const sound_Nm = (2100e6 * t ** 3) / 12;
/** What a bow says of the stiffness for each width: turned round, EI_m = 5 q L⁴ / (384 Δ). */
const implied_Nm = (bow_m: number): number => (5 * q * L ** 4) / (384 * bow_m);

const strip: CounterRunInput = {
  schema: 1,
  element: 'counter-run',
  substrate: { material: 'mdf', thickness: '25 mm' },
  opening: '900 mm',
  depth: '6 in',
  loads: [{ kind: 'person', amount: '60 lbf', patch: '6 in', duration: 'seven-days' }],
};
const bowed = (measured: string): CounterRunInput => ({ ...strip, bow: { measured } });

describe('somebody standing on a counter that has a bow', () => {
  it('adds what the stiffness the bow tells of allows: P L³ / 48 EI_m b (AISC Manual Table 3-23)', () => {
    const { demand } = judge(bowed('2 mm'), 'bow-live');
    // They take up the whole depth, and 6 in of the span: 1 − c² / 2 L² + c³ / 8 L³ of a load in the middle.
    const spread = 1 - (6 * inch) ** 2 / (2 * L ** 2) + (6 * inch) ** 3 / (8 * L ** 3);
    const byHand = (60 * poundForce * L ** 3 * spread) / (48 * implied_Nm(0.002) * depth);
    expect(demand / byHand).toBeGreaterThan(0.99);
    expect(demand / byHand).toBeLessThan(1.02);
  });

  it('adds what they add to sound panels, over the share of the stiffness: EI_m / EI', () => {
    for (const bow_mm of [0.7, 2, 5]) {
      const document = bowed(`${bow_mm} mm`);
      const share = implied_Nm(bow_mm / 1000) / sound_Nm;
      expect(share).toBeLessThan(1);
      const [live, onBow] = [judge(document, 'deflection-live'), judge(document, 'bow-live')];
      expect((onBow.demand * share) / live.demand).toBeCloseTo(1, 6);
      expect(onBow.capacity).toBe(live.capacity);
      expect(judge(document, 'bow').note).toContain(`tells of ${Math.round(share * 100)} %`);
    }
  });

  it('moves it no less than sound panels where the bow is smaller than theirs: 0.3 mm of 0.61 mm', () => {
    expect(implied_Nm(0.0003) / sound_Nm).toBeGreaterThan(2);
    const document = bowed('0.3 mm');
    expect(judge(document, 'bow-live').demand).toBe(judge(document, 'deflection-live').demand);
  });

  it('makes a counter fail that holds when sound, where it is bowed enough', () => {
    const document = { ...bowed('5 mm'), limits: { live: 'L/60' } };
    expect(judge(document, 'deflection-live').outcome).toBe('holds');
    expect(judge(document, 'bow-live').outcome).toBe('does-not-hold');
  });

  it('a bow over twenty times what the bare panels make when sound tells nothing of their stiffness: replace them', () => {
    const sound_m = (5 * q * L ** 4) / (384 * sound_Nm);
    const far = judge(bowed(`${(sound_m * 20.1 * 1000).toFixed(3)} mm`), 'bow');
    expect(far.outcome).toBe('does-not-hold');
    expect(far.capacity / sound_m).toBeCloseTo(20, 6);
    expect(far.note).toContain('Replace the substrate');
    const ids = (times: number) =>
      check(bowed(`${(sound_m * times * 1000).toFixed(3)} mm`)).checks.map(({ id }) => id);
    expect(ids(20.1)).not.toContain('bow-live');
    expect(ids(19.9)).toContain('bow-live');
  });

  it('and all that is there under tile move it by (5 q L⁴ / 384 + P L³ / 48 b) / EI_m, against L/360', () => {
    const tiled: CounterRunInput = { ...bowed('2 mm'), finish: { kind: 'ceramic-tile', thickness: '10 mm' } };
    const { demand, capacity } = judge(tiled, 'bow-together');
    const spread = 1 - (6 * inch) ** 2 / (2 * L ** 2) + (6 * inch) ** 3 / (8 * L ** 3);
    // Porcelain tile of at most 2450 kg/m³ (ISO 13006, group BIa, practice), 10 mm thick.
    const even = (5 * (q + 2450 * gravity * 0.01) * L ** 4) / 384;
    const person = (60 * poundForce * L ** 3 * spread) / (48 * depth);
    const byHand = (even + person) / implied_Nm(0.002);
    expect(demand / byHand).toBeGreaterThan(0.99);
    expect(demand / byHand).toBeLessThan(1.02);
    expect(capacity).toBeCloseTo(L / 360, 9);
    expect(check(bowed('2 mm')).checks.map(({ id }) => id)).not.toContain('bow-together');
  });

  it('under tile do not hold by half the stiffness where sound panels are at two thirds of the limit', () => {
    const tiled: CounterRunInput = {
      ...{ schema: 1, element: 'counter-run', opening: '48 in', depth: '25 in' },
      substrate: { material: 'particleboard', thickness: '3 in', sheets: 4, bond: 'structural' },
      finish: { kind: 'ceramic-tile', thickness: '3/8 in' },
      bow: { measured: '0.02 in' },
      loads: [
        { kind: 'area', amount: '10 psf' },
        { kind: 'person', amount: '150 lbf' },
      ],
    };
    expect(judge(tiled, 'deflection-together').outcome).toBe('holds');
    expect(judge(tiled, 'bow-together').outcome).toBe('does-not-hold');
  });

  it('is told of only where there is a bow, somebody, and a limit', () => {
    const ids = (document: CounterRunInput): string[] => check(document).checks.map(({ id }) => id);
    expect(ids(strip)).not.toContain('bow-live');
    expect(ids({ ...bowed('2 mm'), loads: [] })).toContain('bow');
    expect(ids({ ...bowed('2 mm'), loads: [] })).not.toContain('bow-live');
    expect(ids({ ...bowed('2 mm'), limits: { live: 'none' } })).not.toContain('bow-live');
  });
});

describe('a counter that has a bow, over the years', () => {
  const years: CounterRunInput = {
    ...strip,
    loads: [{ kind: 'area', amount: '500 Pa', duration: 'ten-years', sustained: 0.5 }],
  };

  it('moves as softly as the bow tells: (K (weight + half of what is there) + the other half) at EI_m (NDS 3.5.2)', () => {
    const { demand, capacity } = judge({ ...years, bow: { measured: '1 mm' } }, 'bow-long-term');
    // K of MDF, dry: 1 + k_def 2.25 (EN 1995-1-1 Table 3.2, service class 1).
    const byHand = (5 * (3.25 * (q + 250) + 250) * L ** 4) / (384 * implied_Nm(0.001));
    expect(demand / byHand).toBeGreaterThan(0.98);
    expect(demand / byHand).toBeLessThan(1.02);
    expect(capacity).toBeCloseTo(L / 240, 9);
  });

  it('does not hold where only the years are too much: bowed 1.2 mm, of 0.61 mm when sound, under 100 Pa that come and go', () => {
    // At once 296 Pa: 1.8 mm of L / 360, 2.5 mm. By and by 3.25 × 196 + 100 Pa: 4.5 mm of L / 240, 3.75 mm; sound 2.3 mm.
    const document: CounterRunInput = {
      ...strip,
      loads: [{ kind: 'area', amount: '100 Pa', duration: 'ten-years', sustained: 0 }],
      bow: { measured: '1.2 mm' },
    };
    expect(judge(document, 'deflection-long-term').outcome).toBe('holds');
    expect(judge(document, 'bow').outcome).toBe('holds');
    expect(judge(document, 'bow-long-term').outcome).toBe('does-not-hold');
    expect(check(document).governing).toBe('bow-long-term');
  });

  it('moves no less than sound panels where the bow is smaller than theirs', () => {
    const document = { ...years, bow: { measured: '0.3 mm' } };
    expect(judge(document, 'bow-long-term').demand).toBe(judge(document, 'deflection-long-term').demand);
  });
});
