import { stoolSpacing_m } from '../../../calc/elements/counter-overhang/usual.ts';
import type { CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import type { CounterOverhangResult } from '../../../shared/check-result.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { levelDimension, runningDimension } from '../dimension.ts';
import type { View } from '../frame.ts';
import { keyStrip, type KeyItem } from '../key.ts';
import { bareDimension, dimensionText } from '../lettering.ts';
import { scaleBar } from '../scale.ts';
import { standingDimension } from '../standing-dimension.ts';
import { drawing, text, type Drawing } from '../svg.ts';
import { planLayout, type PlanLayout } from './plan-layout.ts';
import {
  baseParts,
  personParts,
  propNumbers,
  propParts,
  screwParts,
  stoolCount,
  stoolParts,
  stoolReach,
  topOutline,
} from './plan-parts.ts';
import { planWords } from './plan-words.ts';

/**
 * A counter top from above, to true scale: the base under it dashed, its panels, screws and props, the square on which a
 * person asks most of it, and stools at their spacing.
 *
 * @param document the checked document (SI)
 * @param result the answer to it; the worst place of a person is drawn
 * @param view `wide` for a desk or a sheet of paper, `narrow` for a phone
 */
export function plan(document: CounterOverhangDocument, result: CounterOverhangResult, view: View): Drawing {
  const layout = planLayout(document, view, 26);
  const { frame, units, scale, y } = layout;
  const size = frame.letters;
  const { length, depth } = document.top;
  const people = result.analysis.plate.person.at;
  const below = y(depth) + stoolReach(document, layout) + size;
  const room = { left: 2, right: frame.width - 2 };
  const running = runningDimension(placesAlong(document, layout), below, size, room);
  const overall = running.bottom + size * 1.6;
  const key = keyStrip(keyItems(document, people.length > 0, units), overall + size * 1.9, frame);
  const barAt = { x: frame.left, y: key.bottom + size * 1.1 };
  const parts = [
    ...stoolParts(document, layout),
    ...baseParts(document, layout),
    ...screwParts(document, layout),
    ...propParts(document, layout),
    ...propNumbers(document, people, layout),
    ...personParts(document, people, layout),
    topOutline(document, layout),
    text('back edge', { x: scale.x(length / 2), y: y(0) - size * 0.6 }, { size, anchor: 'middle' }),
    ...depthParts(document, layout),
    ...running.parts,
    ...levelDimension(
      { from: scale.x(0), to: scale.x(length), y: overall },
      `overall ${dimensionText(length, units)}`,
      size,
      room,
    ),
    ...key.parts,
    ...scaleBar(scale, barAt, frame.width * 0.3, size, units),
  ];
  const words = {
    kind: `plan-${view}`,
    title: `Plan${document.title === undefined ? '' : `: ${document.title}`}`,
    description: planWords(document, result),
  };
  return drawing({ width: frame.width, height: barAt.y + size }, words, parts);
}

/** Ends of the top, faces of the base and props, from the left end. */
function placesAlong({ top, base, props = [] }: CounterOverhangDocument, { scale, units }: PlanLayout) {
  return [0, base.from, ...props.map(({ at }) => at), base.to, top.length]
    .toSorted((a, b) => a - b)
    .filter((place, index, all) => index === 0 || place - (all[index - 1] ?? 0) > 1e-6)
    .map((place) => ({ x: scale.x(place), words: bareDimension(place, units) }));
}

/** Back edge, back and face of the base, stool edge, from the back edge. */
function depthParts({ top, base }: CounterOverhangDocument, layout: PlanLayout): string[] {
  const { scale, units, y, frame } = layout;
  const marks = [0, base.back, base.front, top.depth]
    .filter((place, index, all) => index === 0 || place - (all[index - 1] ?? 0) > 1e-6)
    .map((place) => ({ y: y(place), words: bareDimension(place, units) }));
  return standingDimension(marks, scale.x(0) - 10, frame.letters, { top: y(0), bottom: y(top.depth) });
}

const unitWords: Readonly<Record<UnitSystem, string>> = { 'inch-pound': 'inches', metric: 'millimetres' };

function keyItems(document: CounterOverhangDocument, hasPeople: boolean, units: UnitSystem): KeyItem[] {
  const stools = stoolCount(document);
  return [
    { words: `From left end and back edge, in ${unitWords[units]}` },
    { pen: 'hidden', words: 'base, rails and panels under the top' },
    ...((document.screws?.at.length ?? 0) > 0 ? [{ words: 'small circles: screws' }] : []),
    ...((document.props?.length ?? 0) > 0 ? [{ words: 'numbers: props' }] : []),
    ...(hasPeople ? [{ words: 'hatched: a person, worst across the grain' }] : []),
    ...(stools > 0
      ? [{ words: `large circles: stools ${dimensionText(stoolSpacing_m, units)} apart, by advice` }]
      : []),
  ];
}
