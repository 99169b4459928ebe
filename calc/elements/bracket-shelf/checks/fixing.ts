import type { FixingResult, Table } from '../../../../shared/check-result.ts';
import type { Fixing, FixingLoad } from '../../fixing/fixing.ts';
import { legBending } from '../../fixing/leg-bending.ts';
import { judgeOnWall, type OnWall } from '../../fixing/on-wall.ts';
import type { PlateMoment } from '../../fixing/plate-bending.ts';
import { readFixing } from '../../fixing/read-fixing.ts';
import { tableOf, type Acting, type Standing } from '../../fixing/standing.ts';
import { nearestStud, studLines } from '../../fixing/studs.ts';
import type { Judged } from '../../judged.ts';
import { makeCheck } from '../../make-check.ts';
import type { Context, Situation } from '../context.ts';
import type { Shelf } from '../shelf.ts';
import {
  atBracket,
  largestCouple,
  largestReaction,
  leastCouple_Nm,
  leverFromWall,
  smallestCouple,
} from './reactions.ts';

/** Everything the wall has to say: checks, a row for each bracket, and what was assumed. */
export interface WallAnswer {
  readonly judged: readonly Judged[];
  readonly fixings: readonly FixingResult[];
  readonly tables: readonly Table[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  /** Null where plate, screws or wall are not given. */
  readonly fixing: Fixing | null;
}

/** The fixing of every bracket into the wall. */
export function wallAnswer(context: Context): WallAnswer {
  const { shelf } = context;
  const { brackets, wall, conditions } = shelf.document;
  const { fixing, assumptions, warnings } = readFixing(brackets, wall, conditions, shelf.system);
  const [first, ...rest] = standingsOf(context);
  if (fixing === null || wall === undefined || first === undefined) {
    return {
      judged: [notGiven(context)],
      fixings: [],
      tables: [],
      assumptions: [],
      warnings: [],
      fixing: null,
    };
  }
  const leg = legOf(shelf, fixing);
  const standings = [first, ...rest] as const;
  const isLifted = standings.some(({ acting }) => acting.some(({ load }) => load.isLifted === true));
  const answer = judgeOnWall({
    fixing,
    wall,
    standings: [first, ...rest],
    isCentred: false,
    bent: leg.bent,
  });
  const title = 'Fixing of every bracket; pull and shear are those of its highest screw';
  const whereLifted = isLifted ? ', or of its lowest where the couple is below 0 and lifts the arm' : '';
  return {
    judged: answer.judged,
    fixings: answer.fixings,
    tables: [tableOf(answer.fixings, 'Bracket', `${title}${whereLifted}`)],
    assumptions: [...assumptions, ...(isLifted ? [lifted] : []), ...leg.assumptions, ...answer.assumptions],
    warnings: [...warnings, ...answer.warnings],
    fixing,
  };
}

const lifted =
  'A bracket that is pulled up presses the upper end of its plate against the wall, and the plate turns about that end: the wall has to be as solid there.';

/**
 * Every bracket with what acts on it: its load and the largest couple in each combination, and the couple the other way
 * where the board is screwed down and can lift an arm. The largest shear goes with both, though they need not meet.
 */
function standingsOf({ shelf, situations }: Context): Standing[] {
  const lines = studLines(shelf.document.wall, shelf.length_m);
  const lever = leverFromWall(shelf);
  const actingOn = (
    index: number,
    { solved: { model, lines: influence }, factor, forces, combination }: Situation,
  ): readonly [Acting, ...Acting[]] => {
    const down_Nm = largestCouple(model, influence, factor, index, lever);
    const up_Nm = shelf.hold === 'screwed' ? -smallestCouple(model, influence, factor, index, lever) : 0;
    const load: FixingLoad = {
      shear_N: Math.max(forces.reactionMax_N[index] ?? 0, -(forces.reactionMin_N[index] ?? 0)),
      pull_N: 0,
      couple_Nm: Math.max(0, down_Nm),
      duration: combination.duration,
      C_D: shelf.code.connectionDuration(combination.duration),
    };
    const acting = { combination: combination.name, load };
    if (up_Nm <= leastCouple_Nm) return [acting];
    return [acting, { ...acting, load: { ...load, couple_Nm: up_Nm, isLifted: true } }];
  };
  const [head, ...others] = situations;
  return shelf.positions_m.map((at_m, index) => ({
    number: index + 1,
    where: atBracket(shelf, index),
    stud: nearestStud(lines, at_m),
    acting: [...actingOn(index, head), ...others.flatMap((each) => actingOn(index, each))],
  }));
}

/** The leg of a bracket against the wall: bent by the whole couple, or with a strut by the pulls of arm and screws. */
function legOf(
  shelf: Shelf,
  fixing: Fixing,
): { readonly bent: OnWall['bent']; readonly assumptions: readonly string[] } {
  const { capacity, document } = shelf;
  const steel = capacity.basis === 'steel' ? (capacity.metal ?? 'a36') : undefined;
  const metal = document.brackets.plate?.metal ?? steel;
  if (metal === undefined) {
    return { bent: null, assumptions: ['The plate of a bracket counts as part of what was rated.'] };
  }
  const strut = capacity.basis === 'steel' ? capacity.strut : undefined;
  const bars_m =
    capacity.basis === 'steel' ? [capacity.width, ...(strut === undefined ? [] : [strut.width])] : [];
  const armWidth_m = Math.min(shelf.armWidth_m, ...bars_m);
  if (strut === undefined) {
    return {
      bent: {
        metal,
        armWidth_m,
        size: ({ couple_Nm }) => couple_Nm,
        moment: ({ couple_Nm }) => ({ value_Nm: couple_Nm, steps: [] }),
      },
      assumptions: ['The plate is bent by the whole couple, from the arm down to its highest screws.'],
    };
  }
  const moment = (load: FixingLoad): PlateMoment => legBending(fixing, load, strut.drop);
  return {
    bent: { metal, armWidth_m, size: (load) => moment(load).value_Nm, moment },
    assumptions: ['The arm of a bracket with a strut pulls at the upper end of its plate.'],
  };
}

function notGiven({ shelf, service }: Context): Judged {
  const { wall, brackets } = shelf.document;
  const heaviest = largestReaction(service);
  const missing = [
    ...(wall === undefined ? ['what the wall is made of'] : []),
    ...(brackets.plate === undefined ? ['the size of the bracket plate'] : []),
    ...(brackets.screws === undefined ? ['the screws'] : []),
  ];
  const parts = {
    id: 'fixing',
    title: 'Screws into the wall',
    unit: 'N',
    demand: heaviest.weighted,
    capacity: null,
    clause: 'NDS chapter 12',
    where: atBracket(shelf, heaviest.index),
    combination: heaviest.situation.combination.name,
    note: `Not given: ${missing.join(', ')}. The fixing into the wall is not checked.`,
  } as const;
  return { check: makeCheck(parts, shelf.system), steps: [] };
}
