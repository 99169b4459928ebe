import { neutralDistance, stripShare, twistAxis } from '../../mechanics/open-section-formulas.ts';
import { warpOf, warpOfSliding, type Strip, type Warp } from '../../mechanics/open-section.ts';
import { torsionOfRectangle, type Section } from '../../mechanics/section.ts';
import { twistingStiffnessOfBox } from '../../mechanics/torsion-formulas.ts';
import type { BoardPart, BoardInput } from './board-part.ts';

/** How a board twists. */
export interface Twisting {
  /** Distance of the axis it twists about (the shear centre) from the wall finish. */
  readonly axis_m: number;
  /** Stiffness against twisting at the least, and at the most: layers glued to act as one twist as one, or hardly so. */
  readonly GJ_Nm2: number;
  readonly mostGJ_Nm2: number;
  /** Null where warping is left out: of a board without strips, and of a box, which hardly warps. */
  readonly warp: Warp | null;
  readonly strips: readonly JoinedStrip[];
  /** What the axis follows from; null where there is no strip. */
  readonly axisFrom: Parameters<typeof twistAxis.evaluate>[0] | null;
}

/** A strip along an edge, and the share of the shear it carries. */
export interface JoinedStrip extends Strip {
  readonly part: BoardPart;
  readonly share: number;
  readonly neutralFrom: Parameters<typeof neutralDistance.evaluate>[0];
  readonly shareFrom: Parameters<typeof stripShare.evaluate>[0];
}

/** A board as far as twisting goes. */
interface Built {
  readonly input: BoardInput;
  readonly parts: readonly BoardPart[];
  readonly body: readonly BoardPart[];
  readonly strips: readonly BoardPart[];
  readonly section: Section;
  readonly bonded: boolean;
  readonly EI_Nm2: number;
}

/**
 * The axis lies where the shear in the parts balances: a strip along an edge draws it to that edge, since it carries more
 * of the shear than its width. A load beside it twists the board.
 */
export function twistingOf(built: Built): Twisting {
  const { input, parts, body, strips, section, bonded } = built;
  const stiffness = { GJ_Nm2: torsionalStiffness(built), mostGJ_Nm2: mostTorsionalStiffness(built) };
  const middle_m = (input.rail?.thickness ?? 0) + input.depth / 2;
  if (strips.length === 0) return { axis_m: middle_m, ...stiffness, warp: null, strips: [], axisFrom: null };
  const joined = strips.map((part): JoinedStrip => {
    const [low, high] = [Math.max(part.z_m, 0), Math.min(part.z_m + part.height_m, input.thickness)];
    const joint_m = (low + high) / 2;
    return { part, joint_m, ...shareOf(built, part, joint_m) };
  });
  const of = (name: string): { v: number; y: number } => {
    const strip = joined.find(({ part }) => part.name === name);
    return strip === undefined
      ? { v: 0, y: middle_m }
      : { v: strip.share, y: strip.part.y_m + strip.part.width_m / 2 };
  };
  const [front, back] = [of('nosing'), of('back rail')];
  const axisFrom = { y_b: middle_m, v_f: front.v, y_f: front.y, v_r: back.v, y_r: back.y };
  const axis_m = twistAxis.evaluate(axisFrom);
  const ofGlued = input.box === undefined ? warpOf(section, body, joined) : null;
  const warp = bonded ? ofGlued : warpOfSliding(parts, axis_m);
  return { axis_m, ...stiffness, warp, strips: joined, axisFrom };
}

function shareOf(
  { section: s, bonded, EI_Nm2 }: Built,
  part: BoardPart,
  joint_m: number,
): Pick<JoinedStrip, 'share' | 'neutralFrom' | 'shareFrom'> {
  const EA_i = part.E_Pa * part.width_m * part.height_m;
  const z_c = joint_m - s.centroidZ_m;
  // A strip on layers that slide is joined to them no better: it carries what its own bending brings.
  const z_i = bonded ? part.z_m + part.height_m / 2 - s.centroidZ_m : z_c;
  const neutralFrom = {
    z_i,
    y_i: bonded ? part.y_m + part.width_m / 2 - s.centroidY_m : 0,
    EI_xy: bonded ? s.EIxy_Nm2 : 0,
    EI_y: s.EIy_Nm2,
  };
  const shareFrom = {
    EI_i: (EA_i * part.height_m ** 2) / 12,
    EA_i,
    c_n: neutralDistance.evaluate(neutralFrom),
    z_i,
    z_c,
    EI_eff: EI_Nm2,
  };
  return { share: stripShare.evaluate(shareFrom), neutralFrom, shareFrom };
}

/** Of parts that twist side by side. */
function alone(parts: readonly BoardPart[]): number {
  return parts.reduce(
    (sum, { material, width_m, height_m }) =>
      sum + material.torsionG_Pa * torsionOfRectangle(width_m, height_m),
    0,
  );
}

function mostTorsionalStiffness(built: Built): number {
  const { input, body, strips, bonded } = built;
  if (input.box !== undefined || !bonded) return torsionalStiffness(built);
  const stiffest = Math.max(...body.map(({ material }) => material.torsionG_Pa));
  return stiffest * torsionOfRectangle(input.depth, input.thickness) + alone(strips);
}

function torsionalStiffness({ input, parts, body, strips }: Built): number {
  const box = boxTwist(input, body);
  return box === null ? alone(parts) : twistingStiffnessOfBox.evaluate(box) + alone(strips);
}

/** The numbers of the stiffness of a hollow box against twisting; null of another board. */
export function boxTwist({ box, depth, thickness }: BoardInput, body: readonly BoardPart[]) {
  if (box === undefined) return null;
  return {
    b_m: depth - box.frame,
    h_m: thickness - box.skin,
    G_s: body[0]?.material.torsionG_Pa ?? 0,
    t_s: box.skin,
    G_f: body[2]?.material.torsionG_Pa ?? 0,
    t_f: box.frame,
  };
}
