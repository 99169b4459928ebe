import type { Statement } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import { fixingStatements } from '../fixing/given-fixing.ts';
import type { Shelf } from './shelf.ts';

/** What the document says, and what was filled in for it. */
export function givenStatements(shelf: Shelf): Statement[] {
  const { document, system, positions_m } = shelf;
  const { board, brackets, wall } = document;
  const m = (metres: number): string => show(metres, 'm', system);
  const given = (label: string, value: string): Statement => ({ label, value, source: 'given' });
  const either = (label: string, value: string, isGiven: boolean): Statement => ({
    label,
    value,
    source: isGiven ? 'given' : 'assumed',
  });
  return [
    given(
      'Board, length × depth × thickness',
      `${m(board.length)} × ${m(board.depth)} × ${m(board.thickness)}`,
    ),
    ...strips(shelf),
    given('Depth in all, from the wall finish', m(shelf.depth_m)),
    ...(board.joints === undefined ? [] : [given('Joints in the board, at', board.joints.map(m).join(', '))]),
    given(`${positions_m.length} brackets, from the left end`, positions_m.map(m).join(', ')),
    given('Arm', m(brackets.arm)),
    either('Width of the arm', m(shelf.armWidth_m), brackets.armWidth !== undefined),
    either(
      'Hold',
      shelf.hold === 'screwed' ? 'screwed to the arms' : 'resting on the arms',
      brackets.hold !== undefined,
    ),
    either('Strength of a bracket', capacityWords(shelf), brackets.capacity !== undefined),
    ...fixingStatements({ ...brackets, wall }, system),
    either('Limit of movement under load', shelf.limits.live.written, document.limits?.live !== undefined),
    either(
      'Limit of movement over the years',
      shelf.limits.longTerm.written,
      document.limits?.longTerm !== undefined,
    ),
    either('Moisture', document.conditions?.moisture ?? 'dry', document.conditions?.moisture !== undefined),
    given('Code of practice', shelf.code.edition),
  ];
}

function strips({ document, system }: Shelf): Statement[] {
  const { board } = document;
  const m = (metres: number): string => show(metres, 'm', system);
  const statements: Statement[] = [];
  for (const [name, strip] of [
    ['Nosing', board.nosing],
    ['Back rail', board.rail],
  ] as const) {
    if (strip === undefined) continue;
    const flush = strip.flush ?? 'top';
    statements.push({
      label: `${name}, height × thickness`,
      value: `${m(strip.height)} × ${m(strip.thickness)}, glued, flush with the ${flush}`,
      source: 'given',
    });
  }
  if (board.box !== undefined) {
    const value = `skins ${m(board.box.skin)}, ${board.box.members ?? 2} frame members ${m(board.box.frame)} wide`;
    statements.push({ label: 'Hollow box', value, source: 'given' });
  }
  if (board.layers !== undefined) {
    const value = `${board.layers.map((layer) => m(layer.thickness)).join(' + ')}, ${board.bond === 'structural' ? 'glued to act as one' : 'sliding on each other'}`;
    statements.push({
      label: 'Layers, from the top',
      value,
      source: board.bond === undefined ? 'assumed not bonded' : 'given',
    });
  }
  return statements;
}

function capacityWords({ capacity, system, arm_m }: Shelf): string {
  if (capacity.basis === 'unknown') return 'not known';
  if (capacity.basis === 'steel') {
    const size = `${show(capacity.width, 'm', system)} × ${show(capacity.thickness, 'm', system)}`;
    return `steel bar ${size}${capacity.strut === undefined ? '' : ' with a strut'}, ${capacity.metal ?? 'A36'}`;
  }
  const at = show(capacity.at ?? arm_m / 2, 'm', system);
  if (capacity.allowable !== undefined)
    return `rated ${show(capacity.allowable, 'N', system)} at ${at} from the wall`;
  return `failed on test at ${show(capacity.ultimate ?? 0, 'N', system)}, factor ${capacity.factor ?? 1}, at ${at} from the wall`;
}
