/** Whether all holds at some amount; the larger the amount, the harder. */
export type HoldsAt = (amount: number) => boolean;

const close = 0.002;
const mostSteps = 60;

/**
 * The largest amount at which all holds, to within 0.2 %, from below: it was tried and held, and one no more than that
 * above it was tried and did not. Null where nothing holds down to `least`; `most` where all holds up to there.
 *
 * @param start an amount near which to begin
 */
export function largestThatHolds(
  holds: HoldsAt,
  range: { readonly least: number; readonly start: number; readonly most: number },
): number | null {
  let low = Math.min(Math.max(range.start, range.least), range.most);
  let high = low;
  for (let step = 0; !holds(low); step++) {
    if (low <= range.least || step > mostSteps) return null;
    high = low;
    low = Math.max(range.least, low / 2);
  }
  if (high === low) {
    while (high === low) {
      if (low >= range.most) return range.most;
      const next = Math.min(range.most, low * 2);
      if (holds(next)) [low, high] = [next, next];
      else high = next;
    }
  }
  while (high - low > close * low) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
