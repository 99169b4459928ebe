import { formula } from '../formula/formula.ts';
import { warping } from './open-section-formulas.ts';

const source = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/**
 * What an edge at d_e from the twist axis moves in the middle of a bay held from turning at its ends. P roams at e_t from the
 * axis, t_s is the torque for each length of what stands along the whole bay, S_t what other loads bring.
 */
export const twistedBay = formula({
  symbol: 'Delta_twist',
  caption: 'movement of the edge by twisting',
  expression: 'd_e * (P * e_t * L / 4 + t_s * L^2 / 8 + S_t) / GJ',
  symbols: { d_e: 'm', P: 'N', e_t: 'm', L: 'm', t_s: 'N', S_t: 'N.m2', GJ: 'N.m2' },
  unit: 'm',
  source: source('moment of a simple beam under the torques, over GJ; S_t: of loads on part of the bay'),
});

/** The same of a bay that resists by bending of its parts alone. */
export const warpedBay = formula({
  symbol: 'Delta_w',
  caption: 'movement of the edge, were the parts to bend alone',
  expression: 'd_e * (P * e_t * L^3 / 48 + 5 * t_s * L^4 / 384 + S_w) / EI_w',
  symbols: { d_e: 'm', P: 'N', e_t: 'm', L: 'm', t_s: 'N', S_w: warping, EI_w: warping },
  unit: 'm',
  source: source(
    'movement of a simple beam under the torques (AISC Table 3-23); S_w: of loads on part of the bay',
  ),
});

/** What an edge moves at the tip of an overhang held from turning at its root. */
export const twistedTip = formula({
  symbol: 'Delta_twist',
  caption: 'movement of the edge by twisting',
  expression: 'd_e * (P * e_t * a + t_s * a^2 / 2 + S_t) / GJ',
  symbols: { d_e: 'm', P: 'N', e_t: 'm', a: 'm', t_s: 'N', S_t: 'N.m2', GJ: 'N.m2' },
  unit: 'm',
  source: source('torque from the bracket to the tip, over GJ; S_t: of loads on part of the overhang'),
});
