import type { Duration } from '../../../shared/check-document/index.ts';
import { work } from '../../formula/step.ts';
import {
  adjustedBearing,
  adjustedBending,
  adjustedShear,
  durationFactor,
  temperatureFactor,
} from '../../standards/nds-2018/2.3-adjustment.ts';
import type { MaterialRequest, Property, Resistance } from '../design-code.ts';
import { adjustedTensionAcross } from '../../standards/nds-2018/2.3-adjustment.ts';

/** A reference value before duration, with the factors that belong to the piece; or why there is none. */
export type Reference =
  | {
      readonly ok: true;
      readonly value_Pa: number;
      readonly wet?: number;
      readonly size?: number;
      readonly flatUse?: number;
    }
  | { readonly ok: false; readonly why: string };

const clauses: Readonly<Record<Property, string>> = {
  bending: 'NDS 3.3.1',
  shear: 'NDS 3.4.1',
  bearing: 'NDS 3.10.2',
  'tension-across': 'NDS 3.8.2; ASTM D245 by analogy',
};

/** The allowable stress for one duration. Bearing takes no duration factor. */
export function allowable(
  references: Readonly<Record<Property, Reference>>,
  property: Property,
  duration: Duration,
  { moisture, temperature, system }: Pick<MaterialRequest, 'moisture' | 'temperature' | 'system'>,
): Resistance {
  const reference = references[property];
  const clause = clauses[property];
  if (!reference.ok) return { ok: false, why: reference.why, clause };
  const common = {
    C_D: durationFactor[duration],
    C_M: reference.wet ?? 1,
    C_t: temperatureFactor[moisture][temperature],
  };
  const value = reference.value_Pa;
  const worked = {
    bending: () =>
      work(
        adjustedBending,
        { F_b: value, ...common, C_F: reference.size ?? 1, C_fu: reference.flatUse ?? 1 },
        system,
      ),
    shear: () => work(adjustedShear, { F_v: value, ...common }, system),
    bearing: () => work(adjustedBearing, { F_c_perp: value, C_M: common.C_M, C_t: common.C_t }, system),
    'tension-across': () => work(adjustedTensionAcross, { F_t_perp: value, ...common }, system),
  }[property]();
  return { ok: true, value_Pa: worked.value, step: worked.step, clause };
}
