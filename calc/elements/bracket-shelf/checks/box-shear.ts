import type { Worked } from '../../../formula/step.ts';
import { alike, BoxMembers, shortestBeside } from '../box-members.ts';
import type { Context, Situation } from '../context.ts';
import { shearBeside, type FactorOf, type Peak } from '../forces.ts';

/** The largest shear of a board, and what shows how it came about. */
export interface MostSheared {
  readonly peak: Peak;
  readonly steps: () => Worked[];
}

/** Of a box, with each load counted as often as the most sheared member of its frame has it; of another board as it is. */
export function mostSheared({ shelf }: Context, { forces, factor, solved }: Situation): MostSheared {
  const members = BoxMembers.of(shelf);
  let worst: MostSheared = { peak: forces.shear, steps: () => [] };
  if (members === null) return worst;
  const { model, lines } = solved;
  const acting = [null, ...shelf.actions].filter((action) => factor(action) > 0);
  model.prepared.beam.supports.forEach(({ at_m }, support) => {
    const bay_m = shortestBeside(model.bays, at_m);
    if (bay_m === null) return;
    for (let index = 0; index < members.count; index++) {
      const times = new Map(acting.map((action) => [action, members.shearOf(index, action, bay_m).value]));
      const counted: FactorOf = (action) => factor(action) * (times.get(action) ?? 0);
      for (const side of ['left', 'right'] as const) {
        const value = shearBeside(model, lines, counted, support, side);
        if (value <= worst.peak.value) continue;
        const steps = (): Worked[] => alike(acting, (action) => members.shearOf(index, action, bay_m));
        worst = { peak: { value, at_m }, steps };
      }
    }
  });
  return worst;
}
