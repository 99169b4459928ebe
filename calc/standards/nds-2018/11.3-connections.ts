import { formula } from '../../formula/formula.ts';
import { inch } from '../../../shared/quantity/index.ts';

const source = (clause: string) => ({ document: 'NDS', edition: '2018', clause });

/** Adjusted lateral value of one fastener. */
export const adjustedLateral = formula({
  symbol: 'Z_prime',
  caption: 'allowable lateral load of one screw',
  expression: 'Z * C_D * C_M * C_t * C_g * C_Delta * C_eg * C_tn',
  symbols: { Z: 'N', C_D: '1', C_M: '1', C_t: '1', C_g: '1', C_Delta: '1', C_eg: '1', C_tn: '1' },
  unit: 'N',
  source: source('Table 11.3.1'),
});

/** Wet service of fasteners, NDS Table 11.3.3: lateral, withdrawal of screws, withdrawal of nails whose wood changes. */
export const wetFasteners = { lateral: 0.7, screwWithdrawal: 0.7, nailWithdrawal: 0.25 } as const;

/** End grain, NDS 12.2.1.2 (lag screws in withdrawal) and 12.5.2.2 (lateral). Nothing else may be pulled from end grain. */
export const endGrain = { lagWithdrawal: 0.75, lateral: 0.67 } as const;

/** Nails toed in, NDS 12.5.4.1 and 12.5.4.2; the wet service factor does not apply to their withdrawal. */
export const toeNail = { withdrawal: 0.67, lateral: 0.83 } as const;

/** Pull and shear together on a lag or wood screw. */
export const combinedScrew = formula({
  symbol: 'Z_alpha_prime',
  caption: 'allowable load of one screw at the angle of its load',
  expression: 'W_p * Z_prime / (W_p * cos(alpha)^2 + Z_prime * sin(alpha)^2)',
  symbols: { W_p: 'N', Z_prime: 'N', alpha: 'rad' },
  unit: 'N',
  source: source('12.4.1, Eq. 12.4-1; α from the shear towards the pull: tan α = T / V_s'),
});

/** Pull and shear together on a nail. */
export const combinedNail = formula({
  symbol: 'Z_alpha_prime',
  caption: 'allowable load of one nail at the angle of its load',
  expression: 'W_p * Z_prime / (W_p * cos(alpha) + Z_prime * sin(alpha))',
  symbols: { W_p: 'N', Z_prime: 'N', alpha: 'rad' },
  unit: 'N',
  source: source('12.4.2, Eq. 12.4-2; α from the shear towards the pull: tan α = T / V_s'),
});

/** Length of a common lag screw's thread: half its length and half an inch but for the listed ones, six inches at most, NDS Table L2. */
export function lagThread_m(length_m: number): number {
  const inches = length_m / inch;
  const others: readonly (readonly [number, number])[] = [
    [1, 0.75],
    [1.5, 1.25],
    [2, 1.5],
    [10, 5.25],
    [11, 5.5],
  ];
  const listed = others.find(([length]) => Math.abs(length - inches) < 1e-6);
  return (listed?.[1] ?? Math.min(6, inches / 2 + 0.5, inches)) * inch;
}
