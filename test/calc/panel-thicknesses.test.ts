import { describe, expect, it } from 'vitest';
import { findPanel, panels } from '../../calc/catalogue/index.ts';
import { check } from '../../calc/index.ts';
import { demoCheck } from '../../server/demo.ts';
import { DocumentError } from '../../shared/check-document/index.ts';
import { parseQuantity } from '../../shared/quantity/index.ts';

/** What somebody is told who gives a panel a thickness it has no values for; empty where it has. */
function refusalOf(material: string, units: 'inch-pound' | 'metric'): string {
  const { length, depth } = demoCheck.board;
  try {
    check({ ...demoCheck, units, board: { length, depth, material, basis: 'panel', thickness: '76 mm' } });
    return '';
  } catch (error) {
    if (error instanceof DocumentError) return error.errors[0]?.message ?? '';
    throw error;
  }
}

const names = [...new Set(panels.map(({ id }) => id))];

describe('the thicknesses a panel has values for', () => {
  it.each(names)('are told by ends that it has values for: %s', (name) => {
    for (const units of ['inch-pound', 'metric'] as const) {
      const message = refusalOf(name, units);
      if (!message.includes('It takes')) continue;
      const ranges = /It takes (.*), or another panel/.exec(message)?.[1] ?? '';
      const ends = ranges.match(/[\d./-]+ (?:in|mm)\b/g) ?? [];
      expect(ends.length).toBeGreaterThan(1);
      for (const end of ends) {
        const read = parseQuantity(end, 'length');
        expect(read.ok && findPanel(name, read.value).ok, `${end} of: ${message}`).toBe(true);
      }
    }
  });

  it('are marks of a rule, with millimetres beside them', () => {
    // 11.5 to 12.5 mm is 0.4528 to 0.4921 in: between 29/64 (0.4531) and 31/64 in (0.4844).
    expect(refusalOf('birch-plywood', 'inch-pound')).toContain('It takes 29/64 in to 31/64 in');
    expect(refusalOf('birch-plywood', 'inch-pound')).toContain('(11.5 mm to 12.5 mm');
  });
});
