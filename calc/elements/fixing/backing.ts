import type { Step } from '../../../shared/check-result.ts';
import { formula } from '../../formula/formula.ts';
import { work } from '../../formula/step.ts';
import { edgeAlong, loadedEdgeAcross } from '../../standards/nds-2018/12.5-placement.ts';
import type { Fixing } from './fixing.ts';
import type { Turning } from './turning.ts';

/** How far from the pressed end of a plate the blocking behind it begins. */
export const backingFrom = formula({
  symbol: 'z_w',
  caption:
    'from the pressed end of the plate to the blocking behind it, set as near to that end as the edge distance k_e D of the farthest screws lets it',
  expression: 'z_f + k_e * D - h_w',
  symbols: { z_f: 'm', k_e: '1', D: 'm', h_w: 'm' },
  unit: 'm',
  source: {
    document: 'NDS',
    edition: '2018',
    clause: 'Table 12.5.1C, 1.5 D to an edge, 4 D to the one loaded',
  },
});

/** Where the wall behind a plate begins to be solid. */
export interface Backing {
  /** From the end about which the plate turns. */
  readonly from_m: number;
  /** None where it is solid from that end on. */
  readonly steps: readonly Step[];
}

/** A plate that reaches past its blocking turns about the edge of the blocking: past it there is nothing but covering. */
export function backingOf(fixing: Fixing, { end, heights_m }: Turning): Backing {
  const { blockingHeight_m: h_w, fastener, system } = fixing;
  if (h_w === null) return { from_m: 0, steps: [] };
  const k_e = end === 'lower' ? edgeAlong : loadedEdgeAcross;
  const symbols = { z_f: Math.max(...heights_m), k_e, D: fastener?.diameter_m ?? 0, h_w };
  const from = work(backingFrom, symbols, system);
  return from.value > 0 ? { from_m: from.value, steps: [from.step] } : { from_m: 0, steps: [] };
}
