import fc from 'fast-check';
import { expect, it } from 'vitest';
import { judgeShelf } from '../../../calc/elements/bracket-shelf/judge.ts';
import {
  bayMovementUsedAtLeast,
  movementUsed,
  movementUsedAtLeast,
} from '../../../calc/elements/bracket-shelf/stillness.ts';
import { onBrackets, readSubject } from '../../../calc/layout/subject.ts';
import { studShelf } from './documents.ts';

/* What the search leaves out by an estimate must be surely worse: estimates never exceed what the checks themselves find. */
const arrangement = fc.constantFrom('free' as const, 'fixed' as const);
const plans = fc.record({
  hold: fc.constantFrom('screwed' as const, 'resting' as const),
  places: fc.uniqueArray(fc.integer({ min: 1, max: 95 }), { minLength: 2, maxLength: 5 }),
  line: fc.integer({ min: 1, max: 60 }),
  from: fc.integer({ min: 0, max: 60 }),
  point: fc.integer({ min: 1, max: 80 }),
  at: fc.integer({ min: 0, max: 96 }),
  arrangement,
  roams: fc.boolean(),
  limits: fc.constantFrom(
    { live: 'L/360', longTerm: 'L/240' },
    { live: 'none', longTerm: '1/8 in' },
    { live: '1/8 in', longTerm: 'none' },
    { live: 'none', longTerm: 'none' },
  ),
});

it('never takes a shelf to move more than its checks find', () => {
  fc.assert(
    fc.property(plans, ({ hold, places, line, from, point, at, arrangement, roams, limits }) => {
      const positions = [...places].sort((a, b) => a - b).map((place) => `${place} in`);
      const document = studShelf({
        brackets: { positions, hold, armWidth: '1/4 in' },
        limits,
        loads: [
          { kind: 'line', amount: `${line} lbf/ft`, from: `${from} in`, duration: 'permanent', arrangement },
          { kind: 'point', amount: `${point} lbf`, at: `${at} in`, duration: 'ten-years', arrangement },
          ...(roams ? [{ kind: 'roaming' as const, amount: '50 lbf', duration: 'seven-days' as const }] : []),
        ],
      });
      const { shelf } = readSubject(document);
      const moved = onBrackets(shelf, shelf.positions_m);
      const { movements } = judgeShelf(moved);
      const used = movementUsed(moved, movements) * (1 + 1e-9) + 1e-9;
      expect(movementUsedAtLeast(moved)).toBeLessThanOrEqual(used);
      for (const { bay } of movements.bays) {
        expect(bayMovementUsedAtLeast(moved, bay)).toBeLessThanOrEqual(used);
      }
    }),
    { numRuns: 60 },
  );
});
