import { stoolSpacing_m, usual } from '../../../calc/elements/counter-overhang/usual.ts';
import type { CounterOverhangDocument, CounterRunDocument } from '../../../shared/check-document/index.ts';
import type { TopPlace } from '../../../shared/check-result.ts';
import { inch } from '../../../shared/quantity/index.ts';
import { hatch } from '../hatch.ts';
import { textWidth } from '../lettering.ts';
import { circle, line, polyline, rect, strokes, text, type Box, type Point } from '../svg.ts';
import { freePlace } from './free-place.ts';
import type { PlanLayout, PlanOf } from './plan-layout.ts';

type Prop = NonNullable<CounterOverhangDocument['props']>[number];

/** A stool as wide as most are. Common practice, no source. */
const stool_m = 14 * inch;

/** The outline of the top. */
export function topOutline({ top }: PlanOf, { scale, y }: PlanLayout): string {
  return rect({ left: scale.x(0), right: scale.x(top.length), top: y(0), bottom: y(top.depth) }, 'outline');
}

/** The base under the top, dashed: its faces, its rails, and its upright panels. */
export function baseParts({ base }: CounterOverhangDocument, { scale, y }: PlanLayout): string[] {
  const thickness = base.rail?.thickness ?? usual.railThickness_m;
  const box = (from: number, to: number, back: number, front: number): Box => ({
    left: scale.x(from),
    right: scale.x(to),
    top: y(back),
    bottom: y(front),
  });
  const panels = (base.panels ?? [base.from, base.to]).map((at) => {
    const left = Math.min(Math.max(at - thickness / 2, base.from), Math.max(base.to - thickness, base.from));
    return rect(box(left, left + thickness, base.back, base.front), 'hidden');
  });
  return [
    rect(box(base.from, base.to, base.back, base.front), 'hidden'),
    rect(box(base.from, base.to, base.back, base.back + thickness), 'hidden'),
    rect(box(base.from, base.to, base.front - thickness, base.front), 'hidden'),
    ...panels,
  ];
}

/** Screws up into the top, as small circles. */
export function screwParts({ screws }: CounterOverhangDocument, { scale, y }: PlanLayout): string[] {
  return (screws?.at ?? []).map(([along, back]) => circle({ x: scale.x(along), y: y(back) }, 2, 'outline'));
}

/** The base and what else is under a counter that runs past it. */
export function underCounter(document: CounterOverhangDocument): (layout: PlanLayout) => string[] {
  return (layout) => [...baseParts(document, layout), ...propParts(document, layout)];
}

/** Cabinet sides and rails under a counter run, as lines. */
export function endLines({
  opening,
  depth,
  rails = 'none',
}: CounterRunDocument): (layout: PlanLayout) => string[] {
  return ({ scale, y }) => [
    ...[0, opening].map((at) => line({ x: scale.x(at), y: y(0) }, { x: scale.x(at), y: y(depth) }, 'arrow')),
    ...(rails === 'none' ? [] : [rails === 'back' ? [0] : rails === 'front' ? [depth] : [0, depth]])
      .flat()
      .map((at) => line({ x: scale.x(0), y: y(at) }, { x: scale.x(opening), y: y(at) }, 'arrow')),
  ];
}

/** What is under the overhang. */
export function propParts(document: CounterOverhangDocument, layout: PlanLayout): string[] {
  return (document.props ?? []).flatMap((prop) => propShape(prop, document, layout));
}

/** The number of each prop, past its end or beside its root, where nobody presses. */
export function propNumbers(
  document: CounterOverhangDocument,
  people: readonly TopPlace[],
  layout: PlanLayout,
): string[] {
  const { props = [], top, base } = document;
  const { y, scale, frame } = layout;
  const size = frame.letters;
  const patches = personBoxes(document, people, layout);
  return props.map((prop, index) => {
    const words = String(index + 1);
    const half = textWidth(words, size) / 2;
    const beside = propHalf(prop, layout) + 3 + half;
    const [left, right] = [scale.x(prop.at) - beside, scale.x(prop.at) + beside];
    const isInside = (x: number): boolean => x - half > scale.x(0) && x + half + 2 <= scale.x(top.length);
    const [first = right, ...others] = [right, left].filter(isInside);
    const end = Math.min(y(prop.to) + size, y(top.depth) - 3);
    const root = y(base.front) + size * 1.1;
    const places = [end, root].flatMap((foot) => [first, ...others].map((x): Point => ({ x, y: foot })));
    const at = freePlace([{ x: first, y: end }, ...places], { words, size }, patches);
    return text(words, at, { size, strong: true, anchor: 'middle' });
  });
}

function propHalf(prop: Prop, { scale }: PlanLayout): number {
  return prop.kind === 'flat-bar' ? Math.max(scale.length(prop.width) / 2, 1.2) : 5;
}

function propShape(prop: Prop, { base }: CounterOverhangDocument, layout: PlanLayout): string[] {
  const { scale, y } = layout;
  const x = scale.x(prop.at);
  const half = propHalf(prop, layout);
  const end = y(prop.to);
  if (prop.kind === 'flat-bar')
    return [rect({ left: x - half, right: x + half, top: y(prop.from), bottom: end }, 'outline')];
  if (prop.kind === 'leg') {
    const box = { left: x - half, right: x + half, top: end - half, bottom: end + half };
    return [rect(box, 'outline'), line({ x: box.left, y: box.top }, { x: box.right, y: box.bottom }, 'thin')];
  }
  const root = y(base.front);
  if (prop.kind === 'bracket')
    return [
      strokes(
        [
          [
            { x, y: root },
            { x, y: end },
          ],
          [
            { x: x - half, y: root },
            { x: x + half, y: root },
          ],
        ],
        'arrow',
      ),
    ];
  const corners = [
    { x: x - half, y: root },
    { x: x - half * 0.4, y: end },
    { x: x + half * 0.4, y: end },
    { x: x + half, y: root },
  ];
  return [polyline(corners, 'outline')];
}

/** How many stools the edge takes, by advice alone. */
export function stoolCount({ top }: CounterOverhangDocument): number {
  return Math.floor(top.length / stoolSpacing_m + 1e-9);
}

/** Stools as circles at their spacing along the stool edge: advice, no part of the check. */
export function stoolParts(document: CounterOverhangDocument, { scale, y }: PlanLayout): string[] {
  const count = stoolCount(document);
  const { length, depth } = document.top;
  const first = (length - (count - 1) * stoolSpacing_m) / 2;
  const radius = scale.length(stool_m / 2);
  return Array.from({ length: count }, (_, index) =>
    circle({ x: scale.x(first + index * stoolSpacing_m), y: y(depth) + radius * 0.6 }, radius, 'thin'),
  );
}

/** How far stools reach past the stool edge on the drawing. */
export function stoolReach(document: CounterOverhangDocument, { scale }: PlanLayout): number {
  return stoolCount(document) > 0 ? scale.length(stool_m / 2) * 1.6 : 0;
}

/** Where people stand when most is asked of the top: the square they press on, hatched. */
export function personParts(document: PlanOf, places: readonly TopPlace[], layout: PlanLayout): string[] {
  return personBoxes(document, places, layout).flatMap((box) => [hatch(box, 2.5), rect(box, 'arrow')]);
}

/** The squares people press on. */
export function personBoxes(
  document: PlanOf,
  places: readonly TopPlace[],
  { scale, y }: PlanLayout,
): readonly Box[] {
  const half = patchOf(document) / 2;
  return places.map((place) => ({
    left: scale.x(place.x.value - half),
    right: scale.x(place.x.value + half),
    top: y(place.y.value - half),
    bottom: y(place.y.value + half),
  }));
}

function patchOf({ loads }: PlanOf): number {
  const person = loads?.find((load) => load.kind === 'person');
  return (person?.kind === 'person' ? person.patch : undefined) ?? 4 * inch;
}
