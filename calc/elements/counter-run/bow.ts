import { show, standardGravity } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import { spanFraction } from '../../mechanics/section-formulas.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import { impliedStiffness, stripMovement } from './bow-formulas.ts';
import { limited, yearsCheck, type Service } from './checks.ts';
import { stripStiffness, type Run } from './run.ts';

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

/** What a measured bow tells: the movement under everything spread evenly if the panels are as soft as it says. */
export function bowChecks(run: Run, { live, together, even_m, stays_m }: Service): Judged[] {
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
  const clause = finish?.clause ?? 'IBC Table 1604.3';
  const asSoft = (sound_m: number): number => sound_m / Math.min(1, share);
  const later = { even_m: asSoft(even_m), stays_m: asSoft(stays_m) };
  const years = yearsCheck(run, span_m, later, {
    ...{ id: 'bow-long-term', title: 'The present counter over the years, by its bow' },
    combination: 'everything spread evenly, with creep, with the stiffness the bow tells of',
  });
  if (live === null) return [judged, years].filter((each) => each !== null);
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
  return [judged, onBow, all, years].filter((each) => each !== null);
}
