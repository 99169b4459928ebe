import type { Drawing } from '../drawings/index.ts';

/** Two layouts of one drawing, for a desk and for a phone; the page shows one of them. */
export interface DrawingView {
  readonly wide: Drawing;
  readonly narrow: Drawing;
  /** Whether the two are one, as wide as a phone. */
  readonly isAcross: boolean;
  /** Whether the narrow one serves paper: it is about as high as it is wide, and across the whole sheet would fill a page. */
  readonly isHalf: boolean;
}

/** The drawings of a check: the one that stands over the verdict, and those that go with chapters of the calculation. */
export interface Pictures {
  /** The thing itself. */
  readonly whole: readonly DrawingView[];
  /** Movement, moment and shear, or what differs from place to place on a counter; none of a fixing. */
  readonly diagrams: readonly DrawingView[];
  /** The thing from the side; none of a fixing. */
  readonly section: readonly Drawing[];
  /** A bracket's plate enlarged; of a fixing it is the whole. */
  readonly detail: readonly Drawing[];
}
