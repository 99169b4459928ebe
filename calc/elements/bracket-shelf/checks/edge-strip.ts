import { show } from '../../../../shared/quantity/index.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context } from '../context.ts';
import { isOnLine } from '../edge-loads.ts';
import { EdgePlate } from '../edge-plate.ts';
import { worstOfParts } from './edge-strip-of-parts.ts';
import { worstOfPlain, type Bent } from './edge-strip-plain.ts';
import { atBracket } from './reactions.ts';
import type { BentParts } from './warped-bending.ts';

/**
 * Bending of a board where a load beside an edge, or on a spot of it, bends it: across the grain wood is so soft that a strip
 * along the load carries most of it. What the whole section has from everything, and above it what such loads do.
 */
export function edgeStripCheck(context: Context, bent: BentParts): Judged[] {
  const { board, actions, system } = context.shelf;
  const { plate } = board;
  if (plate === null || !actions.some(isOnLine)) return [];
  const edgePlate = new EdgePlate(plate, system);
  const [part] = board.parts;
  const worst =
    board.parts.length === 1 && part !== undefined
      ? worstOfPlain(context, edgePlate, part)
      : worstOfParts(context, edgePlate, plate, bent);
  return worst === null ? [] : [judge(context, edgePlate, worst)];
}

function judge(context: Context, plate: EdgePlate, { situation, part, excess, stress }: Bent): Judged {
  const { shelf } = context;
  const { system } = shelf;
  const { combination } = situation;
  const resistance = context.resist(part.material, 'bending', combination.duration);
  const lines = stress();
  const { at, half, edge } = excess;
  const place =
    'support' in at
      ? atBracket(shelf, at.support)
      : `between the brackets at ${show(at.from_m, 'm', system)} and ${show(at.to_m, 'm', system)}`;
  const isPlain = shelf.board.parts.length === 1;
  const strip = half === edge ? `the strip along the ${edge} edge` : `a strip in the ${half} half`;
  return {
    check: makeCheck(
      {
        id: 'edge-strip',
        title: `Bending of ${strip}${isPlain ? '' : `: ${part.name}`}`,
        unit: 'Pa',
        demand: lines.at(-1)?.value ?? null,
        capacity: resistance.ok ? resistance.value_Pa : null,
        clause: `${resistance.clause}; orthotropic plate, Levy`,
        where: `${half} ${half === edge ? 'edge' : 'half'}, ${place}`,
        combination: combination.name,
        note: resistance.ok
          ? `Across its grain a board is soft: what stands ${half === edge ? 'beside its edge' : 'on a spot'} is mostly carried by a strip along it.`
          : `Cannot say: ${resistance.why}.`,
      },
      system,
    ),
    steps: [
      ...plate.steps(),
      ...excess.parts.flatMap(({ steps }) => steps().map(({ step }) => step)),
      ...lines.map(({ step }) => step),
      ...(resistance.ok ? [resistance.step] : []),
    ],
  };
}
