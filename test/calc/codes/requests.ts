import type { Duration } from '../../../shared/check-document/index.ts';
import type { Material, MaterialRequest, Property } from '../../../calc/codes/design-code.ts';
import { ndsAsd } from '../../../calc/codes/nds-asd/index.ts';
import { inch, psi } from '../elements/documents.ts';

const usual: MaterialRequest = {
  path: '/board',
  material: 'sugar-maple',
  basis: undefined,
  appearance: undefined,
  grade: undefined,
  thickness_m: 0.75 * inch,
  width_m: 10 * inch,
  use: 'flat',
  moisture: 'dry',
  temperature: 'ordinary',
  system: 'inch-pound',
};

/** A material of the NDS code; fails where the request is refused. */
export function materialOf(request: Partial<MaterialRequest>): Material {
  const reading = ndsAsd.material({ ...usual, ...request });
  if (!reading.ok) throw new Error(reading.errors.map(({ message }) => message).join(' '));
  return reading.material;
}

/** The errors of a request that is refused; empty where it is not. */
export function refusal(request: Partial<MaterialRequest>) {
  const reading = ndsAsd.material({ ...usual, ...request });
  return reading.ok ? [] : reading.errors;
}

/** An allowable stress in psi; fails where there is none. */
export function allowable_psi(material: Material, property: Property, duration: Duration): number {
  const resistance = material.resistance(property, duration);
  if (!resistance.ok) throw new Error(resistance.why);
  return resistance.value_Pa / psi;
}
