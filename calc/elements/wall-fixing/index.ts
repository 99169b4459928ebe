import { cautions } from '../../../shared/cautions.ts';
import { DocumentError, type WallFixingDocument } from '../../../shared/check-document/index.ts';
import type { WallFixingResult } from '../../../shared/check-result.ts';
import { quantity } from '../../../shared/quantity/index.ts';
import { version } from '../../version.ts';
import { wetWarning } from '../assumed-conditions.ts';
import { judgeOnWall } from '../fixing/on-wall.ts';
import { fixingProvenance } from '../fixing/provenance.ts';
import { blowWarning } from '../person-warnings.ts';
import { verdictOf } from '../verdict.ts';
import { verdictWords } from '../verdict-words.ts';
import { unknownNamesOfWallFixing } from './names.ts';
import { bentBy, plateMoment_Nm } from './plate-moment.ts';
import { readWallFixing, type PlateLoad } from './read.ts';
import { worksheetOf } from './worksheet.ts';

/**
 * Checks a plate screwed to a wall, under given forces.
 *
 * @throws DocumentError where a name is not in the catalogue, or a fastener can't be driven as is said
 */
export function checkWallFixing(document: WallFixingDocument): WallFixingResult {
  const unknown = unknownNamesOfWallFixing(document);
  if (unknown.length > 0) throw new DocumentError(unknown);
  const plate = readWallFixing(document);
  const { fixing, system, loads, standing, isCentred } = plate;
  const { metal } = document.plate;
  const answer = judgeOnWall({
    fixing,
    wall: document.wall,
    standings: [standing],
    isCentred,
    bent:
      metal === undefined
        ? null
        : {
            metal,
            armWidth_m: null,
            moment: (load) => bentBy(fixing, load),
            size: (load) => plateMoment_Nm(fixing, load),
          },
  });
  const checks = answer.judged.map(({ check }) => check);
  const { verdict, governing } = verdictOf(checks);
  const total = (force: (load: PlateLoad) => number): number =>
    loads.reduce((sum, load) => sum + force(load), 0);
  return Object.freeze({
    schema: 1,
    element: 'wall-fixing',
    verdict,
    summary: verdictWords(verdict, governing, checks),
    governing: governing.id,
    checks,
    analysis: {
      plate: {
        shear: quantity(
          total(({ shear_N }) => shear_N),
          'N',
          system,
        ),
        pull: quantity(
          total(({ pull_N }) => pull_N),
          'N',
          system,
        ),
        couple: quantity(
          total(({ couple_Nm }) => couple_Nm),
          'N.m',
          system,
        ),
      },
    },
    fixings: answer.fixings,
    remedies: [],
    assumptions: [...plate.assumptions, ...answer.assumptions],
    warnings: [
      ...blowWarning(plate.loads),
      ...wetWarning(plate.document.conditions),
      ...plate.warnings,
      ...answer.warnings,
    ],
    cautions,
    worksheet: { sections: worksheetOf(plate, answer) },
    provenance: { values: fixingProvenance(fixing, document.wall, metal) },
    edition: { code: plate.code.edition, tool: `Shelf and overhang check ${version}` },
  });
}
