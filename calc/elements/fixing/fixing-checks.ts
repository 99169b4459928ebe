import { upperFirst } from '../../../shared/words.ts';
import { work } from '../../formula/step.ts';
import { allowableMetal, screwMetal_Pa } from '../../standards/nds-2018/11.2-metal.ts';
import { makeCheck } from '../make-check.ts';
import type { Judged } from '../judged.ts';
import type { Fixing, FixingAnswer } from './fixing.ts';
import type { Toe } from './toe.ts';

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
export function fixingCheckOf(fixing: Fixing, answer: FixingAnswer, place: Place): Judged {
  const ratio = ratioOf(answer);
  const { withdrawal, lateral } = answer.ratios;
  const load = Math.hypot(answer.tension_N, answer.shear_N);
  const governs =
    ratio === null
      ? 'load'
      : ratio === withdrawal
        ? 'pull'
        : ratio === lateral
          ? 'shear'
          : 'pull and shear together';
  const demand = { pull: answer.tension_N, shear: answer.shear_N, load, 'pull and shear together': load }[
    governs
  ];
  const capacity =
    answer.outcome === 'cannot-say'
      ? null
      : ratio === null || ratio === 0
        ? ratio === 0
          ? load
          : 0
        : demand / ratio;
  const mode = answer.mode === null || answer.mode === 'report' ? '' : ` Yield mode ${answer.mode}.`;
  const note =
    answer.why === '' ? `The highest screw governs, in ${governs}.${mode}` : upperFirst(`${answer.why}.`);
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

/** The metal of the screws in tension. */
export function screwMetalCheck(fixing: Fixing, tension_N: number, place: Place): Judged[] {
  if (fixing.fastener === null || fixing.allowable !== null) return [];
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
      demand: tension_N,
      capacity: held.value,
      clause: 'NDS 11.2.3',
      note: 'Low-carbon steel of 60,000 psi is taken.',
      ...place,
    },
    fixing.system,
  );
  return [{ check, steps: [held.step] }];
}

/** Bearing of the plate's lower end on the covering, where its strength is given. */
export function toeBearingCheck(fixing: Fixing, toe: Toe, place: Place): Judged[] {
  if (fixing.coveringBearing_Pa === null) return [];
  const lowest = Math.min(...fixing.heights_m.filter((z) => z > 0), fixing.plate.height_m);
  const check = makeCheck(
    {
      id: 'toe-bearing',
      title: 'Lower end of the plate on the wall covering',
      unit: 'm',
      demand: Number.isFinite(toe.length_m) ? toe.length_m : fixing.plate.height_m,
      capacity: Number.isFinite(toe.length_m) ? lowest : 0,
      clause: 'even pressure under the lower end',
      note: 'The length that bears has to end below the lowest screw.',
      ...place,
    },
    fixing.system,
  );
  return [{ check, steps: toe.steps }];
}
