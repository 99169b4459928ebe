/** The middle of some numbers; of an even count the mean of the two in the middle. */
export function median(numbers: readonly number[]): number {
  if (numbers.length === 0) throw new RangeError('no numbers have no median');
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? NaN) + upper) / 2;
}

/** The number that so many per cent of some numbers are at most. */
export function percentile(numbers: readonly number[], percent: number): number {
  if (numbers.length === 0) throw new RangeError('no numbers have no percentile');
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil((percent / 100) * sorted.length) - 1)] ?? NaN;
}

/** Something to be timed, and how often in a row, so that the clock is fine enough. */
export interface Task {
  readonly run: () => void;
  readonly times: number;
}

/**
 * Times tasks in turns, so that what else the machine does falls on all alike, after some rounds to warm up: a server runs warm.
 *
 * @param tasks what to time
 * @param rounds how many samples of each
 * @param warmUp how many rounds go before, not counted
 * @returns for each task its samples, ms for one run, in the order of the rounds
 */
export function inTurns(tasks: readonly Task[], rounds: number, warmUp = 2): number[][] {
  const samples = tasks.map((): number[] => []);
  for (let round = -warmUp; round < rounds; round++) {
    tasks.forEach(({ run, times }, index) => {
      const start = performance.now();
      for (let i = 0; i < times; i++) run();
      if (round >= 0) samples[index]?.push((performance.now() - start) / times);
    });
  }
  return samples;
}

/** The middle of the ratios of samples taken in the same round. */
export function medianRatio(over: readonly number[], under: readonly number[]): number {
  return median(over.map((sample, index) => sample / (under[index] ?? NaN)));
}
