import { coveringsOf, coveringThickness } from '../../calc/elements/fixing/coverings.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import { hatch } from './hatch.ts';
import type { Scale } from './scale.ts';
import { line, rect, strokes } from './svg.ts';

const bareWall_m = 0.02;
const mostDrawn_m = 0.12;

/** How much of the wall is drawn behind its finish, m: coverings in full, the frame as far as there is room. */
export function wallThickness(document: BracketShelfDocument): number {
  const { wall, brackets } = document;
  if (wall === undefined) return bareWall_m;
  const screw = brackets.screws?.length ?? 0;
  return (
    coveringThickness(wall) + Math.min(wall.studDepth ?? mostDrawn_m, Math.max(mostDrawn_m * 0.6, screw))
  );
}

/** The wall cut through: coverings as thin sheets, what is behind them hatched; only its face where no wall is given. */
export function wallSection(
  document: BracketShelfDocument,
  top: number,
  bottom: number,
  scale: Scale,
): string[] {
  const { wall } = document;
  const face = line({ x: scale.x(0), y: top }, { x: scale.x(0), y: bottom }, 'outline');
  const back = scale.x(-wallThickness(document));
  if (wall === undefined) return [face, hatch({ left: back, right: scale.x(0), top, bottom }, 8)];
  let edge = 0;
  const sheets = coveringsOf(wall).flatMap(({ thickness }) => {
    const box = { left: scale.x(-edge - thickness), right: scale.x(-edge), top, bottom };
    edge += thickness;
    return [hatch(box, 3.5, [], false), rect(box, 'thin')];
  });
  const frame = { left: back, right: scale.x(-edge), top, bottom };
  if (wall.framing === 'hollow') return [face, ...sheets];
  return [face, ...sheets, hatch(frame, 12), ...grain(frame.left, frame.right, top, bottom)];
}

/** The near and far faces of what stands in the wall. */
function grain(left: number, right: number, top: number, bottom: number): string[] {
  return [
    strokes(
      [left, right].map((x) => [
        { x, y: top },
        { x, y: bottom },
      ]),
      'thin',
    ),
  ];
}
