/**
 * A symmetric system y = M z + b whose unknowns change sides one by one: of every pair (z, y) one is given and the
 * other follows. Principal pivoting; an exchange costs the square of the size.
 */
export interface Tableau {
  readonly size: number;
  readonly entries: Float64Array;
  /** 1 where z follows and y is given, 0 the other way round. */
  readonly exchanged: Uint8Array;
}

export function tableauOf(size: number, matrix: Float64Array): Tableau {
  return { size, entries: Float64Array.from(matrix), exchanged: new Uint8Array(size) };
}

export function copyOf({ size, entries, exchanged }: Tableau): Tableau {
  return { size, entries: Float64Array.from(entries), exchanged: Uint8Array.from(exchanged) };
}

/** Exchanges one pair. The entry on the diagonal must not be zero. */
export function exchange({ size, entries, exchanged }: Tableau, k: number): void {
  const pivot = entries[k * size + k] ?? 0;
  const row = entries.subarray(k * size, (k + 1) * size);
  for (let i = 0; i < size; i++) {
    if (i === k) continue;
    const base = i * size;
    const factor = (entries[base + k] ?? 0) / pivot;
    if (factor !== 0) {
      for (let j = 0; j < size; j++) entries[base + j] = (entries[base + j] ?? 0) - factor * (row[j] ?? 0);
    }
    entries[base + k] = factor;
  }
  for (let j = 0; j < size; j++) row[j] = -(row[j] ?? 0) / pivot;
  row[k] = 1 / pivot;
  exchanged[k] = exchanged[k] === 1 ? 0 : 1;
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
  const inputs = new Float64Array(size);
  for (let j = 0; j < size; j++) inputs[j] = (given[j] ?? 0) - (exchanged[j] === 1 ? (constant[j] ?? 0) : 0);
  const values = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = exchanged[i] === 1 ? 0 : (constant[i] ?? 0);
    for (let j = 0; j < size; j++) sum += (entries[i * size + j] ?? 0) * (inputs[j] ?? 0);
    values[i] = sum;
  }
  return values;
}
