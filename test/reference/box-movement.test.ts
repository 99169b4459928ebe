import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { inch, psi } from '../calc/elements/documents.ts';
import { boxes, boxOf, named, plates, type Box, type Kind } from './box-plates.ts';

/*
 * How far the members of a hollow box go down, against thin orthotropic plates that meet along lines (box-plates.ts). A box is told
 * to move as one section; where a member may move more than the limit while that does not, the check can't say.
 */
const pounds = 10;

function judged(box: Box, kind: Kind, live: string) {
  return check({ ...boxOf(box, kind, pounds), limits: { live, longTerm: 'none' } }, { waysOut: false });
}

/** How far the member that goes down most does, in, of a wood as stiff as the check takes it. */
function byPlates(box: Box, kind: Kind): number {
  const { solve, loads, up, middles } = plates(box, box.length, kind);
  const found = solve(loads);
  const { depth, thickness, skin, frame, members } = box;
  const I = (depth * thickness ** 3 - (depth - members * frame) * (thickness - 2 * skin) ** 3) / 12;
  const { analysis } = judged(box, kind, '2 in');
  const E_psi = analysis.stiffness.EI.value / (I * inch ** 4) / psi;
  return (pounds * Math.max(...middles.map((y) => found.movement(y, -up)))) / E_psi;
}

const outcome = (box: Box, kind: Kind, limit: number): string | undefined =>
  judged(box, kind, `${limit.toFixed(7)} in`).checks.find(({ id }) => id === 'deflection-live')?.outcome;

describe.each(['hand', 'line', 'even'] as const)(
  'the member of a hollow box that moves most, under a load: %s',
  (kind) => {
    it.each(boxes.map(named))('%s', (_, box) => {
      const moved = byPlates(box, kind);
      expect(outcome(box, kind, 0.99 * moved)).not.toBe('holds');
      // In short thick ones the box shears more than its members are bent, which is not told apart.
      expect(outcome(box, kind, (box.length < 30 ? 3.7 : 1.9) * moved)).toBe('holds');
    });
  },
);
