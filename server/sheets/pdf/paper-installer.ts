import type { InstallerModel } from '../../view-models/installer.ts';
import { verdictKind } from './paper-sheet.ts';
import { printDrawing, type PrintDrawing } from './print-drawing.ts';
import type { Printable } from './printable.ts';

/**
 * The view model of the page that goes to the wall as data for the paper: the same words in the same order.
 *
 * @param printable fits text to the font
 */
export function paperInstaller(model: InstallerModel, { words, drawn }: Printable): object {
  const picture = (drawing: string): PrintDrawing => {
    const { svg, words: alternative } = printDrawing(drawing);
    return { svg: drawn(svg), words: drawn(alternative) };
  };
  const [go] = model.go;
  return {
    isA4: !model.isLetter,
    title: words(model.title),
    date: words(model.date),
    fingerprint: model.fingerprint,
    authors: [],
    verdict: { word: model.verdict.word, kind: verdictKind(model.verdict) },
    first: words(model.first),
    warnings: model.warnings.map(words),
    front: picture(model.wide),
    details: model.details.map(picture),
    go:
      go === undefined
        ? null
        : {
            steps: go.steps.map(words),
            loads: go.loads.map(words),
            labelLimit: words(go.labelLimit),
            labelWarned: go.labelWarned.map(words),
          },
    reasons: model.stop.flatMap(({ reasons }) => reasons.map(words)),
    cautions: model.cautions.map(words),
  };
}
