import { listed } from '../../../shared/words.ts';
import { work, type Worked } from '../../formula/step.ts';
import type { Bay } from '../../mechanics/bays.ts';
import {
  countsAs,
  countsInShear,
  keptOfLine,
  keptOfThing,
  keptOverBracket,
  memberLength,
  memberSpring,
  memberStiffness,
  skinBeside,
  skinsOfShear,
} from '../../mechanics/box-formulas.ts';
import { frameOf } from './board.ts';
import type { BoardPart } from './board-part.ts';
import type { SkinGrain } from './board-plate.ts';
import { patch_m, type Action, type Shelf } from './shelf.ts';

/** Where along the board the members are looked at: in a bay of that length, or over a bracket beside such bays. */
export interface BoxPlace {
  readonly bay_m: number;
  readonly isOverBracket: boolean;
}

/** How a load comes onto the members: over the whole depth, on a line along the board, or on a patch. */
type Kind = 'spread' | 'line' | 'thing';

/** Of a bay, how much the moment of each kind of load is as long as; over a bracket all. And what more bends the skins there. */
const longs = { spread: 0.6, line: 0.6, thing: 0.4 } as const;
const longOverBracket = 0.2;
const more = { spread: 1, line: 1, thing: 1.1 } as const;
const moreOverBracket = 1.35;
/** Places on a patch at which its share on each member is taken. */
const samples = 16;

/** A value, and the lines that show it. */
interface Lines {
  readonly value: number;
  readonly steps: () => Worked[];
}
interface Count {
  readonly value: number;
  readonly steps: (names: string) => Worked[];
}

/** The numbers of a box that all members have in common. */
interface Box {
  readonly h: number;
  readonly h_i: number;
  readonly t: number;
  readonly b_f: number;
  /** Between members: clear, and from middle to middle. */
  readonly g: number;
  readonly s: number;
  readonly E_s: number;
  readonly G_s: number;
  readonly E_f: number;
  readonly G_f: number;
  readonly grain: SkinGrain;
}

/** The members of a box's frame: what of each load stands on them, and how much of it they keep. */
export class BoxMembers {
  readonly box: Box;
  readonly #shelf: Shelf;
  readonly #frame: readonly BoardPart[];

  /** @returns null of a board that is no box */
  static of(shelf: Shelf): BoxMembers | null {
    const { board, document } = shelf;
    const frame = frameOf(board);
    const [[skin], [member, next]] = [board.parts, frame];
    const { skinGrain: grain } = board;
    if (skin === undefined || member === undefined || next === undefined || grain === null) return null;
    const s = next.y_m - member.y_m;
    // Of glue laid frame on frame nothing is between them.
    const g = Math.max(0, s - member.width_m);
    return new BoxMembers(shelf, frame, {
      ...{ h: document.board.thickness, h_i: member.height_m, t: skin.height_m, b_f: member.width_m, g, s },
      ...{ E_s: skin.E_Pa, G_s: grain.inPlaneG_Pa },
      ...{ E_f: member.E_Pa, G_f: member.material.G_Pa ?? member.material.torsionG_Pa, grain },
    });
  }

  private constructor(shelf: Shelf, frame: readonly BoardPart[], box: Box) {
    this.box = box;
    this.#shelf = shelf;
    this.#frame = frame;
  }

  get count(): number {
    return this.#frame.length;
  }

  nameOf(index: number): string {
    return this.#frame[index]?.name ?? '';
  }

  /** What of a load, or of the board itself, stands on a member, its neighbours as supports. */
  shareOf(index: number, action: Action | null): number {
    const { depth_m } = this.#shelf;
    if (action === null || action.spread) {
      const { b_f, g } = this.box;
      return (b_f + (this.#gapsOf(index) * g) / 2) / this.#shelf.document.board.depth;
    }
    if (action.load.kind === 'line') return this.#shareAt(index, action.eccentricity_m);
    const half = Math.min(patch_m, depth_m) / 2;
    const middle = Math.min(Math.max(action.eccentricity_m, half), depth_m - half);
    let sum = 0;
    for (let k = 0; k < samples; k++)
      sum += this.#shareAt(index, middle + half * ((2 * k + 1) / samples - 1));
    return sum / samples;
  }

  /**
   * How many times a load counts at a member, and the lines that show it; and, where nothing bends the skins by themselves, in what
   * the member moves.
   */
  countOf(index: number, action: Action | null, place: BoxPlace): Count & { readonly moves: number } {
    const { bay_m: L, isOverBracket } = place;
    const { h, h_i, t, b_f, G_f } = this.box;
    const { EI_Nm2: EI_eff } = this.#shelf.board;
    const { system } = this.#shelf;
    const kind = kindOf(action, L);
    const member = this.stiffnessOf(index, L, isOverBracket ? longOverBracket : longs[kind]);
    const EI_m = member.value;
    // A thing may stand right beside the bracket, where nothing takes it off the member; a hand moves to where M is largest.
    const isKept =
      kind === 'spread' || (isOverBracket && kind === 'thing' && action?.load.kind !== 'roaming');
    const kept = isKept ? whole : this.#kept(index, kind, place, EI_m);
    const skins = { t, EI_m, h, G_f, b_f, h_i, L };
    const k_s = isOverBracket ? 1 : skinsOfShear.evaluate(skins);
    const k_f = isOverBracket ? moreOverBracket : more[kind];
    const numbers = { k_f, k_s, r_m: this.shareOf(index, action), EI_eff, EI_m, phi: kept.value };
    return {
      value: countsAs.evaluate(numbers),
      moves: countsAs.evaluate({ ...numbers, k_f: 1, k_s: 1 }),
      steps: (names) => [
        ...member.steps(),
        ...kept.steps(),
        ...(isOverBracket ? [] : [work(skinsOfShear, skins, system)]),
        work(countsAs, numbers, system, `${countsAs.caption}: ${names}`),
      ],
    };
  }

  /** How many times a load counts in the shear beside a bracket, and the lines that show it. */
  shearOf(index: number, action: Action | null, bay_m: number): Count {
    const { system } = this.#shelf;
    const member = this.stiffnessOf(index, bay_m);
    // Right beside a bracket nothing takes a thing off the member it stands on.
    const isThing = kindOf(action, bay_m) === 'thing';
    const kept = isThing ? whole : this.#kept(index, 'thing', { bay_m, isOverBracket: false }, member.value);
    const numbers = { n_m: this.count, r_m: this.shareOf(index, action), phi: kept.value };
    return {
      value: countsInShear.evaluate(numbers),
      steps: (names) => [
        ...(isThing ? [] : member.steps()),
        ...kept.steps(),
        work(countsInShear, numbers, system, `${countsInShear.caption}: ${names}`),
      ],
    };
  }

  /** A member with the skins that work along with it, where moments are as long as k_L of the bay. */
  stiffnessOf(index: number, L: number, k_L: number = longs.line): Lines {
    const { system } = this.#shelf;
    const { h, h_i, b_f, g, E_s, G_s, E_f } = this.box;
    const beside = { k_L, L, E_s, G_s, g };
    const b_s = g === 0 ? 0 : skinBeside.evaluate(beside);
    const numbers = { E_s, b_f, n_g: this.#gapsOf(index), b_s, h, h_i, E_f, EI_n: this.#stripOn(index) };
    return {
      value: memberStiffness.evaluate(numbers),
      steps: () => [
        ...(g === 0 ? [] : [work(skinBeside, beside, system)]),
        work(memberStiffness, numbers, system, `${memberStiffness.caption}: ${this.nameOf(index)}`),
      ],
    };
  }

  #kept(index: number, kind: Kind, { bay_m: L, isOverBracket }: BoxPlace, EI_m: number): Lines {
    const { system, board } = this.#shelf;
    const { s, t, E_s, grain } = this.box;
    const [first, last] = [this.#frame[0], this.#frame.at(-1)];
    const [from, to] = [first?.y_m ?? 0, last?.y_m ?? 0];
    const y_m = Math.abs((this.#frame[index]?.y_m ?? 0) - (from + to) / 2);
    const spring = { s, r_A: grain.ratio, E_s, t, y_m, L, GJ: board.twisting.GJ_Nm2 };
    const k_m = memberSpring.evaluate(spring);
    const shown = () => work(memberSpring, spring, system);
    if (kind === 'line') {
      const of = isOverBracket ? keptOverBracket : keptOfLine;
      const numbers = { k_m, L, EI_m };
      return { value: of.evaluate(numbers), steps: () => [shown(), work(of, numbers, system)] };
    }
    const length = { L, k_m, EI_m };
    const v = memberLength.evaluate(length);
    return {
      value: keptOfThing.evaluate({ v }),
      steps: () => [shown(), work(memberLength, length, system), work(keptOfThing, { v }, system)],
    };
  }

  /** Gaps beside a member: one of the first and of the last, two of the others. */
  #gapsOf(index: number): number {
    return index === 0 || index === this.#frame.length - 1 ? 1 : 2;
  }

  /** Stiffness about the middle of the box of a strip that is glued to the first or the last member. */
  #stripOn(index: number): number {
    const { board } = this.#shelf;
    const name = index === 0 ? 'back rail' : index === this.#frame.length - 1 ? 'nosing' : '';
    const strip = board.parts.find((part) => part.name === name);
    if (strip === undefined) return 0;
    const off = strip.z_m + strip.height_m / 2 - this.box.h / 2;
    return strip.E_Pa * strip.width_m * strip.height_m * (strip.height_m ** 2 / 12 + off ** 2);
  }

  #shareAt(index: number, at_m: number): number {
    const middles = this.#frame.map(({ y_m, width_m }) => y_m + width_m / 2);
    const [first = 0, last = 0] = [middles[0], middles.at(-1)];
    const within = Math.min(Math.max(at_m, first), last);
    return Math.max(0, 1 - Math.abs(within - (middles[index] ?? 0)) / this.box.s);
  }
}

/** The shortest bay beside a place of a bracket, an overhang as half of one; null where nothing is beside it. */
export function shortestBeside(bays: readonly Bay[], at_m: number): number | null {
  const beside = bays.filter(
    ({ from_m, to_m }) => Math.min(Math.abs(from_m - at_m), Math.abs(to_m - at_m)) < 1e-9,
  );
  const lengths = beside.map(({ kind, from_m, to_m }) => (to_m - from_m) * (kind === 'span' ? 1 : 2));
  const found = lengths.filter((length) => length > 0);
  return found.length === 0 ? null : Math.min(...found);
}

/** Loads that count alike are shown once. */
export function alike(
  actions: readonly (Action | null)[],
  countOf: (action: Action | null) => Count,
): Worked[] {
  const groups = new Map<number, (Action | null)[]>();
  for (const action of actions) {
    const { value } = countOf(action);
    groups.set(value, [...(groups.get(value) ?? []), action]);
  }
  return [...groups.values()].flatMap((each) =>
    countOf(each[0] ?? null).steps(listed(each.map((action) => action?.name ?? 'the board itself'))),
  );
}

const whole: Lines = { value: 1, steps: () => [] };

/** A line that is shorter than the bay bends a member as a thing does. */
function kindOf(action: Action | null, bay_m: number): Kind {
  if (action === null || action.spread) return 'spread';
  const { load } = action;
  return load.kind === 'line' && load.to_m - load.from_m >= bay_m ? 'line' : 'thing';
}
