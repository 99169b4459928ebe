import {
  parseLimit,
  type CounterOverhangDocument,
  type Duration,
  type Limit,
} from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { poundForce, show, standardGravity, type UnitSystem } from '../../../shared/quantity/index.ts';
import { ndsAsd } from '../../codes/nds-asd/index.ts';
import { assumedConditions, wetWarning } from '../assumed-conditions.ts';
import { panelGravity } from '../panel-gravity.ts';
import { unknownNamesOfOverhang } from './names.ts';
import type { Base, Overhang, Person, Serving } from './overhang.ts';
import { stoolSpacing_m, usual, wantedRating } from './usual.ts';
import { impactWarning, staysWarning } from '../person-warnings.ts';
import { readFinish, type Finish } from './finish.ts';
import { readTopPanel } from './top-panel.ts';
import { readTopScrews } from './top-screws.ts';
import { readTopWood } from './top-wood.ts';

/** How hard somebody leans or sits on the edge. */
const person_N = 250 * poundForce;

export type OverhangReading =
  | { readonly ok: true; readonly overhang: Overhang }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

/** Fills in every default, looks up every name, and says all it had to assume. */
export function readOverhang(document: CounterOverhangDocument): OverhangReading {
  const system = document.units ?? 'inch-pound';
  const code = ndsAsd;
  const unknown = unknownNamesOfOverhang(document);
  if (unknown.length > 0) return { ok: false, errors: unknown };
  const isPanel = document.top.build === 'panel';
  const wood = isPanel ? readTopPanel(document, code, system) : readTopWood(document, code, system);
  if (!wood.ok) return wood;
  const { top: input } = document;
  const base = readBase(document, system);
  const loads = readLoads(document, system);
  const { material } = wood.wood;
  const volume = input.length * input.depth * input.thickness;
  const gravity = isPanel ? (panelGravity(material.label) ?? null) : material.specificGravity;
  const screws = readTopScrews(document, gravity, system);
  const finish = readFinish(document.top.finish, system);
  const limits = readLimits(document, finish);
  return {
    ok: true,
    overhang: {
      document,
      system,
      code,
      top: {
        length_m: input.length,
        depth_m: input.depth,
        thickness_m: input.thickness,
        isAlong: (input.staves ?? 'along') === 'along',
        wood: wood.wood,
        weight_N:
          material.density_kgm3 * volume * standardGravity +
          (finish?.weight_Npm2 ?? 0) * input.length * input.depth,
        finish,
      },
      base: base.base,
      screws,
      props: document.props ?? [],
      serving: loads.serving,
      person: loads.person,
      limits: limits.limits,
      assumptions: [
        ...assumedConditions(document.conditions),
        ...(input.build === undefined
          ? ['The top is glued up edge to edge from staves, full length, face grain up.']
          : []),
        ...(input.staves === undefined
          ? [`The ${isPanel ? 'face grain runs' : 'staves run'} along the stool edge.`]
          : []),
        ...(finish?.assumptions ?? []),
        ...base.assumptions,
        ...loads.assumptions,
        ...limits.assumptions,
        ...(screws === null
          ? ['Nothing is said of screws into the top: it lies loose on its base.']
          : screws.assumptions),
        ...propAssumptions(document),
        ...wood.wood.assumptions,
      ],
      warnings: [
        ...loadWarnings(document, loads, system),
        ...wetWarning(document.conditions),
        ...((loads.person?.load_N ?? 0) === 0 ? ['No person at the edge is counted: none was given.'] : []),
        ...((loads.serving?.pressure_Npm2 ?? 0) === 0
          ? ['Nothing is counted as served on the top: no load over its area was given.']
          : []),
        ...(document.screws !== undefined && gravity === null
          ? [
              'No specific gravity is printed for this wood or panel, so nothing is known of the screws: the top is taken to lie loose.',
            ]
          : []),
      ],
    },
  };
}

/** What somebody who reads the verdict alone would not think of. */
function loadWarnings(
  { top, base, props, loads: given }: CounterOverhangDocument,
  loads: Loads,
  system: UnitSystem,
): string[] {
  const person = (loads.person?.load_N ?? 0) > 0 ? loads.person : null;
  const stools = Math.floor(top.length / stoolSpacing_m + 1e-9);
  const wanted = props?.some((prop) => prop.kind !== 'flat-bar' && prop.source === wantedRating) === true;
  const isStiff = props?.some(
    (prop) => (prop.kind === 'bracket' || prop.kind === 'corbel') && prop.gives === undefined,
  );
  return [
    ...(person !== null && person.at_m === null && stools > 2
      ? [
          `Two people are counted at once, though ${stools} stools fit: more of them leaning or sitting on the edge at once ask more of the top, its screws and its base.`,
        ]
      : []),
    ...(person !== null && person.at_m !== null
      ? [
          `One person is counted, who stays ${show(person.at_m, 'm', system)} along the stool edge: nobody is counted anywhere else.`,
        ]
      : []),
    ...staysWarning(given),
    ...impactWarning('The person', given?.find(({ kind }) => kind === 'person')?.duration),
    ...(wanted
      ? [
          'Nobody has rated these props yet: their rating is what this check wants. It holds only with props that their maker rates for as much.',
        ]
      : []),
    ...(props?.some(({ kind }) => kind !== 'flat-bar') === true
      ? [
          'How the top bears on its brackets, corbels or legs is not checked: give each a plate broad enough not to mark the wood.',
        ]
      : []),
    ...(isStiff === true
      ? [
          'Brackets and corbels are taken as stiff: one that gives leaves more to the wood. Give how far each moves under its rating.',
        ]
      : []),
    ...((base.anchorPull ?? base.anchorPullFront) !== undefined && base.heldToFloor !== true
      ? [
          'The pull of the fasteners into the floor does not count: the base is not said to be held to the floor.',
        ]
      : []),
    ...(base.push === 0 && base.heldToFloor !== true
      ? ['Nobody is taken to push sideways at the top: a push of nothing was given.']
      : []),
    ...(base.panels?.length === 0
      ? ['No upright panels are given: what carries the rails is not known.']
      : []),
  ];
}

function said(isGiven: boolean, words: string): string[] {
  return isGiven ? [] : [words];
}

function readBase(
  { base }: CounterOverhangDocument,
  system: UnitSystem,
): { readonly base: Base; readonly assumptions: readonly string[] } {
  const weightAt_m = base.weightAt ?? base.back;
  const foot_m = base.foot ?? base.front;
  const panels = base.panels ?? [base.from, base.to];
  const height_m = base.height ?? usual.height_m;
  const push_N = base.push ?? usual.push_N;
  return {
    base: {
      from_m: base.from,
      to_m: base.to,
      back_m: base.back,
      front_m: base.front,
      panels_m: [...panels].sort((a, b) => a - b),
      railThickness_m: base.rail?.thickness ?? usual.railThickness_m,
      weight_N: base.weight ?? null,
      weightAt_m: base.weight === undefined ? weightAt_m : (base.weightAt ?? (base.back + base.front) / 2),
      foot_m,
      height_m,
      isHeld: base.heldToFloor ?? false,
      anchorPull_N: base.anchorPull ?? null,
      anchorPullFront_N: base.anchorPullFront ?? 0,
      push_N,
    },
    assumptions: [
      ...said(base.panels !== undefined, 'Upright panels at both ends of the base.'),
      ...said(
        base.rail !== undefined,
        `The top lies on rails and panels ${show(usual.railThickness_m, 'm', system)} thick (common practice, no source).`,
      ),
      ...said(
        base.rail?.height !== undefined,
        'The rail under the stool side does not bend between panels: where its height is given, its bending and shear are checked, and the top is worked out on rails that bend too.',
      ),
      ...said(
        base.rail?.height === undefined || base.back < 0.01,
        'The rail along the back, where the top stands out too, is taken to be like the one under the stool side.',
      ),
      ...said(
        base.foot !== undefined,
        'The base would tip about its face on the stool side: no toe recess was given.',
      ),
      ...said(
        base.weight === undefined || base.weightAt !== undefined,
        'The weight of the base acts midway between its back and its face.',
      ),
      ...said(base.heldToFloor !== undefined, 'The base is not held to the floor.'),
      ...said(base.height !== undefined, `The base is ${show(height_m, 'm', system)} high.`),
      ...said(
        base.push !== undefined,
        `Somebody pushes sideways at the top with ${show(push_N, 'N', system)}: 50 to 100 lbf is common practice, no source, and the higher is taken.`,
      ),
    ],
  };
}

interface Loads {
  readonly serving: Serving | null;
  readonly person: Person | null;
  readonly assumptions: readonly string[];
}

/** Loads as given; where none at all are given, what is served and a person. */
function readLoads({ loads, top }: CounterOverhangDocument, system: UnitSystem): Loads {
  const given = loads ?? [
    { kind: 'area' as const, amount: usual.serving_Npm2 },
    { kind: 'person' as const, amount: person_N },
  ];
  const area = given.find((load) => load.kind === 'area');
  const person = given.find((load) => load.kind === 'person');
  const isPair = person?.at === undefined && top.length >= 2 * stoolSpacing_m;
  const duration = (
    load: { readonly duration?: Duration | undefined } | undefined,
    usually: Duration,
  ): Duration => load?.duration ?? usually;
  const practice = 'common practice, no source';
  return {
    serving:
      area === undefined
        ? null
        : {
            name: area.name ?? 'Serving',
            pressure_Npm2: area.amount,
            duration: duration(area, 'ten-years'),
            sustained: area.sustained ?? usual.sustained,
          },
    person:
      person === undefined
        ? null
        : {
            name: person.name ?? 'Person at the edge',
            load_N: person.amount,
            patch_m: Math.min(person.patch ?? usual.patch_m, top.depth, top.length),
            duration: duration(person, 'seven-days'),
            at_m: person.at ?? null,
            isPair,
          },
    assumptions: [
      ...said(
        loads !== undefined,
        `No loads given: ${show(usual.serving_Npm2, 'N/m2', system)} served on the top and a person of ${show(person_N, 'N', system)} at the edge (${practice}).`,
      ),
      ...said(
        area === undefined || area.duration !== undefined,
        'What is served stands there for up to ten years in all.',
      ),
      ...said(
        area === undefined || area.sustained !== undefined,
        `${usual.sustained} of what is served stays for years (${practice}).`,
      ),
      ...said(
        person === undefined || person.duration !== undefined,
        'A person at the edge counts as a load of seven days in all.',
      ),
      ...said(
        person === undefined || person.patch !== undefined,
        `A person presses on a square of ${show(usual.patch_m, 'm', system)}, one side flush with the edge (ASCE 7 stair treads, by analogy).`,
      ),
      ...(isPair
        ? [
            `Two stools fit along the edge: two people ${show(stoolSpacing_m, 'm', system)} apart are counted too (${practice}).`,
          ]
        : []),
      ...(area === undefined
        ? []
        : [
            'What is served stands on the overhangs alone or on the whole top, or where there are several of them on one alone or everywhere but there, whichever is worst.',
          ]),
    ],
  };
}

function limit(written: string): Limit {
  return parseLimit(written) ?? { kind: 'none', written: 'none' };
}

function readLimits(
  { limits }: CounterOverhangDocument,
  finish: Finish | null,
): {
  readonly limits: Overhang['limits'];
  readonly assumptions: readonly string[];
} {
  return {
    limits: {
      live: limits?.live ?? finish?.limit ?? limit('1/4 in'),
      serving: finish?.limit ?? limit('L/360'),
      longTerm: limits?.longTerm ?? finish?.limit ?? limit('L/240'),
    },
    assumptions: [
      ...said(
        limits?.live !== undefined || finish !== null,
        'The edge may move 1/4 in under a person: advised (common practice, no source); no limit is published.',
      ),
      ...said(
        limits?.longTerm !== undefined || finish !== null,
        'Movement over the years limited to L/240 (IBC Table 1604.3, floors).',
      ),
      ...(finish === null
        ? [
            'Movement under what is served is held against L/360 (IBC Table 1604.3, floors); L is twice the overhang.',
          ]
        : [
            `Every movement is held against ${finish.limit.written} of twice the overhang, with the weight of the top too, whatever other limit is given: ${finish.clause}.`,
          ]),
    ],
  };
}

function propAssumptions({ props = [] }: CounterOverhangDocument): string[] {
  const kinds = new Set(props.map(({ kind }) => kind));
  return [
    ...(kinds.has('flat-bar')
      ? [
          'A flat bar is screwed tight under the top and not let into it, which would weaken the wood over it; it bends as the top does, and does not act as one section with it. The rail is notched to its thickness and carries it; behind the rail its end presses up against the top, which its weight and its screws hold down.',
        ]
      : []),
    ...(props.some((prop) => prop.kind === 'flat-bar' && prop.metal === undefined)
      ? ['Metal of the bars not stated: ASTM A36 taken.']
      : []),
    ...(kinds.has('leg') ? ['Legs stand on a floor that does not give.'] : []),
  ];
}
