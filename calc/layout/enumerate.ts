/** What a choice of stands must keep to. All lengths in m. */
export interface Field {
  readonly places_m: readonly number[];
  readonly length_m: number;
  /** Closest two brackets may stand. */
  readonly apart_m: number;
  readonly mayEnd: (overhang_m: number, bay_m: number, isNearest: boolean) => boolean;
  /** Whether a bay may be there at all; a bay from an end of the board is an overhang. */
  readonly mayBay: (from_m: number, to_m: number) => boolean;
}

/** Choices of stands, and whether they are all there are. */
export interface Choices {
  readonly layouts: readonly (readonly number[])[];
  readonly isComplete: boolean;
}

/**
 * Every choice of a number of stands; where there are more than `most`, the most even of them: those whose widest bay
 * (an overhang counts twice) is narrowest.
 */
export function choicesOf(field: Field, count: number, most: number): Choices {
  let best = choose(field, count, Infinity, most);
  if (best.length <= most) return { layouts: best, isComplete: true };
  const spans = spansOf(field);
  let [low, high] = [0, spans.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = choose(field, count, spans[middle] ?? Infinity, most);
    if (found.length > 0) best = found;
    if (found.length > most) high = middle - 1;
    else low = middle + 1;
  }
  return { layouts: best.slice(0, most), isComplete: false };
}

/** Every length a bay may have, in order, overhangs counted twice. */
function spansOf({ places_m, length_m }: Field): number[] {
  const spans = new Set<number>();
  const add = (span: number): void => void spans.add(Number(span.toPrecision(9)));
  places_m.forEach((a, i) => {
    add(2 * a);
    add(2 * (length_m - a));
    for (const b of places_m.slice(i + 1)) add(b - a);
  });
  return [...spans].sort((a, b) => a - b);
}

/** Choices with no bay wider than a span; no more than one over `most`. */
function choose(field: Field, count: number, widest_m: number, most: number): number[][] {
  const { places_m, length_m, apart_m, mayEnd, mayBay } = field;
  const last = places_m.length - 1;
  const limit_m = widest_m * (1 + 1e-8);
  const at = (i: number): number => places_m[i] ?? NaN;
  const goesOn = (i: number, j: number): boolean =>
    at(j) - at(i) >= apart_m && at(j) - at(i) <= limit_m && mayBay(at(i), at(j));
  const ends = (i: number, j: number): boolean =>
    2 * (length_m - at(j)) <= limit_m &&
    mayEnd(length_m - at(j), at(j) - at(i), j === last) &&
    mayBay(at(j), length_m);
  const begins = (i: number, j: number): boolean =>
    2 * at(i) <= limit_m && mayEnd(at(i), at(j) - at(i), i === 0) && mayBay(0, at(i));
  const dead = new Set<string>();
  const found: number[][] = [];
  const chosen: number[] = [];

  const walk = (): boolean => {
    const i = chosen[chosen.length - 1] ?? -1;
    const left = count - chosen.length;
    const key = `${i} ${left}`;
    if (left > 0 && chosen.length > 1 && dead.has(key)) return false;
    let any = false;
    for (let j = i + 1; j <= last - left + 1 && found.length <= most; j++) {
      const isFine =
        (i < 0 || goesOn(i, j)) && (chosen.length !== 1 || begins(i, j)) && (left !== 1 || ends(i, j));
      if (!isFine) continue;
      chosen.push(j);
      if (left === 1) {
        found.push(chosen.map(at));
        any = true;
      } else if (walk()) any = true;
      chosen.pop();
    }
    if (!any && found.length <= most && chosen.length > 1) dead.add(key);
    return any;
  };
  walk();
  return found;
}
