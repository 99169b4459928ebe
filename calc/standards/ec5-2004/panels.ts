import { formula } from '../../formula/formula.ts';
import type { Duration } from '../../../shared/check-document/index.ts';

export type PanelFamily = 'plywood' | 'osb' | 'mdf' | 'particleboard' | 'hardboard';

/**
 * k_mod of panels in service class 1, EN 1995-1-1:2004+A1 Table 3.1, for permanent, long-, medium-, short-term and
 * instantaneous loads. OSB as OSB/2, the weaker class.
 */
const modification: Readonly<Record<PanelFamily, readonly [number, number, number, number, number]>> = {
  plywood: [0.6, 0.7, 0.8, 0.9, 1.1],
  osb: [0.3, 0.45, 0.65, 0.85, 1.1],
  mdf: [0.2, 0.4, 0.6, 0.8, 1.1],
  particleboard: [0.3, 0.45, 0.65, 0.85, 1.1],
  hardboard: [0.3, 0.45, 0.65, 0.85, 1.1],
};

const classOf: Readonly<Record<Duration, 0 | 1 | 2 | 3 | 4>> = {
  permanent: 0,
  'ten-years': 1,
  'two-months': 2,
  'seven-days': 3,
  'ten-minutes': 3,
  impact: 4,
};

/** k_mod of a panel for one duration, service class 1. */
export function modificationFactor(family: PanelFamily, duration: Duration): number {
  return modification[family][classOf[duration]];
}

/** γ_M, EN 1995-1-1 Table 2.3. */
export const partialFactor: Readonly<Record<PanelFamily, number>> = {
  plywood: 1.2,
  osb: 1.2,
  mdf: 1.3,
  particleboard: 1.3,
  hardboard: 1.3,
};

/** Load factor of variable actions, EN 1990: taken to the resistance side where loads are not factored. */
export const loadFactor = 1.5;

/** Final over initial movement, 1 + k_def, EN 1995-1-1 Table 3.2, service class 1; plywood and OSB follow NDS 3.5.2. */
export const panelCreep: Readonly<Record<PanelFamily, { readonly factor: number; readonly source: string }>> =
  {
    plywood: { factor: 2.0, source: 'NDS 2018 3.5.2: wood structural panels, the higher value' },
    osb: {
      factor: 2.5,
      source: 'EN 1995-1-1 Table 3.2, OSB/3, service class 1: 1 + k_def, higher than NDS 3.5.2',
    },
    mdf: { factor: 3.25, source: 'EN 1995-1-1 Table 3.2, MDF, service class 1: 1 + k_def (NDS is silent)' },
    particleboard: {
      factor: 3.25,
      source: 'EN 1995-1-1 Table 3.2, P4, service class 1: 1 + k_def (NDS is silent)',
    },
    hardboard: {
      factor: 3.25,
      source: 'EN 1995-1-1 Table 3.2, HB.LA, service class 1: 1 + k_def (NDS is silent)',
    },
  };

/** A characteristic panel strength turned into an allowable stress for unfactored loads. */
export const allowableFromCharacteristic = formula({
  symbol: 'F_prime',
  caption: 'allowable stress of the panel',
  expression: 'f_k * k_mod / (gamma_M * gamma_Q)',
  symbols: { f_k: 'Pa', k_mod: '1', gamma_M: '1', gamma_Q: '1' },
  unit: 'Pa',
  source: {
    document: 'EN 1995-1-1',
    edition: '2004+A1',
    clause: '2.4.1 Eq. 2.14; EN 1990 load factor taken to the resistance',
  },
});

/** A characteristic strength where only a mean is printed: 20 % variation, common practice, no source. */
export const characteristicFromMean = formula({
  symbol: 'f_k',
  caption: 'strength that 95 of 100 panels exceed',
  expression: 'f_m * (1 - 1.645 * V_c)',
  symbols: { f_m: 'Pa', V_c: '1' },
  unit: 'Pa',
  source: { document: 'common practice, no source', edition: '', clause: 'variation of 20 %' },
});

export const panelVariation = 0.2;
