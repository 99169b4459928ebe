import type { Duration } from '../../../shared/check-document/index.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { work, type Worked } from '../../formula/step.ts';
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
  const worked = adjusted(property, reference, common, system);
  return { ok: true, value_Pa: worked.value, step: worked.step, clause };
}

function adjusted(
  property: Property,
  { value_Pa, size = 1, flatUse = 1 }: Extract<Reference, { ok: true }>,
  common: { readonly C_D: number; readonly C_M: number; readonly C_t: number },
  system: UnitSystem,
): Worked {
  switch (property) {
    case 'bending':
      return work(adjustedBending, { F_b: value_Pa, ...common, C_F: size, C_fu: flatUse }, system);
    case 'shear':
      return work(adjustedShear, { F_v: value_Pa, ...common }, system);
    case 'bearing':
      return work(adjustedBearing, { F_c_perp: value_Pa, C_M: common.C_M, C_t: common.C_t }, system);
    case 'tension-across':
      // Nobody has shown that wood split across the grain bears a blow better than ten minutes.
      return work(
        adjustedTensionAcross,
        { F_t_perp: value_Pa, ...common, C_D: Math.min(common.C_D, durationFactor['ten-minutes']) },
        system,
      );
  }
}
