import type { CounterRunDocument } from '../../../shared/check-document/index.ts';
import { inch } from '../../../shared/quantity/index.ts';
import { levelDimension, loadArrow } from '../dimension.ts';
import { frames, type View } from '../frame.ts';
import { hatch } from '../hatch.ts';
import { dimensionText, textWidth } from '../lettering.ts';
import { scaleBar, trueScale } from '../scale.ts';
import { drawing, line, rect, text, type Drawing } from '../svg.ts';

const side_m = 0.75 * inch;
const standing = 'somebody standing';

/** A counter run from the front, to true scale: cabinet sides, rail, panels in their sheets, tile or stone, somebody in the middle. */
export function runSection(document: CounterRunDocument, view: View): Drawing {
  const units = document.units ?? 'inch-pound';
  const { opening, substrate, finish, rail } = document;
  const frame = frames[view];
  const size = frame.letters;
  const cover_m = finish === undefined ? 0 : finish.thickness + (finish.bed ?? 0);
  const words = `${dimensionText(substrate.thickness, units)} panel`;
  const railWords = rail === undefined ? '' : `${dimensionText(rail.height, units)} rail`;
  const sides_m = Math.max(0.15, (rail?.height ?? 0) + 0.05);
  const finishWords =
    finish === undefined
      ? ''
      : `${dimensionText(finish.thickness, units)} ${finish.kind === 'natural-stone' ? 'stone' : 'tile'}`;
  const lettering = Math.max(...[words, railWords, finishWords].map((each) => textWidth(each, size)));
  const room = { left: frame.left + 4, right: frame.right - lettering - 16 };
  const scale = trueScale(
    opening + 2 * side_m,
    room,
    cover_m + substrate.thickness + sides_m,
    frame.mostHeight,
  );
  const x = (at_m: number): number => scale.x(at_m + side_m);
  const face = size * 3.2;
  const top = face + Math.max(scale.length(cover_m), cover_m > 0 ? 2 : 0);
  const underside = top + Math.max(scale.length(substrate.thickness), 3);
  const foot = underside + scale.length(sides_m);
  const sheets = substrate.sheets ?? 1;
  const panel = { left: x(-side_m), right: x(opening + side_m), top, bottom: underside };
  const panelRow = (top + underside) / 2 + size * 0.35;
  const span = foot + size * 1.8;
  const barAt = { x: frame.left, y: span + size * 1.8 };
  const bounds = { left: 2, right: frame.width - 2 };
  const parts = [
    ...(cover_m > 0
      ? [
          hatch({ ...panel, top: face, bottom: top }, 2.5, [], false),
          rect({ ...panel, top: face, bottom: top }, 'thin'),
        ]
      : []),
    hatch(panel, 4.5),
    rect(panel, 'outline'),
    ...Array.from({ length: sheets - 1 }, (_, index) => {
      const y = top + ((underside - top) * (index + 1)) / sheets;
      return line({ x: panel.left, y }, { x: panel.right, y }, 'thin');
    }),
    ...[x(-side_m), x(opening)].map((left) =>
      rect({ left, right: left + scale.length(side_m), top: underside, bottom: foot }, 'outline'),
    ),
    ...(rail === undefined
      ? []
      : [
          rect(
            { left: x(0), right: x(opening), top: underside, bottom: underside + scale.length(rail.height) },
            'outline',
          ),
          text(
            railWords,
            {
              x: panel.right + 6,
              y: underside + Math.max(scale.length(rail.height) / 2 + size * 0.35, size * 1.5),
            },
            { size },
          ),
        ]),
    text(words, { x: panel.right + 6, y: panelRow }, { size }),
    ...(finish === undefined
      ? []
      : [
          text(
            finishWords,
            { x: panel.right + 6, y: Math.min((face + top) / 2 + size * 0.35, panelRow - size * 1.15) },
            { size },
          ),
        ]),
    ...loadArrow({ x: x(opening / 2), y: face - 20 }, face),
    text(
      standing,
      { x: Math.max(x(opening / 2), bounds.left + textWidth(standing, size) / 2), y: face - 26 },
      { size, anchor: 'middle' },
    ),
    ...levelDimension(
      { from: x(0), to: x(opening), y: span },
      `clear span ${dimensionText(opening, units)}`,
      size,
      bounds,
    ),
    ...scaleBar(scale, barAt, frame.width * 0.3, size, units),
  ];
  return drawing(
    { width: frame.width, height: barAt.y + size },
    {
      kind: `run-section-${view}`,
      title: `From the front${document.title === undefined ? '' : `: ${document.title}`}`,
      description: `Panels ${dimensionText(substrate.thickness, units)} thick${sheets === 1 ? '' : ` in ${sheets} sheets`} over a clear span of ${dimensionText(opening, units)}, ${dimensionText(document.depth, units)} deep${rail === undefined ? '' : `, on rails ${dimensionText(rail.height, units)} high`}${finish === undefined ? '' : `, with ${finish.kind === 'natural-stone' ? 'natural stone' : 'ceramic tile'} ${dimensionText(finish.thickness, units)} thick on them`}.`,
    },
    parts,
  );
}
