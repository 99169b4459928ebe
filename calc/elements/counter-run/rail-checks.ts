import { show } from '../../../shared/quantity/index.ts';
import { upperFirst } from '../../../shared/words.ts';
import type { Property } from '../../codes/design-code.ts';
import { work, type Worked } from '../../formula/step.ts';
import { sectionModulus } from '../../mechanics/section-formulas.ts';
import { bearingStress, bendingStress, shearStressOfRectangle } from '../../standards/nds-2018/3-members.ts';
import type { Judged } from '../judged.ts';
import { makeCheck, worstCheck } from '../make-check.ts';
import { endsHeld, stableBendingOf } from '../rail-stability.ts';
import type { RailBeam, RailForces } from './rails.ts';
import type { Run } from './run.ts';
import type { State } from './solve.ts';

/** Bending, shear and seats of the rails, each in its worst combination; cannot say where their size or seat is missing. */
export function railChecks(run: Run, states: readonly State[]): Judged[] {
  const { rails, rail, system } = run;
  if (rails.length === 0) return [];
  if (rail === null) return [unknown(run)];
  const { thickness_m: b, height_m: h, seat_m } = rail;
  const S = work(sectionModulus, { b, t: h }, system, 'section modulus of a rail');
  return [
    worstOf(run, states, rail, {
      ...{ id: 'rail-bending', title: 'Bending of the rails', property: 'bending', note: endsHeld },
      demand: ({ moment_Nm }) => [
        S,
        work(bendingStress, { M: moment_Nm, S: S.value }, system, 'bending stress in the rail'),
      ],
    }),
    worstOf(run, states, rail, {
      ...{ id: 'rail-shear', title: 'Shear of the rails', property: 'shear', note: '' },
      demand: ({ end_N }) => [
        work(shearStressOfRectangle, { V: end_N, b, d: h }, system, 'shear stress at the end of the rail'),
      ],
    }),
    seat_m === null
      ? noSeat(run, states)
      : worstOf(run, states, rail, {
          ...{ id: 'rail-seat', title: 'Seats of the rails', property: 'bearing' },
          note: 'The wood of the rail alone is judged: what it rests on has to bear the same, and what holds that, and the rail from turning over, is not worked out.',
          demand: ({ end_N }) => [
            work(bearingStress, { R: end_N, A_b: b * seat_m }, system, 'bearing stress on the seat'),
          ],
        }),
  ];
}

interface RailCheck {
  readonly id: string;
  readonly title: string;
  readonly property: Property;
  readonly note: string;
  /** The lines of working, the last of them the stress. */
  readonly demand: (forces: RailForces) => readonly Worked[];
}

function worstOf(
  { system }: Run,
  states: readonly State[],
  rail: RailBeam,
  { id, title, property, note, demand }: RailCheck,
): Judged {
  const judged = states.flatMap(({ combination, spot, rails }) =>
    rails.map((forces): Judged => {
      const resistance = rail.material.resistance(property, combination.duration);
      const lines = demand(forces);
      const who = spot === null ? 'nobody there' : `somebody standing ${spot.words}`;
      const steps = lines.map(({ step }) => step);
      const parts = {
        ...{ id, title, combination: combination.name, clause: resistance.clause },
        unit: 'Pa',
        ...{ where: `${forces.edge} rail; ${who}`, demand: lines[lines.length - 1]?.value ?? NaN },
      } as const;
      if (!resistance.ok) {
        const why = upperFirst(`${resistance.why}.`);
        return { check: makeCheck({ ...parts, capacity: null, note: why }, system), steps };
      }
      const stable = property === 'bending' ? stableBendingOf(rail, resistance.value_Pa, system) : null;
      const capacity = stable === null ? resistance.value_Pa : stable.ok ? stable.value_Pa : 0;
      return {
        check: makeCheck(
          { ...parts, capacity, note: stable?.ok === false ? upperFirst(`${stable.why}.`) : note },
          system,
        ),
        steps: [...steps, resistance.step, ...(stable?.steps ?? [])],
      };
    }),
  );
  const [first, ...rest] = judged;
  if (first === undefined) throw new RangeError('there is always an arrangement');
  return worstCheck([first, ...rest]);
}

const cannotSay = { capacity: null, clause: 'not given', combination: '' } as const;

function unknown({ rails, system }: Run): Judged {
  const check = makeCheck(
    {
      ...{ id: 'rails', title: 'The rails under the long edges', demand: null, ...cannotSay },
      unit: 'm',
      where: rails.join(' and '),
      note: 'Thickness and height of the rails are not given: the panels are worked out as if the rails did not bend, and what the rails bear is not known.',
    },
    system,
  );
  return { check, steps: [] };
}

/** The ends of a rail hang on something nobody described. */
function noSeat({ system }: Run, states: readonly State[]): Judged {
  const most_N = Math.max(...states.flatMap(({ rails }) => rails.map(({ end_N }) => end_N)));
  const check = makeCheck(
    {
      ...{ id: 'rail-seat', title: 'Seats of the rails', demand: most_N, ...cannotSay },
      unit: 'N',
      where: 'ends of the rails',
      note: `How the rails are held at the cabinet sides is not given: each end carries up to ${show(most_N, 'N', system)}. Give the seat on which it rests, or check the screws that hold it as a fixing of their own.`,
    },
    system,
  );
  return { check, steps: [] };
}
