import { lowerFirst } from '../../../shared/words.ts';
import type { Section, Table } from '../../../shared/check-result.ts';
import { show, showInCalculation, significant } from '../../../shared/quantity/index.ts';
import type { Worked } from '../../formula/step.ts';
import type { Fixing } from '../fixing/fixing.ts';
import { geometrySections } from '../fixing/geometry.ts';
import type { Judged } from '../judged.ts';
import { checkSections, combinationTable, creepStatement, section } from '../section.ts';
import type { Context } from './context.ts';
import type { Contents } from './contents.ts';
import { givenStatements } from './given.ts';
import type { HandCheck } from './hand-check.ts';
import type { Movements } from './movements.ts';
import { sectionOf } from './section-sheet.ts';
import type { Shelf } from './shelf.ts';
import { readingsOf } from './readings.ts';

interface Parts {
  readonly context: Context;
  readonly contents: readonly (Contents | undefined)[];
  readonly movements: Movements;
  readonly judged: readonly Judged[];
  readonly spring: Worked | null;
  readonly hand: HandCheck;
  /** Tables of the fixings, all brackets. */
  readonly fixings: readonly Table[];
  /** One bracket on the wall; null where it is not described. */
  readonly fixing: Fixing | null;
}

/** The calculation a reviewer follows, from what was given to what comes of it. */
export function worksheetOf(parts: Parts): Section[] {
  const { context, judged, hand } = parts;
  return [
    section('given', 'Given', { statements: givenStatements(context.shelf) }),
    materialSection(parts),
    sectionOf(context.shelf, parts.spring),
    actionsSection(parts),
    analysisSection(parts),
    section('hand-check', 'Hand check', {
      steps: hand.steps,
      tables: hand.table === null ? [] : [hand.table],
      notes: hand.notes,
    }),
    ...checkSections(judged),
    ...(parts.fixings.length === 0
      ? []
      : [section('fixings', 'Fixings into the wall', { tables: parts.fixings })]),
    ...geometrySections(parts.fixing),
    section('summary', 'Summary', { tables: [readingsOf(context, parts.movements)] }),
  ];
}

function materialSection({ context }: Parts): Section {
  const { materials, creep } = context.shelf.board;
  return section('material', 'Material values', {
    statements: [
      ...materials.flatMap((material) => [
        ...material.statements,
        {
          label: 'Density, for its own weight',
          value: show(material.density_kgm3, 'kg/m3', context.shelf.system),
          source: material.basis === 'panel' ? 'panel table' : 'at 12 % moisture',
        },
      ]),
      creepStatement({ creep }),
    ],
    steps: materials.flatMap((material) => material.steps),
  });
}

function actionsSection({ context, contents }: Parts): Section {
  const { shelf } = context;
  const { system, actions, code } = shelf;
  const durations = actions.map(({ duration }) => duration);
  return section('actions', 'Actions', {
    steps: contents.flatMap((each) => each?.steps ?? []),
    tables: [
      {
        title: 'Loads',
        head: ['Load', 'Amount', 'Where', 'From the wall', 'Duration', 'Comes and goes', 'Stays for years'],
        rows: actions.map((action, index) => {
          const { load } = action;
          const given = shelf.document.loads?.[index];
          const inAll =
            load.kind === 'line' && given?.kind === 'line' && given.total !== undefined
              ? ` (${show(given.total, 'N', system)} in all)`
              : '';
          const amount =
            load.kind === 'line'
              ? `${show(load.load_Npm, 'N/m', system)}${inAll}`
              : show(load.load_N, 'N', system);
          const where = {
            line: () =>
              load.kind === 'line'
                ? `${show(load.from_m, 'm', system)} to ${show(load.to_m, 'm', system)}`
                : '',
            point: () => (load.kind === 'point' ? show(load.at_m, 'm', system) : ''),
            roaming: () => 'anywhere along the front edge',
          }[load.kind]();
          return [
            action.name,
            amount,
            where,
            show(action.eccentricity_m, 'm', system),
            action.duration.replace('-', ' '),
            action.free ? 'yes' : 'no',
            significant(action.sustained, 2),
          ];
        }),
      },
      combinationTable(code, durations),
    ],
    notes: [code.combinationSource],
  });
}

function analysisSection({ context, movements, judged }: Parts): Section {
  const { shelf, service } = context;
  const { system } = shelf;
  const n = (newtons: number): string => showInCalculation(newtons, 'N', system);
  const forces = service.map((each) => each.forces);
  const most = (pick: (force: (typeof forces)[number]) => number): number => Math.max(...forces.map(pick));
  return section('analysis', 'Analysis', {
    tables: [
      {
        title: 'Brackets: reactions, everything that can be there, unfactored; up on the board',
        head: ['Bracket', 'At', 'Largest', 'Smallest', 'Own weight alone'],
        rows: shelf.positions_m.map((position, i) => [
          String(i + 1),
          show(position, 'm', system),
          n(most((force) => force.reactionMax_N[i] ?? 0)),
          n(-most((force) => -(force.reactionMin_N[i] ?? 0))),
          n(service[0].solved.model.cases[0]?.field.reactions_N[i] ?? 0),
        ]),
      },
      {
        title: 'Bays: movement from the straight line between brackets',
        head: ['From', 'To', 'Under load', 'Over the years', 'Twist adds'],
        rows: movements.bays.map(({ bay, live, longTerm, twistLive }) => [
          show(bay.from_m, 'm', system),
          show(bay.to_m, 'm', system),
          show(live.value, 'm', system),
          show(longTerm.value, 'm', system),
          `${show(twistLive.value_m, 'm', system)} at the ${twistLive.edge} edge`,
        ]),
      },
      {
        title: 'Largest moments and shear',
        head: ['What', 'Value', 'At'],
        rows: (['sagging', 'hogging', 'shear'] as const).map((what) => {
          const peak = forces
            .map((force) => force[what])
            .reduce((a, b) => (Math.abs(b.value) > Math.abs(a.value) ? b : a));
          const unit = what === 'shear' ? 'N' : 'N.m';
          return [
            { sagging: 'Sagging moment', hogging: 'Hogging moment', shear: 'Shear' }[what],
            showInCalculation(peak.value, unit, system),
            show(peak.at_m, 'm', system),
          ];
        }),
      },
      ...byLoad(shelf, judged),
    ],
    notes: [
      'The board is a continuous beam on its brackets with bending and shear movement, solved exactly bay by bay (equation of three moments); a free line load may be on or off in each bay, an overhang is a bay, and a roaming load stands where it is worst.',
    ],
  });
}

/** What the checks take from the solver, each where it is largest, load by load; columns that are alike are one. */
function byLoad({ actions, system }: Shelf, judged: readonly Judged[]): Table[] {
  const columns = new Map<string, { readonly names: Set<string>; readonly shown: readonly string[] }>();
  for (const { byLoad: found } of judged) {
    if (found === undefined) continue;
    const shares = found.shares();
    const all = [...shares, shares.reduce((sum, share) => sum + share, 0)];
    const shown = all.map((share) => showInCalculation(share, found.unit, system));
    const column = columns.get(shown.join()) ?? { names: new Set(), shown };
    columns.set(shown.join(), { ...column, names: column.names.add(found.what) });
  }
  if (columns.size === 0) return [];
  const head = ['Load', 'The board itself', ...actions.map(({ name }) => name), 'Together'];
  const [first = [], ...rows] = head.map((name, row) => [
    name,
    ...[...columns.values()].map(({ names, shown }) => [headed(names), ...shown][row] ?? ''),
  ]);
  const title = 'By the solver, load by load: what the checks below take, each where it asks most';
  return [{ title, head: first, rows }];
}

/** The heading of a column that says all of these. */
function headed(names: ReadonlySet<string>): string {
  const [first = '', ...others] = names;
  return [first, ...others.map(lowerFirst)].join('; ');
}
