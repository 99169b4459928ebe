import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import type { Step, Table } from '../../../shared/check-result.ts';
import { demoCheck } from '../../../server/demo.ts';
import { gravity, inch, line, poundForce, shelf } from './documents.ts';
import { maple, mapleBoard } from './maple.ts';

const roaming = { kind: 'roaming', amount: '50 lbf', duration: 'seven-days' } as const;

function sheetOf(document: BracketShelfInput) {
  const { sections } = check(document, { waysOut: false }).worksheet;
  const steps: readonly Step[] = sections.flatMap((each) => each.steps);
  const table = sections
    .flatMap(({ tables }): readonly Table[] => tables)
    .find(({ title }) => title.startsWith('By the solver, load by load'));
  if (table === undefined) throw new Error('no table of the loads');
  return { sections, steps, table };
}

/** The numbers of the column that begins so, from the board itself to all together, in the units of the calculation. */
function columnOf({ head, rows }: Table, begins: string): number[] {
  const column = head.findIndex((title) => title.startsWith(begins));
  if (column < 0) throw new Error(`no column ${begins}: ${head.join(', ')}`);
  return rows.map((row) => Number.parseFloat(row[column] ?? ''));
}

function inputsOf(steps: readonly Step[], expression: string): Record<string, number> {
  const step = steps.find((each) => each.expression === expression);
  if (step === undefined) throw new Error(`no line ${expression}`);
  return Object.fromEntries(
    [...step.inputs, { symbol: 'result', value: step.result.value }].map(({ symbol, value }) => [
      symbol,
      value,
    ]),
  );
}

/** Brackets 8 in from the ends of a maple board 48 in long, 10 in deep, 3/4 in thick: 32 in between them. lbf and in. */
const own = (maple.density_kgm3 * gravity * 10 * 0.75 * inch ** 2) / (poundForce / inch);
const longTerm = 'K_cr * Delta_LT + Delta_ST';

describe('what the solver finds, load by load', () => {
  const { table } = sheetOf(shelf({ loads: [line('24 lbf/ft')] }));

  it.each([
    ['Moment at 24 in', 32 ** 2 / 8 - 8 ** 2 / 2],
    ['Shear at', 16],
    ['On the bracket at', 24],
  ])('%s is that of a beam with overhangs (AISC Manual, Table 3-23): w times %d', (begins, per) => {
    const [weight = NaN, load = NaN, all = NaN] = columnOf(table, begins);
    expect(weight / (own * per)).toBeCloseTo(1, 3);
    expect(load / (2 * per)).toBeCloseTo(1, 3);
    expect(all / ((own + 2) * per)).toBeCloseTo(1, 3);
  });

  it('a couple on a bracket is the force of each load times its own distance from the wall', () => {
    const document = shelf({
      loads: [line('24 lbf/ft', { eccentricity: '3 in' }), { ...roaming, amount: '40 lbf' }],
    });
    const { steps, table: forces } = sheetOf(document);
    const [weight = NaN, load = NaN, hand = NaN] = columnOf(forces, 'On the bracket at');
    const { result = NaN } = inputsOf(steps, 'R * e_R');
    expect(result / (poundForce * inch) / (weight * 5 + load * 3 + hand * 10)).toBeCloseTo(1, 3);
  });
});

describe('columns of the table that are alike', () => {
  it('are one, under the names of all: two brackets a board alike on both sides stands on carry the same', () => {
    const { head, rows } = sheetOf(demoCheck).table;
    const columns = head.map((_, column) => rows.map((row) => row[column]).join());
    expect(new Set(columns).size).toBe(columns.length);
    expect(head.filter((title) => /on the bracket at/i.test(title))).toEqual([
      'On the bracket at 60 in; on the bracket at 36 in',
    ]);
  });

  it('say of shear beside a bracket on which side of it that is', () => {
    const { head } = sheetOf(demoCheck).table;
    expect(head.join('|')).toMatch(/shear just (left|right) of [\d.]+ in/i);
    expect(head.join('|')).not.toMatch(/\b(before|past)\b/);
  });
});

describe('the stiffness a section bends with', () => {
  const section = (document: BracketShelfInput) => {
    const found = sheetOf(document).sections.find(({ title }) => title === 'Section');
    if (found === undefined) throw new Error('no section');
    return found;
  };
  const bent = 'EI_x - EI_xy^2 / EI_y';

  it('is E b t³ / 12 of a plain board, with nothing taken off', () => {
    const { statements, steps } = section(shelf({ loads: [roaming] }));
    expect(steps.map(({ expression }) => expression)).not.toContain(bent);
    expect(statements.map(({ label }) => label).join()).not.toContain('EI_xy');
    const told = statements.find(({ label }) => label === 'Bending stiffness EI_eff')?.value ?? '';
    // A board 10 by 3/4 in; E of maple with small knots as in maple.ts.
    const byHand = mapleBoard(10, 0.75).EI / (poundForce * inch ** 2);
    expect(Number.parseFloat(told) / byHand).toBeCloseTo(1, 3);
  });

  it('has the product term taken off where a strip makes the section bend about inclined axes', () => {
    const { statements, steps } = section(demoCheck);
    expect(steps.map(({ expression }) => expression)).toContain(bent);
    expect(statements.map(({ label }) => label)).toContain('Product term, EI_xy');
  });
});

describe('what stays of a movement over the years', () => {
  it('is the weight of the board where the load does not stay: loads of one shape move as they weigh', () => {
    const { steps } = sheetOf(shelf({ loads: [line('24 lbf/ft', { sustained: 0 })] }));
    const { Delta_LT = NaN, Delta_ST = NaN } = inputsOf(steps, longTerm);
    expect(Delta_ST / Delta_LT / (2 / own)).toBeCloseTo(1, 6);
  });

  it('is what the check goes on with, where loads come and go and one roams', () => {
    for (const document of [
      demoCheck,
      shelf({ loads: [line('24 lbf/ft', { arrangement: 'free' }), roaming] }),
    ]) {
      const { sections } = sheetOf(document);
      const steps = sections
        .filter((each) => each.check === 'deflection-long-term')
        .flatMap((each) => each.steps);
      const bent = inputsOf(steps, longTerm)['result'] ?? NaN;
      const added = inputsOf(steps, 'Delta + Delta_twist')['Delta'] ?? NaN;
      expect(bent / added).toBeCloseTo(1, 9);
    }
  });
});

describe('movement by twisting', () => {
  it('follows from the lines above it: both resist at once (Vlasov)', () => {
    const { sections } = sheetOf(demoCheck);
    for (const id of ['deflection-live', 'deflection-long-term']) {
      const steps = sections.filter((each) => each.check === id).flatMap((each) => each.steps);
      const value = (symbol: string): number =>
        steps.find((each) => each.symbol === symbol)?.result.value ?? NaN;
      const together = 1 / (1 / value('Delta_s') + 1 / value('Delta_w'));
      expect(inputsOf(steps, 'Delta + Delta_twist')['Delta_twist']).toBeCloseTo(together, 12);
    }
  });

  it('of a hand at the front edge between two brackets is P e L / 4 GJ at the edge (AISC Manual, Table 3-23, case 7)', () => {
    const document = shelf({ loads: [roaming], brackets: { positions: ['1 in', '47 in'] } });
    const { steps } = sheetOf({ ...document, limits: { live: '1/4 in', longTerm: '1/4 in' } });
    const numbers = inputsOf(steps, 'd_e * (P * e_t * L / 4 + t_s * L^2 / 8 + S_t) / GJ');
    const byHand = (5 * inch * 50 * poundForce * 5 * inch * 46 * inch) / 4 / (numbers['GJ'] ?? NaN);
    expect((numbers['result'] ?? NaN) / byHand).toBeCloseTo(1, 9);
  });
});

/** On arms that give, and on fewer brackets, the shares are those of the case that moves most. */
describe('a board on steel arms, or that lifts off', () => {
  it.each([
    ['on steel arms', { hold: 'screwed', capacity: { basis: 'steel', width: '1 in', thickness: '1/4 in' } }],
    ['resting', { hold: 'resting', capacity: { basis: 'rated', allowable: '400 lbf', at: '5 in' } }],
  ] as const)('%s: all loads together are the movement of the check', (_, brackets) => {
    const { sections, table } = sheetOf({ ...demoCheck, brackets: { ...demoCheck.brackets, ...brackets } });
    const steps = sections.filter((each) => each.check === 'deflection-live').flatMap((each) => each.steps);
    const moved = (inputsOf(steps, 'Delta + Delta_twist')['Delta'] ?? NaN) / inch;
    expect((columnOf(table, 'Moves at').at(-1) ?? NaN) / moved).toBeCloseTo(1, 3);
  });
});
