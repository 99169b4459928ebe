import { formula } from '../../formula/formula.ts';
import type { Duration } from '../../../shared/check-document/index.ts';

const source = (clause: string) => ({ document: 'NDS', edition: '2018', clause });

/** Load duration factor C_D, NDS 2018 Table 2.3.2: for bending, shear and connections; never for F_c⟂, E or E_min. */
export const durationFactor: Readonly<Record<Duration, number>> = {
  permanent: 0.9,
  'ten-years': 1.0,
  'two-months': 1.15,
  'seven-days': 1.25,
  'ten-minutes': 1.6,
  impact: 2.0,
};

/** NDS 2018 Table 2.3.2, footnote 2: impact does not apply to connections, and C_D there is at most 1.6. */
export const mostDurationFactorOfConnections = 1.6;

export type Moisture = 'dry' | 'wet';
export type Temperature = 'ordinary' | 'warm' | 'hot';

/** Temperature factor C_t for strengths, NDS 2018 Table 2.3.3: up to 100 °F, to 125 °F, to 150 °F. */
export const temperatureFactor: Readonly<Record<Moisture, Readonly<Record<Temperature, number>>>> = {
  dry: { ordinary: 1.0, warm: 0.8, hot: 0.7 },
  wet: { ordinary: 1.0, warm: 0.7, hot: 0.5 },
};

/** Temperature factor C_t for stiffness, NDS 2018 Table 2.3.3. */
export const temperatureFactorOfStiffness: Readonly<Record<Temperature, number>> = {
  ordinary: 1.0,
  warm: 0.9,
  hot: 0.9,
};

/** Adjusted bending design value, NDS 2018 Table 4.3.1. */
export const adjustedBending = formula({
  symbol: 'F_b_prime',
  caption: 'allowable bending stress',
  expression: 'F_b * C_D * C_M * C_t * C_F * C_fu',
  symbols: { F_b: 'Pa', C_D: '1', C_M: '1', C_t: '1', C_F: '1', C_fu: '1' },
  unit: 'Pa',
  source: source('Table 4.3.1'),
});

/** Adjusted shear design value, NDS 2018 Table 4.3.1. */
export const adjustedShear = formula({
  symbol: 'F_v_prime',
  caption: 'allowable shear stress',
  expression: 'F_v * C_D * C_M * C_t',
  symbols: { F_v: 'Pa', C_D: '1', C_M: '1', C_t: '1' },
  unit: 'Pa',
  source: source('Table 4.3.1'),
});

/** Adjusted compression across the grain, NDS 2018 Table 4.3.1: no C_D; C_b taken as 1, on the safe side. */
export const adjustedBearing = formula({
  symbol: 'F_c_perp_prime',
  caption: 'allowable bearing stress across the grain',
  expression: 'F_c_perp * C_M * C_t',
  symbols: { F_c_perp: 'Pa', C_M: '1', C_t: '1' },
  unit: 'Pa',
  source: source('Table 4.3.1'),
});

/** Adjusted modulus of elasticity, NDS 2018 Table 4.3.1. */
export const adjustedStiffness = formula({
  symbol: 'E_prime',
  caption: 'modulus of elasticity in service',
  expression: 'E * C_M * C_t',
  symbols: { E: 'Pa', C_M: '1', C_t: '1' },
  unit: 'Pa',
  source: source('Table 4.3.1'),
});

/** Tension across the grain, adjusted like the other strengths; NDS 3.8.2 gives no value of its own. */
export const adjustedTensionAcross = formula({
  symbol: 'F_t_perp_prime',
  caption: 'tension across the grain counted on',
  expression: 'F_t_perp * C_D * C_M * C_t',
  symbols: { F_t_perp: 'Pa', C_D: '1', C_M: '1', C_t: '1' },
  unit: 'Pa',
  source: source('Table 2.3.2, by analogy'),
});
