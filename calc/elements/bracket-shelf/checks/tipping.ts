import { show } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { restoring } from '../../bracket-formulas.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context } from '../context.ts';
import type { Action } from '../shelf.ts';

/** Total of a load along the board, N. */
function total(action: Action, from_m: number, to_m: number): number {
  const { load } = action;
  if (load.kind === 'roaming') return load.load_N;
  if (load.kind === 'point') return load.at_m >= from_m && load.at_m <= to_m ? load.load_N : 0;
  return load.load_Npm * Math.max(0, Math.min(load.to_m, to_m) - Math.max(load.from_m, from_m));
}

/**
 * A board that only rests on its arms tips forward about their tips when the loads in front of them outweigh 0.6 of the
 * empty board behind them. Loads behind the tips would help; they may be gone.
 */
export function tipForwardCheck({ shelf, service }: Context): Judged[] {
  if (shelf.hold !== 'resting') return [];
  const { board, length_m, system } = shelf;
  const tip = shelf.bearingLength_m;
  const weight = board.selfWeight_Npm * length_m;
  const boardInFront = Math.max(0, weight * (board.weightAt_m - tip));
  let standing = 0;
  let roaming = 0;
  for (const action of shelf.actions) {
    const couple = total(action, 0, length_m) * Math.max(0, action.eccentricity_m - tip);
    if (action.load.kind === 'roaming') roaming = Math.max(roaming, couple);
    else standing += couple;
  }
  const held = work(restoring, { D: weight, a: tip, x_D: Math.min(board.weightAt_m, tip) }, system);
  const parts = {
    id: 'tip-forward',
    title: 'Tipping forward off the arms',
    unit: 'N.m',
    demand: boardInFront + standing + roaming,
    capacity: held.value,
    clause: 'equilibrium; ASCE 7 2.4.1, 0.6 D by analogy',
    where: `about the tips of the arms, ${show(tip, 'm', system)} from the wall`,
    combination: service[0].combination.name,
    note: 'The board only rests on its arms. Screwed to them it could not tip.',
  } as const;
  return [{ check: makeCheck(parts, system), steps: [held.step] }];
}

/**
 * A board that only rests on its brackets turns about its end bracket when what stands on the end outweighs 0.6 of the
 * empty board on the other side.
 */
export function tipEndwiseCheck({ shelf, service }: Context): Judged[] {
  if (shelf.hold !== 'resting') return [];
  const { board, length_m, system, positions_m } = shelf;
  const w = board.selfWeight_Npm;
  const sides = [
    { end: 'left', at: positions_m[0] ?? 0, from: 0, to: positions_m[0] ?? 0 },
    {
      end: 'right',
      at: positions_m[positions_m.length - 1] ?? 0,
      from: positions_m[positions_m.length - 1] ?? 0,
      to: length_m,
    },
  ];
  const judged = sides.map(({ end, at, from, to }): Judged => {
    const lever = (x: number): number => Math.max(0, end === 'left' ? at - x : x - at);
    let standing = (w * (to - from) ** 2) / 2;
    let roaming = 0;
    for (const action of shelf.actions) {
      const { load } = action;
      if (load.kind === 'roaming') roaming = Math.max(roaming, load.load_N * (to - from));
      else if (load.kind === 'point') standing += load.load_N * lever(load.at_m);
      else {
        const [a, b] = [Math.max(load.from_m, from), Math.min(load.to_m, to)];
        if (b > a) standing += load.load_Npm * (b - a) * lever((a + b) / 2);
      }
    }
    const rest = length_m - (to - from);
    const held = work(
      restoring,
      { D: w * rest, a: rest / 2, x_D: 0 },
      system,
      'what holds the board down on the far side, counted at 0.6',
    );
    const parts = {
      id: 'lift-off',
      title: `Turning up about the bracket nearest the ${end} end`,
      unit: 'N.m',
      demand: standing + roaming,
      capacity: held.value,
      clause: 'equilibrium; ASCE 7 2.4.1, 0.6 D by analogy',
      where: `about the bracket at ${show(at, 'm', system)}`,
      combination: service[0].combination.name,
      note: 'The board only rests on its brackets. Screwed to them it could not lift.',
    } as const;
    return { check: makeCheck(parts, system), steps: [held.step] };
  });
  return judged.sort((a, b) => (b.check.ratio ?? Infinity) - (a.check.ratio ?? Infinity)).slice(0, 1);
}
