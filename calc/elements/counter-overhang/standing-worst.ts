import type { PreparedLoad } from '../../mechanics/plate/standing.ts';
import type { PlateSupport } from '../../mechanics/plate/supports.ts';
import type { Overhang } from './overhang.ts';
import type { TopModel } from './plate-model.ts';
import { evenLoads, peopleLoads, together } from './top-loads.ts';
import { settledField, type Worst } from './trial.ts';
import { variantsOf } from './variants.ts';

/** Movements of a top, and the forces of its supports. */
export interface Settled {
  readonly field: Float64Array;
  readonly forces_N: Float64Array;
}

/** How a top stood when something was worst, and how it stands in the same way under another load. */
export interface SettledWorst extends Settled {
  readonly supports: readonly PlateSupport[];
  under(load: PreparedLoad): Settled | null;
}

/** Works the case of a worst out anew, on the bound and in the way it was found; null where it tips. */
export function fieldUnderWorst(overhang: Overhang, model: TopModel, worst: Worst): SettledWorst | null {
  const found =
    worst.variant === undefined
      ? model.bounds.find((each) => each.bound === worst.bound)
      : variantsOf(overhang, model).find(
          ({ bound, variant, share }) =>
            bound === worst.bound && variant === worst.variant && share === worst.share,
        );
  if (found === undefined) return null;
  const { held, stander } = found;
  const under = (load: PreparedLoad): Settled | null => {
    const standing = stander.stand(load);
    const field = settledField(overhang, held, load, standing);
    return field === null || !standing.stands ? null : { field, forces_N: standing.forces_N };
  };
  const [people = null] = peopleLoads(overhang, model, [worst.people]);
  const settled = under(together(evenLoads(overhang, model).all(worst.served), people, worst.share));
  return settled === null ? null : { ...settled, supports: held.supports, under };
}
