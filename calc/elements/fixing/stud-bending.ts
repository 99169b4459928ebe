import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import { findGradedLumber } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import { sectionModulus } from '../../mechanics/section-formulas.ts';
import { studMoment } from '../../standards/nds-2018/11.2-metal.ts';
import {
  adjustedBending,
  durationFactor,
  temperatureFactor,
} from '../../standards/nds-2018/2.3-adjustment.ts';
import { bendingStress } from '../../standards/nds-2018/3-members.ts';
import { sizeFactor, wetService } from '../../standards/nds-2018/4a-lumber-factors.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing, FixingLoad } from './fixing.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

const inch = 0.0254;
/** The lowest stud values of NDS Supplement Table 4A. */
const weakest = 'Spruce-Pine-Fir (South)';

/** The stud bent by the couple of a bracket, alone; null where no stud is bent or nothing is known of its wood. */
export function studBending(
  fixing: Fixing,
  wall: Wall | undefined,
  load: FixingLoad,
  place: { readonly where: string; readonly combination: string },
): { readonly judged: Judged; readonly assumptions: readonly string[] } | null {
  const { ground, system, moisture, temperature } = fixing;
  const framing = wall?.framing ?? 'wood-stud';
  if (ground.kind !== 'wood' || framing !== 'wood-stud') return null;
  const depth_in = ground.depth_m / inch;
  const nominal = depth_in <= 3.5 + 1e-6 ? 4 : 6;
  const named = findGradedLumber(wall?.species ?? weakest, wall?.grade ?? 'Stud', nominal);
  const found = named.ok ? named : findGradedLumber(weakest, 'Stud', nominal);
  if (!found.ok) return null;
  const lumber = found.row;
  const { height, bracketHeight } = wall ?? {};
  const isPlaced = height !== undefined && bracketHeight !== undefined && bracketHeight <= height;
  const moment = isPlaced
    ? work(studMoment, { C: load.couple_Nm, h_b: bracketHeight, H_w: height }, system)
    : undefined;
  const S = work(
    sectionModulus,
    { b: ground.width_m, t: ground.depth_m },
    system,
    'section modulus of the stud',
  );
  const stress = work(
    bendingStress,
    { M: moment?.value ?? load.couple_Nm, S: S.value },
    system,
    'bending stress in the stud',
  );
  const size = sizeFactor(lumber.table, lumber.grade, nominal, false);
  const allowed = work(
    adjustedBending,
    {
      F_b: lumber.bending_Pa,
      C_D: durationFactor[load.duration],
      C_M: moisture === 'wet' ? wetService.bending(lumber.bending_Pa * size) : 1,
      C_t: temperatureFactor[moisture][temperature],
      C_F: size,
      C_fu: 1,
    },
    system,
  );
  const check = makeCheck(
    {
      id: 'stud',
      title: 'Bending of the stud by the couple of a bracket',
      unit: 'Pa',
      demand: stress.value,
      capacity: allowed.value,
      clause: 'NDS 3.3.1',
      note: 'The couple alone. A stud that is notched, bored or carries much from above needs a look of its own (NDS 3.9).',
      ...place,
    },
    system,
  );
  return {
    judged: {
      check,
      steps: [...(moment === undefined ? [] : [moment.step]), S.step, stress.step, allowed.step],
    },
    assumptions: [
      ...(named.ok && wall?.grade !== undefined && wall.species !== undefined
        ? []
        : [`Studs are taken as ${lumber.combination}, grade ${lumber.grade}.`]),
      ...(isPlaced ? [] : ['The whole couple is taken to bend the stud on one side of the bracket.']),
    ],
  };
}
