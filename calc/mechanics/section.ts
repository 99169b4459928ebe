import { twistingStiffness } from './torsion-formulas.ts';

/** A rectangle of one material in a cross-section: y runs from the wall to the front, z from the bottom up. */
export interface Part {
  readonly name: string;
  readonly y_m: number;
  readonly width_m: number;
  readonly z_m: number;
  readonly height_m: number;
  /** Lengthwise stiffness used for bending. */
  readonly E_Pa: number;
}

/** A joint that carries shear between some parts and the rest. */
export interface GlueLine {
  readonly name: string;
  /** Indices of the parts on one side. */
  readonly parts: readonly number[];
  readonly width_m: number;
}

/** Stiffness-weighted properties of a section whose parts act as one. */
export interface Section {
  readonly parts: readonly Part[];
  readonly EA_N: number;
  readonly centroidY_m: number;
  readonly centroidZ_m: number;
  readonly EIx_Nm2: number;
  readonly EIy_Nm2: number;
  readonly EIxy_Nm2: number;
}

/** Properties of parts that are bonded into one section. */
export function bondedSection(parts: readonly Part[]): Section {
  let [EA, EAy, EAz] = [0, 0, 0];
  for (const part of parts) {
    const ea = part.E_Pa * part.width_m * part.height_m;
    EA += ea;
    EAy += ea * middleY(part);
    EAz += ea * middleZ(part);
  }
  const [centroidY_m, centroidZ_m] = [EAy / EA, EAz / EA];
  let [EIx, EIy, EIxy] = [0, 0, 0];
  for (const part of parts) {
    const ea = part.E_Pa * part.width_m * part.height_m;
    const y = middleY(part) - centroidY_m;
    const z = middleZ(part) - centroidZ_m;
    EIx += ea * (part.height_m ** 2 / 12 + z * z);
    EIy += ea * (part.width_m ** 2 / 12 + y * y);
    EIxy += ea * y * z;
  }
  return {
    parts,
    EA_N: EA,
    centroidY_m,
    centroidZ_m,
    EIx_Nm2: EIx,
    EIy_Nm2: EIy,
    EIxy_Nm2: withoutNoise(EIxy, Math.sqrt(EIx * EIy)),
  };
}

/** A sum whose terms cancel is nothing, where what is left of it is no more than their rounding. */
function withoutNoise(sum: number, size: number): number {
  return Math.abs(sum) <= 1e-12 * size ? 0 : sum;
}

/** A corner of a part: distances from the section's centroid. */
export interface Corner {
  readonly y_m: number;
  readonly z_m: number;
}

/** Stress for a unit moment at a place in a part, Pa for each N·m; bending about inclined axes. */
export function stressPerMoment(section: Section, part: Part, { y_m, z_m }: Corner): number {
  const { EIx_Nm2: x, EIy_Nm2: y, EIxy_Nm2: xy } = section;
  return (part.E_Pa * (y * z_m - xy * y_m)) / (x * y - xy * xy);
}

/** The corner of a part where the stress for a unit moment is largest. */
export function worstCorner(section: Section, part: Part): Corner {
  const left = part.y_m - section.centroidY_m;
  const low = part.z_m - section.centroidZ_m;
  const corners = [0, part.width_m].flatMap((dy) =>
    [0, part.height_m].map((dz) => ({ y_m: left + dy, z_m: low + dz })),
  );
  return corners.reduce((worst, corner) =>
    Math.abs(stressPerMoment(section, part, corner)) > Math.abs(stressPerMoment(section, part, worst)) + 1e-12
      ? corner
      : worst,
  );
}

/** First moments, stiffness-weighted, of what lies on one side of a cut, about the centroid: EQx, EQy in N·m. */
export interface FirstMoments {
  readonly EQx_Nm: number;
  readonly EQy_Nm: number;
}

function settled({ EA_N, EIx_Nm2, EIy_Nm2 }: Section, { EQx_Nm, EQy_Nm }: FirstMoments): FirstMoments {
  return {
    EQx_Nm: withoutNoise(EQx_Nm, Math.sqrt(EA_N * EIx_Nm2)),
    EQy_Nm: withoutNoise(EQy_Nm, Math.sqrt(EA_N * EIy_Nm2)),
  };
}

/** First moments of whole parts. */
export function firstMomentsOf(section: Section, indices: readonly number[]): FirstMoments {
  let [EQx_Nm, EQy_Nm] = [0, 0];
  for (const index of indices) {
    const part = section.parts[index];
    if (part === undefined) continue;
    const ea = part.E_Pa * part.width_m * part.height_m;
    EQx_Nm += ea * (middleZ(part) - section.centroidZ_m);
    EQy_Nm += ea * (middleY(part) - section.centroidY_m);
  }
  return settled(section, { EQx_Nm, EQy_Nm });
}

/** A level cut through a section: what lies above it and how wide the cut is. */
export interface LevelCut extends FirstMoments {
  readonly z_m: number;
  readonly width_m: number;
  /** Indices of the parts that are cut. */
  readonly parts: readonly number[];
}

/**
 * Level cuts where the shear stress can be largest: beside every step in width, and between two steps where the flow
 * across the cut turns, on the inclined neutral axis of what is cut there.
 */
export function levelCuts(section: Section): LevelCut[] {
  const step = 1e-9;
  const steps = [...new Set(section.parts.flatMap(({ z_m, height_m }) => [z_m, z_m + height_m]))].sort(
    (a, b) => a - b,
  );
  const levels = steps.flatMap((z, index) => {
    const next = steps[index + 1];
    const turn = next === undefined ? undefined : neutralLevel(section, (z + next) / 2);
    const isBetween = turn !== undefined && next !== undefined && turn > z && turn < next;
    return isBetween ? [z - step, z + step, turn] : [z - step, z + step];
  });
  return levels.map((z) => levelCut(section, z)).filter((cut) => cut.width_m > 0);
}

/** Level at which the bending stress, averaged over the parts cut at `z`, is nothing. */
function neutralLevel(section: Section, z: number): number {
  let [stiffness, aside] = [0, 0];
  for (const part of section.parts) {
    if (z <= part.z_m || z >= part.z_m + part.height_m) continue;
    const each = part.E_Pa * part.width_m;
    stiffness += each;
    aside += each * (middleY(part) - section.centroidY_m);
  }
  return section.centroidZ_m + (section.EIxy_Nm2 / section.EIy_Nm2) * (aside / stiffness);
}

function levelCut(section: Section, z: number): LevelCut {
  let [EQx_Nm, EQy_Nm, width_m] = [0, 0, 0];
  const parts: number[] = [];
  section.parts.forEach((part, index) => {
    const top = part.z_m + part.height_m;
    const above = Math.min(part.height_m, top - z);
    if (above <= 0) return;
    const ea = part.E_Pa * part.width_m * above;
    EQx_Nm += ea * (top - above / 2 - section.centroidZ_m);
    EQy_Nm += ea * (middleY(part) - section.centroidY_m);
    if (z > part.z_m) {
      width_m += part.width_m;
      parts.push(index);
    }
  });
  return { z_m: z, ...settled(section, { EQx_Nm, EQy_Nm }), width_m, parts };
}

/** Shear flow across a cut for a unit shear force, N/m for each N; bending about inclined axes. */
export function shearFlowPerForce(section: Section, { EQx_Nm, EQy_Nm }: FirstMoments): number {
  const { EIx_Nm2: x, EIy_Nm2: y, EIxy_Nm2: xy } = section;
  return Math.abs(y * EQx_Nm - xy * EQy_Nm) / (x * y - xy * xy);
}

/** Torsion constant of a solid rectangle, m⁴. */
export function torsionOfRectangle(side_m: number, other_m: number): number {
  return twistingStiffness.evaluate(twistingOfRectangle(1, side_m, other_m));
}

/** The numbers of the stiffness of a rectangle against twisting. */
export function twistingOfRectangle(G_v: number, side_m: number, other_m: number) {
  return { G_v, b: Math.max(side_m, other_m), t: Math.min(side_m, other_m) };
}

function middleY(part: Part): number {
  return part.y_m + part.width_m / 2;
}

function middleZ(part: Part): number {
  return part.z_m + part.height_m / 2;
}
