/**
 * How much of a capacity is used, for people: `"43 %"`. A ratio is never rounded across 1: 1.004 reads `"100.4 %"`,
 * 0.999 reads `"99.9 %"`, and what is closer than a tenth of a per cent says on which side it lies.
 *
 * @param ratio demand ÷ capacity; null where there is no capacity
 */
export function showUsed(ratio: number | null): string {
  if (ratio === null) return 'none';
  const percent = ratio * 100;
  const whole = Math.round(percent);
  if (sameSide(whole, percent)) return `${whole} %`;
  const tenth = Math.round(percent * 10) / 10;
  if (sameSide(tenth, percent)) return `${tenth} %`;
  return percent > 100 ? 'just over 100 %' : 'just under 100 %';
}

/** A rounded value may read 100 only where the value is 100. */
function sameSide(rounded: number, percent: number): boolean {
  return Math.sign(rounded - 100) === Math.sign(percent - 100);
}
