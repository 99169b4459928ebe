/** Coefficients of a polynomial, constant first. */
export type Polynomial = ArrayLike<number>;

/** Value of a polynomial at `t`. */
export function valueAt(polynomial: Polynomial, t: number): number {
  let value = 0;
  for (let power = polynomial.length - 1; power >= 0; power--) value = value * t + (polynomial[power] ?? 0);
  return value;
}

/** The derivative of a polynomial. */
export function derivative(polynomial: Polynomial): number[] {
  const result: number[] = [];
  for (let power = 1; power < polynomial.length; power++) result.push(power * (polynomial[power] ?? 0));
  return result;
}

/** Adds `factor` × `other` to `target` in place. */
export function addScaled(target: number[], other: Polynomial, factor: number): void {
  for (let power = 0; power < other.length; power++) {
    target[power] = (target[power] ?? 0) + factor * (other[power] ?? 0);
  }
}

/** The product of two polynomials. */
export function product(a: Polynomial, b: Polynomial): number[] {
  const result = new Array<number>(Math.max(0, a.length + b.length - 1)).fill(0);
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) result[i + j] = (result[i + j] ?? 0) + (a[i] ?? 0) * (b[j] ?? 0);
  }
  return result;
}

/**
 * Where a polynomial changes sign inside `(from, to)`, in order. Between the turning points the polynomial is monotone,
 * so each change of sign is bracketed and found to the last digit.
 */
export function rootsBetween(polynomial: Polynomial, from: number, to: number): number[] {
  if (!(to > from) || keepsItsSign(polynomial, from, to)) return [];
  const turning = polynomial.length > 2 ? rootsBetween(derivative(polynomial), from, to) : [];
  const roots: number[] = [];
  let left = from;
  let leftValue = valueAt(polynomial, left);
  for (const right of [...turning, to]) {
    const rightValue = valueAt(polynomial, right);
    if ((leftValue < 0 && rightValue > 0) || (leftValue > 0 && rightValue < 0)) {
      roots.push(bracketedRoot(polynomial, left, right, leftValue));
    } else if (rightValue === 0 && right < to) {
      roots.push(right);
    }
    left = right;
    leftValue = rightValue;
  }
  return roots;
}

/** A quick, safe test: the constant part at the middle outweighs everything that varies. */
function keepsItsSign(polynomial: Polynomial, from: number, to: number): boolean {
  const reach = Math.max(Math.abs(from), Math.abs(to));
  let rest = 0;
  for (let power = polynomial.length - 1; power >= 1; power--) {
    rest = (rest + Math.abs(polynomial[power] ?? 0)) * reach;
  }
  return Math.abs(polynomial[0] ?? 0) > rest || (rest === 0 && (polynomial[0] ?? 0) === 0);
}

/** Illinois' variant of false position: safe as bisection, fast as the secant. */
function bracketedRoot(polynomial: Polynomial, from: number, to: number, valueFrom: number): number {
  let [a, b] = [from, to];
  let [fa, fb] = [valueFrom, valueAt(polynomial, to)];
  for (let step = 0; step < 200; step++) {
    const middle = (fa * b - fb * a) / (fa - fb);
    const c = middle > Math.min(a, b) && middle < Math.max(a, b) ? middle : (a + b) / 2;
    const fc = valueAt(polynomial, c);
    if (fc === 0 || Math.abs(b - a) <= 4 * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b))) return c;
    if (fc > 0 === fb > 0) {
      fa /= 2;
    } else {
      a = b;
      fa = fb;
    }
    b = c;
    fb = fc;
    if (Math.abs(fb) < 1e-300) return b;
  }
  return (a + b) / 2;
}

/** A largest value and where it is. */
export interface Extreme {
  readonly at: number;
  readonly value: number;
}

/** The largest value of a polynomial on `[from, to]`, at an end or at a turning point. */
export function largest(polynomial: Polynomial, from: number, to: number): Extreme {
  let best: Extreme = { at: from, value: valueAt(polynomial, from) };
  const consider = (at: number): void => {
    const value = valueAt(polynomial, at);
    if (value > best.value) best = { at, value };
  };
  for (const at of rootsBetween(derivative(polynomial), from, to)) consider(at);
  consider(to);
  return best;
}
