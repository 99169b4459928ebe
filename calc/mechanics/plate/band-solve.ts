import type { SymmetricBand } from './band-factor.ts';

/** Solves in place for one right-hand side. */
export function solveBand({ size, halfWidth, rows }: SymmetricBand, right: Float64Array): Float64Array {
  const width = halfWidth + 1;
  let first = 0;
  while (first < size && right[first] === 0) first++;
  for (let i = first; i < size; i++) {
    const shift = i * width + halfWidth - i;
    const from = Math.max(first, i - halfWidth);
    right[i] =
      ((right[i] ?? 0) - product(rows, shift + from, right, from, i - from)) / (rows[shift + i] ?? 1);
  }
  for (let i = size - 1; i >= 0; i--) {
    const shift = i * width + halfWidth - i;
    const value = (right[i] ?? 0) / (rows[shift + i] ?? 1);
    right[i] = value;
    for (let j = Math.max(0, i - halfWidth); j < i; j++)
      right[j] = (right[j] ?? 0) - (rows[shift + j] ?? 0) * value;
  }
  return right;
}

/** Solves in place for many right-hand sides, four at a time: each number of the factor is fetched once for the four. */
export function solveBandForAll(factor: SymmetricBand, rights: Float64Array[]): Float64Array[] {
  let k = 0;
  for (; factor.halfWidth > 0 && k + 3 < rights.length; k += 4) {
    const [a, b, c, d] = rights.slice(k, k + 4);
    if (a !== undefined && b !== undefined && c !== undefined && d !== undefined)
      solveFour(factor, [a, b, c, d]);
  }
  for (const right of rights.slice(k)) solveBand(factor, right);
  return rights;
}

type Four = readonly [Float64Array, Float64Array, Float64Array, Float64Array];

/** Two rows at a time, down and up again: each number on the right is fetched once for the two. */
function solveFour(factor: SymmetricBand, rights: Four): void {
  const { size, halfWidth, rows } = factor;
  const [a, b, c, d] = rights;
  let first = 0;
  while (first < size && a[first] === 0 && b[first] === 0 && c[first] === 0 && d[first] === 0) first++;
  // A row before the first that counts holds nothing, and makes them even.
  if ((size - first) % 2 === 1 && first > 0) first--;
  const isOdd = (size - first) % 2 === 1;
  const divide = (): void => rights.forEach((right) => (right[0] = (right[0] ?? 0) / (rows[halfWidth] ?? 1)));
  if (isOdd) divide();
  for (let i = isOdd ? 1 : first; i < size; i += 2) downTwo(factor, rights, i, first);
  for (let i = size - 1; i > 0; i -= 2) upTwo(factor, rights, i);
  if (size % 2 === 1) divide();
}

/** Row i and the next, from what was found above them. */
function downTwo({ halfWidth, rows }: SymmetricBand, [a, b, c, d]: Four, i: number, first: number): void {
  const upper = i * (halfWidth + 1) + halfWidth - i;
  const lower = upper + halfWidth;
  let [p, q, r, s] = [a[i] ?? 0, b[i] ?? 0, c[i] ?? 0, d[i] ?? 0];
  let [t, u, v, w] = [a[i + 1] ?? 0, b[i + 1] ?? 0, c[i + 1] ?? 0, d[i + 1] ?? 0];
  const left = i - halfWidth;
  if (left >= first) {
    const entry = rows[upper + left] ?? 0;
    p -= entry * (a[left] ?? 0);
    q -= entry * (b[left] ?? 0);
    r -= entry * (c[left] ?? 0);
    s -= entry * (d[left] ?? 0);
  }
  for (let j = Math.max(first, left + 1); j < i; j++) {
    const [one, two] = [rows[upper + j] ?? 0, rows[lower + j] ?? 0];
    const [ofA, ofB, ofC, ofD] = [a[j] ?? 0, b[j] ?? 0, c[j] ?? 0, d[j] ?? 0];
    p -= one * ofA;
    q -= one * ofB;
    r -= one * ofC;
    s -= one * ofD;
    t -= two * ofA;
    u -= two * ofB;
    v -= two * ofC;
    w -= two * ofD;
  }
  const [pivot, link, next] = [rows[upper + i] ?? 1, rows[lower + i] ?? 0, rows[lower + i + 1] ?? 1];
  p /= pivot;
  q /= pivot;
  r /= pivot;
  s /= pivot;
  a[i] = p;
  b[i] = q;
  c[i] = r;
  d[i] = s;
  a[i + 1] = (t - link * p) / next;
  b[i + 1] = (u - link * q) / next;
  c[i + 1] = (v - link * r) / next;
  d[i + 1] = (w - link * s) / next;
}

/** Row i and the one above it, and what they leave of those above both. */
function upTwo({ halfWidth, rows }: SymmetricBand, [a, b, c, d]: Four, i: number): void {
  const lower = i * (halfWidth + 1) + halfWidth - i;
  const upper = lower - halfWidth;
  const [next, link, pivot] = [rows[lower + i] ?? 1, rows[lower + i - 1] ?? 0, rows[upper + i - 1] ?? 1];
  const [t, u, v, w] = [(a[i] ?? 0) / next, (b[i] ?? 0) / next, (c[i] ?? 0) / next, (d[i] ?? 0) / next];
  const p = ((a[i - 1] ?? 0) - link * t) / pivot;
  const q = ((b[i - 1] ?? 0) - link * u) / pivot;
  const r = ((c[i - 1] ?? 0) - link * v) / pivot;
  const s = ((d[i - 1] ?? 0) - link * w) / pivot;
  a[i] = t;
  b[i] = u;
  c[i] = v;
  d[i] = w;
  a[i - 1] = p;
  b[i - 1] = q;
  c[i - 1] = r;
  d[i - 1] = s;
  const left = i - 1 - halfWidth;
  if (left >= 0) {
    const entry = rows[upper + left] ?? 0;
    a[left] = (a[left] ?? 0) - entry * p;
    b[left] = (b[left] ?? 0) - entry * q;
    c[left] = (c[left] ?? 0) - entry * r;
    d[left] = (d[left] ?? 0) - entry * s;
  }
  for (let j = Math.max(0, left + 1); j < i - 1; j++) {
    const [one, two] = [rows[upper + j] ?? 0, rows[lower + j] ?? 0];
    a[j] = (a[j] ?? 0) - one * p - two * t;
    b[j] = (b[j] ?? 0) - one * q - two * u;
    c[j] = (c[j] ?? 0) - one * r - two * v;
    d[j] = (d[j] ?? 0) - one * s - two * w;
  }
}

/** Four sums side by side: the processor need not wait for one addition to begin the next. */
function product(left: Float64Array, a: number, right: Float64Array, b: number, count: number): number {
  let [p, q, r, s] = [0, 0, 0, 0];
  let k = 0;
  for (; k + 3 < count; k += 4) {
    p += (left[a + k] ?? 0) * (right[b + k] ?? 0);
    q += (left[a + k + 1] ?? 0) * (right[b + k + 1] ?? 0);
    r += (left[a + k + 2] ?? 0) * (right[b + k + 2] ?? 0);
    s += (left[a + k + 3] ?? 0) * (right[b + k + 3] ?? 0);
  }
  for (; k < count; k++) p += (left[a + k] ?? 0) * (right[b + k] ?? 0);
  return p + q + (r + s);
}
