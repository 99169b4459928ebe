import type { Section } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import { geometrySections } from '../fixing/geometry.ts';
import { fixingStatements } from '../fixing/given-fixing.ts';
import type { WallJudgement } from '../fixing/on-wall.ts';
import { tableOf } from '../fixing/standing.ts';
import { checkSections, section } from '../section.ts';
import { combinationsOf, type PlateOnWall } from './read.ts';

/** The calculation a reviewer follows, from what was given to what comes of it. */
export function worksheetOf(plate: PlateOnWall, answer: WallJudgement): Section[] {
  return [
    section('given', 'Given', { statements: givenStatements(plate) }),
    actionsSection(plate),
    ...checkSections(answer.judged),
    section('fixings', 'Fixing into the wall', {
      tables: [tableOf(answer.fixings, 'Plate', 'The plate; pull and shear are those of its highest screw')],
    }),
    ...geometrySections(plate.fixing),
  ];
}

function givenStatements({ document, system }: PlateOnWall) {
  const { position } = document;
  return [
    ...fixingStatements(document, system),
    ...(position === undefined
      ? []
      : [
          {
            label: 'Middle of the plate, measured as the studs are',
            value: show(position, 'm', system),
            source: 'given',
          },
        ]),
  ];
}

function actionsSection({ loads, code, system }: PlateOnWall): Section {
  return section('actions', 'Actions', {
    tables: [
      {
        title: 'Loads on the plate, about the wall finish',
        head: ['Load', 'Shear', 'Pull', 'Couple', 'Duration'],
        rows: loads.map((load) => [
          load.name,
          show(load.shear_N, 'N', system),
          show(load.pull_N, 'N', system),
          show(load.couple_Nm, 'N.m', system),
          load.duration.replace('-', ' '),
        ]),
      },
      {
        title: 'Combinations',
        head: ['Combination', 'Shortest load', 'Factor C_D'],
        rows: combinationsOf(loads, code).map(({ name, duration }) => [
          name,
          duration.replace('-', ' '),
          String(code.connectionDuration(duration)),
        ]),
      },
    ],
    notes: [code.combinationSource],
  });
}
