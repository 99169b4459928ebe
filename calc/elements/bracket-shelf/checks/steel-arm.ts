import { findMetal } from '../../../catalogue/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import * as steel from '../../../standards/aisc-360/steel-arm.ts';
import { couple } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { allowedBending, type SteelBar } from '../../steel-bar.ts';
import type { Context } from '../context.ts';
import type { Shelf } from '../shelf.ts';
import { armsOnStruts } from './arm-on-strut.ts';
import { atBracket, coupleWords, largestTurn, worstCouple, worstLiftingCouple } from './reactions.ts';

type Steel = Extract<Shelf['capacity'], { basis: 'steel' }>;

/** The metal of an arm; A36 where nothing is said. */
function metalOf(capacity: Steel) {
  return findMetal(capacity.metal ?? 'a36');
}

/** Stiffness of an arm as a spring under the board, N/m, with its line of working; null where the metal has none. */
export function springOf(shelf: Shelf, capacity: Steel): Worked | null {
  const metal = metalOf(capacity);
  const E_s = metal.ok ? metal.row.modulusOfElasticity_Pa : null;
  if (E_s === null) return null;
  const { width: b, thickness: t, strut } = capacity;
  if (strut === undefined)
    return work(steel.armSpring, { E_s, b, t, a: shelf.bearingLength_m }, shelf.system);
  const bars = { A_d: strut.width * strut.thickness, A_a: b * t };
  const shape = { L_d: Math.hypot(strut.at, strut.drop), h: strut.drop, s: strut.at };
  return work(steel.strutSpring, { E_s, ...shape, ...bars }, shelf.system);
}

/** A flat steel arm in bending, or an arm and strut as a two-bar frame. */
export function steelArmCheck(context: Context, capacity: Steel): Judged {
  const { shelf } = context;
  const { system } = shelf;
  const metal = metalOf(capacity);
  const F_y = metal.ok ? metal.row.yield_Pa : null;
  const E_s = metal.ok ? metal.row.modulusOfElasticity_Pa : null;
  const { width: b, thickness: t, strut } = capacity;
  const down = worstCouple(context);
  const turned = largestTurn([down, worstLiftingCouple(context) ?? down]);
  const base = {
    id: 'bracket',
    unit: 'Pa',
    where: atBracket(shelf, turned.index),
    combination: turned.combination,
  } as const;
  if (!metal.ok || F_y === null || E_s === null || metal.row.kind !== 'steel') {
    const name = metal.ok ? metal.row.name : (capacity.metal ?? '');
    const note = `${name} is brittle or has no yield point in the tables: ask the maker for a rating, or test one.`;
    const parts = { ...base, title: 'Steel arm', demand: null, capacity: null, clause: 'AISC 360', note };
    return { check: makeCheck(parts, system), steps: [] };
  }
  const bar: SteelBar = { E_s, F_y, b, t };
  if (strut !== undefined) return worstCheck(armsOnStruts(context, bar, strut));
  const total = work(couple, { R: turned.reaction_N, e_R: turned.lever_m }, system, coupleWords(turned));
  const allowed = allowedBending(bar, shelf.arm_m, system);
  const stress = work(steel.armStress, { M: total.value, N: 0, b, t }, system);
  const parts = {
    ...base,
    title: `Bending of the steel arm${turned.isLifted ? ', lifted' : ''}`,
    demand: stress.value,
    capacity: allowed.value_Pa,
    clause: 'AISC 360 F11',
  };
  return { check: makeCheck(parts, system), steps: [total.step, stress.step, ...allowed.steps] };
}
