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
  const { windows, width_m: width } = windowsOf(line, width_m);
  let most = { force_Npm: 0, support: line[line.length - 1]?.support ?? -1 };
  for (const { supports, shares } of windows) {
    let force_N = 0;
    let most_N = -1;
    let support = -1;
    for (let k = 0; k < supports.length; k++) {
      const part_N = (shares[k] ?? 0) * (forces_N[supports[k] ?? -1] ?? 0);
      force_N += part_N;
      if (part_N > most_N) {
        most_N = part_N;
        support = supports[k] ?? -1;
      }
    }
    if (force_N / width > most.force_Npm) most = { force_Npm: force_N / width, support };
  }
  return most;
}

/** A stretch of a line: the supports of the parts it covers, and the share of the force of each. */
interface Window {
  readonly supports: Int32Array;
  readonly shares: Float64Array;
}

/** The stretches of a line that begin or end where a part does, and how long they are. */
interface Windows {
  readonly asked_m: number;
  readonly width_m: number;
  readonly windows: readonly Window[];
}

/** Asked for under load after load. */
const known = new WeakMap<readonly LinePart[], Windows>();

function windowsOf(line: readonly LinePart[], asked_m: number): Windows {
  const held = known.get(line);
  if (held?.asked_m === asked_m) return held;
  const last = line[line.length - 1];
  const whole_m = last === undefined ? 0 : last.from_m + last.length_m;
  const width_m = Math.min(asked_m, whole_m);
  const starts = line.flatMap(({ from_m, length_m }) => [from_m, from_m + length_m - width_m]);
  const inside = new Set(starts.map((start) => Math.min(Math.max(start, 0), whole_m - width_m)));
  const windows = [...inside].map((from) => windowAt(line, from, from + width_m));
  const made = { asked_m, width_m, windows };
  known.set(line, made);
  return made;
}

function windowAt(line: readonly LinePart[], from: number, to: number): Window {
  const parts = line.flatMap(({ support, from_m, length_m, share = 1 }) => {
    const covered = Math.min(to, from_m + length_m) - Math.max(from, from_m);
    return covered <= 0 ? [] : [{ support, share: share * Math.min(1, covered / length_m) }];
  });
  return {
    supports: Int32Array.from(parts, ({ support }) => support),
    shares: Float64Array.from(parts, ({ share }) => share),
  };
}
