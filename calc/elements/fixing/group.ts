import { forcePerLength, formula } from '../../formula/formula.ts';
import { significant, inch, psi } from '../../../shared/quantity/index.ts';
import { work, type Worked } from '../../formula/step.ts';
import type { Fastener } from '../../catalogue/index.ts';
import {
  leastPlacedDiameter_m,
  spacingBetweenRows,
  spacingInRow,
} from '../../standards/nds-2018/12.5-placement.ts';
import type { Fixing, Ground } from './fixing.ts';
import { penetrationOf } from './values.ts';

const steelE_Pa = 29e6 * psi;

/** 270,000 lbf/in^2.5: slip modulus of a fastener between steel and wood, NDS 11.3.6. */
export const slipConstant = 270_000 * psi * Math.sqrt(inch) ** -1;

const clause = { document: 'NDS', edition: '2018', clause: '11.3.6, Eq. 11.3-1' };

/** Group factor of a row of fasteners; m from the stiffness of both members. */
export const groupFactor = formula({
  symbol: 'C_g',
  caption: 'group factor of the row',
  expression:
    'm * (1 - m^(2 * n)) / (n * ((1 + R_EA * m^n) * (1 + m) - 1 + m^(2 * n))) * (1 + R_EA) / (1 - m)',
  symbols: { m: '1', n: '1', R_EA: '1' },
  unit: '1',
  source: clause,
});

/** m of the group factor. */
export const groupStiffness = formula({
  symbol: 'm',
  caption: 'term of the group factor',
  expression: '1 + u - sqrt((1 + u)^2 - 1)',
  symbols: { u: '1' },
  unit: '1',
  source: clause,
});

/** u − 1 of the group factor. */
export const groupSlip = formula({
  symbol: 'u',
  caption: 'slip against stretch of the members, less one',
  expression: 'gamma_s * s / 2 * (1 / EA_m + 1 / EA_s)',
  symbols: { gamma_s: 'N/m', s: 'm', EA_m: 'N', EA_s: 'N' },
  unit: '1',
  source: clause,
});

/** Slip modulus. */
export const slipModulus = formula({
  symbol: 'gamma_s',
  caption: 'slip modulus of one screw',
  expression: 'k_g * D^1.5',
  symbols: { k_g: forcePerLength(2.5), D: 'm' },
  unit: 'N/m',
  source: clause,
});

/** Factors of a group: C_g of rows of thick fasteners, C_Δ of their spacing. */
export interface GroupFactors {
  readonly C_g: number;
  readonly C_Delta: number;
  readonly steps: readonly Worked['step'][];
  /** Why the spacing is not permitted; empty where it is. */
  readonly why: string;
}

/**
 * Group and geometry factors. Both are 1 for fasteners thinner than 1/4 in (NDS 11.3.6, 12.5.1), which stand no closer than
 * thicker ones all the same: the wood must not split (common practice, no source).
 */
export function groupFactorsOf(
  fixing: Fixing,
  fastener: Fastener,
  wood: Extract<Ground, { kind: 'wood' }>,
): GroupFactors {
  const D = fastener.diameter_m;
  const refuse = (why: string): GroupFactors => ({ C_g: 1, C_Delta: 0, steps: [], why });
  const isThin = D < leastPlacedDiameter_m;
  const source = (table: string): string => (isThin ? 'common practice, no source' : `NDS Table ${table}`);
  // Of Table 12.5.1D thin ones keep what it asks along the grain.
  const between = spacingBetweenRows(isThin ? 0 : wood.angle_deg, penetrationOf(fixing, wood) / D);
  if (fixing.perHeight > 1 && fixing.across_m / (fixing.perHeight - 1) < between * D - 1e-9) {
    return refuse(
      `the screws at one height stand closer together than ${significant(between, 3)} diameters (${source('12.5.1D')})`,
    );
  }
  const heights = [...fixing.heights_m].sort((a, b) => a - b);
  const gaps = heights.slice(1).map((height, i) => height - (heights[i] ?? 0));
  const closest = Math.min(...gaps, Infinity);
  if (closest < spacingInRow.least * D - 1e-9) {
    return refuse(`the screws stand closer together than three diameters (${source('12.5.1B')})`);
  }
  if (isThin || gaps.length === 0) return { C_g: 1, C_Delta: 1, steps: [], why: '' };
  const gamma = work(slipModulus, { k_g: slipConstant, D }, fixing.system);
  const u = work(
    groupSlip,
    {
      gamma_s: gamma.value,
      s: Math.max(...gaps),
      EA_m: wood.E_Pa * wood.width_m * Math.min(wood.depth_m, 10 * wood.width_m),
      EA_s: steelE_Pa * fixing.plate.width_m * fixing.plate.thickness_m,
    },
    fixing.system,
  );
  const m = work(groupStiffness, { u: u.value }, fixing.system);
  const EA_m = wood.E_Pa * wood.width_m * wood.depth_m;
  const EA_s = steelE_Pa * fixing.plate.width_m * fixing.plate.thickness_m;
  const C_g = work(
    groupFactor,
    { m: m.value, n: heights.length, R_EA: Math.min(EA_s / EA_m, EA_m / EA_s) },
    fixing.system,
  );
  return {
    C_g: Math.min(1, C_g.value),
    C_Delta: Math.min(1, closest / (spacingInRow.full * D)),
    steps: [gamma.step, u.step, m.step, C_g.step],
    why: '',
  };
}
