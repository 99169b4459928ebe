import type { Detail } from './detail.ts';
import { hatch } from './hatch.ts';
import type { Scale } from './scale.ts';
import { line, polyline, rect, strokes, type Point } from './svg.ts';

const beyond = 10;

/** The plate cut from the side: coverings, what is behind them, the screws with their thread, and the arm, if there is one, broken off. */
export function sideParts(
  detail: Detail,
  scale: Scale,
  { top, bottom, stub }: { readonly top: number; readonly bottom: number; readonly stub: number },
): string[] {
  const { plate, screws, coverings, gap, behind, isHollow, hasArm } = detail;
  const [above, below] = [top - beyond, bottom + beyond];
  const back = scale.x(
    -gap - Math.min(behind, Math.max(screws.length - plate.thickness - gap, 0) * 1.2 + 0.005),
  );
  let edge = 0;
  const sheets = coverings.flatMap(({ thickness }) => {
    const box = { left: scale.x(-edge - thickness), right: scale.x(-edge), top: above, bottom: below };
    edge += thickness;
    return [hatch(box, 4, [], false), strokes(uprights(box.left, above, below), 'thin')];
  });
  const frame = { left: back, right: scale.x(-gap), top: above, bottom: below };
  const armBottom = top + Math.max(scale.length(plate.thickness), 2);
  const face = scale.x(plate.thickness);
  return [
    ...sheets,
    ...(isHollow ? [] : [hatch(frame, 13), strokes(uprights(frame.left, above, below), 'hidden')]),
    line({ x: scale.x(0), y: above }, { x: scale.x(0), y: below }, 'outline'),
    rect({ left: scale.x(0), right: Math.max(face, scale.x(0) + 1.5), top, bottom }, 'outline'),
    ...(hasArm ? [armStub(face, stub, [top, armBottom])] : []),
    ...screws.heights.flatMap((height) => screwParts(detail, scale, bottom - scale.length(height))),
  ];
}

/** Where the arm goes on, broken off. */
function armStub(face: number, stub: number, edges: readonly number[]): string {
  return strokes(
    edges.map((y) => [
      { x: face, y },
      { x: face + stub, y },
    ]),
    'outline',
  );
}

function uprights(x: number, top: number, bottom: number): readonly (readonly [Point, Point])[] {
  return [
    [
      { x, y: top },
      { x, y: bottom },
    ],
  ];
}

/** One screw in true length: head before the plate, shank, and slanted strokes along its thread. */
function screwParts({ plate, screws, diameter, head, thread }: Detail, scale: Scale, y: number): string[] {
  const half = Math.max(scale.length(diameter) / 2, 0.8);
  const headHalf = Math.max(scale.length(head) / 2, 1.6);
  const face = scale.x(plate.thickness);
  const tip = scale.x(plate.thickness - screws.length);
  const point = Math.min(half * 2, (face - tip) / 3);
  const from = scale.x(plate.thickness - screws.length + thread);
  const pitch = Math.max(half * 1.2, 2);
  const turns = Math.max(0, Math.floor((from - tip - point) / pitch));
  const outline = [
    { x: face, y: y - half },
    { x: tip + point, y: y - half },
    { x: tip, y },
    { x: tip + point, y: y + half },
    { x: face, y: y + half },
  ];
  const headShape = [
    { x: face, y: y - headHalf },
    { x: face + headHalf * 0.66, y: y - headHalf * 0.5 },
    { x: face + headHalf * 0.66, y: y + headHalf * 0.5 },
    { x: face, y: y + headHalf },
    { x: face, y: y - headHalf },
  ];
  return [
    polyline(outline, 'thin'),
    polyline(headShape, 'outline'),
    strokes(
      Array.from({ length: turns }, (_, index) => {
        const x = tip + point + index * pitch;
        return [
          { x, y: y + half * 1.25 },
          { x: x + pitch * 0.7, y: y - half * 1.25 },
        ] as const;
      }),
      'thin',
    ),
  ];
}
