import type { Checked } from '../check/answer-to.ts';
import { bracketDetail, diagrams, elevation, section } from '../drawings/index.ts';
import { counterPictures } from './counter-pictures.ts';
import { runPictures } from './run-pictures.ts';
import type { Pictures } from './drawing-views.ts';

/** Draws a check. */
export function picturesOf(checked: Checked): Pictures {
  if (checked.element === 'counter-overhang') return counterPictures(checked.document, checked.result);
  if (checked.element === 'counter-run') return runPictures(checked.document, checked.result);
  const detail = bracketDetail(checked.document, checked.result);
  const details = detail === undefined ? [] : [detail];
  if (checked.element === 'wall-fixing') {
    return {
      whole: details.map((each) => ({ wide: each, narrow: each, isAcross: true, isHalf: true })),
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
        isHalf: false,
      },
    ],
    diagrams: [
      {
        wide: diagrams(document, result, 'wide'),
        narrow: diagrams(document, result, 'narrow'),
        isAcross: false,
        isHalf: false,
      },
    ],
    section: [section(document)],
    detail: details,
  };
}
