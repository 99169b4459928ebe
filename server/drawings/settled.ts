import type { BracketShelfResult } from '../../shared/check-result.ts';
import { roundFactor, type Scale } from './scale.ts';
import { polyline } from './svg.ts';

/** The settled shape: how much it is exaggerated, and how far it reaches above and below the board's axis. */
export interface Settled {
  readonly factor: number;
  readonly above: number;
  readonly below: number;
  draw(axis: number): string;
}

/** The board as it comes to lie over the years, its movement drawn a round number of times too large. */
export function settledShape(result: BracketShelfResult, scale: Scale, room: number): Settled {
  const { at, settled } = result.analysis.diagram;
  const largest = Math.max(0, ...settled.map(Math.abs));
  const factor = roundFactor(scale.length(largest), room);
  const drawn = settled.map((movement) => scale.length(movement) * factor);
  return {
    factor,
    above: Math.max(0, ...drawn.map((each) => -each)),
    below: Math.max(0, ...drawn),
    draw: (axis) =>
      polyline(
        at.map((position, index) => ({ x: scale.x(position), y: axis + (drawn[index] ?? 0) })),
        'settled',
      ),
  };
}
