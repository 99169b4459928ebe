import { prepareBeam, solveSupports } from '../../mechanics/beam.ts';
import type { BeamLoad } from '../../mechanics/beam-model.ts';
import type { Context } from './context.ts';
import { beamOf, breaksOf, type Model } from './model.ts';
import type { Shelf } from './shelf.ts';

/** More sets of brackets than these are not worked out. */
const mostStates = 80;
/** Up to so many loads that may be absent, every choice of them is tried. */
const mostFreeTogether = 6;
/** Stands of a load that roams, in each bay from end to end. */
const standsInBay = 12;

/** The sets of brackets a resting board can come to stand on, other than all of them. */
export interface Standings {
  readonly states: readonly (readonly number[])[];
  /** Stiffness of a bracket the board is clear of, so small that it takes nothing, N/m. */
  readonly soft_Npm: number;
  /** False where there are more sets than can be worked out, or one could not be found. */
  readonly complete: boolean;
}

/** Which loads are there: a share of each part that is there or not as a whole, and one roaming load. */
interface Arrangement {
  readonly parts: readonly number[];
  /** Index into the stands; −1 where nothing roams. */
  readonly stand: number;
  readonly roaming_N: number;
}

/** What each part and each stand does over the brackets, on one set of them: up on the board, or sunk where it is clear. */
interface Solution {
  readonly standing: readonly boolean[];
  readonly parts: readonly Float64Array[];
  readonly stands: readonly Float64Array[];
}

/**
 * Goes through the arrangements of the loads and finds, for each, the one set of brackets that all push while the board is
 * clear of the others. On every set found it looks again which arrangement would lift each bracket of it most, or would
 * bring the board down onto each of the others, until nothing new comes up. What the board does changes steadily with
 * where a roaming load stands, so a set it stands on only between two neighbouring stands does hardly more than theirs.
 */
export function standings(context: Context): Standings {
  const { shelf, solved } = context;
  const [{ model }] = solved;
  const soft_Npm = shelf.board.EI_Nm2 / shelf.length_m ** 3 / 1e6;
  const tolerance_N = 1e-9 * (shelf.board.selfWeight_Npm * shelf.length_m);
  const search = searchOn(shelf, model, soft_Npm, tolerance_N);
  const bases = basesOf(context, model);
  const progress = { complete: true };
  const tryAll = (base: Base, patterns: Iterable<readonly number[]>): void => {
    for (const pattern of patterns) {
      for (const roaming_N of [0, ...base.roaming_N]) {
        const [from, to] = roaming_N === 0 ? [-1, 0] : [0, search.stands];
        for (let stand = from; stand < to && progress.complete; stand++) {
          progress.complete =
            search.settle({ parts: pattern, stand, roaming_N }) && search.found.size <= mostStates;
        }
      }
    }
  };
  for (const base of bases) tryAll(base, firstPatterns(base));
  const asked = new Set<string>();
  for (let looked = 0; looked < search.found.size && progress.complete; looked++) {
    const solution = [...search.found.values()][looked];
    if (solution === undefined) break;
    for (const base of bases) {
      if (base.free.length <= mostFreeTogether) continue;
      const patterns = turningPatterns(base, solution).filter((pattern) => {
        const key = [...pattern, 'roaming', ...base.roaming_N].join();
        const isNew = !asked.has(key);
        asked.add(key);
        return isNew;
      });
      tryAll(base, patterns);
    }
  }
  const count = shelf.positions_m.length;
  const states = [...search.found.values()]
    .map(({ standing }) => standing.flatMap((stands, index) => (stands ? [index] : [])))
    .filter((state) => state.length >= 2 && state.length < count);
  return { states, soft_Npm, complete: progress.complete };
}

/** One combination: what is there in any case, what may be there, and what may roam. */
interface Base {
  readonly always: readonly number[];
  /** Parts that may be absent, and their factors. */
  readonly free: readonly { readonly index: number; readonly factor: number }[];
  readonly roaming_N: readonly number[];
}

function basesOf({ situations, service }: Context, model: Model): Base[] {
  const bases = new Map<string, Base>();
  for (const { factor } of [...situations, ...service]) {
    const factors = model.cases.map(({ action }) => factor(action));
    const roaming_N = model.roaming
      .map(({ action, load_N }) => factor(action) * load_N)
      .filter((load_N, index, all) => load_N > 0 && all.indexOf(load_N) === index);
    bases.set([...factors, 'roaming', ...roaming_N].join(), {
      always: model.cases.map(({ always }, index) => (always ? (factors[index] ?? 0) : 0)),
      free: model.cases.flatMap(({ always }, index) => {
        const share = factors[index] ?? 0;
        return always || share === 0 ? [] : [{ index, factor: share }];
      }),
      roaming_N,
    });
  }
  return [...bases.values()];
}

function patternOf(base: Base, isThere: (position: number, index: number) => boolean): number[] {
  const pattern = [...base.always];
  base.free.forEach(({ index, factor }, position) => {
    if (isThere(position, index)) pattern[index] = factor;
  });
  return pattern;
}

/** Every choice of a few loads that may be absent; of many: none, all, each alone and all but each. */
function firstPatterns(base: Base): number[][] {
  const count = base.free.length;
  if (count <= mostFreeTogether) {
    return Array.from({ length: 2 ** count }, (_, bits) =>
      patternOf(base, (position) => ((bits >> position) & 1) === 1),
    );
  }
  return [
    patternOf(base, () => false),
    patternOf(base, () => true),
    ...base.free.flatMap((_, chosen) => [
      patternOf(base, (position) => position === chosen),
      patternOf(base, (position) => position !== chosen),
    ]),
  ];
}

/** For each bracket, what lifts the board there most and what presses it down most. */
function turningPatterns(base: Base, { standing, parts }: Solution): number[][] {
  return standing.flatMap((_, bracket) => [
    patternOf(base, (_, index) => (parts[index]?.[bracket] ?? 0) < 0),
    patternOf(base, (_, index) => (parts[index]?.[bracket] ?? 0) > 0),
  ]);
}

function searchOn(shelf: Shelf, model: Model, soft_Npm: number, tolerance_N: number) {
  const count = shelf.positions_m.length;
  const breaks = breaksOf(shelf.actions);
  const places = model.roaming.length === 0 ? [] : standsOf(model);
  const unitLoads = model.cases.map(({ load }) => load);
  const standLoads = places.map((at_m): BeamLoad => ({ lines: [], points: [{ at_m, load_N: 1 }] }));
  const solutions = new Map<string, Solution>();
  const found = new Map<string, Solution>();
  const solutionOf = (standing: readonly boolean[]): Solution => {
    const key = standing.join();
    const held = solutions.get(key);
    if (held !== undefined) return held;
    const stiffness = standing.map((stands) => (stands ? Infinity : soft_Npm));
    const prepared = prepareBeam(beamOf(shelf, stiffness), breaks);
    const solve = (load: BeamLoad): Float64Array => solveSupports(prepared, load).reactions_N;
    const solution = { standing, parts: unitLoads.map(solve), stands: standLoads.map(solve) };
    solutions.set(key, solution);
    return solution;
  };
  /** Brackets that pull although the board stands on them, or that the board sinks onto although it is clear of them. */
  const isWrong = (
    solution: Solution,
    { parts, stand, roaming_N }: Arrangement,
    bracket: number,
  ): boolean => {
    let reaction_N = stand < 0 ? 0 : roaming_N * (solution.stands[stand]?.[bracket] ?? 0);
    for (let i = 0; i < parts.length; i++) {
      reaction_N += (parts[i] ?? 0) * (solution.parts[i]?.[bracket] ?? 0);
    }
    return solution.standing[bracket] === true
      ? reaction_N < -tolerance_N
      : reaction_N / soft_Npm > 1e-9 * shelf.length_m;
  };
  const firstWrong = (solution: Solution, arrangement: Arrangement): number => {
    for (let bracket = 0; bracket < count; bracket++) {
      if (isWrong(solution, arrangement, bracket)) return bracket;
    }
    return -1;
  };
  let last: Solution | undefined;
  /** Finds the set of brackets under one arrangement; false where the search for it comes to no end. */
  const settle = (arrangement: Arrangement): boolean => {
    if (last !== undefined && firstWrong(last, arrangement) < 0) return true;
    for (const solution of found.values()) {
      if (firstWrong(solution, arrangement) < 0) {
        last = solution;
        return true;
      }
    }
    let solution = solutionOf(shelf.positions_m.map(() => true));
    for (let step = 0; step < 40 * count; step++) {
      const first = firstWrong(solution, arrangement);
      if (first < 0) {
        found.set(solution.standing.join(), solution);
        last = solution;
        return true;
      }
      // All that are wrong at once is quick but may go round in circles; the first alone never does (Murty's pivots).
      const before = solution;
      const together = step < 8;
      solution = solutionOf(
        before.standing.map((stands, bracket) =>
          (together ? isWrong(before, arrangement, bracket) : bracket === first) ? !stands : stands,
        ),
      );
    }
    return false;
  };
  return { found, settle, stands: places.length };
}

function standsOf(model: Model): number[] {
  return model.bays.flatMap(({ from_m, to_m }) =>
    Array.from({ length: standsInBay + 1 }, (_, i) => (from_m * (standsInBay - i) + to_m * i) / standsInBay),
  );
}
