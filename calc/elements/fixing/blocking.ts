import { inch, show } from '../../../shared/quantity/index.ts';
import { listed } from '../../../shared/words.ts';
import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { Fastener } from '../../catalogue/index.ts';
import { formula } from '../../formula/formula.ts';
import { work } from '../../formula/step.ts';
import { edgeAlong, loadedEdgeAcross } from '../../standards/nds-2018/12.5-placement.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import type { Place } from './fixing-checks.ts';
import type { Standing } from './standing.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

/** A 2×4 is 1-1/2 × 3-1/2 in: blocking of no given size is one laid flat, which is high and not deep. */
const thin_m = 1.5 * inch;
const wide_m = 3.5 * inch;

/** Height that blocking wants for its screws. */
export const blockingNeed = formula({
  symbol: 'h_n',
  caption: 'height of blocking from edge to edge, the screws between',
  expression: 's_z + (k_1 + k_2) * D',
  symbols: { s_z: 'm', k_1: '1', k_2: '1', D: 'm' },
  unit: 'm',
  source: {
    document: 'NDS',
    edition: '2018',
    clause: 'Table 12.5.1C: 4 D to the loaded edge, 1.5 D to the other',
  },
});

/** How deep blocking is, m, and what is assumed of its size where it is not given in full. */
export function blockingSize({ blockingHeight, studDepth }: Wall): {
  readonly height_m: number;
  readonly depth_m: number;
  readonly assumptions: readonly string[];
} {
  const depth_m = studDepth ?? thin_m;
  const isFlat = depth_m <= thin_m + 1e-9;
  const height_m = blockingHeight ?? (isFlat ? wide_m : thin_m);
  const said = [
    ...(blockingHeight === undefined ? [`${isFlat ? '3-1/2' : '1-1/2'} in high`] : []),
    ...(studDepth === undefined ? ['1-1/2 in deep'] : []),
  ].join(' and ');
  const lies = isFlat ? 'laid flat' : 'on edge';
  return {
    height_m,
    depth_m,
    assumptions: said === '' ? [] : [`Blocking ${said}, as a 2×4 ${lies} (common practice, no source).`],
  };
}

/**
 * How high the blocking behind a plate is, m. Of none that is given it is what `blockingSize` takes, or as much as the screws want
 * where that is more: that they have it can't be said then.
 */
export function heightBehind(wall: Wall, heights_m: readonly number[], fastener: Fastener | null): number {
  const { height_m } = blockingSize(wall);
  const D = fastener?.diameter_m ?? 0;
  return wall.blockingHeight ?? Math.max(height_m, blockingNeed.evaluate(needOf(heights_m, D)));
}

function needOf(heights_m: readonly number[], D: number) {
  const s_z = Math.max(...heights_m) - Math.min(...heights_m);
  return { s_z, k_1: loadedEdgeAcross, k_2: edgeAlong, D };
}

/** Whether blocking is high enough for screws one above the other, and for their edges; cannot say where its height is only taken. */
export function blockingCheck(fixing: Fixing, wall: Wall, place: Place): Judged {
  const { system, fastener, heights_m } = fixing;
  const need = fastener === null ? null : work(blockingNeed, needOf(heights_m, fastener.diameter_m), system);
  const demand = need?.value ?? needOf(heights_m, 0).s_z;
  const { height_m } = blockingSize(wall);
  const isKnown = wall.blockingHeight !== undefined || demand <= height_m;
  const edges =
    need === null
      ? 'The screws alone; their report says how far from the edges they stand.'
      : 'The lowest screw stands at least 4 diameters from the lower edge and the highest 1.5 from the upper; thinner screws than 1/4 in as well (common practice, no source).';
  const check = makeCheck(
    {
      id: 'on-blocking',
      title: 'Screws within the height of the blocking',
      unit: 'm',
      demand,
      capacity: isKnown ? height_m : null,
      clause: 'NDS Table 12.5.1C',
      note: isKnown ? edges : `Cannot say: the height of the blocking is not given. ${edges}`,
      ...place,
    },
    system,
  );
  return { check, steps: need === null ? [] : [need.step] };
}

const unchecked: Readonly<Partial<Record<NonNullable<Wall['framing']>, string>>> = {
  blocking: 'The blocking itself and its own fixing to the studs are not checked: they have to hold',
  sheathing: 'The sheathing itself and its own fixing to the studs are not checked: they have to hold',
  'metal-stud': 'The metal studs themselves are not checked: one has to hold',
};

/** What blocking, sheathing or a metal stud has to hold of one plate: none of them is checked, nor what they are fixed with. */
export function groundWarning(
  { system }: Fixing,
  { framing }: Wall,
  standings: readonly Standing[],
): string[] {
  const words = framing === undefined ? undefined : unchecked[framing];
  if (words === undefined) return [];
  const most = (force: (load: FixingLoad) => number): number =>
    Math.max(...standings.flatMap(({ acting }) => acting.map(({ load }) => force(load))));
  const [V, C, N] = [
    most(({ shear_N }) => Math.abs(shear_N)),
    most(({ couple_Nm }) => couple_Nm),
    most(({ pull_N }) => pull_N),
  ];
  const twists = framing === 'blocking' ? ', which twists it' : '';
  const parts = [
    ...(V > 0 ? [`${show(V, 'N', system)} of shear`] : []),
    ...(N > 0 ? [`${show(N, 'N', system)} of pull`] : []),
    ...(C > 0 ? [`a couple of ${show(C, 'N.m', system)}${twists}`] : []),
  ];
  return [`${words} what one plate brings, ${listed(parts)}.`];
}
