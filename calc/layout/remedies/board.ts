import { lowerFirst } from '../../../shared/words.ts';
import { show, writeLength } from '../../../shared/quantity/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { findPanel, species } from '../../catalogue/index.ts';
import {
  boardThicknesses,
  lumberThicknesses,
  metresOf,
  nosingHeights,
  nosingThickness,
  panelThicknesses,
  stockedPanels,
} from '../stock-sizes.ts';
import { effortOf, type Change, type Family, type Trouble } from './change.ts';

type BoardInput = BracketShelfInput['board'];

const mostSteps = 3;
const mostMembers = 4;

/** A board of a greater thickness that is sold. Boxes and layered boards are left as they are. */
export function thickerBoard(trouble: Trouble): Family {
  const { shelf } = trouble;
  const { board, system } = shelf;
  if (isBuiltUp(trouble)) return none;
  const sold = { 'clear-wood': boardThicknesses, graded: lumberThicknesses, panel: panelThicknesses }[
    board.onArms.material.basis
  ][system];
  const present = shelf.document.board.thickness;
  const thicker = sold.filter((text) => metresOf(text) > present + 1e-6);
  return family(
    thicker.map((thickness) => {
      const what = `A board ${show(metresOf(thickness), 'm', system)} thick instead of ${show(present, 'm', system)}.`;
      return change(trouble, 'thicker-board', what, (given) => ({ ...given, thickness }));
    }),
  );
}

/** More members in the frame of a box, then skins half as thick again. */
export function boxFrame(trouble: Trouble): Family {
  const { document, system } = trouble.shelf;
  const { box, depth, thickness } = document.board;
  if (box === undefined) return none;
  const { skin, frame, members = 2 } = box;
  const counts = Array.from({ length: 8 - members }, (_, k) => members + 1 + k);
  const fitting = counts.filter((count) => count * frame < depth).slice(0, mostMembers);
  const thicker = skin * 1.5;
  const written = writeLength(thicker, system).text;
  const inBox = (what: string, edit: Partial<NonNullable<BoardInput['box']>>): Change =>
    change(trouble, 'box-frame', what, (given) =>
      given.box === undefined ? given : { ...given, box: { ...given.box, ...edit } },
    );
  return family([
    ...fitting.map((count) =>
      inBox(`${count} members in the frame of the box instead of ${members}.`, { members: count }),
    ),
    ...(2 * thicker < thickness
      ? [
          inBox(`Skins ${show(thicker, 'm', system)} thick instead of ${show(skin, 'm', system)}.`, {
            skin: written,
          }),
        ]
      : []),
  ]);
}

/** A nosing glued along the front edge, or a deeper one in place of the one that is there. */
export function nosing(trouble: Trouble): Family {
  const { shelf } = trouble;
  const { board } = shelf.document;
  const { system } = shelf;
  const present = board.nosing;
  const behind = board.depth + (board.rail?.thickness ?? 0);
  const isInTheWay = (present?.flush ?? 'top') === 'top' && shelf.arm_m > behind + 1e-9;
  const least = Math.max(present?.height ?? 0, board.thickness);
  const heights = isInTheWay ? [] : nosingHeights[system].filter((text) => metresOf(text) > least + 1e-6);
  const isPanel = shelf.board.onArms.material.basis === 'panel';
  return family(
    heights.map((height) => {
      const high = show(metresOf(height), 'm', system);
      if (present !== undefined) {
        const what = `A nosing ${high} high instead of ${show(present.height, 'm', system)}.`;
        return change(trouble, 'nosing', what, (given) =>
          given.nosing === undefined ? given : { ...given, nosing: { ...given.nosing, height } },
        );
      }
      const thickness = nosingThickness[system];
      const wood = isPanel ? ({ material: 'yellow-poplar', basis: 'clear-wood' } as const) : {};
      const of = isPanel ? 'yellow-poplar' : 'the wood of the board';
      const what = `A nosing of ${of}, ${high} high and ${show(metresOf(thickness), 'm', system)} thick, glued along the front edge, flush with the top.`;
      return change(trouble, 'nosing', what, (given) => ({
        ...given,
        nosing: { ...wood, height, thickness, flush: 'top' },
      }));
    }),
  );
}

/** Another common wood or panel of the same size, the least stiff that is stiffer first. */
export function otherBoard(trouble: Trouble): Family {
  const { shelf } = trouble;
  const present = shelf.board.onArms.material;
  if (isBuiltUp(trouble) || present.basis === 'graded') return none;
  const { thickness } = shelf.document.board;
  const stiffer =
    present.basis === 'panel'
      ? stockedPanels.flatMap((id) => {
          const found = findPanel(id, thickness);
          return found.ok ? [{ id, name: found.row.name, E_Pa: found.row.along.modulusOfElasticity_Pa }] : [];
        })
      : species
          .filter(({ likely }) => likely)
          .map(({ id, name, dry }) => ({ id, name, E_Pa: dry.modulusOfElasticity_Pa }));
  const basis = present.basis;
  const candidates = stiffer
    .filter(({ E_Pa, name }) => E_Pa > present.apparentE_Pa * 1.02 && name !== present.label)
    .sort((a, b) => a.E_Pa - b.E_Pa);
  return family(
    spreadOut(candidates).map(({ id, name }) => {
      const what = `A board of ${lowerFirst(name)} in place of ${lowerFirst(present.label)}, of the same size.`;
      return change(trouble, 'other-board', what, (given) => {
        const { grade: _, ...others } = given;
        return { ...others, material: id, basis };
      });
    }),
  );
}

const none: Family = { touches: 'all', changes: [] };

function family(changes: readonly Change[]): Family {
  return { touches: 'all', changes };
}

function isBuiltUp({ shelf }: Trouble): boolean {
  const { box, layers } = shelf.document.board;
  return box !== undefined || layers !== undefined;
}

function change(
  { input }: Trouble,
  kind: 'thicker-board' | 'box-frame' | 'nosing' | 'other-board',
  what: string,
  edit: (given: BoardInput) => BoardInput,
): Change {
  return { kind, what, effort: effortOf[kind], input: { ...input, board: edit(input.board) } };
}

/** A few of many: the first, the last and some between. */
function spreadOut<T>(all: readonly T[]): T[] {
  if (all.length <= mostSteps + 1) return [...all];
  const picks = Array.from({ length: mostSteps + 1 }, (_, k) =>
    Math.round((k * (all.length - 1)) / mostSteps),
  );
  return picks.flatMap((index) => all[index] ?? []);
}
