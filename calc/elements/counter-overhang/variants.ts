import { armGive, simpleBeamGive } from '../../mechanics/simple-beam.ts';
import { withGive, type HeldPlate, type SharedGive } from '../../mechanics/plate/supports.ts';
import { standerOf } from '../../mechanics/plate/standing.ts';
import { railWood } from './checks/rail-wood.ts';
import type { EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import { stiffGive_mpN, type TopModel } from './plate-model.ts';
import { judgedRails, stretchesOf } from './rail-effects.ts';
import { movingShare } from './top-tipping.ts';

/**
 * Another way in which a top may stand: its screws hold whatever pulls at them, its rails bend between the panels, or both, its
 * legs give as little as wood pressed on does, or no more people are on it than its base bears without props and screws.
 */
export type VariantName = 'firm-screws' | 'bent-rails' | 'firm-and-bent' | 'firm-legs' | 'fewer-people';

type OnBound = TopModel['bounds'][number];

/** A bound of a top in another way, and what is looked at there. */
export interface Variant extends OnBound {
  readonly variant: VariantName;
  /** What every screw of the bound itself bears at most. */
  readonly screw_N: number;
}

/**
 * Which effects a variant adds to. A screw that is never full takes the most itself, and is judged by what it is allowed;
 * rails that do not bend take the most themselves.
 */
export const addsTo: Readonly<Record<VariantName, (name: EffectName) => boolean>> = {
  'firm-screws': (name) => /^(?:along|across|bar|prop|rail|rolling|front|back)/.test(name),
  'bent-rails': (name) => !/^screw|^rail on| (?:span|end) /.test(name),
  'firm-and-bent': (name) => /^(?:along|across|bar|prop|rail$|rolling)/.test(name),
  'firm-legs': (name) => /^(?:along|across|prop)/.test(name),
  'fewer-people': (name) => /^lift|edge /.test(name),
};

/** Share of what a stiff prop gives that a firm leg does: no more than the wood over it, pressed together. An arm bends more. */
const firmShare = 0.1;

/**
 * The other ways in which a top may stand, besides its bounds. Screws hold several times what they are allowed to (NDS
 * withdrawal is a fifth of the strength): the top may be clamped harder than on screws that give way there. Rails whose
 * height is given bend as simple beams between panels, and past the last one as arms of them. A leg takes more the less it
 * gives, where a short stiff overhang hardly moves by itself.
 */
export function variantsOf(overhang: Overhang, { bounds }: Pick<TopModel, 'bounds'>): Variant[] {
  const gives = railGives(overhang);
  const moving = movingShare(overhang);
  return bounds.flatMap((each): Variant[] => {
    const { supports } = each.held;
    const pulls = supports.flatMap(({ sense, most_N }) => (sense === 'pull' ? [most_N] : []));
    const screw_N = Math.min(Infinity, ...pulls);
    const onHeld = (variant: VariantName, held: HeldPlate, share = each.share): Variant => ({
      ...each,
      ...{ share, held, stander: standerOf(held), variant, screw_N },
    });
    const fewer = each.bound === 'screws-loose' && moving !== null && moving < each.share ? [moving] : [];
    const firm: HeldPlate = {
      ...each.held,
      supports: supports.map((support) =>
        support.sense === 'pull' ? { ...support, most_N: Infinity } : support,
      ),
    };
    const lessGive = supports.flatMap((_, index): SharedGive[] => {
      const carrier = each.carriers[index];
      return carrier?.kind === 'prop' && overhang.props[carrier.index]?.kind === 'leg'
        ? [{ supports: [index], give_mpN: [(firmShare - 1) * stiffGive_mpN] }]
        : [];
    });
    return [
      ...(each.bound === 'screws-hold' ? [onHeld('firm-screws', firm)] : []),
      ...(each.bound === 'screws-hold' && gives !== null
        ? [onHeld('firm-and-bent', withGive(firm, gives(each)))]
        : []),
      ...(gives === null
        ? []
        : [each.share, ...fewer].map((share) =>
            onHeld('bent-rails', withGive(each.held, gives(each)), share),
          )),
      ...fewer.map((share) => onHeld('fewer-people', each.held, share)),
      ...(lessGive.length === 0 ? [] : [onHeld('firm-legs', withGive(each.held, lessGive))]),
    ];
  });
}

/** How far the rails give, each stretch by itself; null where nothing is known of them. */
function railGives(overhang: Overhang): ((bound: OnBound) => SharedGive[]) | null {
  const { base, document } = overhang;
  const height_m = document.base.rail?.height;
  const wood = railWood(overhang);
  if (height_m === undefined || wood === null || base.panels_m.length === 0) return null;
  const b = base.railThickness_m;
  const stiffness = {
    EI_Nm2: (wood.E_Pa * b * height_m ** 3) / 12,
    /** Five sixths of the section of a rectangle (Wood Handbook, chapter 9). */
    GA_N: wood.G_Pa === null ? Infinity : (5 / 6) * wood.G_Pa * b * height_m,
  };
  const stretches = stretchesOf(base);
  return ({ held, carriers }) =>
    judgedRails(overhang).flatMap((rail) =>
      stretches.map(({ from_m, to_m, isEnd }, k): SharedGive => {
        const supports = held.supports.flatMap(({ x_m }, index) =>
          carriers[index]?.kind === rail && x_m >= from_m && x_m <= to_m ? [index] : [],
        );
        const places = supports.map((index) => held.supports[index]?.x_m ?? 0);
        const beside = k === 0 ? stretches[1] : stretches[k - 1];
        const back_m = beside === undefined || beside.isEnd ? 0 : beside.to_m - beside.from_m;
        const out = (x_m: number): number => (k === 0 ? to_m - x_m : x_m - from_m);
        const give = (at: number, load: number): number =>
          isEnd
            ? armGive({ back_m, ...stiffness }, out(at), out(load))
            : simpleBeamGive({ span_m: to_m - from_m, ...stiffness }, at - from_m, load - from_m);
        return { supports, give_mpN: places.flatMap((at) => places.map((load) => give(at, load))) };
      }),
    );
}
