import type { Duration, WallFixingDocument } from '../../../shared/check-document/index.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import type { DesignCode } from '../../codes/design-code.ts';
import { ndsAsd } from '../../codes/nds-asd/index.ts';
import { assumedConditions } from '../assumed-conditions.ts';
import type { Fixing } from '../fixing/fixing.ts';
import { readFixing } from '../fixing/read-fixing.ts';
import type { Acting, Standing } from '../fixing/standing.ts';
import { needsStuds, nearestStud, studLines } from '../fixing/studs.ts';

/** A load on the plate with every default filled in. */
export interface PlateLoad {
  readonly name: string;
  readonly duration: Duration;
  readonly shear_N: number;
  readonly pull_N: number;
  readonly couple_Nm: number;
}

/** A plate on a wall with every default filled in: what all checks look at. */
export interface PlateOnWall {
  readonly document: WallFixingDocument;
  readonly system: UnitSystem;
  readonly code: DesignCode;
  readonly fixing: Fixing;
  readonly loads: readonly PlateLoad[];
  readonly standing: Standing;
  /** Whether nobody gives its place among the studs, so that it is taken to stand on the centre line of one. */
  readonly isCentred: boolean;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Fills a wall fixing in, and says each thing that was not given as an assumption. */
export function readWallFixing(document: WallFixingDocument): PlateOnWall {
  const system = document.units ?? 'inch-pound';
  const { wall, position, plate, screws } = document;
  const code = ndsAsd;
  const { fixing, assumptions, warnings } = readFixing({ plate, screws }, wall, document.conditions, system);
  if (fixing === null) throw new RangeError('a wall fixing has a plate, screws and a wall');
  const loads = document.loads.map(loadOf);
  const lines = position === undefined ? [] : studLines(wall, position + farthestStud_m);
  const isCentred = needsStuds(wall) && (position === undefined || wall.studs === undefined);
  return {
    document,
    system,
    code,
    fixing,
    loads,
    isCentred,
    standing: {
      number: 1,
      where: 'at the highest screw',
      stud: position === undefined ? { stud_m: null, miss_m: null } : nearestStud(lines, position),
      acting: actingOn(loads, code),
    },
    assumptions: [
      ...assumedConditions(document.conditions),
      ...document.loads.flatMap(({ duration }, index) =>
        duration === undefined
          ? [`${loads[index]?.name ?? ''}: duration not given, taken as permanent.`]
          : [],
      ),
      ...(isCentred ? ['The plate stands on the centre line of a stud.'] : []),
      ...(loads.some(({ pull_N }) => pull_N > 0) ? ['A pull acts midway between the screws.'] : []),
      ...(plate.metal === undefined
        ? ['The plate is stiff and strong enough: where its metal is named, its bending is checked.']
        : []),
      ...assumptions,
    ],
    warnings,
  };
}

/** A stud beside the plate is never further away than the widest spacing. */
const farthestStud_m = 2;

function loadOf(load: WallFixingDocument['loads'][number], index: number): PlateLoad {
  return {
    name: load.name ?? `Load ${index + 1}`,
    duration: load.duration ?? 'permanent',
    shear_N: load.shear ?? 0,
    pull_N: load.pull ?? 0,
    couple_Nm: load.couple ?? 0,
  };
}

/** Every combination: with each load, all that lasts as long or longer. */
function actingOn(loads: readonly PlateLoad[], code: DesignCode): readonly [Acting, ...Acting[]] {
  const [first, ...rest] = combinationsOf(loads, code).map((combination): Acting => {
    const sum = (force: 'shear_N' | 'pull_N' | 'couple_Nm'): number =>
      loads.reduce((total, load) => total + combination.factor(load.duration) * load[force], 0);
    return {
      combination: combination.name,
      load: {
        shear_N: sum('shear_N'),
        pull_N: sum('pull_N'),
        couple_Nm: sum('couple_Nm'),
        duration: combination.duration,
        C_D: code.connectionDuration(combination.duration),
      },
    };
  });
  if (first === undefined) throw new RangeError('a wall fixing has at least one load');
  return [first, ...rest];
}

/** The combinations of a code in which something acts on the plate: it has no weight of its own. */
export function combinationsOf(loads: readonly PlateLoad[], code: DesignCode) {
  return code
    .combinations(loads.map(({ duration }) => duration))
    .filter((combination) => loads.some(({ duration }) => combination.factor(duration) > 0))
    .map((combination) => ({ ...combination, name: combination.name.replace(/^D \+ l/, 'L') }));
}
