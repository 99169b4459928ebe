import type { PreparedBeam } from './beam-model.ts';

/** A stretch of a beam between two supports, or an overhang. */
export interface Bay {
  readonly from_m: number;
  readonly to_m: number;
  readonly kind: 'left-overhang' | 'span' | 'right-overhang';
  /** The support at its left end; −1 on the left overhang. */
  readonly leftSupport: number;
  /** Grid intervals `[first, end)`. */
  readonly first: number;
  readonly end: number;
}

/** The bays of a beam from left to right; an overhang of no length is none. */
export function baysOf({ beam, grid_m, gridOfSupport }: PreparedBeam): Bay[] {
  const { supports, length_m } = beam;
  const bays: Bay[] = [];
  const add = (
    from: number,
    to: number,
    kind: Bay['kind'],
    leftSupport: number,
    first: number,
    end: number,
  ) => {
    if (to > from) bays.push({ from_m: from, to_m: to, kind, leftSupport, first, end });
  };
  add(0, supports[0]?.at_m ?? 0, 'left-overhang', -1, 0, gridOfSupport[0] ?? 0);
  for (let i = 0; i + 1 < supports.length; i++) {
    const [from, to] = [supports[i]?.at_m ?? 0, supports[i + 1]?.at_m ?? 0];
    add(from, to, 'span', i, gridOfSupport[i] ?? 0, gridOfSupport[i + 1] ?? 0);
  }
  const last = supports.length - 1;
  add(
    supports[last]?.at_m ?? 0,
    length_m,
    'right-overhang',
    last,
    gridOfSupport[last] ?? 0,
    grid_m.length - 1,
  );
  return bays;
}
