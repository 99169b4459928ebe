import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { standardGravity, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { DesignCode, Material, MaterialRequest } from '../../codes/design-code.ts';
import { effectiveStiffness } from '../../mechanics/section-formulas.ts';
import { bondedSection, type GlueLine, type Part, type Section } from '../../mechanics/section.ts';
import type { BoardInput, BoardPart } from './board-part.ts';
import { boardPlateOf, skinGrainOf, type BoardPlate, type SkinGrain } from './board-plate.ts';
import { twistingOf, type Twisting } from './board-twist.ts';

type Document = BracketShelfDocument;

/** The board as a beam: its parts, and the stiffness and weight that come from them. */
export interface Board {
  readonly parts: readonly BoardPart[];
  /** Layers that slide on each other share the moment by their own stiffness. */
  readonly bonded: boolean;
  readonly section: Section;
  readonly glueLines: readonly GlueLine[];
  readonly EI_Nm2: number;
  /** κGA; null where the materials' stiffness already has shear inside it. */
  readonly GA_N: number | null;
  readonly twisting: Twisting;
  /** The board without tall strips, bent along and across its grain; null of a box. */
  readonly plate: BoardPlate | null;
  /** How the skins of a box are bent across it; null of another board. */
  readonly skinGrain: SkinGrain | null;
  readonly selfWeight_Npm: number;
  /** Distance of the centre of gravity from the wall finish. */
  readonly weightAt_m: number;
  /** The part that lies on the arms, and the largest creep factor of any part. */
  readonly onArms: BoardPart;
  readonly creep: { readonly factor: number; readonly source: string };
  readonly materials: readonly Material[];
}

export type BoardReading =
  | { readonly ok: true; readonly board: Board }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

interface Piece extends Omit<Part, 'E_Pa'> {
  readonly request: Omit<MaterialRequest, 'moisture' | 'temperature' | 'system'>;
}

/** Shear coefficient of a rectangle. */
const kappa = 5 / 6;

/** Reads the board: geometry into parts, names into materials. */
export function readBoard(document: Document, code: DesignCode, system: UnitSystem): BoardReading {
  const errors: FieldError[] = [];
  const parts: BoardPart[] = [];
  const conditions = {
    moisture: document.conditions?.moisture ?? 'dry',
    temperature: document.conditions?.temperature ?? 'ordinary',
    system,
  } as const;
  const known = new Map<string, Material>();
  for (const { request, ...geometry } of pieces(document.board)) {
    const key = JSON.stringify({ ...request, path: '' });
    const held = known.get(key);
    const reading = held
      ? ({ ok: true, material: held } as const)
      : code.material({ ...request, ...conditions });
    if (reading.ok) {
      const material = sameWood([...known.values()], reading.material) ?? reading.material;
      known.set(key, material);
      parts.push({ ...geometry, E_Pa: material.E_Pa, material });
    } else errors.push(...reading.errors);
  }
  const [first, ...rest] = parts;
  if (errors.length > 0 || first === undefined) return { ok: false, errors: unique(errors) };
  return { ok: true, board: assemble(document.board, [first, ...rest]) };
}

/** Clear wood is the same however a piece is used; lumber and panels take factors from their size. */
function sameWood(known: readonly Material[], material: Material): Material | undefined {
  return known.find((each) => each.basis === 'clear-wood' && each.label === material.label);
}

function unique(errors: readonly FieldError[]): FieldError[] {
  return errors.filter(
    (error, index) =>
      errors.findIndex((other) => other.path === error.path && other.message === error.message) === index,
  );
}

/** The rectangles a board is made of, wall to front and bottom to top. */
function pieces(board: BoardInput): Piece[] {
  const { depth, thickness, nosing, rail } = board;
  const y = rail?.thickness ?? 0;
  const own = {
    material: board.material,
    basis: board.basis,
    appearance: board.appearance,
    grade: board.grade,
  };
  const result: Piece[] = [];
  const sheet = (
    name: string,
    z: number,
    height: number,
    request: Partial<Piece['request']> & { path: string },
  ) =>
    result.push({
      name,
      y_m: y,
      width_m: depth,
      z_m: z,
      height_m: height,
      request: { ...own, thickness_m: height, width_m: depth, use: 'flat', ...request },
    });
  if (board.box !== undefined) {
    const { box } = board;
    const inner = thickness - 2 * box.skin;
    sheet('bottom skin', 0, box.skin, { path: '/board' });
    sheet('top skin', thickness - box.skin, box.skin, { path: '/board' });
    const members = box.members ?? 2;
    for (let i = 0; i < members; i++) {
      result.push({
        name: `frame member ${i + 1}`,
        y_m: y + ((depth - box.frame) * i) / (members - 1),
        width_m: box.frame,
        z_m: box.skin,
        height_m: inner,
        request: {
          path: '/board/box',
          fieldPrefix: 'frame',
          material: box.frameMaterial ?? board.material,
          basis: box.frameBasis ?? (box.frameMaterial === undefined ? board.basis : undefined),
          appearance: box.frameAppearance ?? board.appearance,
          grade: box.frameGrade ?? (box.frameMaterial === undefined ? board.grade : undefined),
          thickness_m: Math.min(box.frame, inner),
          width_m: Math.max(box.frame, inner),
          use: 'edge',
        },
      });
    }
  } else if (board.layers !== undefined) {
    let top = thickness;
    board.layers.forEach((layer, index) => {
      top -= layer.thickness;
      const named =
        layer.material === undefined
          ? own
          : { material: layer.material, basis: layer.basis, grade: layer.grade };
      sheet(`layer ${index + 1}`, top, layer.thickness, {
        path: `/board/layers/${index}`,
        ...named,
        appearance: layer.appearance ?? board.appearance,
      });
    });
  } else {
    sheet('board', 0, thickness, { path: '/board' });
  }
  const strips = [
    { name: 'nosing', strip: nosing, y: y + depth, path: '/board/nosing' },
    { name: 'back rail', strip: rail, y: 0, path: '/board/rail' },
  ];
  for (const { name, strip, y: at, path } of strips) {
    if (strip === undefined) continue;
    const named =
      strip.material === undefined
        ? own
        : { material: strip.material, basis: strip.basis, grade: strip.grade };
    result.push({
      name,
      y_m: at,
      width_m: strip.thickness,
      z_m: strip.flush === 'bottom' ? 0 : thickness - strip.height,
      height_m: strip.height,
      request: {
        path,
        ...named,
        appearance: strip.appearance ?? board.appearance,
        thickness_m: Math.min(strip.thickness, strip.height),
        width_m: Math.max(strip.thickness, strip.height),
        use: strip.height > strip.thickness ? 'edge' : 'flat',
      },
    });
  }
  return result;
}

/** Where a panel leaves no shear term, wood beside it counts with shear inside its stiffness too. */
function withShearInside(part: BoardPart): BoardPart {
  return { ...part, E_Pa: part.material.apparentE_Pa };
}

function assemble(input: BoardInput, given: readonly [BoardPart, ...BoardPart[]]): Board {
  const together_N = shearStiffness(input, given);
  const [head, ...tail] = given;
  const parts: readonly [BoardPart, ...BoardPart[]] =
    together_N === null ? [withShearInside(head), ...tail.map(withShearInside)] : given;
  const bonded = input.layers === undefined || input.bond === 'structural';
  const strips = parts.filter(({ name }) => name === 'nosing' || name === 'back rail');
  const body = parts.filter((part) => !strips.includes(part));
  const section = bondedSection(parts);
  const areas = parts.map((part) => part.width_m * part.height_m);
  const mass = parts.map((part, index) => part.material.density_kgm3 * (areas[index] ?? 0));
  const massPerLength = mass.reduce((sum, each) => sum + each, 0);
  const moment = parts.reduce((sum, part, i) => sum + (mass[i] ?? 0) * (part.y_m + part.width_m / 2), 0);
  const creep = parts
    .map(({ material }) => material.creep)
    .reduce((most, each) => (each.factor > most.factor ? each : most));
  const lowest = Math.min(...body.map(({ z_m }) => z_m));
  const EI_Nm2 = bonded
    ? effectiveStiffness.evaluate({ EI_x: section.EIx_Nm2, EI_xy: section.EIxy_Nm2, EI_y: section.EIy_Nm2 })
    : parts.reduce((sum, part) => sum + ownStiffness(part), 0);
  const twisting = twistingOf({ input, parts, body, strips, section, bonded, EI_Nm2 });
  return {
    parts,
    bonded,
    section,
    glueLines: glueLines(input, parts, body, strips, bonded),
    EI_Nm2,
    GA_N: together_N === null || input.box !== undefined ? together_N : kappa * shearShared(body, twisting),
    twisting,
    plate: boardPlateOf(input, body, strips, bonded),
    skinGrain: input.box === undefined ? null : skinGrainOf(input.material, head),
    selfWeight_Npm: massPerLength * standardGravity,
    weightAt_m: moment / massPerLength,
    onArms: body.find(({ z_m }) => z_m === lowest) ?? parts[0],
    creep,
    materials: [...new Set(parts.map(({ material }) => material))],
  };
}

/** The members of a box's frame, back to front. */
export function frameOf({ parts }: Pick<Board, 'parts'>): readonly BoardPart[] {
  return parts.filter(({ name }) => name.startsWith('frame member'));
}

/** Bending stiffness of a part about its own middle. */
export function ownStiffness(part: Part): number {
  return (part.E_Pa * part.width_m * part.height_m ** 3) / 12;
}

function shearStiffness(input: BoardInput, parts: readonly BoardPart[]): number | null {
  const webs = input.box === undefined ? parts : frameOf({ parts });
  let sum = 0;
  for (const { material, width_m, height_m } of webs) {
    if (material.G_Pa === null) return null;
    sum += material.G_Pa * width_m * height_m;
  }
  return kappa * sum;
}

/** GA of a board whose strips carry other shares of the shear than their section: 1 / Σ v² / GA of the parts. */
function shearShared(body: readonly BoardPart[], { strips }: Twisting): number {
  const stiffness = ({ material, width_m, height_m }: BoardPart): number =>
    (material.G_Pa ?? Infinity) * width_m * height_m;
  const ofBody = 1 - strips.reduce((sum, { share }) => sum + share, 0);
  return (
    1 /
    strips.reduce(
      (sum, { part, share }) => sum + share ** 2 / stiffness(part),
      ofBody ** 2 / body.reduce((sum, part) => sum + stiffness(part), 0),
    )
  );
}

function glueLines(
  input: BoardInput,
  parts: readonly BoardPart[],
  body: readonly BoardPart[],
  strips: readonly BoardPart[],
  bonded: boolean,
): GlueLine[] {
  const lines: GlueLine[] = [];
  if (input.box !== undefined) {
    const width = (input.box.members ?? 2) * input.box.frame;
    lines.push({ name: 'bottom skin to frame', parts: [0], width_m: width });
    lines.push({ name: 'top skin to frame', parts: [1], width_m: width });
  } else if (bonded && input.layers !== undefined) {
    for (let i = 0; i + 1 < body.length; i++) {
      const above = Array.from({ length: i + 1 }, (_, index) => index);
      lines.push({ name: `layer ${i + 1} to layer ${i + 2}`, parts: above, width_m: input.depth });
    }
  }
  for (const strip of strips) {
    const top = Math.min(strip.z_m + strip.height_m, input.thickness);
    const touching = Math.max(0, top - Math.max(strip.z_m, 0));
    lines.push({ name: `${strip.name} to board`, parts: [parts.indexOf(strip)], width_m: touching });
  }
  return lines;
}
