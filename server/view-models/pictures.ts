import type { Checked } from '../check/answer-to.ts';
import { bracketDetail, diagrams, elevation, section, type Drawing } from '../drawings/index.ts';

/** Two layouts of one drawing, for a desk and for a phone; the page shows one of them. */
export interface DrawingView {
  readonly wide: Drawing;
  readonly narrow: Drawing;
  /** Whether the two are one, as wide as a phone. */
  readonly isAcross: boolean;
}

/** The drawings of a check: the one that stands over the verdict, and those that go with chapters of the calculation. */
export interface Pictures {
  /** The thing itself. */
  readonly whole: readonly DrawingView[];
  /** Movement, moment and shear; none of a fixing. */
  readonly diagrams: readonly DrawingView[];
  /** The shelf from the side; none of a fixing. */
  readonly section: readonly Drawing[];
  /** A bracket's plate enlarged; of a fixing it is the whole. */
  readonly detail: readonly Drawing[];
}

/** Draws a check. */
export function picturesOf(checked: Checked): Pictures {
  const detail = bracketDetail(checked.document, checked.result);
  const details = detail === undefined ? [] : [detail];
  if (checked.element === 'wall-fixing') {
    return {
      whole: details.map((each) => ({ wide: each, narrow: each, isAcross: true })),
      diagrams: [],
      section: [],
      detail: [],
    };
  }
  const { document, result } = checked;
  return {
    whole: [
      {
        wide: elevation(document, result, 'wide'),
        narrow: elevation(document, result, 'narrow'),
        isAcross: false,
      },
    ],
    diagrams: [
      {
        wide: diagrams(document, result, 'wide'),
        narrow: diagrams(document, result, 'narrow'),
        isAcross: false,
      },
    ],
    section: [section(document)],
    detail: details,
  };
}
