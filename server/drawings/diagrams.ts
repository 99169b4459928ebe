import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { BracketShelfResult } from '../../shared/check-result.ts';
import { quantity, show, type Quantity } from '../../shared/quantity/index.ts';
import { bracketNumbers } from './brackets.ts';
import { chartHeight, chartParts, type Chart } from './chart.ts';
import { diagramWords } from './diagram-words.ts';
import { frames, type View } from './frame.ts';
import { dimensionText } from './lettering.ts';
import { boardScale } from './profile.ts';
import { drawing, polyline, type Drawing } from './svg.ts';

/**
 * Movement, moment and shear along the board, one under the other on the elevation's own scale, with the values at their
 * turning points. Moment and shear are the envelopes of everything that can come and go.
 */
export function diagrams(document: BracketShelfDocument, result: BracketShelfResult, view: View): Drawing {
  const units = document.units ?? 'inch-pound';
  const frame = frames[view];
  const scale = boardScale(document, frame);
  const { at, momentMax, momentMin, shearMax, shearMin, settled } = result.analysis.diagram;
  const { moment, shear } = result.analysis;
  const below = quantity(-shear.max.value, 'N', units);
  const charts: Chart[] = [
    {
      title: 'Settled over the years, roaming loads left off',
      at,
      curves: [settled],
      downwards: true,
      shown: (value) => dimensionText(Math.abs(value), units),
      pen: 'settled',
      hatched: false,
    },
    {
      title: 'Moment, sagging above the line',
      at,
      curves: [momentMax, momentMin],
      downwards: false,
      shown: (value) => nearest(value, [moment.max, moment.min]) ?? show(value, 'N.m', units),
      pen: 'curve',
      hatched: true,
    },
    {
      title: 'Shear',
      at,
      curves: [shearMax, shearMin],
      downwards: false,
      shown: (value) => nearest(value, [shear.max, below]) ?? show(value, 'N', units),
      pen: 'curve',
      hatched: true,
    },
  ];
  const height = chartHeight(frame);
  const places = document.brackets.positions.toSorted((a, b) => a - b);
  const foot = charts.length * height + 6;
  const parts = [
    ...charts.flatMap((chart, index) => chartParts(chart, places, index * height, scale, frame)),
    ...places.map((place) => supportMark(scale.x(place), foot)),
    ...bracketNumbers(places.map(scale.x), foot + 9 + frame.letters, frame.letters),
  ];
  const words = {
    kind: `diagrams-${view}`,
    title: 'Movement, moment and shear along the board',
    description: diagramWords(result, units),
  };
  return drawing({ width: frame.width, height: foot + frame.letters * 2 + 10 }, words, parts);
}

/** The curves are samples; a peak that is the largest of all is written as the analysis found it. */
function nearest(value: number, found: readonly Quantity[]): string | undefined {
  return found.find(
    (each) => each.value !== 0 && Math.abs(value - each.value) < sampled * Math.abs(each.value),
  )?.shown;
}

const sampled = 0.04;

function supportMark(x: number, y: number): string {
  const corners = [
    { x, y },
    { x: x - 5, y: y + 8 },
    { x: x + 5, y: y + 8 },
    { x, y },
  ];
  return polyline(corners, 'outline');
}
