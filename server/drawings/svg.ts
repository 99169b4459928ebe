/** A drawing ready for a page: the picture, its name, and the same in words for whoever can't see it. */
export interface Drawing {
  readonly svg: string;
  readonly title: string;
  readonly description: string;
}

/** A place on the drawing, in drawing units; y runs down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What a line is for; each has one look everywhere. */
export type Pen = 'outline' | 'thin' | 'hidden' | 'centre' | 'settled' | 'hatch' | 'curve' | 'arrow';

/**
 * Everything is drawn in the colour of the text around it, so that a dark page, a print and a copy outside the page need
 * nothing more; the class lets a stylesheet add its accent.
 */
const pens: Readonly<Record<Pen, string>> = {
  outline: 'stroke-width="1.2" stroke-linejoin="round"',
  thin: 'stroke-width="0.6"',
  hidden: 'stroke-width="0.7" stroke-dasharray="3 2"',
  centre: 'stroke-width="0.7" stroke-dasharray="7 3"',
  settled: 'stroke-width="1.3" stroke-dasharray="9 3 1.5 3" stroke-linejoin="round"',
  hatch: 'stroke-width="0.5" stroke-opacity="0.6"',
  curve: 'stroke-width="1.3" stroke-linejoin="round"',
  arrow: 'stroke-width="1.2"',
};

const pen = (name: Pen): string => `class="pen-${name}" fill="none" stroke="currentColor" ${pens[name]}`;

/** What stands after the whole units, by hundredths. */
const fractions = Array.from({ length: 100 }, (_, hundredths) => String(hundredths / 100).slice(1));

/**
 * A coordinate as it is written, in hundredths at most: put together from whole numbers, since a page has thousands.
 *
 * @throws RangeError where it is not finite: a drawing never hides a failed number
 */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} is no place on a drawing`);
  const hundredths = Math.round(value * 100);
  const size = Math.abs(hundredths);
  const whole = Math.floor(size / 100);
  return `${hundredths < 0 ? '-' : ''}${whole}${fractions[size - whole * 100] ?? ''}`;
}

/** Text made safe inside an element or an attribute. */
export function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

export function line(from: Point, to: Point, name: Pen): string {
  const [x1, y1, x2, y2] = [from.x, from.y, to.x, to.y].map(coordinate);
  return `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" ${pen(name)}/>`;
}

export function rect(box: Box, name: Pen): string {
  const [x, y, width, height] = [box.left, box.top, box.right - box.left, box.bottom - box.top].map(
    coordinate,
  );
  return `<rect x="${x}" y="${y}" width="${width}" height="${height}" ${pen(name)}/>`;
}

export function circle(centre: Point, radius: number, name: Pen): string {
  return `<circle cx="${coordinate(centre.x)}" cy="${coordinate(centre.y)}" r="${coordinate(radius)}" ${pen(name)}/>`;
}

export function polyline(points: readonly Point[], name: Pen): string {
  const places = points.map(({ x, y }) => `${coordinate(x)},${coordinate(y)}`).join(' ');
  return `<polyline points="${places}" ${pen(name)}/>`;
}

/** Many separate strokes of one pen, as one element. */
export function strokes(segments: readonly (readonly [Point, Point])[], name: Pen): string {
  if (segments.length === 0) return '';
  const path = segments
    .map(([a, b]) => `M${coordinate(a.x)} ${coordinate(a.y)}L${coordinate(b.x)} ${coordinate(b.y)}`)
    .join('');
  return `<path d="${path}" ${pen(name)}/>`;
}

/** The tone of one band of a picture of bands; where bands lie over each other it gets darker. */
const tone =
  'fill="currentColor" fill-opacity="0.13" stroke="currentColor" stroke-width="0.5" stroke-opacity="0.55"';

/** An area with holes, in the tone of one band. */
export function areas(rings: readonly (readonly Point[])[]): string {
  if (rings.length === 0) return '';
  const path = rings
    .map((ring) => `M${ring.map(({ x, y }) => `${coordinate(x)} ${coordinate(y)}`).join('L')}Z`)
    .join('');
  return `<path d="${path}" class="band" fill-rule="evenodd" ${tone}/>`;
}

export interface Lettering {
  readonly size: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Turned a quarter, to be read from the right. */
  readonly turned?: boolean;
  readonly strong?: boolean;
  /** With an edge in the colour of the ground, where it stands on lines or tones. */
  readonly clear?: boolean;
}

export function text(words: string, at: Point, lettering: Lettering): string {
  const { size, anchor = 'start', turned = false, strong = false, clear = false } = lettering;
  const [x, y] = [coordinate(at.x), coordinate(at.y)];
  const turn = turned ? ` transform="rotate(-90 ${x} ${y})"` : '';
  const weight = strong ? ' font-weight="600"' : '';
  // White is what paper is; a page has its own ground for the class.
  const edge = clear
    ? ' class="clear" stroke="#fff" stroke-width="3" stroke-linejoin="round" paint-order="stroke"'
    : '';
  return (
    `<text x="${x}" y="${y}" font-size="${coordinate(size)}" text-anchor="${anchor}"${weight}${turn}${edge} ` +
    `fill="currentColor">${escaped(words.replace(/^-(?=\d)/, '−'))}</text>`
  );
}

/** A solid arrowhead with its tip at a place; `towards` is where it points. */
export function arrowhead(tip: Point, towards: 'left' | 'right' | 'up' | 'down', size = 6): string {
  const [along, across] = [size, size * 0.38];
  const sign = towards === 'left' || towards === 'up' ? 1 : -1;
  const upright = towards === 'up' || towards === 'down';
  const corner = (side: number): Point =>
    upright
      ? { x: tip.x + side * across, y: tip.y + sign * along }
      : { x: tip.x + sign * along, y: tip.y + side * across };
  const places = [tip, corner(1), corner(-1)]
    .map(({ x, y }) => `${coordinate(x)},${coordinate(y)}`)
    .join(' ');
  return `<polygon points="${places}" class="pen-arrowhead" fill="currentColor"/>`;
}

/** Puts a drawing together. Only the title and description are user text here; the parts are already escaped. */
export function drawing(
  size: { readonly width: number; readonly height: number },
  words: { readonly kind: string; readonly title: string; readonly description: string },
  parts: readonly string[],
): Drawing {
  const { kind, title, description } = words;
  const [width, height] = [coordinate(size.width), coordinate(size.height)];
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="drawing drawing-${kind}" role="img" viewBox="0 0 ${width} ${height}" ` +
    `font-family="system-ui, sans-serif"><title>${escaped(title)}</title><desc>${escaped(description)}</desc>` +
    `${parts.join('')}</svg>`;
  return { svg, title, description };
}
