import type { Step } from '../../../../shared/check-result.ts';
import { findMetal } from '../../../catalogue/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import * as steel from '../../../standards/aisc-360/steel-arm.ts';
import { armBetween, armInFront, armPull, couple } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context } from '../context.ts';
import type { Shelf } from '../shelf.ts';
import { atBracket, coupleOn, largestCouple, leverFromWall, worstCouple } from './reactions.ts';

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
  const turned = worstCouple(context);
  const base = {
    id: 'bracket',
    unit: 'Pa',
    where: atBracket(shelf, turned.index),
    combination: turned.combination,
  } as const;
  const F_y = metal.ok ? metal.row.yield_Pa : null;
  const E_s = metal.ok ? metal.row.modulusOfElasticity_Pa : null;
  if (!metal.ok || F_y === null || E_s === null || metal.row.kind !== 'steel') {
    const name = metal.ok ? metal.row.name : (capacity.metal ?? '');
    const note = `${name} is brittle or has no yield point in the tables: ask the maker for a rating, or test one.`;
    const parts = { ...base, title: 'Steel arm', demand: null, capacity: null, clause: 'AISC 360', note };
    return { check: makeCheck(parts, system), steps: [] };
  }
  const total = work(couple, { R: turned.reaction_N, e_R: turned.lever_m }, system);
  const { width: b, thickness: t, strut } = capacity;
  const allowed = allowedBending(
    { E_s, F_y, b, t, L_b: Math.max(shelf.arm_m - (strut?.at ?? 0), strut?.at ?? 0) },
    shelf,
  );
  if (strut === undefined) {
    const stress = work(steel.armStress, { M: total.value, N: 0, b, t }, system);
    const parts = {
      ...base,
      title: 'Bending of the steel arm',
      demand: stress.value,
      capacity: allowed.value_Pa,
      clause: 'AISC 360 F11',
    };
    return { check: makeCheck(parts, system), steps: [total.step, stress.step, ...allowed.steps] };
  }
  const arms = shelf.positions_m.map((_, index) => {
    const turn = coupleOn(context, index);
    const whole = work(couple, { R: turn.reaction_N, e_R: turn.lever_m }, system);
    const arm = armMoment(context, index, strut.at);
    const pull = work(armPull, { C: whole.value, h: strut.drop }, system);
    const stress = work(steel.armStress, { M: arm.value, N: pull.value, b, t }, system);
    const check = makeCheck(
      {
        ...base,
        title: 'Bending and pull of the steel arm',
        demand: stress.value,
        capacity: allowed.value_Pa,
        clause: 'AISC 360 H1, sum of stresses',
        where: atBracket(shelf, index),
        combination: turn.combination,
      },
      system,
    );
    return { check, steps: [whole.step, arm.step, pull.step, stress.step, ...allowed.steps] };
  });
  const length = Math.hypot(strut.at, strut.drop);
  const force = work(steel.strutForce, { C: total.value, L_d: length, s: strut.at, h: strut.drop }, system);
  const squeezed = work(steel.strutStress, { N_d: force.value, A_d: strut.width * strut.thickness }, system);
  const r_g = Math.min(strut.width, strut.thickness) / Math.sqrt(12);
  const F_e = work(steel.elasticBuckling, { E_s, L_d: length, r_g }, system);
  const held =
    F_y / F_e.value <= 2.25
      ? work(steel.inelasticStrut, { F_y, F_e: F_e.value }, system)
      : work(steel.elasticStrut, { F_e: F_e.value }, system);
  const strutCheck: Judged = {
    check: makeCheck(
      {
        ...base,
        title: 'Buckling of the strut',
        demand: squeezed.value,
        capacity: held.value,
        clause: 'AISC 360 E3',
      },
      system,
    ),
    steps: [total.step, force.step, squeezed.step, F_e.step, held.step],
  };
  return worstCheck([strutCheck, ...arms]);
}

/** A bar that stands on edge may turn over between the places that hold it. */
function allowedBending(
  { E_s, F_y, b, t, L_b }: Readonly<Record<'E_s' | 'F_y' | 'b' | 't' | 'L_b', number>>,
  { system }: Shelf,
): { readonly value_Pa: number; readonly steps: readonly Step[] } {
  if (t <= b) {
    const plain = work(steel.allowableSteelBending, { F_y }, system);
    return { value_Pa: plain.value, steps: [plain.step] };
  }
  const slenderness = work(steel.barSlenderness, { L_b, t, b }, system);
  const turned = work(steel.barOnEdge, { F_y, E_s, lambda_b: slenderness.value }, system);
  return { value_Pa: turned.value, steps: [slenderness.step, turned.step] };
}

/**
 * Moment in an arm on a strut, each load at its own lever: between wall and strut as on a beam (AISC Manual, Table 3-23,
 * case 8), in front of the strut as a cantilever. What is spread over the depth counts with the mean of these over the depth.
 * Loads on the other side of the strut would relieve it and are left out.
 */
function armMoment(context: Context, index: number, s: number): Worked {
  const { shelf, service } = context;
  const d = shelf.depth_m;
  const largest = (spread_m: (e: number) => number, lever_m: (e: number) => number) =>
    Math.max(
      ...service.map(({ solved, factor }) =>
        largestCouple(solved.model, solved.lines, factor, index, (action) =>
          Math.max(0, (action === null || action.spread ? spread_m : lever_m)(leverFromWall(shelf)(action))),
        ),
      ),
    );
  const between = largest(
    () => (s < d ? s ** 2 / (6 * d) : d / 2 - d ** 2 / (3 * s)),
    (e) => (e * (s - e)) / s,
  );
  // (d − s)² / 2d where the middle of it is at mid-depth; a strip along the front edge draws it forward.
  const inFront = largest(
    (e) => (s < d ? e - s + s ** 2 / (2 * d) : 0),
    (e) => e - s,
  );
  const R = Math.max(...service.map(({ forces }) => forces.reactionMax_N[index] ?? 0));
  return between >= inFront
    ? work(armBetween, { R, e_M: R === 0 ? 0 : between / R }, shelf.system)
    : work(armInFront, { R, e_M: inFront / R }, shelf.system);
}
