import { upperFirst } from '../../../shared/words.ts';
import { work } from '../../formula/step.ts';
import { allowableMetal, screwMetal_Pa } from '../../standards/nds-2018/11.2-metal.ts';
import { makeCheck } from '../make-check.ts';
import type { Judged } from '../judged.ts';
import type { Fixing, FixingAnswer, FixingLoad } from './fixing.ts';
import { workScrewPull } from './solve.ts';
import type { Toe } from './toe.ts';
import { turningOf } from './turning.ts';

/** Where and when a check is worst. */
export interface Place {
  readonly where: string;
  readonly combination: string;
}

/** The worst ratio of a fixing: the combined value alone can hide an overloaded screw. */
export function ratioOf({ ratios, outcome }: FixingAnswer): number | null {
  if (outcome !== 'worked') return null;
  const { withdrawal, lateral, combined } = ratios;
  if (withdrawal === null || lateral === null) return null;
  return Math.max(withdrawal, lateral, combined ?? 0);
}

/** The check of a fixing: largest of withdrawal, lateral and combined. */
export function fixingCheckOf(fixing: Fixing, answer: FixingAnswer, load: FixingLoad, place: Place): Judged {
  const { screw } = turningOf(fixing, load);
  const ratio = ratioOf(answer);
  const { withdrawal, lateral } = answer.ratios;
  const both_N = Math.hypot(answer.tension_N, answer.shear_N);
  const governs =
    ratio === null
      ? 'load'
      : ratio === withdrawal
        ? 'pull'
        : ratio === lateral
          ? 'shear'
          : 'pull and shear together';
  const demand = {
    pull: answer.tension_N,
    shear: answer.shear_N,
    load: both_N,
    'pull and shear together': both_N,
  }[governs];
  const capacity =
    answer.outcome === 'cannot-say'
      ? null
      : ratio === null || ratio === 0
        ? ratio === 0
          ? both_N
          : 0
        : demand / ratio;
  const mode = answer.mode === null || answer.mode === 'report' ? '' : ` Yield mode ${answer.mode}.`;
  const note =
    answer.why === ''
      ? `The ${screw} screw governs, in ${governs}.${mode}${liftedNote(load)}`
      : `${upperFirst(`${answer.why}.`)}${liftedNote(load)}`;
  return {
    check: makeCheck(
      {
        id: 'fixing',
        title: 'Screws into the wall',
        unit: 'N',
        demand,
        capacity,
        clause: answer.clause,
        note,
        ...place,
      },
      fixing.system,
    ),
    steps: answer.steps,
  };
}

/** Which way the plate turns, where it is not the usual one. */
function liftedNote({ isLifted }: FixingLoad): string {
  return isLifted === true ? ' The bracket is lifted, and its plate turns about the upper end.' : '';
}

/** The metal of the screws in tension. */
export function screwMetalCheck(fixing: Fixing, toe: Toe, load: FixingLoad, place: Place): Judged[] {
  if (fixing.fastener === null || fixing.allowable !== null) return [];
  const pull = workScrewPull(fixing, load, toe);
  const held = work(
    allowableMetal,
    { F_u: screwMetal_Pa, D_r: fixing.fastener.rootDiameter_m },
    fixing.system,
  );
  const check = makeCheck(
    {
      id: 'screw-metal',
      title: 'Metal of the wall screws, pulled',
      unit: 'N',
      demand: pull.pull_N,
      capacity: pull.why === '' ? held.value : 0,
      clause: 'NDS 11.2.3',
      note: `${pull.why === '' ? 'Low-carbon steel of 60,000 psi is taken.' : upperFirst(`${pull.why}.`)}${liftedNote(load)}`,
      ...place,
    },
    fixing.system,
  );
  return [{ check, steps: [pull.step, held.step] }];
}

/** How much of the room between the pressed end of a plate and its nearest screw has to bear. */
export function toeShare(fixing: Fixing, load: FixingLoad, toe: Toe): number {
  return toe.length_m === 0 ? 0 : toe.length_m / nearestScrew_m(fixing, load, toe);
}

function nearestScrew_m(fixing: Fixing, load: FixingLoad, { from_m }: Toe): number {
  const { heights_m } = turningOf(fixing, load);
  return Math.min(...heights_m.filter((z) => z > from_m), fixing.plate.height_m) - from_m;
}

/** Bearing of the pressed end of the plate on the covering, where its strength is given. */
export function toeBearingCheck(fixing: Fixing, toe: Toe, load: FixingLoad, place: Place): Judged[] {
  if (fixing.coveringBearing_Pa === null) return [];
  const nearest = nearestScrew_m(fixing, load, toe);
  const { end } = turningOf(fixing, load);
  const check = makeCheck(
    {
      id: 'toe-bearing',
      title: `${upperFirst(end)} end of the plate on the wall covering`,
      unit: 'm',
      demand: Number.isFinite(toe.length_m) ? toe.length_m : fixing.plate.height_m,
      capacity: Number.isFinite(toe.length_m) ? nearest : 0,
      clause: `even pressure under the ${end} end`,
      note:
        end === 'lower'
          ? 'The length that bears has to end below the lowest screw.'
          : `The length that bears has to end above the highest screw.${liftedNote(load)}`,
      ...place,
    },
    fixing.system,
  );
  return [{ check, steps: toe.steps }];
}
