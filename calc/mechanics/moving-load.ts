import type { Bay } from './bays.ts';
import { span, type Beam } from './beam-model.ts';
import type { BayInfluence } from './influence.ts';
import {
  addScaled,
  boundsOf,
  largest,
  product,
  reversed,
  scaled,
  valueAt,
  type Extreme,
  type Polynomial,
} from './polynomial.ts';

/** Movement along one piece of a bay; x from the bay's left end. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly movement: number[];
}

/**
 * Movement of one bay under a unit load anywhere on the beam: a sum of shapes along the bay, each scaled by a cubic of
 * where the load stands, and the bay's own bending where the load stands on it. Both in closed form.
 */
export class MovingLoad {
  readonly bay: Bay;
  readonly #length: number;
  readonly #beam: Beam;
  readonly #influence: readonly BayInfluence[];
  /** Shapes along the bay, and for each bay the load may stand in, their cubics. */
  readonly #shapes: readonly Polynomial[];
  readonly #scales: readonly (readonly Polynomial[])[];

  /**
   * @param bay the bay that moves
   * @param withSinking whether the sinking of its supports counts; without, movement is from the line between them
   */
  constructor(beam: Beam, bay: Bay, influence: readonly BayInfluence[], withSinking: boolean) {
    this.bay = bay;
    this.#beam = beam;
    this.#influence = influence;
    this.#length = bay.to_m - bay.from_m;
    const L = this.#length;
    const per = 1 / (6 * L * beam.EI_Nm2);
    const i = bay.leftSupport;
    if (bay.kind === 'span') {
      const bending: Polynomial[] = [
        [0, 2 * L * L * per, -3 * L * per, per],
        [0, L * L * per, 0, -per],
      ];
      const sinking: Polynomial[] = [
        [1, -1 / L],
        [0, 1 / L],
      ];
      this.#shapes = withSinking ? [...bending, ...sinking] : bending;
      this.#scales = influence.map((line) => {
        const moments = [line.moments[i] ?? [0], line.moments[i + 1] ?? [0]];
        return withSinking ? [...moments, sunk(beam, line, i), sunk(beam, line, i + 1)] : moments;
      });
    } else {
      const isLeft = bay.kind === 'left-overhang';
      const outward: Polynomial = isLeft ? [L, -1] : [0, 1];
      const support = isLeft ? 0 : beam.supports.length - 1;
      this.#shapes = withSinking ? [outward, [1]] : [outward];
      this.#scales = influence.map((line) => {
        const turn = isLeft ? turnOutwardLeft(beam, line) : turnOutwardRight(beam, line);
        return withSinking ? [turn, sunk(beam, line, support)] : [turn];
      });
    }
  }

  /**
   * The few places in other bays where a unit load can move this bay most, wherever in the bay that is: behind rigid
   * supports the whole bay answers in one shape, scaled by the moment over the nearer end.
   */
  farStands(): number[] {
    const stands: number[] = [];
    for (const side of ['left', 'right'] as const) {
      let most: Extreme = { at: 0, value: 0 };
      let least: Extreme = { at: 0, value: 0 };
      this.#influence.forEach(({ bay }, index) => {
        const isLeft = bay.to_m <= this.bay.from_m;
        if (bay === this.bay || isLeft !== (side === 'left')) return;
        const scales = this.#scales[index] ?? [];
        const near = (isLeft ? scales[0] : scales[1]) ?? scales[0] ?? [0];
        const width = bay.to_m - bay.from_m;
        const up = largest(near, 0, width);
        const down = largest(scaled(near, -1), 0, width);
        if (up.value > most.value) most = { at: bay.from_m + up.at, value: up.value };
        if (down.value > least.value) least = { at: bay.from_m + down.at, value: down.value };
      });
      for (const { at, value } of [most, least]) if (value > 0) stands.push(at);
    }
    return stands;
  }

  /** Whether every support is rigid, so that `farStands` holds all that other bays can do. */
  get isRigid(): boolean {
    return this.#beam.supports.every(({ stiffness_Npm }) => stiffness_Npm === Infinity);
  }

  /** Where a unit load moves place x most (down for sense 1, up for −1), from the beam's left end; 0 if it can't. */
  worstStand(x: number, sense: 1 | -1, where: 'anywhere' | 'own-bay'): Extreme {
    let worst: Extreme = { at: this.bay.from_m + x, value: 0 };
    const consider = (polynomial: Polynomial, from: number, to: number, start: number): void => {
      const peak = largest(polynomial, from, to, worst.value);
      if (peak.value > worst.value) worst = { at: start + peak.at, value: peak.value };
    };
    this.#influence.forEach((line, index) => {
      if (where === 'own-bay' && line.bay !== this.bay) return;
      const sum = [0, 0, 0, 0];
      this.#shapes.forEach((shape, j) => {
        addScaled(sum, this.#scales[index]?.[j] ?? [0], sense * valueAt(shape, x));
      });
      const { bay } = line;
      if (bay !== this.bay) consider(sum, 0, bay.to_m - bay.from_m, bay.from_m);
      else {
        for (const piece of this.#own(x)) {
          const whole = sum.slice();
          addScaled(whole, piece.movement, sense);
          consider(whole, piece.from, piece.to, bay.from_m);
        }
      }
    });
    return worst;
  }

  /** Movement of a place of the bay under a unit load standing on that very place, x from the bay's left end. */
  underLoad(): number[] {
    const index = this.#influence.findIndex(({ bay }) => bay === this.bay);
    const { EI_Nm2: EI, GA_N: GA } = this.#beam;
    const L = this.#length;
    const sum = [0, 0, 0, 0, 0, 0, 0];
    this.#shapes.forEach((shape, j) => addScaled(sum, product(shape, this.#scales[index]?.[j] ?? [0]), 1));
    if (this.bay.kind === 'span') {
      addScaled(sum, [0, 0, L * L, -2 * L, 1], 1 / (3 * L * EI));
      addScaled(sum, [0, L, -1], 1 / (L * GA));
    } else {
      const own = [0, 1 / GA, 0, 1 / (3 * EI)];
      addScaled(sum, this.bay.kind === 'left-overhang' ? reversed(own, L) : own, 1);
    }
    return sum;
  }

  /** The most that any place of the bay moves under a unit load that stands on it. */
  mostUnderLoad(): number {
    return largest(this.underLoad(), 0, this.#length).value;
  }

  /** No place of the bay is lifted more than this by a unit load, wherever it stands. */
  mostLift(): number {
    let most = 0;
    this.#influence.forEach((line, index) => {
      let lift = 0;
      const width = line.bay.to_m - line.bay.from_m;
      this.#shapes.forEach((shape, j) => {
        const scale = boundsOf(this.#scales[index]?.[j] ?? [0], 0, width);
        const reach = boundsOf(shape, 0, this.#length).most;
        lift += Math.max(0, -scale.least) * reach;
      });
      most = Math.max(most, lift);
    });
    return most;
  }

  /** Movement along the bay under a unit load at a place from the beam's left end. */
  shapeUnder(at_m: number): Piece[] {
    const index = this.#influence.findIndex(({ bay }) => at_m >= bay.from_m && at_m <= bay.to_m);
    const line = this.#influence[index];
    const sum = [0, 0, 0, 0];
    if (line === undefined) return [{ from: 0, to: this.#length, movement: sum }];
    const s = at_m - line.bay.from_m;
    this.#shapes.forEach((shape, j) => addScaled(sum, shape, valueAt(this.#scales[index]?.[j] ?? [0], s)));
    if (line.bay !== this.bay) return [{ from: 0, to: this.#length, movement: sum }];
    return this.#own(s).map(({ from, to, movement }) => {
      const whole = sum.slice();
      addScaled(whole, movement, 1);
      return { from, to, movement: whole };
    });
  }

  /** The bay's own movement under a unit load on it, held at its supports: a simple span, or a cantilever. */
  #own(a: number): Piece[] {
    const { EI_Nm2: EI, GA_N: GA } = this.#beam;
    const L = this.#length;
    if (this.bay.kind === 'span') {
      const left = simpleSide(L, L - a, EI, GA);
      const right = reversed(simpleSide(L, a, EI, GA), L);
      return sides(a, L, left, right);
    }
    const reach = this.bay.kind === 'left-overhang' ? L - a : a;
    const near = [0, 1 / GA, reach / (2 * EI), -1 / (6 * EI)];
    const far = [-(reach ** 3) / (6 * EI) + reach / GA, reach ** 2 / (2 * EI), 0, 0];
    return this.bay.kind === 'left-overhang'
      ? sides(a, L, reversed(far, L), reversed(near, L))
      : sides(a, L, near, far);
  }
}

function sides(a: number, L: number, left: number[], right: number[]): Piece[] {
  const pieces = [
    { from: 0, to: a, movement: left },
    { from: a, to: L, movement: right },
  ];
  return pieces.filter(({ from, to }) => to > from);
}

/** Movement between a support and a unit load whose distance from the other support is `other`. */
function simpleSide(L: number, other: number, EI: number, GA: number): number[] {
  const per = other / (6 * L * EI);
  return [0, per * (L * L - other * other) + other / (L * GA), 0, -per];
}

function sunk({ supports }: Beam, line: BayInfluence, i: number): number[] {
  const stiffness = supports[i]?.stiffness_Npm ?? Infinity;
  return scaled(line.reactions[i] ?? [0], 1 / stiffness);
}

/** Turn of the right overhang at its root, down outward, as a cubic of where a unit load stands in the line's bay. */
function turnOutwardRight(beam: Beam, line: BayInfluence): number[] {
  const s = beam.supports.length - 2;
  const L = span(beam, s);
  const turn = [0, 0, 0, 0];
  addScaled(turn, line.moments[s] ?? [0], -L / (6 * beam.EI_Nm2) + 1 / (beam.GA_N * L));
  addScaled(turn, line.moments[s + 1] ?? [0], -L / (3 * beam.EI_Nm2) - 1 / (beam.GA_N * L));
  addScaled(turn, sunk(beam, line, s + 1), 1 / L);
  addScaled(turn, sunk(beam, line, s), -1 / L);
  if (line.bay.kind === 'span' && line.bay.leftSupport === s) {
    addScaled(turn, [0, L * L, 0, -1], -1 / (6 * L * beam.EI_Nm2));
  }
  return turn;
}

/** The same for the left overhang. */
function turnOutwardLeft(beam: Beam, line: BayInfluence): number[] {
  const L = span(beam, 0);
  const turn = [0, 0, 0, 0];
  addScaled(turn, line.moments[0] ?? [0], -L / (3 * beam.EI_Nm2) - 1 / (beam.GA_N * L));
  addScaled(turn, line.moments[1] ?? [0], -L / (6 * beam.EI_Nm2) + 1 / (beam.GA_N * L));
  addScaled(turn, sunk(beam, line, 0), 1 / L);
  addScaled(turn, sunk(beam, line, 1), -1 / L);
  if (line.bay.kind === 'span' && line.bay.leftSupport === 0) {
    addScaled(turn, [0, 2 * L * L, -3 * L, 1], -1 / (6 * L * beam.EI_Nm2));
  }
  return turn;
}
