import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { FieldError, ProvenanceValue, Step } from '../../../shared/check-result.ts';
import { show, standardGravity, type UnitSystem } from '../../../shared/quantity/index.ts';
import { findThing, type Thing } from '../../catalogue/index.ts';
import { unknownName } from '../../catalogue/unknown-name.ts';
import { work, type Worked } from '../../formula/step.ts';
import { blockMass, bowlMass, discMass, vesselMass, weightOfMany } from '../../mechanics/solids.ts';

type Load = NonNullable<BracketShelfDocument['loads']>[number];
type ThingInput = NonNullable<Extract<Load, { kind: 'line' }>['things']>[number];

/** The things that make up a load: their weight, worked out in the open. */
export interface Contents {
  readonly total_N: number;
  readonly steps: readonly Step[];
  readonly provenance: readonly ProvenanceValue[];
}

/** Weighs the things of every load; loads given by amount have none. */
export function contentsOf(
  loads: readonly Load[],
  system: UnitSystem,
): { readonly contents: readonly (Contents | undefined)[]; readonly errors: readonly FieldError[] } {
  const errors: FieldError[] = [];
  const contents = loads.map((load, index): Contents | undefined => {
    if ((load.kind !== 'line' && load.kind !== 'point') || load.things === undefined) return undefined;
    const steps: Step[] = [];
    const provenance: ProvenanceValue[] = [];
    let total_N = 0;
    load.things.forEach((input, row) => {
      const path = `/loads/${index}/things/${row}`;
      const found = findThing(input.thing);
      if (!found.ok) {
        errors.push(unknownName(`${path}/thing`, 'a thing', input.thing, found.nearest));
        return;
      }
      const weighed = weigh(input, found.row, system);
      if (weighed === null) {
        errors.push({
          path: `${path}/wall`,
          message: 'It takes a wall thinner than half the diameter and than the height.',
        });
        return;
      }
      total_N += weighed.total_N;
      steps.push(...weighed.steps);
      provenance.push({
        what: `${found.row.name}: density`,
        value: show(input.density ?? found.row.density_kgm3, 'kg/m3', system),
        source: input.density === undefined ? found.row.source : 'given',
        provenance: input.density === undefined ? found.row.provenance : 'given',
      });
    });
    return { total_N, steps, provenance };
  });
  return { contents, errors };
}

/** Weight of some things of one sort; null where the wall is thicker than the thing. */
export function weigh(
  input: ThingInput,
  thing: Thing,
  system: UnitSystem,
): { readonly total_N: number; readonly each_kg: number; readonly steps: readonly Step[] } | null {
  const mass = input.each === undefined ? massOf(input, thing, system) : undefined;
  if (mass === null) return null;
  const each_kg = input.each ?? mass?.value ?? 0;
  const total = work(
    weightOfMany,
    { n_c: input.count, m: each_kg, g_0: standardGravity },
    system,
    `${thing.name}: weight of ${input.count}`,
  );
  return {
    total_N: total.value,
    each_kg,
    steps: mass === undefined ? [total.step] : [mass.step, total.step],
  };
}

function massOf(input: ThingInput, thing: Thing, system: UnitSystem): Worked | null {
  const rho = input.density ?? thing.density_kgm3;
  const D = input.diameter ?? thing.diameter_m ?? 0;
  const t = input.wall ?? thing.wall_m ?? 0;
  const h = input.height ?? thing.height_m ?? 0;
  const caption = `${thing.name}: one of them`;
  if (thing.shape === 'block') {
    const b = input.width ?? thing.width_m ?? 0;
    const d = input.depth ?? thing.depth_m ?? 0;
    return work(blockMass, { rho, b, h, d }, system, caption);
  }
  if (thing.shape === 'disc') return work(discMass, { rho, D, t }, system, caption);
  if (2 * t > D || t > h) return null;
  const inside = { rho_in: input.fillDensity ?? thing.fillDensity_kgm3 ?? 0, f_in: input.fill ?? thing.fill };
  return work(thing.shape === 'bowl' ? bowlMass : vesselMass, { rho, D, h, t, ...inside }, system, caption);
}
