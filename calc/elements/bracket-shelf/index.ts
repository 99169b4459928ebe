import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import { DocumentError } from '../../../shared/check-document/index.ts';
import { cautions } from '../../../shared/cautions.ts';
import type { BracketShelfResult, ProvenanceValue, Remedy } from '../../../shared/check-result.ts';
import { findFastener } from '../../catalogue/index.ts';
import { version } from '../../version.ts';
import { fastenerProvenance, fixingProvenance } from '../fixing/provenance.ts';
import { blowWarning } from '../person-warnings.ts';
import { analysisOf } from './analysis.ts';
import { handCheckOf } from './hand-check.ts';
import { judgeShelf, type Judgement } from './judge.ts';
import { readShelf } from './read-shelf.ts';
import type { Shelf } from './shelf.ts';
import { boardScrewsOf } from './board-screws.ts';
import { summaryOf } from './summary.ts';
import { worksheetOf } from './worksheet.ts';

/** Finds ways out for a shelf that was judged. */
export type FindRemedies = (shelf: Shelf, judgement: Judgement) => readonly Remedy[];

/**
 * Checks a board on brackets along a wall.
 *
 * @param findRemedies what looks for ways out, once the shelf is judged
 * @throws DocumentError where a name is not in the catalogue or a table does not reach the size
 */
export function checkBracketShelf(
  document: BracketShelfDocument,
  findRemedies: FindRemedies = () => [],
): BracketShelfResult {
  const reading = readShelf(document);
  if (!reading.ok) throw new DocumentError(reading.errors);
  const { shelf, contents } = reading;
  const judgement = judgeShelf(shelf);
  const { context, spring, movements, wall, judged, checks, verdict, governing, warnings } = judgement;
  const screws = boardScrewsOf(shelf);
  const grain = checks.some(({ id }) => id === 'edge-strip')
    ? (shelf.board.plate?.grain ?? null)
    : shelf.board.skinGrain;
  const assumptions = [
    ...shelf.assumptions,
    ...(shelf.hold === 'screwed' && screws.assumed ? [`Screws into the board: ${screws.words}.`] : []),
    ...(spring === null
      ? []
      : [
          'The arms bend: the board is worked out on springs as soft as the arms at their tips, and on rigid arms, and the worse counts.',
        ]),
    ...wall.assumptions,
    ...new Set([
      ...shelf.board.materials.flatMap((material) => material.assumptions),
      ...(grain?.assumptions ?? []),
    ]),
  ];
  const analysis = analysisOf(context, movements);
  return Object.freeze({
    schema: 1,
    element: 'bracket-shelf',
    verdict,
    summary: summaryOf(shelf, verdict, governing, checks, movements),
    governing: governing.id,
    checks,
    analysis,
    fixings: wall.fixings,
    remedies: findRemedies(shelf, judgement),
    assumptions,
    warnings: [...blowWarning(shelf.actions), ...shelf.warnings, ...warnings, ...wall.warnings],
    cautions,
    worksheet: {
      sections: worksheetOf({
        context,
        contents,
        movements,
        judged,
        spring,
        hand: handCheckOf(context),
        fixings: wall.tables,
        fixing: wall.fixing,
      }),
    },
    provenance: {
      values: provenanceOf(
        [
          ...shelf.board.materials.flatMap((material) => material.provenance),
          ...(grain?.provenance ?? []),
          ...boardScrewProvenance(shelf),
          ...fixingProvenance(wall.fixing, document.wall, document.brackets.plate?.metal),
        ],
        contents,
      ),
    },
    edition: { code: shelf.code.edition, tool: `Shelf and overhang check ${version}` },
  });
}

/** Where the sizes of the screws into the board come from. */
function boardScrewProvenance(shelf: Shelf): ProvenanceValue[] {
  const found = shelf.hold === 'screwed' ? findFastener(boardScrewsOf(shelf).fastener) : undefined;
  return found?.ok === true ? [fastenerProvenance(found.row, shelf.system)] : [];
}

function provenanceOf(
  materials: readonly ProvenanceValue[],
  contents: readonly ({ readonly provenance: readonly ProvenanceValue[] } | undefined)[],
): ProvenanceValue[] {
  const all = [...materials, ...contents.flatMap((each) => each?.provenance ?? [])];
  return all.filter((value, index) => all.findIndex(({ what }) => what === value.what) === index);
}
