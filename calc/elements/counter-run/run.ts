import {
  parseLimit,
  type CounterRunDocument,
  type Duration,
  type Limit,
} from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { poundForce, show, standardGravity, type UnitSystem } from '../../../shared/quantity/index.ts';
import { ndsAsd } from '../../codes/nds-asd/index.ts';
import type { DesignCode } from '../../codes/design-code.ts';
import { assumedConditions, wetWarning } from '../assumed-conditions.ts';
import { readFinish, type Finish } from '../counter-overhang/finish.ts';
import { readTopPanel } from '../counter-overhang/top-panel.ts';
import type { TopWood } from '../counter-overhang/top-wood.ts';
import { usual } from '../counter-overhang/usual.ts';
import { endsHeld } from '../rail-stability.ts';
import { impactWarning, staysWarning } from '../person-warnings.ts';
import { readRail, type RailBeam } from './rails.ts';

/** Somebody who stands on the counter. */
const person_N = 300 * poundForce;

/** Panels over an opening with every default filled in: what all checks look at. */
export interface Run {
  readonly document: CounterRunDocument;
  readonly system: UnitSystem;
  readonly code: DesignCode;
  readonly span_m: number;
  readonly depth_m: number;
  readonly thickness_m: number;
  readonly panel: TopWood;
  /** Whether the face grain runs along the span. */
  readonly isAlong: boolean;
  readonly rails: readonly ('front' | 'back')[];
  /** What the rails are; null where there are none, or their size is not given: then they are taken not to bend. */
  readonly rail: RailBeam | null;
  /** The greatest creep of what is there: final movement over first. */
  readonly creep: number;
  readonly finish: Finish | null;
  /** Weight of panels and finish for each area. */
  readonly dead_Npm2: number;
  readonly serving: {
    readonly pressure_Npm2: number;
    readonly duration: Duration;
    readonly sustained: number;
  } | null;
  readonly person: { readonly load_N: number; readonly patch_m: number; readonly duration: Duration } | null;
  readonly limits: { readonly even: Limit; readonly live: Limit; readonly longTerm: Limit };
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Bending stiffness of a strip along the span, for each width: of all its sheets. */
export function stripStiffness({ panel, isAlong, thickness_m }: Run): number {
  const E_Pa = isAlong ? panel.material.E_Pa : panel.softAcross_Pa;
  return (E_Pa * thickness_m ** 3) / 12 / panel.sheets ** 2;
}

const limit = (written: string): Limit => parseLimit(written) ?? { kind: 'none', written: 'none' };

/** Fills in every default, looks the panel up, and says all it had to assume. */
export function readRun(
  document: CounterRunDocument,
): { readonly ok: true; readonly run: Run } | { readonly ok: false; readonly errors: readonly FieldError[] } {
  const system = document.units ?? 'inch-pound';
  const code = ndsAsd;
  const { substrate, opening, depth, conditions } = document;
  const top = { ...substrate, length: opening, depth };
  const reading = readTopPanel({ top, conditions, path: '/substrate' }, code, system);
  if (!reading.ok) return reading;
  const { wood: panel } = reading;
  const railReading = readRail(document, code, system);
  if (!railReading.ok) return railReading;
  const { rail } = railReading;
  const finish = readFinish(document.finish, system, 'the span');
  const given = document.loads ?? [
    { kind: 'area' as const, amount: usual.serving_Npm2 },
    { kind: 'person' as const, amount: person_N },
  ];
  const area = given.find((load) => load.kind === 'area');
  const person = given.find((load) => load.kind === 'person');
  const rails = document.rails ?? 'none';
  const said = (isGiven: boolean, words: string): string[] => (isGiven ? [] : [words]);
  return {
    ok: true,
    run: {
      ...{ document, system, code, panel, finish },
      span_m: opening,
      depth_m: depth,
      thickness_m: substrate.thickness,
      isAlong: (substrate.grain ?? 'along') === 'along',
      rails: (['front', 'back'] as const).filter((each) => rails === each || rails === 'both'),
      rail,
      creep: Math.max(panel.material.creep.factor, rail?.material.creep.factor ?? 0),
      dead_Npm2:
        panel.material.density_kgm3 * substrate.thickness * standardGravity + (finish?.weight_Npm2 ?? 0),
      serving:
        area === undefined
          ? null
          : {
              pressure_Npm2: area.amount,
              duration: area.duration ?? 'ten-years',
              sustained: area.sustained ?? usual.sustained,
            },
      person:
        person === undefined
          ? null
          : {
              load_N: person.amount,
              patch_m: Math.min(person.patch ?? usual.patch_m, depth, opening),
              duration: person.duration ?? 'seven-days',
            },
      limits: {
        even: finish?.limit ?? limit('L/360'),
        live: document.limits?.live ?? finish?.limit ?? limit('L/360'),
        longTerm: document.limits?.longTerm ?? limit('L/240'),
      },
      warnings: [
        ...staysWarning(document.loads),
        ...impactWarning('Somebody standing', person?.duration),
        ...wetWarning(conditions),
        ...((person?.amount ?? 0) === 0
          ? ['Nobody standing on the counter is counted: none was given.']
          : []),
        ...((area?.amount ?? 0) === 0
          ? ['Nothing that stands on the counter is counted: no load on its area was given.']
          : []),
      ],
      assumptions: [
        ...assumedConditions(conditions),
        'The panels lie loose on the cabinet sides: they push and never pull, and nothing holds them from turning there.',
        ...said(substrate.grain !== undefined, 'The face grain runs along the span.'),
        ...said(document.rails !== undefined, 'There are no rails under the long edges.'),
        ...said(
          document.loads !== undefined,
          `No loads given: ${show(usual.serving_Npm2, 'N/m2', system)} on the counter (common practice, no source) and somebody of ${show(person_N, 'N', system)} standing on it (ASCE 7 stair treads, by analogy; the historical test of tile floors, ANSI A108).`,
        ),
        ...said(substrate.sheets !== undefined, 'The panels are laid in one sheet.'),
        ...loadAssumptions(area, person, system),
        ...said(
          document.limits?.longTerm !== undefined,
          'Movement over the years is held against L/240 (IBC Table 1604.3), under tile or stone against their own limit.',
        ),
        `A cabinet side carries the panels on ${show(usual.railThickness_m, 'm', system)} of its thickness, as stiff for each length as the panel above it (common practice, no source).`,
        ...said(
          document.limits?.live !== undefined,
          'Movement under somebody standing is held against the limit of the finish, L/360 where there is none.',
        ),
        ...(finish?.assumptions ?? []),
        ...said(
          finish !== null,
          'No tile or stone is counted: movement is held against L/360 (IBC Table 1604.3, floors).',
        ),
        ...panel.assumptions,
        ...(rail === null
          ? []
          : [
              'The panels lie loose on their rails and press on the middle of their thickness; the rails bend as simple beams between the cabinet sides, and their own weight has bent them before the panels are laid.',
              endsHeld,
              ...rail.material.assumptions,
            ]),
      ],
    },
  };
}

type Load = NonNullable<CounterRunDocument['loads']>[number];

/** What is taken of loads that leave it open. */
function loadAssumptions(
  area: Extract<Load, { kind: 'area' }> | undefined,
  person: Extract<Load, { kind: 'person' }> | undefined,
  system: UnitSystem,
): string[] {
  return [
    ...(area === undefined || area.duration !== undefined
      ? []
      : ['What stands on the counter is there for up to ten years in all.']),
    ...(area === undefined || area.sustained !== undefined
      ? []
      : [`${usual.sustained} of what stands on the counter stays for years (common practice, no source).`]),
    ...(person === undefined || person.duration !== undefined
      ? []
      : ['Somebody standing counts as a load of seven days in all.']),
    ...(person === undefined || person.patch !== undefined
      ? []
      : [
          `Somebody stands on a square of ${show(usual.patch_m, 'm', system)}, one side flush with the edge (ASCE 7 stair treads, by analogy).`,
        ]),
  ];
}
