/** Coefficients of a polynomial, constant first. */
export type Polynomial = readonly number[];

/** Value of a polynomial at `t`. */
export function valueAt(polynomial: Polynomial, t: number): number {
  let value = 0;
  for (let power = polynomial.length - 1; power >= 0; power--) value = value * t + (polynomial[power] ?? 0);
  return value;
}

/** Its degree, zeros at its end left out. */
function degreeOf(polynomial: Polynomial): number {
  let degree = polynomial.length - 1;
  while (degree > 0 && polynomial[degree] === 0) degree -= 1;
  return degree;
}

/** The derivative of a polynomial. */
function derivative(polynomial: Polynomial): number[] {
  const result = polynomial.slice(1);
  for (let power = 1; power < result.length; power++) result[power] = (power + 1) * (result[power] ?? 0);
  return result;
}

/** Adds `factor` × `other` to `target` in place. */
export function addScaled(target: number[], other: Polynomial, factor: number): void {
  for (let power = 0; power < other.length; power++) {
    target[power] = (target[power] ?? 0) + factor * (other[power] ?? 0);
  }
}

/** `factor` × a polynomial. */
export function scaled(polynomial: Polynomial, factor: number): number[] {
  return polynomial.map((coefficient) => coefficient * factor);
}

/** The product of two polynomials. */
export function product(a: Polynomial, b: Polynomial): number[] {
  const result = new Array<number>(Math.max(0, a.length + b.length - 1)).fill(0);
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) result[i + j] = (result[i + j] ?? 0) + (a[i] ?? 0) * (b[j] ?? 0);
  }
  return result;
}

/** A polynomial of s written in t, where s = t + offset. */
export function shifted(polynomial: Polynomial, offset: number): number[] {
  const result = polynomial.slice();
  if (offset === 0) return result;
  const degree = result.length - 1;
  for (let i = 0; i < degree; i++) {
    for (let k = degree - 1; k >= i; k--) result[k] = (result[k] ?? 0) + offset * (result[k + 1] ?? 0);
  }
  return result;
}

/** A polynomial of z written in x, where z = length − x. */
export function reversed(polynomial: Polynomial, length: number): number[] {
  const result = shifted(polynomial, length);
  for (let power = 1; power < result.length; power += 2) result[power] = -(result[power] ?? 0);
  return result;
}

/** Smallest and largest value a polynomial could have between two places; it may not reach them. */
export interface Bounds {
  readonly least: number;
  readonly most: number;
  /** How often it changes its sign there, or more by an even number; Infinity where that is not counted. */
  readonly changes: number;
}

/** `binomial[i][k] / binomial[n][k]` for every degree up to 6: power basis to Bernstein basis. */
const toBernstein: readonly (readonly (readonly number[])[])[] = Array.from({ length: 7 }, (_, n) =>
  Array.from({ length: n + 1 }, (_unused, i) =>
    Array.from({ length: i + 1 }, (_also, k) => choose(i, k) / choose(n, k)),
  ),
);

function choose(n: number, k: number): number {
  let result = 1;
  for (let i = 0; i < k; i++) result = (result * (n - i)) / (i + 1);
  return result;
}

/**
 * Bounds from the Bernstein coefficients: a polynomial never leaves their range, and changes its sign no more often than they do,
 * or less by an even number (Descartes' rule of signs).
 */
export function boundsOf(polynomial: Polynomial, from: number, to: number): Bounds {
  if (polynomial.length > 5) return boundsOfAny(polynomial, from, to);
  const h = to - from;
  let a = polynomial[0] ?? 0;
  let b = polynomial[1] ?? 0;
  let c = polynomial[2] ?? 0;
  let d = polynomial[3] ?? 0;
  let e = polynomial[4] ?? 0;
  if (from !== 0) {
    a += from * (b + from * (c + from * (d + from * e)));
    b += from * (2 * c + from * (3 * d + from * 4 * e));
    c += from * (3 * d + from * 6 * e);
    d += from * 4 * e;
  }
  b *= h;
  c *= h * h;
  d *= h * h * h;
  e *= h * h * h * h;
  const end = a + b + c + d + e;
  const first = a + b / 4;
  const second = a + b / 2 + c / 6;
  const third = a + (3 * b) / 4 + c / 2 + d / 4;
  return {
    least: Math.min(a, first, second, third, end),
    most: Math.max(a, first, second, third, end),
    changes: signChanges(a, first, second, third, end),
  };
}

/** How often numbers change their sign from one to the next; one that is 0 is passed over. */
function signChanges(a: number, b: number, c: number, d: number, e: number): number {
  const second = b === 0 ? a : b;
  const third = c === 0 ? second : c;
  const fourth = d === 0 ? third : d;
  const fifth = e === 0 ? fourth : e;
  return (
    Number(differInSign(a, second)) +
    Number(differInSign(second, third)) +
    Number(differInSign(third, fourth)) +
    Number(differInSign(fourth, fifth))
  );
}

function differInSign(one: number, other: number): boolean {
  return (one < 0 && other > 0) || (one > 0 && other < 0);
}

function boundsOfAny(polynomial: Polynomial, from: number, to: number): Bounds {
  const here = shifted(polynomial, from);
  const width = to - from;
  let power = 1;
  for (let k = 1; k < here.length; k++) {
    power *= width;
    here[k] = (here[k] ?? 0) * power;
  }
  let [least, most] = [Infinity, -Infinity];
  for (const row of toBernstein[here.length - 1] ?? []) {
    const value = row.reduce((sum, weight, k) => sum + weight * (here[k] ?? 0), 0);
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return { least, most, changes: Infinity };
}

/**
 * Where a polynomial changes sign inside `(from, to)`, in order. Where that may be more than once, it is followed between its
 * turning points, where it is monotone, so that each change of sign is bracketed and found to the last digit.
 */
export function rootsBetween(polynomial: Polynomial, from: number, to: number): number[] {
  const degree = degreeOf(polynomial);
  if (!(to > from) || degree < 1) return [];
  if (degree === 1) return linearRoot(polynomial, from, to);
  if (degree === 2) return quadraticRoots(polynomial, from, to);
  const { least, most, changes } = boundsOf(polynomial, from, to);
  if (least >= 0 || most <= 0) return [];
  const atFrom = valueAt(polynomial, from);
  const atTo = valueAt(polynomial, to);
  if (changes === 1 && differInSign(atFrom, atTo)) return [bracketedRoot(polynomial, from, to, atFrom, atTo)];
  const roots: number[] = [];
  let left = from;
  let leftValue = atFrom;
  for (const right of [...rootsBetween(derivative(polynomial), from, to), to]) {
    const rightValue = valueAt(polynomial, right);
    if (differInSign(leftValue, rightValue)) {
      roots.push(bracketedRoot(polynomial, left, right, leftValue, rightValue));
    } else if (rightValue === 0 && right < to) {
      roots.push(right);
    }
    left = right;
    leftValue = rightValue;
  }
  return roots;
}

function linearRoot(polynomial: Polynomial, from: number, to: number): number[] {
  const slope = polynomial[1] ?? 0;
  const root = -(polynomial[0] ?? 0) / slope;
  return slope !== 0 && root > from && root < to ? [root] : [];
}

/** Where a quadratic changes sign; the root that would cancel comes from the product of the two. */
function quadraticRoots(polynomial: Polynomial, from: number, to: number): number[] {
  const c = polynomial[0] ?? 0;
  const b = polynomial[1] ?? 0;
  const a = polynomial[2] ?? 0;
  const discriminant = b * b - 4 * a * c;
  if (discriminant <= 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2;
  const low = Math.min(q / a, c / q);
  const high = Math.max(q / a, c / q);
  const isLow = low > from && low < to;
  const isHigh = high > from && high < to;
  if (isLow) return isHigh ? [low, high] : [low];
  return isHigh ? [high] : [];
}

/** Illinois' variant of false position: safe as bisection, fast as the secant. */
function bracketedRoot(
  polynomial: Polynomial,
  from: number,
  to: number,
  atFrom: number,
  atTo: number,
): number {
  let a = from;
  let b = to;
  let fa = atFrom;
  let fb = atTo;
  for (let step = 0; step < 200; step++) {
    const secant = (fa * b - fb * a) / (fa - fb);
    const c = secant > Math.min(a, b) && secant < Math.max(a, b) ? secant : (a + b) / 2;
    if (c === a || c === b) return c;
    const fc = valueAt(polynomial, c);
    if (fc === 0 || Math.abs(b - a) <= 4 * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b))) return c;
    if (fc > 0 === fb > 0) {
      fa /= 2;
    } else {
      a = b;
      fa = fb;
    }
    if (Math.abs(c - b) <= 2 * Number.EPSILON * Math.abs(c)) return c;
    b = c;
    fb = fc;
  }
  // Where several roots fall together only one end comes near: the other may never have moved.
  return b;
}

/** A largest value and where it is. */
export interface Extreme {
  readonly at: number;
  readonly value: number;
}

/**
 * The largest value of a polynomial on `[from, to]`, at an end or at a turning point.
 *
 * @param floor a value that must be beaten: where that is certainly not done, the larger end stands for it
 */
export function largest(polynomial: Polynomial, from: number, to: number, floor = -Infinity): Extreme {
  let at = from;
  let value = valueAt(polynomial, from);
  const atEnd = valueAt(polynomial, to);
  if (atEnd > value) {
    at = to;
    value = atEnd;
  }
  if (polynomial.length > 2 && boundsOf(polynomial, from, to).most > Math.max(value, floor)) {
    for (const turn of rootsBetween(derivative(polynomial), from, to)) {
      const there = valueAt(polynomial, turn);
      if (there > value) {
        at = turn;
        value = there;
      }
    }
  }
  return { at, value };
}
