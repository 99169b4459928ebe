import type { Combination } from '../../codes/design-code.ts';
import type { Effect, EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import { topModel, type Bound } from './plate-model.ts';
import { searchCombination, type Found, type Worst } from './search.ts';
import { serviceMovements, type ServiceMovements } from './service.ts';

/** Everything the plate says of a top. */
export interface Analysed {
  /** One for each combination, across the grain on the stiffer side of the growth rings: for stress. */
  readonly found: readonly [Found, ...Found[]];
  /** Everything that can be there, on the softer side: for movement. */
  readonly soft: Found;
  readonly service: ServiceMovements;
  /** Bounds on which the top tips under some of the loads, its weight in full. */
  readonly tips: ReadonlySet<Bound>;
  /** Whether no bound is left on which it stands. */
  readonly isLost: boolean;
}

/** Works the top out as a plate, in every combination and on both bounds of its screws. */
export function analyse(overhang: Overhang): Analysed {
  const { top, code, serving, person, screws } = overhang;
  const stiff = topModel(overhang, top.wood.stiff);
  const soft = topModel(overhang, top.wood.soft);
  const durations = [serving, person].flatMap((load) => (load === null ? [] : [load.duration]));
  const [first, ...rest] = code
    .combinations(durations)
    .map((each) => searchCombination(overhang, stiff, each, 'moments'));
  if (first === undefined) throw new RangeError('a code of practice has at least one combination');
  const found: Analysed['found'] = [first, ...rest];
  const last: Combination = rest[rest.length - 1]?.combination ?? first.combination;
  const moved = searchCombination(overhang, soft, last, 'movements');
  const tips = new Set([...found, moved].flatMap((each) => [...each.tips]));
  return {
    found,
    soft: moved,
    service: serviceMovements(overhang, soft),
    tips,
    isLost: screws === null ? tips.has('screws-loose') : tips.has('screws-hold'),
  };
}

/** The worst of an effect in everything that was worked out. */
export function worstOf({ found, soft }: Analysed, name: EffectName): Worst | undefined {
  return [...found, soft]
    .flatMap(({ worst }) => worst.get(name) ?? [])
    .reduce<Worst | undefined>((a, b) => (a === undefined || b.value > a.value ? b : a), undefined);
}

/** An effect that never showed. */
export const noEffect: Effect = { value: 0, x_m: 0, y_m: 0 };
