/** A list of numbers that look random and are the same every time (Park and Miller's minimal standard generator). */
export function drawsFrom(start: number) {
  let state = start;
  const next = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  for (let i = 0; i < 5; i++) next();
  return {
    /** Between two numbers, to a millimetre or a thousandth. */
    between: (from: number, to: number): number => Math.round((from + (to - from) * next()) * 1000) / 1000,
    one: <T>(first: T, ...others: readonly T[]): T =>
      others[Math.floor(next() * (others.length + 1)) - 1] ?? first,
  };
}

export type Draws = ReturnType<typeof drawsFrom>;
