import type { Section, Table } from '../../../shared/check-result.ts';
import { poundForce, show, showInCalculation, significant } from '../../../shared/quantity/index.ts';
import type { Judged } from '../judged.ts';
import { checkSections, combinationTable, creepStatement, section } from '../section.ts';
import { worstOf, type Analysed } from './analysed.ts';
import type { EffectName } from './effects.ts';
import { railWood } from './checks/rail-wood.ts';
import { freeEdges } from './people.ts';
import { movementSection, readingsTable } from './geometry.ts';
import { givenStatements } from './given.ts';
import { stiffGive_mpN } from './plate-model.ts';
import { handCheck } from './hand-check.ts';
import { looseShare, movingShare } from './top-tipping.ts';
import { loadDurations, type Overhang } from './overhang.ts';
import { usual } from './usual.ts';
import { placeWords, stateWords } from './where.ts';

/** The calculation a reviewer follows, from what was given to what comes of it. */
export function worksheetOf(
  overhang: Overhang,
  analysed: Analysed,
  judged: readonly Judged[],
  meshError: number | null,
): Section[] {
  const { top } = overhang;
  return [
    section('given', 'Given', { statements: givenStatements(overhang) }),
    materialSection(overhang),
    section('section', 'The top as a plate', {
      steps: top.wood.steps,
      notes: [
        'A thin plate with different stiffness along and across the grain, solved by conforming rectangles; one Poisson ratio only, since the printed pairs do not agree.',
        top.wood.shear === null
          ? 'A thin plate leaves shear out: that of a panel is inside its printed stiffness.'
          : 'A thin plate leaves shear out: how far the edges move has it added, by the work that it does (within a twentieth of what a plate with shear moves, on the tops it was tried on); stresses are left as they are, and screws, which shear asks for less.',
        ...(top.wood.sheets > 1
          ? [`The lines above are of one sheet; the top has ${top.wood.sheets} of them, not glued.`]
          : []),
      ],
    }),
    ...railSection(overhang),
    actionsSection(overhang),
    analysisSection(overhang, analysed, meshError),
    ...handCheck(overhang, analysed),
    ...checkSections(judged),
    movementSection(overhang),
    section('summary', 'Summary', { tables: [readingsTable(overhang)] }),
  ];
}

function materialSection({ top, system }: Overhang): Section {
  const { material } = top.wood;
  return section('material', 'Material values', {
    statements: [
      ...material.statements,
      {
        label: 'Density, for its own weight',
        value: show(material.density_kgm3, 'kg/m3', system),
        source: 'at 12 % moisture',
      },
      creepStatement(material),
    ],
    steps: material.steps,
  });
}

/** Where the strength of the rails comes from, if they are judged. */
function railSection(overhang: Overhang): Section[] {
  const material = railWood(overhang);
  if (material === null) return [];
  const { statements, steps } = material;
  return [section('material', 'The rails', { statements, steps })];
}

function actionsSection(overhang: Overhang): Section {
  const { serving, person, code, system } = overhang;
  const durations = loadDurations(overhang);
  const rows = [
    ...(serving === null
      ? []
      : [
          [
            serving.name,
            show(serving.pressure_Npm2, 'N/m2', system),
            'the overhangs or the whole top',
            serving.duration,
            significant(serving.sustained, 2),
          ],
        ]),
    ...(person === null
      ? []
      : [
          [
            person.name,
            show(person.load_N, 'N', system),
            `${person.at_m === null ? 'anywhere on every free edge' : `${show(person.at_m, 'm', system)} along the stool edge`}${person.isPair ? ', and two side by side' : ''}`,
            person.duration,
            '0',
          ],
        ]),
  ];
  return section('actions', 'Actions', {
    tables: [
      {
        title: 'Loads',
        head: ['Load', 'Amount', 'Where', 'Duration', 'Stays for years'],
        rows: rows.map((row) => row.map((cell) => cell.replace('-', ' '))),
      },
      combinationTable(code, durations),
    ],
    notes: [code.combinationSource],
  });
}

function analysisSection(overhang: Overhang, analysed: Analysed, meshError: number | null): Section {
  const { screws, system } = overhang;
  return section('analysis', 'Analysis', {
    tables: analysed.isLost ? [] : [worstTable(overhang, analysed)],
    notes: [
      'People are moved along the stool edge and every edge that stands out, corners included, and along the front rail where props carry the edge, and then closer around the worst places, on a coarse mesh; the worst of them are worked out on a fine one. Rails, panels and props push and never pull.',
      ...(meshError === null
        ? []
        : [
            `The mesh is chosen from the sizes, closest at the props and along the rail. All over the top its moments may be off by ${significant(meshError * 100, 2)} % (Zienkiewicz and Zhu, in the energy norm); on the tops it was tried on, a mesh twice as fine raised no governing value by more than a tenth.`,
          ]),
      `The force on a rail or panel for each length is averaged where it is largest over ${show(overhang.person?.patch_m ?? usual.patch_m, 'm', system)}, the width that somebody takes up: at a corner a plate presses on a point.`,
      screwNote(overhang),
      ...(screws === null
        ? []
        : [
            'Where a screw pulls with all it is allowed, the stresses of the top, what its rails carry and its props are worked out with screws that go on holding too: what is allowed is a fifth or so of what they bear (NDS 12.2, memory), and the harder they hold, the more the top is clamped.',
          ]),
      ...(overhang.document.base.rail?.height === undefined
        ? []
        : [
            'The rails are taken as stiff, and as simple beams between panels that bend under the top, past the last panel as arms of them; the worse counts.',
          ]),
      ...giveNotes(overhang),
      ...(analysed.isLost
        ? ['The top tips off its base under some of the loads: nothing more can be worked out.']
        : []),
    ],
  });
}

/** On which bounds of its screws the top is worked out, and with how much of the people on loose ones. */
function screwNote(overhang: Overhang): string {
  if (overhang.screws === null) return 'The top lies loose on its base.';
  const holding = 'Worked out with the screws holding, each up to its allowable pull';
  const [share, moving] = [looseShare(overhang), movingShare(overhang)];
  if (share === null)
    return `${holding}: by its weight alone the top could tip with nobody there, so loose screws are no way for it to stand.`;
  const part = (of: number): string => `${significant(of, 2)} of the people`;
  const upTo = share < 1 ? ` under ${part(share)}, which is all that its weight alone bears` : '';
  const byProps =
    moving === share
      ? ''
      : ` Its props alone keep the top on its base with the screws loose: how far it moves is told with them holding${moving === null ? '' : `, and loose under ${part(moving)}`}.`;
  return `${holding}, and with the screws loose${upTo}; the worse counts.${byProps}`;
}

/** How far legs, and brackets of which nobody says it, are taken to give. */
function giveNotes({ props, system }: Overhang): string[] {
  const hasLegs = props.some(({ kind }) => kind === 'leg');
  const hasStiff = props.some(
    ({ kind, ...prop }) => kind !== 'flat-bar' && !('gives' in prop && (prop.gives ?? 0) > 0),
  );
  if (!hasStiff) return [];
  const load_N = system === 'metric' ? 1000 : 100 * poundForce;
  const give = `${showInCalculation(stiffGive_mpN * load_N, 'm', system)} under ${show(load_N, 'N', system)}`;
  return [
    `A prop gives ${give} where nothing is said of it (common practice, no source)${hasLegs ? '; legs are worked out with a tenth of that too, and the worse counts' : ''}.`,
  ];
}

function worstTable(overhang: Overhang, analysed: Analysed): Table {
  const { system, props } = overhang;
  const perWidth = (value: number): string =>
    `${showInCalculation(value, 'N', system)} (moment for each width)`;
  const rows: readonly (readonly [string, EffectName, (value: number) => string])[] = [
    ['Moment along the grain', 'along', perWidth],
    ['Moment across the grain', 'across', perWidth],
    ['Force on the rails for each length', 'rail', (value) => showInCalculation(value, 'N/m', system)],
    ['Rise off the base', 'lift', (value) => show(value, 'm', system)],
    ['Pull on one screw', 'screw', (value) => showInCalculation(value, 'N', system)],
    ...props.flatMap((prop, index) =>
      prop.kind === 'flat-bar'
        ? []
        : [
            [
              `Load on prop ${index + 1}`,
              `prop ${index}`,
              (value: number) => showInCalculation(value, 'N', system),
            ] as const,
            ...(prop.kind === 'leg'
              ? []
              : [
                  [
                    `Couple on prop ${index + 1} about the face of the base`,
                    `prop couple ${index}`,
                    (value: number) => showInCalculation(value, 'N.m', system),
                  ] as const,
                ]),
          ],
    ),
  ];
  const [softest, served] = [analysed.soft.worst, analysed.service];
  const movements = freeEdges(overhang).flatMap(({ name }) => [
    [`Movement of the ${name} edge, people and what is served`, softest.get(`edge ${name}`)] as const,
    [`Movement of the ${name} edge, what is served`, served.serving.get(`edge ${name}`)] as const,
  ]);
  return {
    title: 'By the plate solver: the worst of each, unfactored',
    head: ['What', 'Value', 'Where', 'With'],
    rows: rows
      .flatMap(([what, name, words]) => {
        const worst = worstOf(analysed, name);
        return worst === undefined
          ? []
          : [[what, words(worst.value), placeWords(worst, system), stateWords(worst, system)]];
      })
      .concat(
        movements.flatMap(([what, worst]) =>
          worst === undefined
            ? []
            : [
                [
                  what,
                  showInCalculation(worst.value, 'm', system),
                  placeWords(worst, system),
                  stateWords(worst, system),
                ],
              ],
        ),
      ),
  };
}
