import type { Edge } from './board-plate.ts';
import type { Situation } from './context.ts';
import type { EdgeLoad, EdgePlate, Excess } from './edge-plate.ts';
import { patch_m, type Action, type Shelf } from './shelf.ts';
import { stretchesOf, type Stretch } from './torque.ts';

/** What a strip along an edge bears above the mean, at its worst place in a bay or over a bracket. */
export interface EdgeExcess {
  /** In which half of the board the loads stand; and the edge the whole section is looked at. */
  readonly half: Edge;
  readonly edge: Edge;
  /** The bay, or the bracket. */
  readonly at: { readonly from_m: number; readonly to_m: number } | { readonly support: number };
  readonly roaming_N: number;
  readonly others_N: number;
  readonly parts: readonly Excess[];
}

/** Whether a load stands on a line or a patch of its own: what is spread over the depth bends all of it alike. */
export function isOnLine(action: Action): boolean {
  return !action.spread && amountOf(action) > 0;
}

function amountOf({ load }: Action): number {
  return load.kind === 'line' ? load.load_Npm : load.load_N;
}

/**
 * Every bay and every bracket over which the board goes on, with what loads in each half of the board do there. Beside a tall
 * strip they bend the board between the edges, where it is bent no more as a whole than at the far edge.
 */
export function edgeExcesses(shelf: Shelf, plate: EdgePlate, situation: Situation): EdgeExcess[] {
  const stretches = stretchesOf(shelf, situation);
  const { hinges } = situation.solved.model.prepared.beam;
  const found: EdgeExcess[] = [];
  for (const half of ['front', 'back'] as const) {
    const isBare = plate.bare.includes(half);
    const edge = isBare === (half === 'front') ? 'front' : 'back';
    const loadsOn = (stretch: Stretch, isRoaming: boolean): EdgeLoad[] =>
      shelf.actions.flatMap((action) =>
        (action.load.kind === 'roaming') === isRoaming
          ? edgeLoad(shelf, action, situation.factor(action), { half, isBare }, stretch)
          : [],
      );
    const sides = stretches.map((stretch) => ({
      stretch,
      roaming: loadsOn(stretch, true),
      others: loadsOn(stretch, false),
    }));
    for (const { stretch, roaming, others } of sides) {
      if (stretch.left < 0 || stretch.right < 0) continue;
      const { from_m, to_m } = stretch;
      const L_m = to_m - from_m;
      const standing = worstPlace(plate, others, stretch);
      const moving = most(roaming.map((load) => plate.inBay(load, L_m, 0)));
      found.push(excess({ half, edge }, { from_m, to_m }, moving, standing));
    }
    stretches.slice(1).forEach(({ left: support }, index) => {
      const both = sides.slice(index, index + 2);
      if (support < 0 || hinges.includes(support)) return;
      const over = (load: EdgeLoad, { from_m, to_m, left, right }: Stretch): Excess =>
        left >= 0 && right >= 0
          ? plate.overBracket(load, to_m - from_m)
          : plate.pastBracket(load, to_m - from_m, patch_m);
      const moving = both.flatMap(({ stretch, roaming }) => roaming.map((load) => over(load, stretch)));
      const standing = both.flatMap(({ stretch, others }) => others.map((load) => over(load, stretch)));
      found.push(excess({ half, edge }, { support }, most(moving), standing));
    });
  }
  return found;
}

function excess(
  where: Pick<EdgeExcess, 'half' | 'edge'>,
  at: EdgeExcess['at'],
  moving: Excess | null,
  standing: readonly Excess[],
): EdgeExcess {
  return {
    ...where,
    at,
    roaming_N: moving?.m_N ?? 0,
    others_N: total(standing),
    parts: [...(moving === null ? [] : [moving]), ...standing].filter(({ m_N }) => m_N > 0),
  };
}

function total(parts: readonly Excess[]): number {
  return parts.reduce((sum, { m_N }) => sum + m_N, 0);
}

function most(parts: readonly Excess[]): Excess | null {
  return parts.reduce<Excess | null>(
    (worst, each) => (worst === null || each.m_N > worst.m_N ? each : worst),
    null,
  );
}

/** Under one of the things that stand in a bay, all else beside it; or where the lines in it do most, and they alone. */
function worstPlace(plate: EdgePlate, loads: readonly EdgeLoad[], { from_m, to_m }: Stretch): Excess[] {
  const L_m = to_m - from_m;
  const lines = loads.filter(({ isLine }) => isLine).map((line) => plate.inBay(line, L_m, 0));
  const places = loads.filter(({ isLine }) => !isLine).map((load) => (load.from_m + load.to_m) / 2);
  const tried = places.map((place) =>
    loads.map((load) => plate.inBay(load, L_m, away(load, place), within(place - from_m, L_m))),
  );
  return [lines, ...tried].reduce((a, b) => (total(b) > total(a) ? b : a));
}

/** A patch stands at least half its length from a bracket, or in the middle. */
function within(x_m: number, L_m: number): number {
  const least_m = Math.min(patch_m, L_m) / 2;
  return Math.min(Math.max(x_m, least_m), L_m - least_m);
}

function away({ from_m, to_m, isLine }: EdgeLoad, place: number): number {
  return isLine ? Math.max(0, from_m - place, place - to_m) : Math.abs((from_m + to_m) / 2 - place);
}

/**
 * A load as an edge has it in a stretch of board; none where it stands nearer to the other edge. Beside a tall strip a line bears
 * on that, and a patch bends the board as far from any edge.
 */
function edgeLoad(
  shelf: Shelf,
  action: Action,
  factor: number,
  { half, isBare }: { readonly half: Edge; readonly isBare: boolean },
  { from_m, to_m }: Stretch,
): EdgeLoad[] {
  const { name, load, eccentricity_m } = action;
  const { depth_m } = shelf;
  const off_m = half === 'front' ? depth_m - eccentricity_m : eccentricity_m;
  if (factor <= 0 || !isOnLine(action) || off_m > depth_m / 2 + 1e-9) return [];
  if (load.kind === 'line') {
    if (!isBare) return [];
    const [from, to] = [Math.max(load.from_m, from_m), Math.min(load.to_m, to_m)];
    const length_m = to - from;
    if (length_m <= 1e-9) return [];
    const W_N = load.load_Npm * length_m * factor;
    return [{ name, W_N, length_m, d_m: off_m, from_m: from, to_m: to, isLine: true, roams: false }];
  }
  if (load.kind === 'point' && (load.at_m < from_m || load.at_m > to_m)) return [];
  const roams = load.kind === 'roaming';
  const middle = load.kind === 'point' ? load.at_m : (from_m + to_m) / 2;
  // The patch lies wholly on the board.
  const d_m = isBare ? Math.max(off_m, Math.min(patch_m, depth_m) / 2) : depth_m / 2;
  const [from, to] = [middle - patch_m / 2, middle + patch_m / 2];
  return [
    { name, W_N: load.load_N * factor, length_m: patch_m, d_m, from_m: from, to_m: to, isLine: false, roams },
  ];
}
