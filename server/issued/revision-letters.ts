const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * A revision as it is printed.
 *
 * @param number counted from 1
 * @returns A, B … Z, AA, AB … AZ, BA …
 */
export function revisionLetters(number: number): string {
  if (number < 1) return '';
  const last = (number - 1) % letters.length;
  return revisionLetters((number - 1 - last) / letters.length) + letters.charAt(last);
}
