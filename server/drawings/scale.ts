import { inch, type UnitSystem } from '../../shared/quantity/index.ts';
import { dimensionText } from './lettering.ts';
import { line, strokes, text } from './svg.ts';

/** The same scale both ways: drawing units for each metre, and where the board's left end lies. */
export interface Scale {
  readonly unitsPerMetre: number;
  readonly origin: number;
  /** Place on the drawing of a distance from the board's left end. */
  readonly x: (position_m: number) => number;
  /** A length on the drawing. */
  readonly length: (length_m: number) => number;
}

/** The largest true scale at which a length fits the room and a height fits the most it may take; centred. */
export function trueScale(
  length_m: number,
  room: { readonly left: number; readonly right: number },
  height_m: number,
  mostHeight: number,
): Scale {
  const width = room.right - room.left;
  const unitsPerMetre = Math.min(width / length_m, height_m > 0 ? mostHeight / height_m : Infinity);
  return scaleAt(unitsPerMetre, room.left + (width - length_m * unitsPerMetre) / 2);
}

/** A scale with its zero at a place on the drawing. */
export function scaleAt(unitsPerMetre: number, origin: number): Scale {
  return {
    unitsPerMetre,
    origin,
    x: (position_m) => origin + position_m * unitsPerMetre,
    length: (part_m) => part_m * unitsPerMetre,
  };
}

const barLengths_m: Readonly<Record<UnitSystem, readonly number[]>> = {
  'inch-pound': [1, 2, 3, 6, 12, 24, 48, 96, 120].map((inches) => inches * inch),
  metric: [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 3],
};

/**
 * The written scale: a bar of a round length. It stays right however large the drawing is printed, which a ratio does not.
 */
export function scaleBar(
  scale: Scale,
  at: { readonly x: number; readonly y: number },
  most: number,
  size: number,
  units: UnitSystem,
): string[] {
  const lengths = barLengths_m[units];
  const bar_m = lengths.findLast((each) => scale.length(each) <= most) ?? lengths[0] ?? 0;
  const end = at.x + scale.length(bar_m);
  const middle = (at.x + end) / 2;
  return [
    line(at, { x: end, y: at.y }, 'thin'),
    line(at, { x: middle, y: at.y }, 'arrow'),
    strokes(
      [at.x, middle, end].map((x) => [
        { x, y: at.y - 3 },
        { x, y: at.y + 3 },
      ]),
      'thin',
    ),
    text(`true scale, bar ${dimensionText(bar_m, units)}`, { x: end + 6, y: at.y + size * 0.35 }, { size }),
  ];
}

/** A factor from the round series 1, 2, 5, 10 … that makes the largest of some values about as large as the room. */
export function roundFactor(largest: number, room: number): number {
  if (!(largest > 0)) return 1;
  const wanted = room / largest;
  const decade = 10 ** Math.floor(Math.log10(wanted));
  const step = [5, 2, 1].find((each) => each * decade <= wanted) ?? 1;
  return Number((step * decade).toPrecision(1));
}
