import type { CounterRunDocument } from '../../shared/check-document/index.ts';
import type { CounterRunResult } from '../../shared/check-result.ts';
import { contourPicture, endLines, runSection } from '../drawings/index.ts';
import { bands } from './counter-pictures.ts';
import type { DrawingView, Pictures } from './drawing-views.ts';

/** The drawings of a counter run: from the front, and bands of movement and of stress across the panel. */
export function runPictures(document: CounterRunDocument, result: CounterRunResult): Pictures {
  const units = document.units ?? 'inch-pound';
  const { movement, acrossGrain } = result.analysis.fields;
  const top = { length: document.opening, depth: document.depth };
  const under = endLines(document);
  return {
    whole: [
      {
        wide: runSection(document, 'wide'),
        narrow: runSection(document, 'narrow'),
        isAcross: false,
        isHalf: false,
      },
    ],
    diagrams: [
      ...bands('movement', 'Movement down', movement, units),
      ...bands('across-grain', 'Stress across the panel', acrossGrain, units),
    ].map((each): DrawingView => ({
      wide: contourPicture({ units, top, base: { back: 0, front: document.depth }, under }, each, 'wide'),
      narrow: contourPicture({ units, top, base: { back: 0, front: document.depth }, under }, each, 'narrow'),
      isAcross: false,
      isHalf: true,
    })),
    section: [],
    detail: [],
  };
}
