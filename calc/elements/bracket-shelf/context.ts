import type { Duration } from '../../../shared/check-document/index.ts';
import type { Combination, Material, Property, Resistance } from '../../codes/design-code.ts';
import { factorsOf, forcesOf, linesOf, type FactorOf, type Forces, type Lines } from './forces.ts';
import { modelOf, type Model, type Stiffness } from './model.ts';
import type { Shelf } from './shelf.ts';

/** One idea of how stiff the brackets are, solved. */
export interface Solved {
  readonly model: Model;
  readonly lines: Lines;
}

/** One combination on one idea of the brackets. */
export interface Situation {
  readonly combination: Combination;
  readonly factor: FactorOf;
  readonly solved: Solved;
  readonly forces: Forces;
}

/** Everything a check looks at. */
export interface Context {
  readonly shelf: Shelf;
  readonly solved: readonly [Solved, ...Solved[]];
  /** Every combination on every idea of the brackets, once for each that differs. */
  readonly situations: readonly [Situation, ...Situation[]];
  /** Everything that can be there, unfactored. */
  readonly service: readonly [Situation, ...Situation[]];
  resist(material: Material, property: Property, duration: Duration): Resistance;
}

/**
 * Solves a shelf for every combination.
 *
 * @param stiffnesses what the brackets may be as supports
 */
export function contextOf(shelf: Shelf, stiffnesses: readonly [Stiffness, ...Stiffness[]]): Context {
  const [first, ...others] = stiffnesses.map((stiffness): Solved => {
    const model = modelOf(shelf, stiffness);
    return { model, lines: linesOf(model) };
  });
  if (first === undefined) throw new RangeError('a shelf has at least one idea of its brackets');
  const solved: readonly [Solved, ...Solved[]] = [first, ...others];
  const combinations = shelf.code.combinations(shelf.actions.map(({ duration }) => duration));
  const situations = combinations.flatMap((combination) =>
    solved.map((each) => situationOf(each, combination)),
  );
  const [head, ...tail] = situations;
  const last = combinations[combinations.length - 1] ?? head?.combination;
  if (head === undefined || last === undefined)
    throw new RangeError('a code of practice has at least one combination');
  const resistances = new Map<string, Resistance>();
  return {
    shelf,
    solved,
    situations: [head, ...tail],
    service: [
      serviceOf(shelf, situations, first, last),
      ...others.map((each) => serviceOf(shelf, situations, each, last)),
    ],
    resist(material, property, duration) {
      const key = `${material.label} ${property} ${duration}`;
      const held = resistances.get(key) ?? material.resistance(property, duration);
      resistances.set(key, held);
      return held;
    },
  };
}

function situationOf(solved: Solved, combination: Combination): Situation {
  const factor = factorsOf(combination);
  return { combination, factor, solved, forces: forcesOf(solved.model, solved.lines, factor) };
}

/** Everything that can be there, unfactored: where a code puts no factors on loads, its last combination is just that. */
function serviceOf(
  shelf: Shelf,
  situations: readonly Situation[],
  solved: Solved,
  last: Combination,
): Situation {
  const same = situations.find(
    (situation) =>
      situation.solved === solved &&
      situation.combination === last &&
      [null, ...shelf.actions].every((action) => situation.factor(action) === 1),
  );
  const factor: FactorOf = () => 1;
  return same ?? { combination: last, factor, solved, forces: forcesOf(solved.model, solved.lines, factor) };
}
