import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { startChecks } from '../../../server/start-checks.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';

const start: CounterOverhangInput = startChecks['counter-overhang'];
const props = [12, 36, 60].map((at) => ({
  ...{ kind: 'bracket' as const, at: `${at} in`, to: '34 in', allowable: '2000 lbf' },
}));

function handCheckOf(document: CounterOverhangInput) {
  const found = check(document).worksheet.sections.find(({ id }) => id === 'hand-check');
  const rows = found?.tables.flatMap((table) => table.rows) ?? [];
  const stress = rows.find(([what = '']) => what.startsWith('Stress')) ?? [];
  return { notes: found?.notes.join(' ') ?? '', what: stress[0] ?? '', stress: stress[1] };
}

describe('the strip by hand beside the plate', () => {
  const bare = handCheckOf({ ...start, props: [] });
  const propped = handCheckOf({ ...start, props });

  it('is the same with props and without: one person on 6 M / (b t²), b spread at 45° (by hand)', () => {
    // 250 lbf on a 4 in patch at the edge of a 12 in overhang: M = 250 × 10; b = 4 + 2 × 10; t = 1-1/2 in.
    expect(Number.parseFloat(bare.stress ?? '')).toBeCloseTo((6 * 2500) / (24 * 1.5 ** 2), 1);
    expect(propped.stress).toBe(bare.stress);
  });

  it('says at its row and under the table that it has no props, where there are any', () => {
    expect(propped.what).toContain('the strip has no props under it, the plate has');
    expect(propped.notes).toContain('the two differ by as much');
    expect(bare.what).not.toContain('props');
    expect(bare.notes).not.toContain('props');
  });

  it('says that the checks go by the plate', () => {
    for (const { notes } of [bare, propped]) expect(notes).toContain('Every check goes by the plate');
  });
});
