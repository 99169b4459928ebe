import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import { DocumentError } from '../../../shared/check-document/index.ts';
import { cautions } from '../../../shared/cautions.ts';
import type { CheckResult, ProvenanceValue } from '../../../shared/check-result.ts';
import { version } from '../../version.ts';
import { verdictOf } from '../verdict.ts';
import { analysisOf } from './analysis.ts';
import { bearingCheck } from './checks/bearing.ts';
import { bendingCheck } from './checks/bending.ts';
import { boardScrewsCheck } from './checks/board-screws.ts';
import { bracketCheck } from './checks/bracket.ts';
import { wallAnswer } from './checks/fixing.ts';
import { movementChecks } from './checks/movement.ts';
import { pastBracketCheck } from './checks/past-bracket.ts';
import { shearChecks } from './checks/shear.ts';
import { springOf } from './checks/steel-arm.ts';
import { tipEndwiseCheck, tipForwardCheck } from './checks/tipping.ts';
import { contextOf } from './context.ts';
import type { Judged } from '../judged.ts';
import { handCheckOf } from './hand-check.ts';
import { liftOff } from './lift-off.ts';
import { movementsOf } from './movements.ts';
import { readShelf } from './read-shelf.ts';
import { boardScrewsOf } from './board-screws.ts';
import { summaryOf } from './summary.ts';
import { worksheetOf } from './worksheet.ts';

/**
 * Checks a board on brackets along a wall.
 *
 * @throws DocumentError where a name is not in the catalogue or a table does not reach the size
 */
export function checkBracketShelf(document: BracketShelfDocument): CheckResult {
  const reading = readShelf(document);
  if (!reading.ok) throw new DocumentError(reading.errors);
  const { shelf, contents } = reading;
  const spring = shelf.capacity.basis === 'steel' ? springOf(shelf, shelf.capacity) : null;
  const rigid = contextOf(shelf, spring === null ? [Infinity] : [Infinity, spring.value]);
  const lifted = liftOff(rigid);
  const context = lifted.context;
  const movements = movementsOf(context);
  const wall = wallAnswer(context);
  const judged: Judged[] = [
    bendingCheck(context),
    ...shearChecks(context),
    bearingCheck(context),
    ...movementChecks(context, movements),
    bracketCheck(context),
    ...boardScrewsCheck(context),
    ...tipForwardCheck(context),
    ...tipEndwiseCheck(context),
    ...pastBracketCheck(context),
    ...wall.judged,
  ];
  const checks = judged.map(({ check }) => check);
  const { verdict, governing } = verdictOf(checks);
  const screws = boardScrewsOf(shelf);
  const assumptions = [
    ...shelf.assumptions,
    ...(shelf.hold === 'screwed' && screws.assumed ? [`Screws into the board: ${screws.words}.`] : []),
    ...(spring === null
      ? []
      : [
          'The arms bend: the board is worked out on springs as soft as the arms at their tips, and on rigid arms, and the worse counts.',
        ]),
    ...wall.assumptions,
    ...new Set(shelf.board.materials.flatMap((material) => material.assumptions)),
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
    remedies: [],
    assumptions,
    warnings: [...shelf.warnings, ...lifted.warnings],
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
      }),
    },
    provenance: {
      values: provenanceOf(
        shelf.board.materials.flatMap((material) => material.provenance),
        contents,
      ),
    },
    edition: { code: shelf.code.edition, tool: `Shelf and overhang check ${version}` },
  });
}

function provenanceOf(
  materials: readonly ProvenanceValue[],
  contents: readonly ({ readonly provenance: readonly ProvenanceValue[] } | undefined)[],
): ProvenanceValue[] {
  const all = [...materials, ...contents.flatMap((each) => each?.provenance ?? [])];
  return all.filter((value, index) => all.findIndex(({ what }) => what === value.what) === index);
}
