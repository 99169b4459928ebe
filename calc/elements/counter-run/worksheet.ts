import type { Section, Statement, Table } from '../../../shared/check-result.ts';
import { show, showInCalculation, significant, type Unit } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import type { Judged } from '../judged.ts';
import { checkSections, combinationTable, creepStatement, section } from '../section.ts';
import { stripMovement, wholeLoad } from './bow-formulas.ts';
import type { Service } from './checks.ts';
import { usual } from '../counter-overhang/usual.ts';
import { stripStiffness, type Run } from './run.ts';
import type { State } from './solve.ts';

/** The calculation a reviewer follows, from what was given to what comes of it. */
export function worksheetOf(
  run: Run,
  states: readonly State[],
  service: Service | null,
  judged: readonly Judged[],
  meshError: number | null,
): Section[] {
  const { panel, code, serving, system } = run;
  const { material } = panel;
  const durations = [serving, run.person].flatMap((load) => (load === null ? [] : [load.duration]));
  return [
    section('given', 'Given', { statements: given(run) }),
    section('material', 'Material values', {
      statements: [...material.statements, creepStatement(material)],
      steps: material.steps,
    }),
    section('section', 'The panels as a plate', {
      steps: panel.steps,
      notes:
        panel.sheets > 1
          ? [`The lines above are of one sheet; there are ${panel.sheets} of them, not glued.`]
          : [],
    }),
    ...railSections(run, states),
    section('actions', 'Actions', {
      tables: [combinationTable(code, durations)],
      notes: [code.combinationSource],
    }),
    section('analysis', 'Analysis', {
      tables: service === null ? [] : [bySolver(run, states, service, judged)],
      notes: [
        'A thin plate that lies on the cabinet sides, and on rails where there are any, solved by conforming rectangles; supports push and never pull. Somebody stands in the middle, at places on the way from there to the sides and the long edges, along each of those edges, and beside what carries the panels; the worst of them counts.',
        'Somebody who stands over a cabinet side or a rail, or nearer to it than the panels are thick, adds no shear there (NDS 3.4.3.1); the pressure there counts them in full.',
        'The plate leaves out what shear adds to the movement: little in panels as thin for their span as these.',
        `Shear where the panels lie is from the force there, averaged where it is largest over ${show(run.person?.patch_m ?? usual.patch_m, 'm', system)}, the width that somebody stands on: at a corner a plate presses on a point.`,
        ...(meshError === null
          ? []
          : [
              `The mesh is chosen from the sizes. All over the panels its moments may be off by ${significant(meshError * 100, 2)} % (Zienkiewicz and Zhu, in the energy norm).`,
            ]),
      ],
    }),
    ...(service === null ? [] : [handCheck(run, states, service)]),
    ...checkSections(judged),
    section('summary', 'Summary', {}),
  ];
}

/** What the checks take from the plate. */
function bySolver(
  { system, rails }: Run,
  states: readonly State[],
  { stays_m }: Service,
  judged: readonly Judged[],
): Table {
  const most = (pick: 'alongSpan_N' | 'acrossSpan_N' | 'end_Npm' | 'onSide_Npm' | 'onRail_Npm'): number =>
    Math.max(...states.map((state) => state[pick]));
  const c = (value: number, unit: Unit): string => showInCalculation(value, unit, system);
  return {
    title: 'By the plate solver: the most of each over all combinations and places',
    head: ['What', 'Value'],
    rows: [
      ['Moment along the span, for each width', c(most('alongSpan_N'), 'N')],
      ['Moment across the span, for each width', c(most('acrossSpan_N'), 'N')],
      ['Force where they lie for each length, nobody over it', c(most('end_Npm'), 'N/m')],
      ['Force on a cabinet side for each length', c(most('onSide_Npm'), 'N/m')],
      ...(rails.length === 0 ? [] : [['Force on a rail for each length', c(most('onRail_Npm'), 'N/m')]]),
      ['Movement under what stays for years', c(stays_m, 'm')],
      ...judged.flatMap(({ check: { id, title, demand } }) =>
        /-(even|live|together)$/.test(id) && demand !== null ? [[title, c(demand.value, 'm')]] : [],
      ),
    ],
  };
}

/** The wood of the rails, and the most that each carries. */
function railSections({ rail, rails, system }: Run, states: readonly State[]): Section[] {
  if (rail === null) return [];
  const { material } = rail;
  // Each rail carries as much as the other where there are two.
  const most = (pick: 'moment_Nm' | 'end_N'): number =>
    Math.max(0, ...states.flatMap((state) => state.rails.map((each) => each[pick])));
  return [
    section('material', 'The rails', {
      statements: [...material.statements, creepStatement(material)],
      steps: material.steps,
      tables: [
        {
          title: 'The most that each rail carries, its own weight included',
          head: ['Rail', 'Moment', 'Force at an end'],
          rows: [
            [
              rails.join(' and '),
              showInCalculation(most('moment_Nm'), 'N.m', system),
              showInCalculation(most('end_N'), 'N', system),
            ],
          ],
        },
      ],
      notes: [
        `Each rail is a simple beam of ${show(rail.span_m, 'm', system)}, from the middle of one seat to the middle of the other, with shear; what the panels press on it with, mesh line by mesh line, gives its moments by statics. The larger creep of panels and rails is taken for both.`,
      ],
    }),
  ];
}

/** A strip beside the plate. */
function handCheck(run: Run, states: readonly State[], service: Service): Section {
  const { system, serving, dead_Npm2 } = run;
  const q = dead_Npm2 + (serving?.pressure_Npm2 ?? 0);
  const calm = states.filter(({ spot }) => spot === null).at(-1);
  const served = calm !== undefined && serving !== null && calm.combination.factor(serving.duration) > 0;
  const whole = work(
    wholeLoad,
    { q: dead_Npm2 + (served ? serving.pressure_Npm2 : 0), L: run.span_m, d: run.depth_m },
    system,
  );
  const strip = work(stripMovement, { q, L: run.span_m, EI: stripStiffness(run) }, system);
  return section('hand-check', 'Hand check', {
    steps: [strip.step, whole.step],
    tables: [
      {
        title: 'By hand and by the plate solver, under everything spread evenly',
        head: ['What', 'By hand', 'Plate', 'Plate over hand'],
        rows: [
          [
            'Movement in the middle',
            showInCalculation(strip.value, 'm', system),
            showInCalculation(service.even_m, 'm', system),
            significant(service.even_m / strip.value, 3),
          ],
          [
            'All that carries the panels, nobody there',
            showInCalculation(whole.value, 'N', system),
            showInCalculation(calm?.carried_N ?? 0, 'N', system),
            significant((calm?.carried_N ?? 0) / whole.value, 4),
          ],
        ],
      },
    ],
    notes: [
      'A strip leaves out what the panel carries the other way: without rails the two are close; with rails the plate moves less.',
    ],
  });
}

function given(run: Run): Statement[] {
  const { document, system, panel, finish, dead_Npm2, serving, person } = run;
  const m = (metres: number): string => show(metres, 'm', system);
  const either = (label: string, value: string, isGiven: boolean): Statement => ({
    label,
    value,
    source: isGiven ? 'given' : 'assumed',
  });
  const sheets = document.substrate.sheets ?? 1;
  return [
    either('Clear span', m(run.span_m), true),
    either('Depth', m(run.depth_m), true),
    either(
      'Panels',
      `${panel.material.label}, ${m(run.thickness_m)} thick${sheets > 1 ? `, of ${sheets} sheets` : ''}`,
      document.substrate.material !== undefined,
    ),
    either(
      'Face grain',
      run.isAlong ? 'along the span' : 'across the span',
      document.substrate.grain !== undefined,
    ),
    either(
      'Rails under the long edges',
      run.rails.length === 0 ? 'none' : run.rails.join(' and '),
      document.rails !== undefined,
    ),
    ...railGiven(document, m),
    ...(finish?.statements ?? []),
    either('Weight of panels and finish for each area', show(dead_Npm2, 'N/m2', system), false),
    ...(serving === null
      ? []
      : [
          either(
            'What stands on it',
            show(serving.pressure_Npm2, 'N/m2', system),
            document.loads !== undefined,
          ),
        ]),
    ...(person === null
      ? []
      : [either('Somebody standing', show(person.load_N, 'N', system), document.loads !== undefined)]),
    ...(document.bow === undefined ? [] : [either('Bow measured', m(document.bow.measured), true)]),
    either('Code of practice', run.code.edition, true),
  ];
}

function railGiven({ rail }: Run['document'], m: (metres: number) => string): Statement[] {
  if (rail === undefined) return [];
  const rests =
    rail.seat === undefined ? 'how its ends are held not given' : `${m(rail.seat)} of each end rests`;
  return [
    {
      label: 'Each rail',
      value: `${m(rail.thickness)} thick, ${m(rail.height)} high; ${rests}`,
      source: 'given',
    },
  ];
}
