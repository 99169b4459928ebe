/** Two layouts of the same drawing: across a desk or a sheet of paper, and down a phone. */
export type View = 'wide' | 'narrow';

export interface Frame {
  readonly width: number;
  /** Left and right edges of what is drawn to scale. */
  readonly left: number;
  readonly right: number;
  /** Height of letters. */
  readonly letters: number;
  /** The most height that the board and what holds it may take. */
  readonly mostHeight: number;
  /** Height of a band of contents. */
  readonly band: number;
}

export const frames: Readonly<Record<View, Frame>> = {
  wide: { width: 720, left: 28, right: 692, letters: 12, mostHeight: 240, band: 22 },
  narrow: { width: 340, left: 20, right: 320, letters: 11.5, mostHeight: 200, band: 20 },
};
