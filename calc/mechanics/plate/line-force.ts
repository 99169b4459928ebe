/** A part of a line of supports: its support's number, where it begins along the line, and how long it is. */
export interface LinePart {
  readonly support: number;
  readonly from_m: number;
  readonly length_m: number;
  /** Which share of the force of the support is the line's; all of it where nothing is said. */
  readonly share?: number;
}

/** Supports that follow one another along a line, each with the length it stands for. */
export function linePartsOf(supports: readonly Omit<LinePart, 'from_m'>[]): LinePart[] {
  let from_m = 0;
  return supports.map((each) => {
    const part = { ...each, from_m };
    from_m += each.length_m;
    return part;
  });
}

/**
 * The largest mean force over a stretch of a line, for each length, and the support that takes most of it. At a corner a
 * plate presses on a point, and the force there for each length has no end as the mesh gets finer; what a stretch takes settles.
 *
 * @param width_m the stretch; of a shorter line its whole length
 */
export function largestLineForce(
  line: readonly LinePart[],
  forces_N: Float64Array,
  width_m: number,
): { readonly force_Npm: number; readonly support: number } {
  const last = line[line.length - 1];
  if (last === undefined) return { force_Npm: 0, support: -1 };
  const whole_m = last.from_m + last.length_m;
  const width = Math.min(width_m, whole_m);
  let most = { force_Npm: 0, support: last.support };
  line.forEach(({ from_m, length_m }, index) => {
    for (const start of [from_m, from_m + length_m - width]) {
      const from = Math.min(Math.max(start, 0), whole_m - width);
      const found = overStretch(line, index, forces_N, from, from + width);
      if (found.force_N / width > most.force_Npm)
        most = { force_Npm: found.force_N / width, support: found.support };
    }
  });
  return most;
}

/** @param beside number of a part that the stretch reaches, or nearly */
function overStretch(
  line: readonly LinePart[],
  beside: number,
  forces_N: Float64Array,
  from: number,
  to: number,
): { readonly force_N: number; readonly support: number } {
  let [force_N, most_N, most] = [0, -1, -1];
  let first = beside;
  while (first > 0 && (line[first]?.from_m ?? 0) > from) first--;
  for (let k = first; k < line.length; k++) {
    const part = line[k];
    if (part === undefined || part.from_m >= to) break;
    const { support, from_m, length_m, share = 1 } = part;
    const covered = Math.min(to, from_m + length_m) - Math.max(from, from_m);
    if (covered <= 0) continue;
    const part_N = share * (forces_N[support] ?? 0) * Math.min(1, covered / length_m);
    force_N += part_N;
    if (part_N > most_N) [most_N, most] = [part_N, support];
  }
  return { force_N, support: most };
}
