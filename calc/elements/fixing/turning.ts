import type { Fixing, FixingLoad } from './fixing.ts';

/** How a plate turns: about one of its ends, and the screw farthest from that end is pulled most. */
export interface Turning {
  readonly end: 'lower' | 'upper';
  readonly screw: 'highest' | 'lowest';
  /** What a caption adds where a plate turns the unusual way; empty otherwise. */
  readonly aside: string;
  /** Heights of the screws from the end about which the plate turns. */
  readonly heights_m: readonly number[];
}

/** A load on the arm turns the plate about its lower end; one that lifts the arm, about its upper end. */
export function turningOf({ heights_m, plate }: Fixing, { isLifted }: Pick<FixingLoad, 'isLifted'>): Turning {
  if (isLifted !== true) return { end: 'lower', screw: 'highest', aside: '', heights_m };
  return {
    end: 'upper',
    screw: 'lowest',
    aside: ', the bracket lifted and its plate turning about the upper end',
    heights_m: heights_m.map((z) => Math.max(0, plate.height_m - z)),
  };
}
