import type { Check, Outcome } from '../../../shared/check-result.ts';
import type { Worked } from '../../formula/step.ts';
import type { Judged } from '../judged.ts';
import { verdictOf } from '../verdict.ts';
import { bearingCheck } from './checks/bearing.ts';
import { bendingCheck } from './checks/bending.ts';
import { boardScrewsCheck } from './checks/board-screws.ts';
import { boxSkinCheck } from './checks/box-skin.ts';
import { bracketCheck, bracketLiftCheck } from './checks/bracket.ts';
import { edgeStripCheck } from './checks/edge-strip.ts';
import { wallAnswer, type WallAnswer } from './checks/fixing.ts';
import { movementChecks } from './checks/movement.ts';
import { pastBracketCheck } from './checks/past-bracket.ts';
import { shearChecks } from './checks/shear.ts';
import { torsionCheck } from './checks/torsion.ts';
import { springOf } from './checks/steel-arm.ts';
import { tipEndwiseCheck, tipForwardCheck } from './checks/tipping.ts';
import { bentParts } from './checks/warped-bending.ts';
import { contextOf, type Context } from './context.ts';
import { liftOff } from './lift-off.ts';
import { movementsOf, type Movements } from './movements.ts';
import type { Shelf } from './shelf.ts';

/** A shelf judged by every check, without the calculation laid out. */
export interface Judgement {
  readonly context: Context;
  /** Stiffness of the steel arms, where they are of steel. */
  readonly spring: Worked | null;
  readonly movements: Movements;
  readonly wall: WallAnswer;
  readonly judged: readonly Judged[];
  readonly checks: readonly Check[];
  readonly verdict: Outcome;
  readonly governing: Check;
  /** Of brackets the board lifts off. */
  readonly warnings: readonly string[];
  /** Of the brackets a resting board stands on, where that can't be said. */
  readonly standing: readonly Judged[];
}

/** A shelf solved for its forces; its movements not yet. */
interface Solution {
  readonly context: Context;
  readonly spring: Worked | null;
  readonly warnings: readonly string[];
  /** Of the brackets a resting board stands on, where that can't be said. */
  readonly standing: readonly Judged[];
}

/** Every check of a shelf: all that its verdict rests on, and nothing that is only for reading. */
export function judgeShelf(shelf: Shelf): Judgement {
  const solution = solve(shelf);
  const movements = movementsOf(solution.context);
  const wall = wallAnswer(solution.context);
  const board = [
    ...strengthChecks(solution.context),
    ...movementChecks(solution.context, movements),
    ...bracketChecks(solution),
  ];
  return assemble(solution, movements, board, wall);
}

/**
 * The same shelf on other plates or screws, or on another wall: what does not touch the wall stays as it was judged.
 *
 * @param before the shelf as it was judged
 * @param shelf the shelf with nothing changed but `wall`, `brackets.plate` and `brackets.screws` of its document
 */
export function judgeOtherFixing(before: Judgement, shelf: Shelf): Judgement {
  const context = { ...before.context, shelf };
  const board = before.judged.filter((each) => !before.wall.judged.includes(each));
  return assemble({ ...before, context }, before.movements, board, wallAnswer(context));
}

/**
 * The same as `judgeShelf`, the cheap checks first, and given up with null as soon as one does not hold. A check that can't
 * say is no reason to give up.
 */
export function judgeUnlessItFails(shelf: Shelf): Judgement | null {
  const solution = solve(shelf);
  const { context } = solution;
  const onBrackets = bracketChecks(solution);
  if (anyFails(onBrackets)) return null;
  const strength = strengthChecks(context);
  if (anyFails(strength)) return null;
  const wall = wallAnswer(context);
  if (anyFails(wall.judged)) return null;
  const movements = movementsOf(context);
  const moving = movementChecks(context, movements);
  return anyFails(moving)
    ? null
    : assemble(solution, movements, [...strength, ...moving, ...onBrackets], wall);
}

function anyFails(judged: readonly Judged[]): boolean {
  return judged.some(({ check }) => check.outcome === 'does-not-hold');
}

function solve(shelf: Shelf): Solution {
  const spring = shelf.capacity.basis === 'steel' ? springOf(shelf, shelf.capacity) : null;
  const rigid = contextOf(shelf, spring === null ? [Infinity] : [Infinity, spring.value]);
  const { context, warnings, judged } = liftOff(rigid);
  return { context, spring, warnings, standing: judged };
}

/** The board itself. */
function strengthChecks(context: Context): Judged[] {
  const bent = bentParts(context);
  return [
    bendingCheck(context, bent),
    ...edgeStripCheck(context, bent),
    ...shearChecks(context),
    ...torsionCheck(context),
    bearingCheck(context),
    ...boxSkinCheck(context),
  ];
}

/** The brackets, and the board on them. */
function bracketChecks({ context, standing }: Solution): Judged[] {
  return [
    bracketCheck(context),
    ...bracketLiftCheck(context),
    ...boardScrewsCheck(context),
    ...tipForwardCheck(context),
    ...tipEndwiseCheck(context),
    ...pastBracketCheck(context),
    ...standing,
  ];
}

function assemble(
  solution: Solution,
  movements: Movements,
  board: readonly Judged[],
  wall: WallAnswer,
): Judgement {
  const judged = [...board, ...wall.judged];
  const checks = judged.map(({ check }) => check);
  return { ...solution, movements, wall, judged, checks, ...verdictOf(checks) };
}
