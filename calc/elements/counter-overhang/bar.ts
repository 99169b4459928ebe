import { findMetal } from '../../catalogue/index.ts';
import type { Prop } from './overhang.ts';

export type FlatBar = Extract<Prop, { kind: 'flat-bar' }>;

/** Stiffness of steel where its row has none. */
const steel_Pa = 200e9;

/** What a bar is made of; null for a metal without a yield point. */
export function barMetal(bar: FlatBar): {
  readonly name: string;
  readonly yield_Pa: number | null;
  readonly E_Pa: number;
} {
  const found = findMetal(bar.metal ?? 'a36');
  if (!found.ok) return { name: bar.metal ?? 'a36', yield_Pa: null, E_Pa: steel_Pa };
  const { name, yield_Pa, modulusOfElasticity_Pa } = found.row;
  return { name, yield_Pa, E_Pa: modulusOfElasticity_Pa ?? steel_Pa };
}

/** Bending stiffness of a bar on the flat. */
export function barStiffness_Nm2(bar: FlatBar): number {
  return (barMetal(bar).E_Pa * bar.width * bar.thickness ** 3) / 12;
}
