import type { Limit } from '../../../shared/check-document/index.ts';
import { show, standardGravity } from '../../../shared/quantity/index.ts';
import { upperFirst } from '../../../shared/words.ts';
import { work } from '../../formula/step.ts';
import { linePressure, plateBendingStress, plateShearStress } from '../../mechanics/plate-formulas.ts';
import { spanFraction } from '../../mechanics/section-formulas.ts';
import { longTermMovement } from '../../standards/nds-2018/3-members.ts';
import type { Property } from '../../codes/design-code.ts';
import { allowedBy } from '../allowed-by.ts';
import type { Judged } from '../judged.ts';
import { makeCheck, worstCheck } from '../make-check.ts';
import { usual } from '../counter-overhang/usual.ts';
import { impliedStiffness, stripMovement } from './bow-formulas.ts';
import { stripStiffness, type Run } from './run.ts';
import type { Moving, State } from './solve.ts';

/** What panels do in service, elastic. */
export interface Service {
  /** Under everything even, weight included. */
  readonly even_m: number;
  /** Under all of that and somebody who stands where it is worst; null where nobody does. */
  readonly together: { readonly moved_m: number; readonly where: string } | null;
  /** The most anybody who stands there adds to what is there without them. */
  readonly live: { readonly added_m: number; readonly where: string } | null;
  /** What stays for years, and the rest of what is even. */
  readonly stays_m: number;
}

/** Bending both ways and shear at the ends, each in its worst combination. */
export function strengthChecks(run: Run, states: readonly State[]): Judged[] {
  const { panel, isAlong, system, thickness_m } = run;
  const [m, t] = [1 / panel.sheets, thickness_m / panel.sheets];
  const kinds = [
    {
      id: 'bending-along',
      title: 'Bending along the panel',
      property: 'bending',
      pick: isAlong ? 'alongSpan_N' : 'acrossSpan_N',
    },
    {
      id: 'bending-across',
      title: 'Bending across the panel',
      property: 'tension-across',
      pick: isAlong ? 'acrossSpan_N' : 'alongSpan_N',
    },
    {
      id: 'shear',
      title: run.rails.length === 0 ? 'Shear at the cabinet sides' : 'Shear where they lie',
      property: 'shear',
      pick: 'end_Npm',
    },
  ] as const;
  return kinds.map(({ id, title, property, pick }) => {
    const judged = states.map((state): Judged => {
      const demand =
        pick === 'end_Npm'
          ? work(plateShearStress, { v: state.end_Npm, t: thickness_m }, system)
          : work(plateBendingStress, { m: state[pick] * m, t }, system);
      return judge(run, { id, title, property }, state, demand);
    });
    const [first, ...rest] = judged;
    if (first === undefined) throw new RangeError('there is always an arrangement');
    return worstCheck([first, ...rest]);
  });
}

function judge(
  { panel, system }: Run,
  {
    id,
    title,
    property,
    on,
  }: { readonly id: string; readonly title: string; readonly property: Property; readonly on?: string },
  { combination, spot }: State,
  demand: ReturnType<typeof work>,
): Judged {
  const resistance = panel.material.resistance(property, combination.duration);
  const who = spot === null ? 'nobody there' : `somebody standing ${spot.words}`;
  const where =
    on === undefined
      ? who
      : `on ${on}; ${on === 'a cabinet side' && spot !== null ? 'somebody standing over it' : who}`;
  const parts = {
    id,
    title,
    unit: 'Pa',
    where,
    combination: combination.name,
    clause: resistance.clause,
  } as const;
  if (!resistance.ok) {
    const note = upperFirst(`${resistance.why}.`);
    return {
      check: makeCheck({ ...parts, demand: demand.value, capacity: null, note }, system),
      steps: [demand.step],
    };
  }
  return {
    check: makeCheck({ ...parts, demand: demand.value, capacity: resistance.value_Pa }, system),
    steps: [demand.step, resistance.step],
  };
}

/** Pressure of the panels on what they lie on: cabinet sides, with somebody over one of them too, and rails. */
export function pressureCheck(run: Run, states: readonly State[]): Judged[] {
  const { person, rail, system } = run;
  const calm = (state: State): State => states.find((each) => isCalm(each, state)) ?? state;
  const kinds = [
    {
      on: 'a cabinet side',
      b_r: usual.railThickness_m,
      force: (state: State): number =>
        person === null || state.spot === null
          ? state.onSide_Npm
          : Math.max(state.onSide_Npm, calm(state).onSide_Npm + person.load_N / person.patch_m),
    },
    ...(rail === null
      ? []
      : [{ on: 'a rail', b_r: rail.thickness_m, force: (state: State) => state.onRail_Npm }]),
  ];
  const [first, ...rest] = states.flatMap((state) =>
    kinds.map(({ on, b_r, force }) => {
      const demand = work(linePressure, { p: force(state), b_r }, system);
      const parts = { id: 'bearing', title: 'Pressure where they lie', property: 'bearing', on } as const;
      return judge(run, parts, state, demand);
    }),
  );
  if (first === undefined) throw new RangeError('there is always an arrangement');
  return [worstCheck([first, ...rest])];
}

/** The same combination with nobody there. */
function isCalm({ combination, spot }: State, state: State): boolean {
  return spot === null && combination === state.combination;
}

/** What moves, and what its limits go by. */
interface Movable {
  readonly of: Moving;
  readonly span_m: number;
}

const movementWords: Readonly<Record<Moving, { readonly id: string; readonly title: string }>> = {
  all: { id: 'deflection', title: 'Movement' },
  'beyond-rails': { id: 'between-rails', title: 'Movement between the rails' },
};

/** How far something moves: under everything even, with somebody on it, and over the years. */
export function movementChecks(run: Run, service: Service, { of, span_m }: Movable): Judged[] {
  const { limits, system, finish, creep: K_cr } = run;
  const words = movementWords[of];
  const later = work(
    longTermMovement,
    { K_cr, Delta_LT: service.stays_m, Delta_ST: Math.max(0, service.even_m - service.stays_m) },
    system,
  );
  const clause = finish?.clause ?? 'IBC Table 1604.3';
  const even = limited(run, span_m, limits.even, {
    ...{ id: `${words.id}-even`, title: `${words.title} under everything even`, clause },
    ...{ combination: 'weight + what stands there', where: 'where it is most', demand: service.even_m },
  });
  const live =
    service.live === null
      ? null
      : limited(run, span_m, limits.live, {
          ...{
            id: `${words.id}-live`,
            title: `${words.title} under somebody standing`,
            clause,
          },
          ...{ combination: 'what somebody adds', where: service.live.where, demand: service.live.added_m },
        });
  // Tile and stone have no say in what somebody may feel: under everything at once they are held to their own limit.
  const together =
    finish === null || service.together === null
      ? null
      : limited(run, span_m, limits.even, {
          ...{ id: `${words.id}-together`, title: `${words.title} under everything together`, clause },
          ...{ combination: 'weight, what stands there and somebody', where: service.together.where },
          demand: service.together.moved_m,
        });
  // What is laid on the panels has gone along with all that the years add: they are held to its limit too.
  const isByFinish =
    finish !== null &&
    (allowedBy(finish.limit, span_m) ?? Infinity) < (allowedBy(limits.longTerm, span_m) ?? Infinity);
  const years = limited(run, span_m, isByFinish ? finish.limit : limits.longTerm, {
    ...{
      id: `${words.id}-long-term`,
      title: `${words.title} over the years`,
      clause: `NDS 3.5.2; ${isByFinish ? finish.clause : 'IBC Table 1604.3'}`,
    },
    ...{ combination: 'everything even, with creep', where: 'where it is most', demand: later.value },
  });
  return [
    even,
    live,
    together,
    years === null ? null : { ...years, steps: [later.step, ...years.steps] },
  ].filter((each) => each !== null);
}

interface Movement {
  readonly id: string;
  readonly title: string;
  readonly clause: string;
  readonly combination: string;
  readonly where: string;
  readonly demand: number;
}

function limited({ system }: Run, span_m: number, limit: Limit, parts: Movement): Judged | null {
  if (limit.kind === 'none') return null;
  if (limit.kind === 'amount')
    return { check: makeCheck({ ...parts, unit: 'm', capacity: limit.amount_m }, system), steps: [] };
  const allowed = work(spanFraction, { L_s: span_m, n_L: limit.divisor }, system);
  return {
    check: makeCheck({ ...parts, unit: 'm', capacity: allowed.value }, system),
    steps: [allowed.step],
  };
}

/** Panels that slip off their sides before anything stops them: nothing there resists what they carry. */
export function tooSoftCheck({ system, span_m, depth_m, dead_Npm2, serving, person }: Run): Judged[] {
  const even_N = (dead_Npm2 + (serving?.pressure_Npm2 ?? 0)) * span_m * depth_m;
  const check = makeCheck(
    {
      ...{ id: 'carried', title: 'What they carry', unit: 'N' },
      ...{ demand: even_N + (person?.load_N ?? 0), capacity: 0 },
      ...{ clause: 'elementary mechanics', where: 'all over', combination: 'all together' },
      note: 'The panels are so soft over this span that they slip off their sides before anything stops them: nothing more can be worked out.',
    },
    system,
  );
  return [{ check, steps: [] }];
}

/** Panels and rails hang through together: nothing tells how much of it is the panels' part. */
function bowOnRails({ system }: Run): Judged {
  const check = makeCheck(
    {
      ...{ id: 'bow', title: 'The present counter, by its bow', demand: null, capacity: null },
      ...{ clause: 'not worked out', where: 'panels and rails', combination: '' },
      unit: 'm',
      note: 'On rails a bow is of panels and rails together: it does not tell how stiff the panels are. Measure the panels between the rails, as a counter of that span without rails.',
    },
    system,
  );
  return { check, steps: [] };
}

/** Panels that seem softer than this share of sound ones were bent by something else. */
const leastShare = 0.05;

/** A bow far larger than the weight of the panels could make: it tells nothing of their stiffness, and they are to go. */
function bowOfOtherCauses({ system }: Run, measured_m: number, share: number): Judged {
  const most_m = (measured_m * share) / leastShare;
  const check = makeCheck(
    {
      ...{ id: 'bow', title: 'The present counter, by its bow', unit: 'm' },
      ...{
        demand: measured_m,
        capacity: most_m,
        where: 'a strip between the sides',
        combination: 'bare panels',
      },
      clause: 'common practice, no source',
      note: `Sound panels would bow by ${show(measured_m * share, 'm', system)} of their own weight, and panels twenty times as soft by ${show(most_m, 'm', system)}. Weight alone did not make this bow: water, heat or a load did, and it tells nothing of how stiff they are now. Replace the substrate.`,
    },
    system,
  );
  return { check, steps: [] };
}

/** What a measured bow tells: the movement under everything even if the panels are as soft as it says. */
export function bowChecks(run: Run, { live, together }: Service): Judged[] {
  const { document, limits, system, panel, span_m, dead_Npm2, serving, finish } = run;
  const measured = document.bow?.measured;
  if (measured === undefined || limits.even.kind !== 'fraction') return [];
  if (run.rails.length > 0) return [bowOnRails(run)];
  const q_bare = panel.material.density_kgm3 * run.thickness_m * standardGravity;
  const EI = work(impliedStiffness, { K_cr: 1, q: q_bare, L: span_m, Delta_m: measured }, system);
  const q = dead_Npm2 + (serving?.pressure_Npm2 ?? 0);
  const moved = work(stripMovement, { q, L: span_m, EI: EI.value }, system);
  const allowed = work(spanFraction, { L_s: span_m, n_L: limits.even.divisor }, system);
  const share = EI.value / stripStiffness(run);
  if (share < leastShare) return [bowOfOtherCauses(run, measured, share)];
  const check = makeCheck(
    {
      ...{ id: 'bow', title: 'The present counter, by its bow', unit: 'm' },
      ...{ demand: moved.value, capacity: allowed.value, where: 'a strip between the sides' },
      clause: finish?.clause ?? 'IBC Table 1604.3',
      combination: 'weight + what stands there, with the stiffness the bow tells of',
      note: `The bow tells of ${Math.round(share * 100)} % of the stiffness these panels have when sound, if the bare panels made it at once: whatever else lay on them, and the years, made them seem softer, never stiffer. ${moved.value > allowed.value ? 'Too soft for what is to lie on it: replace the substrate.' : 'A bow tells of stiffness alone: whether the panels are sound and strong is to be looked at.'}`,
    },
    system,
  );
  const judged = { check, steps: [EI.step, moved.step, allowed.step] };
  if (live === null) return [judged];
  const clause = finish?.clause ?? 'IBC Table 1604.3';
  const asSoft = (sound_m: number): number => sound_m / Math.min(1, share);
  const onBow = limited(run, span_m, limits.live, {
    ...{ id: 'bow-live', title: 'The present counter under somebody standing, by its bow' },
    ...{ clause, where: live.where },
    combination: 'what somebody adds, with the stiffness the bow tells of',
    demand: asSoft(live.added_m),
  });
  const all =
    finish === null || together === null
      ? null
      : limited(run, span_m, limits.even, {
          ...{ id: 'bow-together', title: 'The present counter under everything together, by its bow' },
          ...{ clause, where: together.where },
          combination: 'weight, what stands there and somebody, with the stiffness the bow tells of',
          demand: asSoft(together.moved_m),
        });
  return [judged, onBow, all].filter((each) => each !== null);
}
