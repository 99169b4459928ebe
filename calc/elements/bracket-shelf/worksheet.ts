import type { Section, Step, Table } from '../../../shared/check-result.ts';
import {
  show,
  showInCalculation,
  significant,
  type Unit,
  type UnitSystem,
} from '../../../shared/quantity/index.ts';
import type { Worked } from '../../formula/step.ts';
import { work } from '../../formula/step.ts';
import {
  neutralDistance,
  showWarping,
  stripShare,
  twistAxis,
} from '../../mechanics/open-section-formulas.ts';
import { effectiveStiffness, secondMoment } from '../../mechanics/section-formulas.ts';
import { longTermMovement } from '../../standards/nds-2018/3-members.ts';
import type { Fixing } from '../fixing/fixing.ts';
import { geometrySections } from '../fixing/geometry.ts';
import type { Judged } from '../judged.ts';
import { checkSections, creepStatement, section } from '../section.ts';
import type { Board } from './board.ts';
import type { Context } from './context.ts';
import type { Contents } from './contents.ts';
import { givenStatements } from './given.ts';
import type { HandCheck } from './hand-check.ts';
import type { Movements } from './movements.ts';
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
    sectionSection(parts),
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

function sectionSection({ context, spring }: Parts): Section {
  const { shelf } = context;
  const { board, system } = shelf;
  const { section: s } = board;
  const c = (value: number, unit: Unit): string => showInCalculation(value, unit, system);
  const [only] = board.parts;
  const plain = board.parts.length === 1 && only !== undefined;
  const steps = [
    ...(plain ? [work(secondMoment, { b: only.width_m, t: only.height_m }, system).step] : []),
    ...(board.bonded
      ? [work(effectiveStiffness, { EI_x: s.EIx_Nm2, EI_xy: s.EIxy_Nm2, EI_y: s.EIy_Nm2 }, system).step]
      : []),
    ...axisSteps(board, system),
    ...(spring === null ? [] : [spring.step]),
  ];
  const { warp } = board.twisting;
  return section('section', 'Section', {
    statements: [
      {
        label: 'Centroid from the wall, and from the underside',
        value: `${c(s.centroidY_m, 'm')}, ${c(s.centroidZ_m, 'm')}`,
        source: 'weighted by stiffness',
      },
      { label: 'EI about the level axis, EI_x', value: c(s.EIx_Nm2, 'N.m2'), source: 'sum over the parts' },
      { label: 'EI about the upright axis, EI_y', value: c(s.EIy_Nm2, 'N.m2'), source: 'sum over the parts' },
      { label: 'Product term, EI_xy', value: c(s.EIxy_Nm2, 'N.m2'), source: 'sum over the parts' },
      ...(board.bonded
        ? []
        : [
            {
              label: 'EI of layers that slide on each other',
              value: c(board.EI_Nm2, 'N.m2'),
              source: 'sum of their own',
            },
          ]),
      {
        label: 'Shear stiffness κGA, κ = 5/6',
        value: board.GA_N === null ? 'none: shear is inside the stiffness of the panel' : c(board.GA_N, 'N'),
        source:
          board.twisting.strips.length > 0 && shelf.document.board.box === undefined
            ? '1 / Σ v² / κGA, each part by its share v of the shear'
            : 'sum over the parts that carry shear',
      },
      {
        label: 'Twisting stiffness GJ',
        value: c(board.twisting.GJ_Nm2, 'N.m2'),
        source: 'Roark, solid rectangles; Bredt for a box',
      },
      ...(warp === null
        ? []
        : [
            {
              label: 'Stiffness against warping EI_w',
              value: showWarping(warp.EIw_Nm4, system),
              source: 'Vlasov, sum over the parts',
            },
          ]),
      {
        label: 'Own weight of the board',
        value: `${show(board.selfWeight_Npm, 'N/m', system)}, ${show(board.weightAt_m, 'm', system)} from the wall`,
        source: 'density × area',
      },
    ],
    steps,
    tables: [
      {
        title: 'Parts; y from the wall, z from the underside',
        head: ['Part', 'Material', 'Width', 'Height', 'y', 'z', 'E'],
        rows: board.parts.map((part) => [
          part.name,
          part.material.label,
          c(part.width_m, 'm'),
          c(part.height_m, 'm'),
          c(part.y_m, 'm'),
          c(part.z_m, 'm'),
          c(part.E_Pa, 'Pa'),
        ]),
      },
    ],
    notes: plain
      ? []
      : ['The board may move sideways, so a section that is not symmetric bends about inclined axes.'],
  });
}

/** Where a board with strips twists about. */
function axisSteps({ twisting: { strips, axisFrom } }: Board, system: UnitSystem): Step[] {
  if (axisFrom === null) return [];
  const shares = strips.flatMap(({ part, neutralFrom, shareFrom }) => [
    work(neutralDistance, neutralFrom, system, `${neutralDistance.caption}: middle of the ${part.name}`).step,
    work(stripShare, shareFrom, system, `share of the shear in the ${part.name}`).step,
  ]);
  return [...shares, work(twistAxis, axisFrom, system).step];
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
      {
        title: 'Combinations',
        head: ['Combination', 'Shortest load'],
        rows: code.combinations(durations).map(({ name, duration }) => [name, duration.replace('-', ' ')]),
      },
    ],
    notes: [code.combinationSource],
  });
}

function analysisSection({ context, movements }: Parts): Section {
  const { shelf, service } = context;
  const { system, board } = shelf;
  const forces = service.map((each) => each.forces);
  const most = (pick: (force: (typeof forces)[number]) => number): number => Math.max(...forces.map(pick));
  const governing = movements.bays.reduce((a, b) => (b.longTerm.value > a.longTerm.value ? b : a));
  const { factor } = board.creep;
  const sustained = (governing.longTerm.value - governing.live.value) / Math.max(factor - 1, 1e-9);
  const short = governing.longTerm.value - factor * sustained;
  const steps =
    factor > 1 && sustained >= 0 && short >= 0
      ? [work(longTermMovement, { K_cr: factor, Delta_LT: sustained, Delta_ST: short }, system).step]
      : [];
  return section('analysis', 'Analysis', {
    steps,
    tables: [
      {
        title: 'Brackets: reactions, everything that can be there, unfactored; up on the board',
        head: ['Bracket', 'At', 'Largest', 'Smallest', 'Own weight alone'],
        rows: shelf.positions_m.map((position, i) => [
          String(i + 1),
          show(position, 'm', system),
          show(
            most((force) => force.reactionMax_N[i] ?? 0),
            'N',
            system,
          ),
          show(-most((force) => -(force.reactionMin_N[i] ?? 0)), 'N', system),
          show(service[0].solved.model.cases[0]?.field.reactions_N[i] ?? 0, 'N', system),
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
    ],
    notes: [
      'The board is a continuous beam on its brackets with bending and shear movement, solved exactly bay by bay (equation of three moments); a free line load may be on or off in each bay, an overhang is a bay, and a roaming load stands where it is worst.',
    ],
  });
}
