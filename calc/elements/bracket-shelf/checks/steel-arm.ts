import { show } from '../../../../shared/quantity/index.ts';
import { findFastener, findMetal } from '../../../catalogue/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import * as steel from '../../../standards/aisc-360/steel-arm.ts';
import { armInFront } from '../../bracket-formulas.ts';
import { holeOf } from '../../hole.ts';
import { makeCheck, worstCheck, type CheckParts } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { allowedBending, type Allowed, type SteelBar } from '../../steel-bar.ts';
import { boardScrewsOf } from '../board-screws.ts';
import type { Context } from '../context.ts';
import type { Shelf } from '../shelf.ts';
import { largestBeyond } from './arm-moment.ts';
import { armsOnStruts } from './arm-on-strut.ts';
import {
  atBracket,
  workCouple,
  largestTurn,
  turnByLoad,
  worstCouple,
  worstLiftingCouple,
} from './reactions.ts';

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
  const holes_m = holesIn(shelf);
  if (holes_m >= b) {
    const note = `The holes of the screws into the board, ${show(holes_m, 'm', system)} wide, leave nothing of a bar ${show(b, 'm', system)} wide: screw the board to something wider that is fixed to it.`;
    const parts = {
      ...base,
      title: 'Steel arm beside its holes',
      demand: F_y,
      capacity: 0,
      clause: 'AISC 360 F13',
      note,
    };
    return { check: makeCheck(parts, system), steps: [] };
  }
  if (strut !== undefined) return worstCheck(armsOnStruts(context, bar, strut, holes_m));
  const total = workCouple(context.shelf, turned);
  const allowed = allowedBending(bar, shelf.arm_m, system);
  const stress = work(steel.armStress, { M: total.value, N: 0, b, t }, system);
  const lifted = turned.isLifted ? ', lifted' : '';
  const parts = { ...base, capacity: allowed.value_Pa, clause: 'AISC 360 F11' } as const;
  const atWall: Judged = {
    check: makeCheck({ ...parts, title: `Bending of the steel arm${lifted}`, demand: stress.value }, system),
    steps: [total.step, stress.step, ...allowed.steps],
    byLoad: turnByLoad(shelf, turned),
  };
  return holes_m === 0 ? atWall : worstCheck([atWall, besideHole(context, bar, holes_m, parts, allowed)]);
}

/** The arm at the hole nearest the wall, where less of it is left. */
function besideHole(
  context: Context,
  { b, t }: SteelBar,
  holes_m: number,
  parts: Omit<CheckParts, 'title' | 'demand'>,
  allowed: Allowed,
): Judged {
  const { shelf } = context;
  const { system } = shelf;
  const x_m = boardScrewsOf(shelf).firstAt_m;
  const senses = shelf.hold === 'screwed' ? [false, true] : [false];
  const [first, ...rest] = shelf.positions_m.flatMap((_, index) =>
    senses.map((isLifted) => ({ index, isLifted, ...largestBeyond(context, { index, isLifted }, x_m) })),
  );
  if (first === undefined) throw new RangeError('a shelf has brackets');
  const worst = rest.reduce((most, each) => (each.couple_Nm > most.couple_Nm ? each : most), first);
  const moment = work(
    armInFront,
    { R: worst.reaction_N, e_M: worst.couple_Nm / worst.reaction_N },
    system,
    `moment in the arm at its first hole, ${show(x_m, 'm', system)} from the wall`,
  );
  const stress = work(
    steel.armStress,
    { M: moment.value, N: 0, b: b - holes_m, t },
    system,
    'stress in the arm beside the hole',
  );
  const check = makeCheck(
    {
      ...parts,
      title: `Bending of the steel arm beside a hole${worst.isLifted ? ', lifted' : ''}`,
      demand: stress.value,
      where: atBracket(shelf, worst.index),
      note: `What is left of the bar beside a hole of ${show(holes_m, 'm', system)} counts (holes 1/16 in wider than the screws: common practice, no source).`,
    },
    system,
  );
  return { check, steps: [moment.step, stress.step, ...allowed.steps] };
}

/** Width that the holes for the screws into the board take from a steel arm; none where the board only rests, or the screws do not pass the bar. */
function holesIn(shelf: Shelf): number {
  const { brackets } = shelf.document;
  if (shelf.hold !== 'screwed' || shelf.capacity.basis !== 'steel') return 0;
  const { fastener, atFirst } = boardScrewsOf(shelf);
  const besideBar = (brackets.armWidth ?? 0) > shelf.capacity.width + 1e-9;
  const found = findFastener(fastener);
  return besideBar ? 0 : atFirst * holeOf(found.ok ? found.row.diameter_m : null);
}
