import { cornerOmega } from './open-section-formulas.ts';
import type { Corner, Part, Section } from './section.ts';

/** A strip along an edge of a board, glued to it over a height whose middle is at `joint_m`. */
export interface Strip {
  readonly part: Part;
  readonly joint_m: number;
}

/** How a section warps as it twists about its axis. */
export interface Warp {
  /** Stiffness against warping, about the shear centre. */
  readonly EIw_Nm4: number;
  /** Height of the shear centre above the centroid, m. */
  readonly poleZ_m: number;
  readonly sheets: readonly WarpedSheet[];
  /** What the sectorial coordinate at a corner of a part follows from; each part stays plane, a low strip with the board. */
  readonly omegaFrom: (part: Part, corner: Corner) => Parameters<typeof cornerOmega.evaluate>[0];
  /** Upright shear of a part whose joint with the others is at `joint_m`, for each unit of torque that bends the parts, 1/m. */
  readonly shear_perm: (part: Part, joint_m: number) => number;
  /** Flow through the joint of a part with the others, for each unit of that torque, 1/m². */
  readonly flow_perm2: (part: Part) => number;
}

/** Sectorial coordinate over a part about the shear centre, and its share of the stiffness against warping. */
export interface WarpedSheet {
  readonly part: Part;
  /** At its middle, m²; its slopes across and upright, and the upright one as its corners are judged by, m. */
  readonly omega_m2: number;
  readonly perY_m: number;
  readonly perZ_m: number;
  readonly bentPerZ_m: number;
  readonly EIw_Nm4: number;
}

/** Sectorial coordinate at a corner of a part, m². */
export function omegaAt(warp: Warp, part: Part, corner: Corner): number {
  return cornerOmega.evaluate(warp.omegaFrom(part, corner));
}

/** Sectorial coordinate over a rectangle: at its middle, its slopes, and what it changes by from corner to corner. */
interface Sheet {
  readonly part: Part;
  readonly middle: number;
  readonly perY: number;
  readonly perZ: number;
  readonly across: 1 | -1;
}

/**
 * Warping of a flat board with strips along its edges, all glued: plates that keep their shape across the board, free to
 * move apart lengthwise only together (Vlasov, the thickness of the plates counted). Weighted by stiffness.
 *
 * @param body layers of the board, all of one width
 */
export function warpOf(section: Section, body: readonly Part[], strips: readonly Strip[]): Warp {
  const [first] = body;
  if (first === undefined) throw new RangeError('a board has a body');
  const at = placesIn(section);
  const bottom = Math.min(...body.map(({ z_m }) => z_m));
  const top = Math.max(...body.map(({ z_m, height_m }) => z_m + height_m));
  const level = (bottom + top) / 2 - section.centroidZ_m;
  const { y: y_b } = at(first);
  const sheets = [
    ...body.map((part): Sheet => {
      const off = at(part).z - level;
      return { part, middle: -off * y_b, perY: level - off, perZ: -y_b, across: -1 };
    }),
    ...strips.map(({ part, joint_m }): Sheet => {
      const { y, z } = at(part);
      const across = part.height_m > part.width_m ? 1 : -1;
      const face = y + (y > y_b ? -1 : 1) * (part.width_m / 2);
      const joint = joint_m - section.centroidZ_m;
      const ofBoard = level * (face - y_b) - (joint - level) * face;
      const fromMiddle = z * (face - y) - y * (joint - z) + across * (face - y) * (joint - z);
      return { part, middle: ofBoard - fromMiddle, perY: z, perZ: -y, across };
    }),
  ];
  return aboutShearCentre(section, sheets, body, top - bottom);
}

/** Warping of parts that slide on each other: each bends by itself, upright. */
export function warpOfSliding(parts: readonly Part[], axis_m: number): Warp {
  const arm = (part: Part): number => part.y_m + part.width_m / 2 - axis_m;
  const EIw_Nm4 = parts.reduce(
    (sum, part) =>
      sum + ((areaOf(part) * part.height_m ** 2) / 12) * (arm(part) ** 2 + part.width_m ** 2 / 12),
    0,
  );
  return {
    EIw_Nm4,
    poleZ_m: 0,
    sheets: [],
    omegaFrom: (part, { z_m }) => ({ omega_i: 0, s_y: 0, d_y: 0, s_w: -arm(part), d_z: z_m }),
    shear_perm: (part) => (-arm(part) * areaOf(part) * part.height_m ** 2) / 12 / EIw_Nm4,
    flow_perm2: () => 0,
  };
}

/**
 * Moves the pole to the shear centre: what is left bends the section neither way and does not stretch it. A board bends
 * alike over its width (common practice), a strip no taller than it with it; a taller one by itself as far as it is stiffer.
 */
function aboutShearCentre(
  section: Section,
  sheets: readonly Sheet[],
  body: readonly Part[],
  thickness_m: number,
): Warp {
  const at = placesIn(section);
  const { EIx_Nm2: x, EIy_Nm2: y, EIxy_Nm2: xy, EA_N } = section;
  const sum = (of: (sheet: Sheet) => number): number =>
    sheets.reduce((total, sheet) => total + areaOf(sheet.part) * of(sheet), 0);
  const mean = sum(({ middle }) => middle) / EA_N;
  const withY = sum((s) => s.middle * at(s.part).y + (s.perY * s.part.width_m ** 2) / 12);
  const withZ = sum((s) => s.middle * at(s.part).z + (s.perZ * s.part.height_m ** 2) / 12);
  const determinant = x * y - xy * xy;
  const pole = { y: (xy * withY - y * withZ) / determinant, z: (x * withY - xy * withZ) / determinant };
  const moved = sheets.map((s): Sheet => ({
    ...s,
    middle: s.middle - mean - pole.z * at(s.part).y + pole.y * at(s.part).z,
    perY: s.perY - pole.z,
    perZ: s.perZ + pole.y,
  }));
  const stiffnessOf = ({ part, middle, perY, perZ }: Sheet): number => {
    const [b2, h2] = [part.width_m ** 2, part.height_m ** 2];
    const square = middle ** 2 + (perY ** 2 * b2 + perZ ** 2 * h2) / 12 + (b2 * h2) / 144;
    return areaOf(part) * square;
  };
  const EIw_Nm4 = moved.reduce((total, sheet) => total + stiffnessOf(sheet), 0);
  const sheetOf = (part: Part): Sheet => {
    const sheet = moved.find((each) => each.part === part);
    if (sheet === undefined) throw new RangeError('not a part of this section');
    return sheet;
  };
  const flatness = ({ part }: Sheet): number => areaOf(part) * part.height_m ** 2;
  const isBoard = ({ part }: Sheet): boolean => body.includes(part) || part.height_m <= thickness_m;
  const board = moved.filter(isBoard);
  const evenPerZ =
    board.reduce((total, sheet) => total + flatness(sheet) * sheet.perZ, 0) /
    board.reduce((total, sheet) => total + flatness(sheet), 0);
  const bentPerZ = (sheet: Sheet): number => {
    const own = isBoard(sheet) ? 0 : 1 - (thickness_m / sheet.part.height_m) ** 3;
    return evenPerZ + own * (sheet.perZ - evenPerZ);
  };
  return {
    EIw_Nm4,
    poleZ_m: pole.z,
    sheets: moved.map((sheet) => ({
      part: sheet.part,
      omega_m2: sheet.middle,
      perY_m: sheet.perY,
      perZ_m: sheet.perZ,
      bentPerZ_m: bentPerZ(sheet),
      EIw_Nm4: stiffnessOf(sheet),
    })),
    omegaFrom: (part, corner) => {
      const sheet = sheetOf(part);
      const { y, z } = at(part);
      return {
        omega_i: sheet.middle,
        s_y: sheet.perY,
        d_y: corner.y_m - y,
        s_w: bentPerZ(sheet),
        d_z: corner.z_m - z,
      };
    },
    shear_perm: (part, joint_m) => {
      const { middle, perZ } = sheetOf(part);
      const above = part.z_m + part.height_m / 2 - joint_m;
      return (areaOf(part) * (middle * above + (perZ * part.height_m ** 2) / 12)) / EIw_Nm4;
    },
    flow_perm2: (part) => (areaOf(part) * sheetOf(part).middle) / EIw_Nm4,
  };
}

/** Stretching stiffness of a part. */
function areaOf({ E_Pa, width_m, height_m }: Part): number {
  return E_Pa * width_m * height_m;
}

/** Middle of a part from the centroid of the section. */
function placesIn({ centroidY_m, centroidZ_m }: Section): (part: Part) => { y: number; z: number } {
  return (part) => ({
    y: part.y_m + part.width_m / 2 - centroidY_m,
    z: part.z_m + part.height_m / 2 - centroidZ_m,
  });
}
