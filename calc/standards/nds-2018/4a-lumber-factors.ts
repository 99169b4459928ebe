import { psi } from '../../../shared/quantity/index.ts';
/**
 * Factors printed with the tables of dimension lumber, NDS Supplement 2018 Tables 4A and 4B. Widths are nominal inches.
 */

const selectGrades = new Set(['SS', 'No.1&Btr', 'No.1', 'No.2', 'No.1/No.2', 'No.3']);

/** Size factor C_F for bending. Table 4B has it inside its values. */
export function sizeFactor(
  table: '4A' | '4B',
  grade: string,
  nominalWidth_in: number,
  thick: boolean,
): number {
  if (table === '4B') return 1;
  if (selectGrades.has(grade)) {
    if (nominalWidth_in <= 4) return 1.5;
    if (nominalWidth_in <= 5) return 1.4;
    if (nominalWidth_in <= 6) return 1.3;
    if (nominalWidth_in <= 8) return thick ? 1.3 : 1.2;
    if (nominalWidth_in <= 10) return thick ? 1.2 : 1.1;
    if (nominalWidth_in <= 12) return thick ? 1.1 : 1.0;
    return thick ? 1.0 : 0.9;
  }
  return nominalWidth_in <= 4 ? 1.1 : 1.0;
}

/** Flat use factor C_fu: the board is bent about its weak axis. */
export function flatUseFactor(nominalWidth_in: number, thick: boolean): number {
  if (nominalWidth_in < 4) return 1.0;
  if (nominalWidth_in < 5) return thick ? 1.0 : 1.1;
  if (nominalWidth_in < 6) return thick ? 1.05 : 1.1;
  if (nominalWidth_in < 10) return thick ? 1.05 : 1.15;
  return thick ? 1.1 : 1.2;
}

/** Wet service factor C_M of dimension lumber used above 19 % moisture. */
export const wetService = {
  /** 0.85, or 1 where F_b × C_F is 1,150 psi or less. */
  bending: (F_b_times_C_F_Pa: number): number => (F_b_times_C_F_Pa <= 1150 * psi ? 1.0 : 0.85),
  shear: 0.97,
  compressionPerp: 0.67,
  stiffness: 0.9,
} as const;
