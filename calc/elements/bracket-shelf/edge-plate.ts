import type { Step } from '../../../shared/check-result.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { work, type Worked } from '../../formula/step.ts';
import {
  edgePatch,
  edgeSpread,
  edgeWidth,
  insideWidth,
  layersAsOne,
  stripExcess,
  stripLength,
  stripOverBracket,
  stripPastBracket,
  workingWidth,
} from '../../mechanics/edge-strip-formulas.ts';
import { couplingOfPlate, stiffnessOfPlate, twistingOfPlate } from '../../mechanics/plate-formulas.ts';
import { stiffnessAcross } from '../../standards/wood-handbook-2021/stiffness.ts';
import { plateOf } from '../grain-plate.ts';
import type { BoardPlate, Edge } from './board-plate.ts';

/** A load as the strip along an edge bears it. */
export interface EdgeLoad {
  readonly name: string;
  /** All of it that stands in the stretch of board looked at, and how long that is. */
  readonly W_N: number;
  readonly length_m: number;
  /** Its middle from the edge, and its ends along the board. */
  readonly d_m: number;
  readonly from_m: number;
  readonly to_m: number;
  /** A line has no depth of its own; anything else stands on a patch. */
  readonly isLine: boolean;
  readonly roams: boolean;
}

/** Moment of the strip above the mean of the whole width, N·m/m, and the lines that show it. */
export interface Excess {
  readonly m_N: number;
  readonly steps: () => Worked[];
}

/** Over a bracket, of the two sines or so in a bay; a line over part of it may stand nearer. */
const [overBracket, nearBracket] = [1.05, 0.55];
/** What stands out past a bracket is as a bay so many times as long. */
const asBay = 2.5;

/** A board as an orthotropic plate whose edge is loaded. */
export class EdgePlate {
  readonly #plate: BoardPlate;
  readonly #system: UnitSystem;
  readonly #D: Readonly<Record<'D_x' | 'D_y' | 'D_1' | 'D_xy', number>>;
  readonly #p_e: number;
  readonly #beta: number;
  readonly #beta_i: number;
  readonly #b_k: number;

  constructor(plate: BoardPlate, system: UnitSystem) {
    this.#plate = plate;
    this.#system = system;
    const { E_Pa, torsionG_Pa, t_m: t, b_m: b } = plate;
    const { ratio: r_A, poisson: nu_LT } = plate.grain;
    const D_x = stiffnessOfPlate.evaluate({ E: E_Pa, t, nu_LT, r_A });
    const D_y = stiffnessOfPlate.evaluate({ E: stiffnessAcross.evaluate({ r_A, E_L: E_Pa }), t, nu_LT, r_A });
    const D_1 = couplingOfPlate.evaluate({ nu_LT, D_A: D_y });
    this.#D = { D_x, D_y, D_1, D_xy: twistingOfPlate.evaluate({ G: torsionG_Pa, t }) };
    this.#p_e = edgeSpread.evaluate(this.#D);
    this.#beta = edgeWidth.evaluate({ ...this.#D, p_e: this.#p_e });
    this.#beta_i = insideWidth.evaluate({ p_e: this.#p_e, D_x, D_y, D_1 });
    this.#b_k = workingWidth.evaluate({ ...this.#D, beta: this.#beta, b });
  }

  /** The edges along which nothing stiffens it. */
  get bare(): readonly Edge[] {
    return this.#plate.bare;
  }

  /** Lines of working that hold for every load. */
  steps(): Step[] {
    const { grain, t_m: t, b_m: b, asOneFrom } = this.#plate;
    const system = this.#system;
    const plate = plateOf(this.#plate, t, grain.ratio, grain.poisson, system, grain.side);
    return [
      ...(asOneFrom === null ? [] : [work(layersAsOne, asOneFrom, system).step]),
      ...plate.steps,
      work(edgeSpread, this.#D, system).step,
      work(edgeWidth, { ...this.#D, p_e: this.#p_e }, system).step,
      work(workingWidth, { ...this.#D, beta: this.#beta, b }, system).step,
    ];
  }

  /**
   * In a bay, under a load or beside it.
   *
   * @param L_m length of the bay
   * @param s_m from the place looked at to the nearest part of the load
   * @param x_m of that place from one of the brackets
   */
  inBay(load: EdgeLoad, L_m: number, s_m: number, x_m = L_m / 2): Excess {
    const beside = this.#strip(load, [L_m, x_m], s_m, this.#beta);
    if (load.isLine) return beside;
    const inside = this.#strip(load, [L_m, x_m], s_m, this.#beta_i);
    return inside.m_N > beside.m_N ? inside : beside;
  }

  /** Over a bracket, from a load in a bay beside it of length L. */
  overBracket(load: EdgeLoad, L_m: number): Excess {
    const k_h = load.isLine
      ? overBracket + nearBracket * (1 - Math.min(1, load.length_m / L_m))
      : overBracket;
    const near = this.#nearness(load);
    const k_d = load.isLine ? near : Math.max(near, this.#beta / this.#beta_i);
    const values = { k_d, k_h, W: load.W_N, beta: this.#beta };
    return {
      m_N: stripOverBracket.evaluate(values),
      steps: () => [
        work(stripOverBracket, values, this.#system, `${load.name}: ${stripOverBracket.caption}`),
      ],
    };
  }

  /**
   * Over the last bracket, from a load that stands on the length past it. What a roaming load has less than its weight at the very
   * end is taken off.
   */
  pastBracket(load: EdgeLoad, past_m: number, patch_m: number): Excess {
    const short = { ...load, length_m: Math.min(load.length_m, patch_m) };
    const { m_N, steps } = this.inBay(short, asBay * past_m, 0);
    const c_p = load.roams ? Math.min(patch_m, past_m) : 0;
    const values = { m_e: m_N, W: load.W_N, c_p, b: this.#plate.b_m };
    return {
      m_N: stripPastBracket.evaluate(values),
      steps: () => [...steps(), work(stripPastBracket, values, this.#system)],
    };
  }

  #nearness({ d_m }: EdgeLoad): number {
    return Math.max(0, 1 - (2 * d_m) / this.#plate.b_m);
  }

  #strip(load: EdgeLoad, [L, x]: readonly [number, number], s: number, beta: number): Excess {
    const isInside = beta !== this.#beta;
    const length = { L, x, b_k: this.#b_k, beta };
    const L_e = stripLength.evaluate(length);
    if (s >= L_e / 2) return { m_N: 0, steps: () => [] };
    const patch = { c: load.length_m, p_e: this.#p_e, d: isInside || load.isLine ? 0 : load.d_m, s };
    const c_e = edgePatch.evaluate(patch);
    const k_d = isInside ? 1 : this.#nearness(load);
    const values = { k_d, W: load.W_N, L_e, c_e, beta, b_k: this.#b_k };
    const { D_x, D_y, D_1 } = this.#D;
    return {
      m_N: stripExcess.evaluate(values),
      steps: () => [
        ...(isInside ? [work(insideWidth, { p_e: this.#p_e, D_x, D_y, D_1 }, this.#system)] : []),
        work(stripLength, length, this.#system),
        work(edgePatch, patch, this.#system),
        work(stripExcess, values, this.#system, `${load.name}: ${stripExcess.caption}`),
      ],
    };
  }
}
