import { usual } from '../../../calc/elements/counter-overhang/usual.ts';
import type { CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import { inch } from '../../../shared/quantity/index.ts';
import { levelDimension, loadArrow } from '../dimension.ts';
import { frames } from '../frame.ts';
import { hatch } from '../hatch.ts';
import { dimensionText, textWidth } from '../lettering.ts';
import { scaleAt, scaleBar, type Scale } from '../scale.ts';
import { standingDimension } from '../standing-dimension.ts';
import { drawing, line, polyline, rect, strokes, text, type Drawing } from '../svg.ts';

type Prop = NonNullable<CounterOverhangDocument['props']>[number];

const { width, letters: size } = frames.narrow;
const mostHeight = 240;

/**
 * A counter cut across, to true scale: floor, base with its foot, top, screws, one prop of each kind, and a person at the
 * edge. It is as wide as a phone and serves a desk and paper as it is.
 */
export function counterSection(document: CounterOverhangDocument): Drawing {
  const units = document.units ?? 'inch-pound';
  const { top, base } = document;
  const height = base.height ?? usual.height_m;
  const numbers = [height, height + top.thickness].map((each) => dimensionText(each, units));
  const margin = Math.max(...numbers.map((words) => textWidth(words, size))) + 30;
  const unitsPerMetre = Math.min((width - margin - 12) / top.depth, mostHeight / (height + top.thickness));
  const scale = scaleAt(unitsPerMetre, margin);
  const topFace = 44;
  const underside = topFace + scale.length(top.thickness);
  const floor = underside + scale.length(height);
  const box = { left: scale.x(0), right: scale.x(top.depth), top: topFace, bottom: underside };
  const marks = [
    { y: topFace, words: numbers[1] ?? '' },
    { y: underside, words: numbers[0] ?? '' },
    { y: floor, words: '0' },
  ];
  const heightsAt = scale.x(0) - 10;
  const depths = floor + size * 1.9;
  const barAt = { x: 8, y: depths + size * 3.6 };
  const room = { left: 2, right: width - 2 };
  const span = (from: number, to: number, words: string, y: number): string[] =>
    levelDimension({ from: scale.x(from), to: scale.x(to), y }, words, size, room);
  const parts = [
    ...baseParts(document, underside, floor, scale),
    ...kindsOf(document).flatMap((prop) => propParts(prop, document, underside, floor, scale)),
    hatch(box, 4),
    rect(box, 'outline'),
    ...screwParts(document, underside, scale),
    ...finishParts(document, topFace, scale),
    ...personParts(document, topFace - finishHeight(document, scale), scale),
    // The floor ends at the heights, so that it strikes none of their numbers out.
    line({ x: heightsAt, y: floor }, { x: width - 2, y: floor }, 'outline'),
    ...standingDimension(marks, heightsAt, size, { top: topFace - size * 0.5, bottom: floor }),
    ...span(base.back, base.front, `base ${dimensionText(base.front - base.back, units)}`, depths),
    ...(top.depth - base.front > 1e-6
      ? span(
          base.front,
          top.depth,
          `out ${dimensionText(top.depth - base.front, units)}`,
          depths + size * 1.7,
        )
      : []),
    ...scaleBar(scale, barAt, 90, size, units),
  ];
  const words = {
    kind: 'counter-section',
    title: 'Section through the counter',
    description: sectionWords(document, height),
  };
  return drawing({ width, height: barAt.y + size }, words, parts);
}

/** The base from the side: panel to the floor, set back to its foot, and the rails the top lies on. */
function baseParts(
  { base }: CounterOverhangDocument,
  underside: number,
  floor: number,
  scale: Scale,
): string[] {
  const thickness = base.rail?.thickness ?? usual.railThickness_m;
  const foot = Math.min(base.foot ?? base.front, base.front);
  const toe = floor - Math.min(scale.length(4 * inch), (floor - underside) / 4);
  const corners = [
    { x: scale.x(base.back), y: underside },
    { x: scale.x(base.back), y: floor },
    { x: scale.x(foot), y: floor },
    ...(base.front - foot > 1e-6
      ? [
          { x: scale.x(foot), y: toe },
          { x: scale.x(base.front), y: toe },
        ]
      : []),
    { x: scale.x(base.front), y: underside },
  ];
  const rail = (from: number): string =>
    rect(
      {
        left: scale.x(from),
        right: scale.x(from + thickness),
        top: underside,
        bottom: underside + scale.length(base.rail?.height ?? 3.5 * inch),
      },
      'thin',
    );
  return [polyline(corners, 'thin'), rail(base.back), rail(base.front - thickness)];
}

function kindsOf({ props = [] }: CounterOverhangDocument): Prop[] {
  return props.filter((prop, index) => props.findIndex(({ kind }) => kind === prop.kind) === index);
}

function propParts(
  prop: Prop,
  { base }: CounterOverhangDocument,
  underside: number,
  floor: number,
  scale: Scale,
): string[] {
  const end = scale.x(prop.to);
  const face = scale.x(base.front);
  if (prop.kind === 'flat-bar') {
    const bottom = underside + Math.max(scale.length(prop.thickness), 1.5);
    return [rect({ left: scale.x(prop.from), right: end, top: underside, bottom }, 'outline')];
  }
  if (prop.kind === 'leg')
    return [
      strokes(
        [-3, 3].map((off) => [
          { x: end + off, y: underside },
          { x: end + off, y: floor },
        ]),
        'outline',
      ),
    ];
  const drop = Math.min((end - face) * 0.8, (floor - underside) * 0.6);
  const corners =
    prop.kind === 'bracket'
      ? [
          { x: face, y: underside + drop },
          { x: face, y: underside + 1.5 },
          { x: end, y: underside + 1.5 },
        ]
      : [
          { x: face, y: underside },
          { x: end, y: underside },
          { x: end, y: underside + drop * 0.25 },
          { x: face, y: underside + drop },
        ];
  return [polyline(corners, prop.kind === 'bracket' ? 'arrow' : 'outline')];
}

/** Tile or stone with its bed, at least a line thick. */
function finishHeight({ top }: CounterOverhangDocument, scale: Scale): number {
  return top.finish === undefined
    ? 0
    : Math.max(scale.length(top.finish.thickness + (top.finish.bed ?? 0)), 2);
}

function finishParts(document: CounterOverhangDocument, topFace: number, scale: Scale): string[] {
  const height = finishHeight(document, scale);
  if (height === 0) return [];
  const box = {
    left: scale.x(0),
    right: scale.x(document.top.depth),
    top: topFace - height,
    bottom: topFace,
  };
  return [hatch(box, 2.5, [], false), rect(box, 'thin')];
}

/** Screws from under the rail or cleat up into the top, one for each distance from the back edge. */
function screwParts({ screws }: CounterOverhangDocument, underside: number, scale: Scale): string[] {
  const places = [...new Set((screws?.at ?? []).map(([, back]) => back))];
  const through = screws?.through ?? usual.railThickness_m;
  const head = underside + scale.length(through);
  const tip = head - scale.length(screws?.length ?? 0);
  return [
    strokes(
      places.map((back) => [
        { x: scale.x(back), y: head },
        { x: scale.x(back), y: tip },
      ]),
      'arrow',
    ),
  ];
}

function personParts(document: CounterOverhangDocument, topFace: number, scale: Scale): string[] {
  const person = document.loads?.find((load) => load.kind === 'person');
  if (document.loads !== undefined && person === undefined) return [];
  const patch = (person?.kind === 'person' ? person.patch : undefined) ?? 4 * inch;
  const x = scale.x(document.top.depth - patch / 2);
  const name = person?.name ?? 'person';
  return [
    ...loadArrow({ x, y: topFace - 22 }, topFace),
    text(name, { x: Math.min(x + 4, width - 4), y: topFace - 26 }, { size, anchor: 'end' }),
  ];
}

function sectionWords(document: CounterOverhangDocument, height: number): string {
  const units = document.units ?? 'inch-pound';
  const length = (metres: number): string => dimensionText(metres, units);
  const { top, base } = document;
  return [
    `A top ${length(top.thickness)} thick on a base ${length(height)} high, from ${length(base.back)} to ${length(base.front)} from the back edge.`,
    top.finish === undefined
      ? ''
      : `${top.finish.kind === 'natural-stone' ? 'Natural stone' : 'Ceramic tile'} ${length(top.finish.thickness)} thick lies on it.`,
    top.depth - base.front > 1e-6 ? `The top stands out ${length(top.depth - base.front)} past it.` : '',
    base.foot === undefined ? '' : `The outer foot is ${length(base.foot)} from the back edge.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}
