import type { Limit } from '../../../shared/check-document/index.ts';
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
import type { Run } from './run.ts';
import type { Moving, State } from './solve.ts';

/** What panels do in service, elastic. */
export interface Service {
  /** Under everything spread evenly, weight included. */
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
  const where = on === undefined ? who : `on ${on}; ${spot === null ? who : 'somebody standing over it'}`;
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

/**
 * Pressure of the panels on what they lie on, cabinet sides and rails, with somebody over them too: how wide panels spread
 * somebody who stands right there is not counted on.
 */
export function pressureCheck(run: Run, states: readonly State[]): Judged[] {
  const { person, rail, system } = run;
  const calm = (state: State): State => states.find((each) => isCalm(each, state)) ?? state;
  const kinds = [
    { on: 'a cabinet side', b_r: usual.railThickness_m, pick: 'onSide_Npm' },
    ...(rail === null ? [] : [{ on: 'a rail', b_r: rail.thickness_m, pick: 'onRail_Npm' } as const]),
  ] as const;
  const [first, ...rest] = states.flatMap((state) =>
    kinds.map(({ on, b_r, pick }) => {
      const over_Npm =
        person === null || state.spot === null ? 0 : calm(state)[pick] + person.load_N / person.patch_m;
      const demand = work(linePressure, { p: Math.max(state[pick], over_Npm), b_r }, system);
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

/** How far something moves: under everything spread evenly, with somebody on it, and over the years. */
export function movementChecks(run: Run, service: Service, { of, span_m }: Movable): Judged[] {
  const { limits, finish } = run;
  const words = movementWords[of];
  const clause = finish?.clause ?? 'IBC Table 1604.3';
  const even = limited(run, span_m, limits.even, {
    ...{ id: `${words.id}-even`, title: `${words.title} under everything spread evenly`, clause },
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
  const years = yearsCheck(run, span_m, service, {
    ...{ id: `${words.id}-long-term`, title: `${words.title} over the years` },
    combination: 'everything spread evenly, with creep',
  });
  return [even, live, together, years].filter((each) => each !== null);
}

/** Movement over the years; what is laid on the panels goes along with it, and they are held to its limit too. */
export function yearsCheck(
  { limits, finish, creep: K_cr, ...run }: Run,
  span_m: number,
  { even_m, stays_m }: Pick<Service, 'even_m' | 'stays_m'>,
  parts: Pick<Movement, 'id' | 'title' | 'combination'>,
): Judged | null {
  const comes_m = Math.max(0, even_m - stays_m);
  const later = work(longTermMovement, { K_cr, Delta_LT: stays_m, Delta_ST: comes_m }, run.system);
  const isByFinish =
    finish !== null &&
    (allowedBy(finish.limit, span_m) ?? Infinity) < (allowedBy(limits.longTerm, span_m) ?? Infinity);
  const years = limited(run, span_m, isByFinish ? finish.limit : limits.longTerm, {
    ...parts,
    clause: `NDS 3.5.2; ${isByFinish ? finish.clause : 'IBC Table 1604.3'}`,
    ...{ where: 'where it is most', demand: later.value },
  });
  return years === null ? null : { ...years, steps: [later.step, ...years.steps] };
}

interface Movement {
  readonly id: string;
  readonly title: string;
  readonly clause: string;
  readonly combination: string;
  readonly where: string;
  readonly demand: number;
}

export function limited(
  { system }: Pick<Run, 'system'>,
  span_m: number,
  limit: Limit,
  parts: Movement,
): Judged | null {
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
