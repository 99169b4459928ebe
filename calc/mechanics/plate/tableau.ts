/**
 * A symmetric system y = M z + b whose unknowns change sides one by one: of every pair (z, y) one is given and the
 * other follows. Principal pivoting: what couples two pairs is the same both ways where both or neither are exchanged,
 * and its opposite where one of them is, so one triangle holds it all. An exchange costs half the square of the size.
 */
export interface Tableau {
  readonly size: number;
  /** Lower triangle, row by row: row i begins at i (i + 1) / 2. */
  readonly entries: Float64Array;
  /** 1 where z follows and y is given, 0 the other way round. */
  readonly exchanged: Uint8Array;
  /** Room for a column and a row. */
  readonly column: Float64Array;
  readonly row: Float64Array;
}

/** @param matrix M, row by row */
export function tableauOf(size: number, matrix: Float64Array): Tableau {
  const entries = new Float64Array(startOf(size));
  for (let i = 0, at = 0; i < size; i++)
    for (let j = 0; j <= i; j++, at++) entries[at] = matrix[i * size + j] ?? 0;
  const [column, row] = [new Float64Array(size), new Float64Array(size)];
  return { size, entries, exchanged: new Uint8Array(size), column, row };
}

export function copyOf({ size, entries, exchanged }: Tableau): Tableau {
  const [column, row] = [new Float64Array(size), new Float64Array(size)];
  return { size, entries: entries.slice(), exchanged: exchanged.slice(), column, row };
}

/** How what follows in one pair changes with what is given in it. */
export function diagonalOf({ entries }: Tableau, k: number): number {
  return entries[startOf(k) + k] ?? 0;
}

/** How what follows in every pair changes with what is given in one; good until the next column is asked for. */
export function columnOf({ size, entries, exchanged, column }: Tableau, k: number): Float64Array {
  const start = startOf(k);
  for (let j = 0; j <= k; j++)
    column[j] = exchanged[j] === exchanged[k] ? (entries[start + j] ?? 0) : -(entries[start + j] ?? 0);
  for (let i = k + 1; i < size; i++) column[i] = entries[startOf(i) + k] ?? 0;
  return column;
}

/** Exchanges one pair. The entry on the diagonal must not be zero. */
export function exchange(tableau: Tableau, k: number): void {
  const { size, entries, exchanged, row } = tableau;
  const column = columnOf(tableau, k);
  const pivot = column[k] ?? 0;
  for (let j = 0; j < size; j++)
    row[j] = exchanged[j] === exchanged[k] ? (column[j] ?? 0) : -(column[j] ?? 0);
  for (let i = 0; i < size; i++) {
    const start = startOf(i);
    const factor = (column[i] ?? 0) / pivot;
    if (i !== k && factor !== 0) takeOff(entries, start, factor, row, i + 1);
    if (i > k) entries[start + k] = factor;
  }
  const start = startOf(k);
  for (let j = 0; j < k; j++) entries[start + j] = -(row[j] ?? 0) / pivot;
  entries[start + k] = 1 / pivot;
  exchanged[k] = exchanged[k] === 1 ? 0 : 1;
}

/** Takes a share of a row off another one. */
function takeOff(into: Float64Array, start: number, share: number, row: Float64Array, count: number): void {
  let j = 0;
  for (let at = start; j + 3 < count; j += 4, at += 4) {
    into[at] = (into[at] ?? 0) - share * (row[j] ?? 0);
    into[at + 1] = (into[at + 1] ?? 0) - share * (row[j + 1] ?? 0);
    into[at + 2] = (into[at + 2] ?? 0) - share * (row[j + 2] ?? 0);
    into[at + 3] = (into[at + 3] ?? 0) - share * (row[j + 3] ?? 0);
  }
  for (; j < count; j++) into[start + j] = (into[start + j] ?? 0) - share * (row[j] ?? 0);
}

/**
 * What follows on each side of a pair when every given one is known.
 *
 * @param given z where it is given; y, for the pairs whose z follows
 * @param constant b
 */
export function following(
  { size, entries, exchanged }: Tableau,
  given: Float64Array,
  constant: Float64Array,
): Float64Array {
  const values = new Float64Array(size);
  const inputs = new Float64Array(size);
  /** By the other triangle, and of the opposite sign for a pair that is exchanged. */
  const turned = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const isTurned = exchanged[i] === 1;
    const start = startOf(i);
    const input = (given[i] ?? 0) - (isTurned ? (constant[i] ?? 0) : 0);
    inputs[i] = input;
    values[i] = (isTurned ? 0 : (constant[i] ?? 0)) + product(entries, start, inputs, i + 1);
    if (input === 0) continue;
    const own = isTurned ? -input : input;
    for (let j = 0; j < i; j++) turned[j] = (turned[j] ?? 0) + own * (entries[start + j] ?? 0);
  }
  for (let j = 0; j < size; j++)
    values[j] = (values[j] ?? 0) + (exchanged[j] === 1 ? -(turned[j] ?? 0) : (turned[j] ?? 0));
  return values;
}

/** Inner product; four sums side by side: the processor need not wait for one addition to begin the next. */
function product(entries: Float64Array, start: number, inputs: Float64Array, count: number): number {
  let p = 0;
  let q = 0;
  let r = 0;
  let s = 0;
  let j = 0;
  for (let at = start; j + 3 < count; j += 4, at += 4) {
    p += (entries[at] ?? 0) * (inputs[j] ?? 0);
    q += (entries[at + 1] ?? 0) * (inputs[j + 1] ?? 0);
    r += (entries[at + 2] ?? 0) * (inputs[j + 2] ?? 0);
    s += (entries[at + 3] ?? 0) * (inputs[j + 3] ?? 0);
  }
  for (; j < count; j++) p += (entries[start + j] ?? 0) * (inputs[j] ?? 0);
  return p + q + (r + s);
}

function startOf(i: number): number {
  return (i * (i + 1)) / 2;
}
