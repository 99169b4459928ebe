import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import { maple } from './maple.ts';

/** A maple top that lies loose on a base 24 in deep and stands out 12 in past it. Invented. */
export const bareCounter: CounterOverhangInput = {
  schema: 1,
  element: 'counter-overhang',
  top: {
    material: 'sugar-maple',
    appearance: 'nearly-clear',
    staves: 'along',
    length: '72 in',
    depth: '36 in',
    thickness: '1-1/2 in',
  },
  base: {
    from: '0 in',
    to: '72 in',
    back: '0 in',
    front: '24 in',
    weight: '160 lbf',
    weightAt: '12 in',
    foot: '24 in',
    height: '34-1/2 in',
  },
};

interface Changes extends Partial<Omit<CounterOverhangInput, 'schema' | 'element' | 'top' | 'base'>> {
  readonly top?: Partial<CounterOverhangInput['top']>;
  readonly base?: Partial<CounterOverhangInput['base']>;
}

/** The bare counter with some of its fields changed. */
export function counter({ top, base, ...others }: Changes = {}): CounterOverhangInput {
  return {
    ...bareCounter,
    ...others,
    top: { ...bareCounter.top, ...top },
    base: { ...bareCounter.base, ...base },
  };
}

/** Weight of maple by hand, lbf: sides in inches, 1 kg/m³ is 0.0624280 lb/ft³. */
export function mapleWeight_lbf(length: number, depth: number, thickness: number): number {
  return (length * depth * thickness * maple.density_kgm3 * 0.062428) / 1728;
}
