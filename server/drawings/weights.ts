import type { Frame } from './frame.ts';
import { fitted, textWidth } from './lettering.ts';
import type { Weight } from './loads.ts';
import type { Scale } from './scale.ts';

/**
 * A weight with a place for its label: `left` to `right` in one of the lanes above the board, the lowest being 0. Without a
 * label the arrow stays below all lanes: −1.
 */
export interface PlacedWeight {
  readonly x: number;
  readonly label: string;
  readonly left: number;
  readonly right: number;
  readonly lane: number;
}

const mostLanes = 6;
const gap = 4;

type Label = (weight: Weight) => string;

/** What a weight can be labelled with, the fullest first. */
const labels: readonly Label[] = [
  ({ amount, name }) => `${amount} ${name}`,
  ({ amount }) => amount,
  ({ number }) => `no. ${number}`,
];

/**
 * Labels of weights, each beside its own arrow and clear of every other label and arrow. Where there are too many to name,
 * they carry their number in the list, and where even that has no room, nothing.
 */
export function placeWeights(weights: readonly Weight[], scale: Scale, frame: Frame): PlacedWeight[] {
  const fromLeft = weights.toSorted((a, b) => a.at - b.at);
  let best: PlacedWeight[] = [];
  let most = -1;
  for (const label of labels) {
    const all = fromLeft.map((weight) => unplaced(weight, label, scale, frame));
    for (let turn = all.length; turn >= 0; turn -= 1) {
      const placed = placeAll(all, turn, frame.width);
      const count = placed.filter((each) => each.label !== '').length;
      if (count === all.length) return placed;
      if (label === labels.at(-1) && count > most) [best, most] = [placed, count];
    }
  }
  return best;
}

interface Unplaced {
  readonly x: number;
  readonly label: string;
  readonly width: number;
}

function unplaced(weight: Weight, label: Label, scale: Scale, frame: Frame): Unplaced {
  const words = fitted(label(weight), frame.letters, frame.width * 0.45);
  return { x: scale.x(weight.at), label: words, width: textWidth(words, frame.letters) };
}

/**
 * The first `turn` weights have their labels on the right, the rightmost lowest; the others on the left, the leftmost lowest.
 * So an arrow goes up past the labels of its neighbours and never through them.
 */
function placeAll(fromLeft: readonly Unplaced[], turn: number, room: number): PlacedWeight[] {
  const onRight = fromLeft
    .slice(0, turn)
    .toReversed()
    .map((each) => ({ ...each, left: each.x + gap }));
  const onLeft = fromLeft.slice(turn).map((each) => ({ ...each, left: each.x - gap - each.width }));
  const placed: PlacedWeight[] = [];
  for (const { x, label, width, left } of [...onRight, ...onLeft]) {
    const right = left + width;
    const [found] = left >= 2 && right <= room - 2 ? inFreeLane({ x, label, left, right }, placed) : [];
    placed.push(found ?? { x, label: '', left: x, right: x, lane: -1 });
  }
  return placed;
}

/** The label in the lowest lane where it meets no other label, and no arrow crosses a label. */
function inFreeLane(label: Omit<PlacedWeight, 'lane'>, placed: readonly PlacedWeight[]): PlacedWeight[] {
  const { x, left, right } = label;
  for (let lane = 0; lane < mostLanes; lane += 1) {
    const clear = placed.every((other) => {
      const labelsMeet = other.lane === lane && left < other.right + gap && other.left < right + gap;
      const crossesOther = other.lane < lane && other.left - gap < x && x < other.right + gap;
      const crossedByOther = other.lane >= lane && left - gap < other.x && other.x < right + gap;
      return !labelsMeet && !crossesOther && !crossedByOther;
    });
    if (clear) return [{ ...label, lane }];
  }
  return [];
}
