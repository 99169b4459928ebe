import { parseLimit, type BracketShelfDocument, type Limit } from '../../../shared/check-document/index.ts';
import { overallDepth } from '../../../shared/check-document/bracket-shelf-conflicts.ts';
import { unknownNames } from './names.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { show, inch } from '../../../shared/quantity/index.ts';
import { ndsAsd } from '../../codes/nds-asd/index.ts';
import { actionsOf } from './actions.ts';
import { readBoard } from './board.ts';
import { contentsOf, type Contents } from './contents.ts';
import { assumedConditions, wetWarning } from '../assumed-conditions.ts';
import type { Shelf } from './shelf.ts';

const usualArmWidth_m = 0.75 * inch;

export type ShelfReading =
  | { readonly ok: true; readonly shelf: Shelf; readonly contents: readonly (Contents | undefined)[] }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

/** Fills in every default, looks up every name, and says all it had to assume. */
export function readShelf(document: BracketShelfDocument): ShelfReading {
  const { board: input, brackets } = document;
  const system = document.units ?? 'inch-pound';
  const code = ndsAsd;
  const unknown = unknownNames(document);
  if (unknown.length > 0) return { ok: false, errors: unknown };
  const board = readBoard(document, code, system);
  const weighed = contentsOf(document.loads ?? [], system);
  const errors = [...(board.ok ? [] : board.errors), ...weighed.errors];
  if (!board.ok || errors.length > 0) return { ok: false, errors };

  const depth_m = overallDepth(input);
  const loads = actionsOf(document, depth_m, weighed.contents);
  const positions_m = [...brackets.positions]
    .map((position) => Math.min(position, input.length))
    .sort((a, b) => a - b);
  const hold = brackets.hold ?? 'resting';
  const capacity = brackets.capacity ?? { basis: 'unknown' as const };
  const armWidth_m = brackets.armWidth ?? (capacity.basis === 'steel' ? capacity.width : usualArmWidth_m);
  const said = (isGiven: boolean, words: string): string[] => (isGiven ? [] : [words]);
  return {
    ok: true,
    contents: weighed.contents,
    shelf: {
      document,
      system,
      code,
      length_m: input.length,
      depth_m,
      board: board.board,
      positions_m,
      arm_m: brackets.arm,
      bearingLength_m: Math.min(brackets.arm, depth_m),
      armWidth_m,
      hold,
      capacity,
      actions: loads.actions,
      limits: {
        live: document.limits?.live ?? limit('L/360'),
        longTerm: document.limits?.longTerm ?? limit('L/240'),
      },
      assumptions: [
        ...assumedConditions(document.conditions),
        ...loads.assumptions,
        ...said(
          brackets.armWidth !== undefined,
          capacity.basis === 'steel'
            ? `Arms as wide as their steel, ${show(armWidth_m, 'm', system)}.`
            : `Arms ${show(usualArmWidth_m, 'm', system)} wide (common practice, no source).`,
        ),
        ...said(
          brackets.hold !== undefined,
          'Nothing is said of screws into the board: it is taken to rest on its brackets.',
        ),
        ...said(
          capacity.basis !== 'rated' || capacity.at !== undefined,
          'The brackets are taken as rated at the middle of the arm.',
        ),
        ...said(
          capacity.basis !== 'steel' || capacity.metal !== undefined,
          'Steel of the arms not stated: ASTM A36 taken.',
        ),
        ...said(
          document.limits?.live !== undefined,
          'Movement under load limited to L/360 (IBC Table 1604.3, floors).',
        ),
        ...said(
          document.limits?.longTerm !== undefined,
          'Movement over the years limited to L/240 (IBC Table 1604.3, floors).',
        ),
        'A load that roams stands at the very front edge; the board is held from twisting at each bracket, and twists between them about its shear centre, which is its mid-depth where it has no strips.',
        'The pressure of the board on an arm is taken as even over the arm; friction counts for nothing.',
      ],
      warnings: warningsOf(document, depth_m),
    },
  };
}

function limit(written: string): Limit {
  return parseLimit(written) ?? { kind: 'none', written: 'none' };
}

function warningsOf(document: BracketShelfDocument, depth_m: number): string[] {
  const { loads, brackets } = document;
  const warnings: string[] = [];
  if (loads !== undefined && !loads.some((load) => load.kind === 'roaming' && load.amount > 0)) {
    warnings.push('No leaning hand is counted: nothing was given that roams along the front edge.');
  }
  if (brackets.arm < depth_m / 2) {
    warnings.push(
      'The arms reach less than half the depth of the board: what stands in the front half pulls hard on the fixings.',
    );
  }
  if (brackets.arm > depth_m + 1e-9) {
    warnings.push('The arms reach past the front of the board; only what lies under the board counts.');
  }
  const { capacity, armWidth, boardScrews } = brackets;
  if (capacity?.basis === 'steel') {
    if (armWidth !== undefined && armWidth > capacity.width + 1e-9) {
      warnings.push(
        'The board is given a wider arm than its bar of steel: true only of something stiff that is fixed to the bar all along, which is not checked.',
      );
    }
    if (boardScrews?.armThickness !== undefined && boardScrews.armThickness < capacity.thickness - 1e-9) {
      warnings.push(
        'The screws into the board are given less to pass than the bar is thick: true only of a flange beside the bar, which is not checked.',
      );
    }
  }
  return [...warnings, ...wetWarning(document.conditions)];
}
