import { criteria } from './criteria.ts';
import { densities } from './densities.ts';
import { fasteners } from './fasteners.ts';
import { framingWoods } from './framing-woods.ts';
import { deepFreeze } from './freeze.ts';
import { combinations, gradedLumber } from './graded-lumber.ts';
import { metals } from './metals.ts';
import { panels } from './panels.ts';
import { notSure, species, woodKinds } from './species.ts';
import { things } from './things.ts';
import type {
  Criterion,
  Density,
  Fastener,
  FramingWood,
  GradedLumber,
  LumberCombination,
  Metal,
  Panel,
  Species,
  Thing,
} from './types.ts';

/** A row whose upper bound may be open: JSON has no infinity, so an open bound is null. */
type Bounded<T, Bound extends keyof T> = Omit<T, Bound> & { readonly [K in Bound]: number | null };

/** Everything the catalogue holds, in SI units, each row with its source and provenance. */
interface CatalogueListing {
  readonly species: readonly Species[];
  readonly lumberCombinations: readonly LumberCombination[];
  readonly gradedLumber: readonly Bounded<GradedLumber, 'nominalWidthTo_in'>[];
  readonly panels: readonly Bounded<Panel, 'thicknessTo_m'>[];
  readonly metals: readonly Metal[];
  readonly fasteners: readonly Fastener[];
  readonly framingWoods: readonly FramingWood[];
  readonly contents: readonly Thing[];
  readonly densities: readonly Density[];
  readonly criteria: readonly Criterion[];
}

const listing: CatalogueListing = deepFreeze({
  species: [...species, ...woodKinds, notSure()],
  lumberCombinations: combinations,
  gradedLumber: gradedLumber.map((row) => ({
    ...row,
    nominalWidthTo_in: finiteOrNull(row.nominalWidthTo_in),
  })),
  panels: panels.map((row) => ({ ...row, thicknessTo_m: finiteOrNull(row.thicknessTo_m) })),
  metals,
  fasteners,
  framingWoods,
  contents: things,
  densities,
  criteria,
});

function finiteOrNull(bound: number): number | null {
  return Number.isFinite(bound) ? bound : null;
}

/** The whole catalogue, plain and frozen: it survives JSON unchanged. */
export function catalogueListing(): CatalogueListing {
  return listing;
}
