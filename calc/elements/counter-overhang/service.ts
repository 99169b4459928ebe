import type { PreparedLoad } from '../../mechanics/plate/standing.ts';
import { nodeOf } from '../../mechanics/plate/mesh.ts';
import { perNode } from '../../mechanics/plate/stiffness.ts';
import { edgeEffects, edgeNodesOf } from './edge-effects.ts';
import type { EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import { freeEdges } from './people.ts';
import type { TopModel } from './plate-model.ts';
import { evenLoads, servedOn, together } from './top-loads.ts';
import { movingShare } from './top-tipping.ts';
import { settledField, type Worst } from './trial.ts';
import { variantsOf } from './variants.ts';

/** The top without anybody there. */
export interface ServiceMovements {
  /** All that carries the top by its own weight, the pull of screws taken off, N; null where it tips. */
  readonly carried_N: number | null;
  /** Movement of the edges under what is served alone. */
  readonly serving: ReadonlyMap<EffectName, Worst>;
  /** The same over the years: creep of what stays, and the rest of what is served. */
  readonly longTerm: ReadonlyMap<EffectName, LongTerm>;
}

/** A movement over the years and the two parts that bending alone makes of it. */
export interface LongTerm extends Worst {
  readonly stays_m: number;
  readonly comes_m: number;
}

/** Works out the movements that stay for years. A bound on which the top tips under its own weight gives none. */
export function serviceMovements(overhang: Overhang, model: TopModel): ServiceMovements {
  const { side, plate, bounds } = model;
  const { serving, top } = overhang;
  const edges = edgeNodesOf(overhang, plate.mesh, freeEdges(overhang));
  const even = evenLoads(overhang, model);
  const { own } = even;
  const underServing = new Map<EffectName, Worst>();
  const longTerm = new Map<EffectName, LongTerm>();
  const bent = variantsOf(overhang, model).filter(({ variant }) => variant === 'bent-rails');
  const ways = [...bounds.map((each) => ({ ...each, variant: undefined })), ...bent];
  const holdsAlone = movingShare(overhang) !== null;
  for (const served of servedOn(overhang)) {
    const load = even.alone(served);
    for (const { bound, share, held, stander, variant } of ways) {
      if (!holdsAlone && bound === 'screws-loose') continue;
      const field = (each: PreparedLoad): Float64Array | null =>
        settledField(overhang, held, each, stander.stand(each));
      const alone = field(own);
      const stays = field(together(own, load, serving?.sustained ?? 0));
      const all = field(even.all(served));
      if (alone === null || stays === null || all === null) continue;
      const where = { side, bound, share, served, people: [], ...(variant !== undefined && { variant }) };
      edgeEffects(edges, all, alone).forEach((effect, name) => {
        if (effect.value >= (underServing.get(name)?.value ?? 0))
          underServing.set(name, { ...effect, ...where });
      });
      const K = top.wood.material.creep.factor;
      const total = all.map((value, k) => value + (K - 1) * (stays[k] ?? 0));
      edgeEffects(edges, total, null).forEach((effect, name) => {
        if (effect.value < (longTerm.get(name)?.value ?? 0)) return;
        const { x_m, y_m } = plate.mesh;
        const dof = perNode * nodeOf(plate.mesh, x_m.indexOf(effect.x_m), y_m.indexOf(effect.y_m));
        const stays_m = Math.sign(total[dof] ?? 0) * (stays[dof] ?? 0);
        longTerm.set(name, { ...effect, ...where, stays_m, comes_m: effect.value - K * stays_m });
      });
    }
  }
  return { carried_N: carriedOf(model, own), serving: underServing, longTerm };
}

/** What carries a load, screws pulled taken off; null where the top tips under it. */
function carriedOf({ bounds: [bound] }: TopModel, load: PreparedLoad): number | null {
  const standing = bound?.stander.stand(load);
  if (bound === undefined || standing?.stands !== true) return null;
  return standing.forces_N.reduce(
    (sum, force_N, index) => sum + (bound.carriers[index]?.kind === 'screw' ? -force_N : force_N),
    0,
  );
}
