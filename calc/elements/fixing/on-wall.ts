import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { FixingResult } from '../../../shared/check-result.ts';
import type { Judged } from '../judged.ts';
import { worstCheck } from '../make-check.ts';
import { blockingCheck, groundWarning } from './blocking.ts';
import { edgeCheck, isTooNarrow } from './edge.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import { fixingCheckOf, screwMetalCheck, toeBearingCheck, toeShare } from './fixing-checks.ts';
import { acrossStress_Pa, bendsAcross, plateAcross } from './plate-across.ts';
import { plateBending, type PlateMoment } from './plate-bending.ts';
import { screwPullOf } from './solve.ts';
import {
  holderOf,
  overDuration,
  resultOf,
  worstBy,
  type Held,
  type Standing,
  type Worst,
} from './standing.ts';
import { bendsStud, studBending, studMoment_Nm } from './stud-bending.ts';
import { needsStuds } from './studs.ts';
import { toeOf } from './toe.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

/** Plates of one kind on a wall. */
export interface OnWall {
  readonly fixing: Fixing;
  readonly wall: Wall;
  readonly standings: readonly [Standing, ...Standing[]];
  /** A plate whose place among the studs nobody gives stands on the centre line of one. */
  readonly isCentred: boolean;
  /** The metal of the plate and the moment in it; null where its bending is not to be checked. */
  readonly bent: {
    readonly metal: string;
    readonly moment: (load: FixingLoad) => PlateMoment;
    /** The moment alone, without its working. */
    readonly size: (load: FixingLoad) => number;
    /** Width of the arm at the upper end of the plate; null where what acts comes in at its middle. */
    readonly armWidth_m: number | null;
  } | null;
}

/** What the wall has to say: checks, a row for each plate, and what was assumed. */
export interface WallJudgement {
  readonly judged: readonly Judged[];
  readonly fixings: readonly FixingResult[];
  readonly held: readonly Held[];
  /** The one whose screws are used most. */
  readonly governing: Held;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Every check of plates on a wall; each takes the plate and the combination that is worst for it. */
export function judgeOnWall({ fixing, wall, standings, isCentred, bent }: OnWall): WallJudgement {
  const [first, ...rest] = standings;
  const hold = holderOf(fixing);
  const head = hold(first);
  const held: readonly [Held, ...Held[]] = [head, ...rest.map(hold)];
  const checked = (each: Held) => ({ each, ...fixingCheckOf(fixing, each.answer, each.load, placeOf(each)) });
  const worst = worstCheck([checked(head), ...held.slice(1).map(checked)]);
  const pullOn = (load: FixingLoad) => screwPullOf(fixing, load, toeOf(fixing, load));
  const pulled = worstBy(standings, (load) => {
    const { pull_N, why } = pullOn(load);
    return why === '' ? pull_N : Infinity;
  });
  const turned = worstBy(standings, (load) => toeShare(fixing, load, toeOf(fixing, load)));
  const stud = studOf(fixing, wall, standings);
  return {
    held,
    governing: worst.each,
    judged: [
      ...onStud(fixing, wall, held, isCentred),
      ...(wall.framing === 'blocking' ? [blockingCheck(fixing, wall, placeOf(worst.each))] : []),
      { check: worst.check, steps: worst.steps },
      ...screwMetalCheck(fixing, toeOf(fixing, pulled.load), pulled.load, placeOf(pulled)),
      ...toeBearingCheck(fixing, toeOf(fixing, turned.load), turned.load, placeOf(turned)),
      ...(bent === null ? [] : [bentPlate(fixing, bent, standings)]),
      ...(stud === null ? [] : [stud.judged]),
    ],
    fixings: held.map((each) => resultOf(each, fixing)),
    assumptions: stud === null ? [] : stud.assumptions,
    warnings: groundWarning(fixing, wall, standings),
  };
}

function placeOf({ standing, combination }: Worst) {
  return { where: standing.where, combination };
}

function onStud(
  fixing: Fixing,
  wall: Wall,
  [head, ...others]: readonly [Held, ...Held[]],
  isCentred: boolean,
): Judged[] {
  if (!needsStuds(wall) || (isCentred && !isTooNarrow(fixing, wall))) return [];
  const check = (each: Held): Judged => edgeCheck(fixing, wall, each);
  return [worstCheck([check(head), ...others.map(check)])];
}

function bentPlate(
  fixing: Fixing,
  { metal, moment, size, armWidth_m }: NonNullable<OnWall['bent']>,
  standings: OnWall['standings'],
): Judged {
  const worst = worstBy(standings, size);
  const along = plateBending(fixing, metal, moment(worst.load), armWidth_m, placeOf(worst));
  const arm_m = armWidth_m ?? 0;
  if (!bendsAcross(fixing, arm_m)) return along;
  const aside = worstBy(standings, (load) => acrossStress_Pa(fixing, arm_m, load));
  return worstCheck([along, plateAcross(fixing, metal, arm_m, aside.load, placeOf(aside))]);
}

function studOf(fixing: Fixing, wall: Wall, standings: OnWall['standings']) {
  if (!bendsStud(fixing, wall)) return null;
  const bent = worstBy(standings, (load) => overDuration(studMoment_Nm(fixing, wall, load), load));
  return studBending(fixing, wall, bent.load, placeOf(bent));
}
