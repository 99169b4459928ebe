import type { Effect, EffectName } from './effects.ts';
import { loadDurations, type Overhang } from './overhang.ts';
import { heldFor, topModel, type Bound, type RingSide, type TopModel } from './plate-model.ts';
import { searchCombination, type Found, type TopMeshes } from './search.ts';
import { serviceWithShear, withShear } from './shear.ts';
import { serviceMovements, type ServiceMovements } from './service.ts';
import { fineMesh, scoutMesh } from './top-mesh.ts';
import type { Worst } from './trial.ts';

/** What came of a combination, and the tops it came of. */
export interface Searched extends Found {
  /** With either side of the growth rings across the grain; the screws hold for as long as the combination lasts. */
  readonly models: Readonly<Record<RingSide, TopModel>>;
}

/** Everything the plate says of a top. */
export interface Analysed {
  /** One for each combination, the worse of both sides of the growth rings. */
  readonly found: readonly [Searched, ...Searched[]];
  /** Everything that can be there, on the softer side: for movement. */
  readonly soft: Searched;
  readonly service: ServiceMovements;
  /** Bounds on which the top tips under some of the loads, its weight in full. */
  readonly tips: ReadonlySet<Bound>;
  /** Whether no bound is left on which it stands. */
  readonly isLost: boolean;
}

/** Works the top out as a plate, in every combination and on both bounds of its screws. */
export function analyse(overhang: Overhang): Analysed {
  const { top, code, serving, screws } = overhang;
  const stiff = topMeshes(overhang, 'stiff');
  const isEven = top.wood.soft === top.wood.stiff;
  const soft = isEven ? stiff : topMeshes(overhang, 'soft');
  const [first, ...rest] = code.combinations(loadDurations(overhang)).map((each) => {
    const lasting = ({ scout, fine }: TopMeshes): TopMeshes => ({
      scout: heldFor(scout, overhang, each.duration),
      fine: heldFor(fine, overhang, each.duration),
    });
    const [stiffNow, softNow] = [lasting(stiff), lasting(soft)];
    const onStiff = searchCombination(overhang, stiffNow, each);
    const onSoft = isEven ? onStiff : searchCombination(overhang, softNow, each);
    const models = { stiff: stiffNow.fine, soft: softNow.fine };
    return { onSoft: { ...onSoft, models }, worse: { ...worseOf(onStiff, onSoft), models } };
  });
  if (first === undefined) throw new RangeError('a code of practice has at least one combination');
  const { onSoft } = rest[rest.length - 1] ?? first;
  const inService = heldFor(soft.fine, overhang, serving?.duration ?? 'permanent');
  const found: Analysed['found'] = [first.worse, ...rest.map(({ worse }) => worse)];
  const tips = new Set(found.flatMap((each) => [...each.tips]));
  return {
    found,
    soft: { ...onSoft, worst: withShear(overhang, onSoft.models.soft, onSoft.worst) },
    service: serviceWithShear(overhang, inService, serviceMovements(overhang, inService)),
    tips,
    isLost: screws === null ? tips.has('screws-loose') : tips.has('screws-hold'),
  };
}

/** @param finer how much finer than usual both meshes are, to see what they do */
export function topMeshes(overhang: Overhang, side: RingSide, finer = 1): TopMeshes {
  return {
    scout: topModel(overhang, side, scoutMesh(overhang, finer)),
    fine: topModel(overhang, side, fineMesh(overhang, finer)),
  };
}

/** Wood that is stiffer across carries more across; a bar or the wood along carries more where it is softer. */
function worseOf(one: Found, other: Found): Found {
  const worst = new Map(one.worst);
  other.worst.forEach((effect, name) => {
    if (effect.value > (worst.get(name)?.value ?? -Infinity)) worst.set(name, effect);
  });
  return { ...one, worst, tips: new Set([...one.tips, ...other.tips]) };
}

/** The worst of an effect in everything that was worked out. */
export function worstOf({ found }: Analysed, name: EffectName): Worst | undefined {
  return found
    .flatMap(({ worst }) => worst.get(name) ?? [])
    .reduce<Worst | undefined>((a, b) => (a === undefined || b.value > a.value ? b : a), undefined);
}

/**
 * The combination in which the stress across the grain is most of what the wood bears for as long as that lasts: it need
 * not be the one in which the stress is largest.
 */
export function governingAcross(
  { top }: Overhang,
  { found }: Analysed,
): { readonly searched: Searched; readonly worst: Worst } | undefined {
  const judged = found.flatMap((searched) => {
    const worst = searched.worst.get('across');
    if (worst === undefined) return [];
    const resistance = top.wood.material.resistance('tension-across', searched.combination.duration);
    return [{ searched, worst, used: worst.value / (resistance.ok ? resistance.value_Pa : 1) }];
  });
  const [first, ...rest] = judged;
  return first === undefined ? undefined : rest.reduce((a, b) => (b.used > a.used ? b : a), first);
}

/** An effect that never showed. */
export const noEffect: Effect = { value: 0, x_m: 0, y_m: 0 };
