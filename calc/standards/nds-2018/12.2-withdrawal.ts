import { inch, psi } from '../../../shared/quantity/index.ts';
import { forcePerLength, formula } from '../../formula/formula.ts';

const source = (clause: string) => ({ document: 'NDS', edition: '2018', clause });

/** 2850 lbf/in²: the constant of Eq. 12.2-2, with D in inches and W in lbf for each inch of thread. */
export const woodScrewConstant_Pa = 2850 * psi;
/** 1380 lbf/in²: the constant of Eq. 12.2-3. */
export const nailConstant_Pa = 1380 * psi;
/** 1800 lbf/in^1.75: the constant of Eq. 12.2-1. */
export const lagConstant = 1800 * psi * inch ** 0.25;

/** How far a fastener reaches past plate and coverings. */
export const fastenerReach = formula({
  symbol: 'p_s',
  caption: 'how far the screw reaches past the plate and what covers the wall, square to it',
  expression: 'k_l * l - t_p - g',
  symbols: { k_l: '1', l: 'm', t_p: 'm', g: 'm' },
  unit: 'm',
  source: {
    document: 'geometry',
    edition: '',
    clause: 'k_l: cosine of 30° of nails toed in, NDS Figure 12A; else 1',
  },
});

/** Thread that is in the wood. */
export const threadInWood = formula({
  symbol: 'p_t',
  caption: 'thread in the wood, the tip E of lag screws left out and what comes out behind',
  expression: 'min(d_w, p_s - E) - (p_s - T_l + abs(p_s - T_l)) / 2',
  symbols: { d_w: 'm', p_s: 'm', E: 'm', T_l: 'm' },
  unit: 'm',
  source: source('12.2.1, 12.2.2; d_w: depth of the wood, T_l: length of the thread'),
  valid: 'p_t > 0',
});

/** Withdrawal of a wood screw from side grain, for each length of thread in the wood. */
export const woodScrewWithdrawal = formula({
  symbol: 'W',
  caption: 'withdrawal value for each length of thread',
  expression: 'k_W * G^2 * D',
  symbols: { k_W: 'Pa', G: '1', D: 'm' },
  unit: 'N/m',
  source: source('12.2.2, Eq. 12.2-2; G: specific gravity of the wood'),
  valid: 'side grain',
});

/** Withdrawal of a lag screw from side grain, for each length of thread in the wood, the tapered tip left out. */
export const lagWithdrawal = formula({
  symbol: 'W',
  caption: 'withdrawal value for each length of thread',
  expression: 'k_W * G^1.5 * D^0.75',
  symbols: { k_W: forcePerLength(1.75), G: '1', D: 'm' },
  unit: 'N/m',
  source: source('12.2.1, Eq. 12.2-1; G: specific gravity of the wood'),
  valid: 'side grain',
});

/** Withdrawal of a smooth common nail from side grain, for each length in the wood. */
export const nailWithdrawal = formula({
  symbol: 'W',
  caption: 'withdrawal value for each length in the wood',
  expression: 'k_W * G^2.5 * D',
  symbols: { k_W: 'Pa', G: '1', D: 'm' },
  unit: 'N/m',
  source: source('12.2.3, Eq. 12.2-3; G: specific gravity of the wood'),
  valid: 'side grain',
});

/** Adjusted withdrawal of one fastener. */
export const adjustedWithdrawal = formula({
  symbol: 'W_p',
  caption: 'allowable withdrawal of one screw',
  expression: 'W * p_t * C_D * C_M * C_t * C_eg * C_tn',
  symbols: { W: 'N/m', p_t: 'm', C_D: '1', C_M: '1', C_t: '1', C_eg: '1', C_tn: '1' },
  unit: 'N',
  source: source('Table 11.3.1'),
});

/** 690 lbf/in²: the constant of Eq. 12.2-6a. From memory. */
export const pullThroughConstant_Pa = 690 * psi;

/** Head pull-through of a round-headed fastener; the wood counts up to 2.5 head diameters. From memory. */
export const headPullThrough = formula({
  symbol: 'W_H_prime',
  caption: 'allowable head pull-through of one screw',
  expression: 'k_H * 3.141592653589793 * D_H * G^2 * min(t_ns, 2.5 * D_H) * C_D * C_M * C_t',
  symbols: { k_H: 'Pa', D_H: 'm', G: '1', t_ns: 'm', C_D: '1', C_M: '1', C_t: '1' },
  unit: 'N',
  source: source('12.2.5, Eq. 12.2-6'),
});
