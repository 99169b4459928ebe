import { nodeOf } from '../../mechanics/plate/mesh.ts';
import { shareOfShear, shearMembrane, type ShearMembrane } from '../../mechanics/plate/shear-membrane.ts';
import { perNode } from '../../mechanics/plate/stiffness.ts';
import { shearedMovement } from '../../mechanics/plate-formulas.ts';
import type { EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import type { TopModel } from './plate-model.ts';
import type { ServiceMovements } from './service.ts';
import { fieldUnderWorst } from './standing-worst.ts';
import { evenLoads, ownWeight, personLoad, servedLoads } from './top-loads.ts';
import type { Worst } from './trial.ts';

/**
 * Adds what shear does to movements that a plate found by bending alone: for each edge, with what stood on the top when it
 * moved most. Nothing is added to panels, whose printed stiffness has shear inside it.
 *
 * @param model the top on which they were found
 */
export function withShear<W extends Worst>(
  overhang: Overhang,
  model: TopModel,
  movements: ReadonlyMap<EffectName, W>,
): ReadonlyMap<EffectName, W> {
  const membrane = membraneOf(overhang, model);
  if (membrane === null) return movements;
  return new Map(
    [...movements].map(([name, worst]) =>
      name.includes('edge ')
        ? [name, sheared(overhang, model, membrane, worst, name.startsWith('whole'))]
        : [name, worst],
    ),
  );
}

/** The same of the top without anybody there. Over the years its own weight counts. */
export function serviceWithShear(
  overhang: Overhang,
  model: TopModel,
  { carried_N, serving, longTerm }: ServiceMovements,
): ServiceMovements {
  const membrane = membraneOf(overhang, model);
  if (membrane === null) return { carried_N, serving, longTerm };
  const creeping = new Map(
    [...longTerm].map(([name, worst]) => [name, sheared(overhang, model, membrane, worst, true)]),
  );
  return { carried_N, serving: withShear(overhang, model, serving), longTerm: creeping };
}

function membraneOf({ top }: Overhang, { plate }: TopModel): ShearMembrane | null {
  if (top.wood.shear === null) return null;
  const { along_Npm, across_Npm } = top.wood.shear;
  const [x_Npm, y_Npm] = top.isAlong ? [along_Npm, across_Npm] : [across_Npm, along_Npm];
  return shearMembrane(plate.mesh, { x_Npm, y_Npm });
}

/** @param isWhole whether the movement by the weight of the top is in it */
function sheared<W extends Worst>(
  overhang: Overhang,
  model: TopModel,
  membrane: ShearMembrane,
  worst: W,
  isWhole: boolean,
): W {
  const found = fieldUnderWorst(overhang, model, worst);
  if (found === null) return worst;
  const { own } = evenLoads(overhang, model);
  const before = isWhole ? null : found.under(own);
  if (before === null && !isWhole) return worst;
  const { person } = overhang;
  const lighter = person === null ? null : { ...person, load_N: worst.share * person.load_N };
  const loads = [
    ...(isWhole ? [ownWeight(overhang)] : []),
    ...servedLoads(overhang, worst.served),
    ...(lighter === null ? [] : worst.people.map((spot) => personLoad(lighter, spot))),
  ];
  const supports = found.supports.map((support, index) => ({
    support,
    force_N: (found.forces_N[index] ?? 0) - (before?.forces_N[index] ?? 0),
  }));
  const downOf = (node: number): number =>
    (found.field[perNode * node] ?? 0) - (before?.field[perNode * node] ?? 0);
  const { mesh } = model.plate;
  // What lies past the loads is turned by bending alone: an edge that rises for them has no shear in it.
  if (downOf(nodeOf(mesh, mesh.x_m.indexOf(worst.x_m), mesh.y_m.indexOf(worst.y_m))) <= 0) return worst;
  const share = shareOfShear(membrane, loads, supports, downOf);
  const value = shearedMovement.evaluate({ Delta_b: worst.value, r_s: share });
  return { ...worst, value, sheared: { bent_m: worst.value, share } };
}
