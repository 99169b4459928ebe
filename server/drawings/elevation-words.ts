import { listed } from '../../shared/words.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { BracketShelfResult } from '../../shared/check-result.ts';
import { show } from '../../shared/quantity/index.ts';
import { studPlaces } from './brackets.ts';
import { dimensionText } from './lettering.ts';
import { withAmount, type DrawnLoads } from './loads.ts';
import { missWords, type Miss } from './misses.ts';

/** The elevation in words: what stands where, and how it settles. */
export function elevationWords(
  document: BracketShelfDocument,
  result: BracketShelfResult,
  loads: DrawnLoads,
  misses: readonly Miss[],
): string {
  const units = document.units ?? 'inch-pound';
  const length = (metres: number): string => dimensionText(metres, units);
  const { board, brackets } = document;
  const studs = studPlaces(document);
  const nosing =
    board.nosing === undefined
      ? ''
      : `, with a front strip ${length(board.nosing.height)} high along its edge`;
  const sentences = [
    `A board ${length(board.length)} long and ${length(board.thickness)} thick${nosing}.`,
    'All distances run from its left end.',
    `Brackets at ${listed(brackets.positions.toSorted((a, b) => a - b).map(length))}.`,
    studs.length === 0 ? '' : `Studs at ${listed(studs.map(length))}.`,
    ...misses.map((miss) => missWords(miss, units)),
    ...loads.bands.map((band) => `${withAmount(band)}, from ${length(band.from)} to ${length(band.to)}.`),
    ...loads.weights.map((weight) => `${withAmount(weight)}, at ${length(weight.at)}.`),
    ...loads.roaming.map((load) => `${withAmount(load)}, anywhere along the front edge.`),
    settlesWords(result, (metres) => show(metres, 'm', units), length),
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

function settlesWords(
  result: BracketShelfResult,
  amount: (m: number) => string,
  length: (m: number) => string,
): string {
  const { at, settled } = result.analysis.diagram;
  const largest = settled.reduce(
    (most, each, index) => (Math.abs(each) > Math.abs(settled[most] ?? 0) ? index : most),
    0,
  );
  const movement = settled[largest] ?? 0;
  if (movement === 0) return '';
  const way = movement > 0 ? 'down' : 'up';
  return `Over the years it moves most, ${amount(Math.abs(movement))} ${way}, at ${length(at[largest] ?? 0)}.`;
}
