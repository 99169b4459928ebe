import { foot, standardGravity, type UnitSystem, poundForce } from '../../shared/quantity/index.ts';

/** A weight as people say it, never rounded up: `22 lb`, `9.9 kg`. Empty where that leaves nothing. */
export function weightWords(load_N: number, units: UnitSystem): string {
  return units === 'metric' ? worded(load_N / standardGravity, 'kg') : worded(load_N / poundForce, 'lb');
}

/** A load along the board as people say it, never rounded up: `18 lb a foot`, `26 kg a metre`. */
export function lineWords(load_Npm: number, units: UnitSystem): string {
  return units === 'metric'
    ? worded(load_Npm / standardGravity, 'kg a metre')
    : worded((load_Npm * foot) / poundForce, 'lb a foot');
}

/** Whole numbers from ten up, tenths below; a hair under a round number, as a change of units leaves it, is that number. */
function worded(amount: number, unit: string): string {
  const parts = amount >= 10 - 1e-6 ? 1 : 10;
  const number = Math.floor(amount * parts + 1e-6) / parts;
  return number > 0 ? `${number} ${unit}` : '';
}
