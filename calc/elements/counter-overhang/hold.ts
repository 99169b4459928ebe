import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import { show, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { Point } from '../../mechanics/hull.ts';
import type { Overhang } from './overhang.ts';
import { tippingMoments, type TippingMoments } from './top-tipping.ts';
import { placeWords } from './where.ts';

/**
 * Whether the top stays on its base: about each outermost line of what carries it, what stands out tips it and what
 * lies behind, with the screws, keeps it; in each combination of loads the screws hold what they do for as long as that.
 *
 * @param tipped whether the plate found no way to stand, screws at their strength
 */
export function holdDownCheck(overhang: Overhang, tipped: boolean): Judged {
  const { system } = overhang;
  const lines = tippingMoments(overhang);
  const worst = lines.reduce((a, b) => (b.over.value * a.keep.value > a.over.value * b.keep.value ? b : a));
  const contradicts = tipped && worst.over.value <= worst.keep.value;
  const check = makeCheck(
    {
      id: 'hold-down',
      title: 'The top held to its base',
      unit: 'N.m',
      demand: worst.over.value,
      capacity: contradicts ? 0 : worst.keep.value,
      clause: 'ASCE 7 2.4.1 by analogy; NDS 12.2',
      where: `tipping about ${lineWords(worst.corner, worst.slant, system)}`,
      combination: `0.6 D holding, ${worst.combination.name} tipping`,
      note: noteOf(overhang, worst),
    },
    system,
  );
  return { check, steps: [...(worst.pull?.steps ?? []), worst.over.step, worst.keep.step] };
}

type Line = TippingMoments;

function noteOf({ screws, system }: Overhang, { over, weightAlone_Nm, pull }: Line): string {
  const isNeeded = over.value > weightAlone_Nm;
  if (screws === null || pull === null) {
    return isNeeded
      ? 'Nothing holds the top down but its weight: screw it to the base, well behind the line it tips about.'
      : 'Its own weight holds it; screws keep it from being shifted.';
  }
  const nearer = screws.places.length > 1 ? '; those nearer to the line count less, by their distance' : '';
  const each = `The farthest screw holds ${show(pull.pull_N, 'N', system)}: ${pull.governs}${nearer}.`;
  const slots = 'Slots let the wood move and screws still pull.';
  return isNeeded
    ? `The screws are needed. ${each} ${slots}`
    : `Its own weight holds it without screws. ${each}`;
}

/** A line through a corner of the base: along the stool edge and the back at 0°. */
function lineWords([x_m, y_m]: Point, slant: number, system: UnitSystem): string {
  const turned = ((slant % 180) + 180) % 180;
  const way =
    turned === 0 ? 'along the top' : turned === 90 ? 'from back to front' : `at ${turned}° to its length`;
  return `a line ${way} through ${placeWords({ x_m, y_m }, system)}`;
}
