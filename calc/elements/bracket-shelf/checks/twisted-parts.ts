import { torsionOfRectangle } from '../../../mechanics/section.ts';
import { frameOf } from '../board.ts';
import type { BoardPart } from '../board-part.ts';
import type { Shelf } from '../shelf.ts';

/** A part of the board that a torque shears: a rectangle, or a wall of a box. */
export interface Twisted {
  readonly name: string;
  /** The joint that is sheared; the wood of the parts themselves where it is none. */
  readonly glueLine?: string;
  /** Parts whose wood is sheared; the weakest counts. */
  readonly parts: readonly BoardPart[];
  readonly shape:
    | { readonly kind: 'rectangle'; readonly b_m: number; readonly t_m: number }
    | { readonly kind: 'box'; readonly area_m2: number; readonly t_m: number };
  /** Its stiffness against twisting at the most, and that of the whole board at the least. */
  readonly GJ_Nm2: number;
  readonly whole_Nm2: number;
  /** What the rest of a torque, which bends the parts, does here; null where there is none. */
  readonly rest:
    | { readonly kind: 'part'; readonly c_v: number; readonly b: number; readonly d: number }
    | { readonly kind: 'joint'; readonly c_q: number; readonly b_j: number }
    | null;
}

/** What a torque is shared among: the body of the board, and the strips glued along it. All turn alike. */
export function twistedParts({ board, document }: Shelf): Twisted[] {
  const strips = board.parts.filter(({ name }) => name === 'nosing' || name === 'back rail');
  const body = board.parts.filter((part) => !strips.includes(part));
  const G = body.map(({ material }) => material.torsionG_Pa);
  const ofStrips = strips.reduce((sum, part) => sum + stiffnessOf(part), 0);
  const { box, depth, thickness } = document.board;
  const { warp, strips: joined } = board.twisting;
  const bent = (parts: readonly BoardPart[], joint_m: number, b: number, d: number): Twisted['rest'] => {
    if (warp === null) return null;
    const c_v = parts.reduce((sum, part) => sum + warp.shear_perm(part, joint_m), 0);
    return { kind: 'part', c_v: Math.abs(c_v), b, d };
  };
  const jointOf = (part: BoardPart): number =>
    joined.find((each) => each.part === part)?.joint_m ?? part.z_m + part.height_m / 2;
  const alone = (part: BoardPart, whole_Nm2: number): Twisted => ({
    ...rectangle(part.name, [part], part.width_m, part.height_m, stiffnessOf(part), whole_Nm2),
    rest: bent([part], jointOf(part), part.width_m, part.height_m),
  });
  const joint = (strip: BoardPart, twisted: Twisted, beside: readonly BoardPart[]): Twisted => {
    const glueLine = `${strip.name} to board`;
    const width_m = board.glueLines.find(({ name }) => name === glueLine)?.width_m ?? 0;
    const rest: Twisted['rest'] =
      warp === null || width_m <= 0
        ? null
        : { kind: 'joint', c_q: Math.abs(warp.flow_perm2(strip)), b_j: width_m };
    return { ...twisted, name: `glue line, ${glueLine}`, glueLine, parts: [strip, ...beside], rest };
  };
  if (box !== undefined) {
    const whole_Nm2 = board.twisting.GJ_Nm2;
    const shared = { GJ_Nm2: whole_Nm2 - ofStrips, whole_Nm2, rest: null };
    const area_m2 = (depth - box.frame) * (thickness - box.skin);
    const skins = body.filter(({ name }) => name.endsWith('skin'));
    // What runs round the box goes through the glue from skin to frame, as wide as a member: the weaker wood counts.
    return [
      { name: 'skins', parts: skins, shape: { kind: 'box', area_m2, t_m: box.skin }, ...shared },
      {
        name: 'frame',
        parts: [...frameOf(board), ...skins],
        shape: { kind: 'box', area_m2, t_m: box.frame },
        ...shared,
      },
      ...strips.flatMap((strip) => {
        const own = alone(strip, whole_Nm2);
        return [own, joint(strip, own, frameOf(board))];
      }),
    ];
  }
  if (!board.bonded) return board.parts.map((part) => alone(part, board.twisting.GJ_Nm2));
  const J = torsionOfRectangle(depth, thickness);
  const whole_Nm2 = Math.min(...G) * J + ofStrips;
  const whole = {
    ...rectangle('board', body, depth, thickness, Math.max(...G) * J, whole_Nm2),
    rest: bent(body, thickness / 2, depth, thickness),
  };
  // The flow along the faces of the board runs on through the joint into the strip.
  return [whole, ...strips.flatMap((strip) => [alone(strip, whole_Nm2), joint(strip, whole, body)])];
}

function rectangle(
  name: string,
  parts: readonly BoardPart[],
  side_m: number,
  other_m: number,
  GJ_Nm2: number,
  whole_Nm2: number,
): Twisted {
  const [b_m, t_m] = [Math.max(side_m, other_m), Math.min(side_m, other_m)];
  return { name, parts, shape: { kind: 'rectangle', b_m, t_m }, GJ_Nm2, whole_Nm2, rest: null };
}

function stiffnessOf({ material, width_m, height_m }: BoardPart): number {
  return material.torsionG_Pa * torsionOfRectangle(width_m, height_m);
}
