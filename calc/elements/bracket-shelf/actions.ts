import { inch, poundForce } from '../../../shared/quantity/index.ts';
import type { BracketShelfDocument, Duration } from '../../../shared/check-document/index.ts';
import type { Contents } from './contents.ts';
import type { Action } from './shelf.ts';

type Load = NonNullable<BracketShelfDocument['loads']>[number];

/** Contents where nothing is said: 20 lbf/ft, and a hand that leans with 50 lbf. Common practice, no source. */
const usualContents_Npm = (20 * poundForce) / (12 * inch);
const usualHand_N = 50 * poundForce;

const usualDuration: Readonly<Record<Load['kind'], Duration>> = {
  line: 'permanent',
  area: 'permanent',
  point: 'permanent',
  roaming: 'seven-days',
};

/** Actions from the document, or the usual ones where it names no loads. */
export function actionsOf(
  document: BracketShelfDocument,
  depth_m: number,
  contents: readonly (Contents | undefined)[],
): { readonly actions: readonly Action[]; readonly assumptions: readonly string[] } {
  const { loads, board } = document;
  if (loads !== undefined) {
    const assumptions: string[] = [];
    const actions = loads.map((load, index) =>
      action(load, index, board.length, depth_m, contents[index], assumptions),
    );
    return { actions, assumptions };
  }
  const middle = { eccentricity_m: depth_m / 2, spread: true } as const;
  return {
    actions: [
      {
        name: 'Contents',
        duration: 'permanent',
        free: true,
        sustained: 1,
        ...middle,
        load: { kind: 'line', from_m: 0, to_m: board.length, load_Npm: usualContents_Npm },
      },
      {
        name: 'Hand leaning',
        duration: 'seven-days',
        free: true,
        sustained: 0,
        eccentricity_m: depth_m,
        spread: false,
        load: { kind: 'roaming', load_N: usualHand_N },
      },
    ],
    assumptions: [
      'No loads were given: contents of 20 lbf/ft, permanent and free to come and go, and a hand leaning with 50 lbf anywhere along the front edge (common practice, no source).',
    ],
  };
}

function action(
  load: Load,
  index: number,
  length_m: number,
  depth_m: number,
  contents: Contents | undefined,
  assumptions: string[],
): Action {
  const name = load.name ?? `Load ${index + 1}`;
  const duration = load.duration ?? usualDuration[load.kind];
  if (load.duration === undefined) {
    assumptions.push(`${name}: duration not given, taken as ${duration.replace('-', ' ')}.`);
  }
  if (load.kind !== 'roaming' && load.arrangement === undefined) {
    assumptions.push(`${name}: taken to come and go${load.kind === 'point' ? '' : ', bay by bay'}.`);
  }
  const staysForYears = duration === 'permanent' || duration === 'ten-years';
  const given = load.kind === 'line' || load.kind === 'point' ? load.eccentricity : undefined;
  if (given === undefined && load.kind !== 'roaming') {
    assumptions.push(`${name}: spread evenly over the depth of the board, its middle at mid-depth.`);
  }
  return {
    name,
    duration,
    free: load.kind === 'roaming' || load.arrangement !== 'fixed',
    sustained: load.sustained ?? (staysForYears ? 1 : 0),
    eccentricity_m: load.kind === 'roaming' ? depth_m : (given ?? depth_m / 2),
    spread: load.kind !== 'roaming' && given === undefined,
    load: shape(load, length_m, depth_m, contents),
  };
}

function shape(
  load: Load,
  length_m: number,
  depth_m: number,
  contents: Contents | undefined,
): Action['load'] {
  if (load.kind === 'roaming') return { kind: 'roaming', load_N: load.amount };
  if (load.kind === 'point') {
    return {
      kind: 'point',
      at_m: Math.min(load.at, length_m),
      load_N: load.amount ?? contents?.total_N ?? 0,
    };
  }
  const from_m = load.from ?? 0;
  const to_m = Math.min(load.to ?? length_m, length_m);
  if (load.kind === 'area') return { kind: 'line', from_m, to_m, load_Npm: load.amount * depth_m };
  const total_N = load.total ?? contents?.total_N ?? 0;
  return { kind: 'line', from_m, to_m, load_Npm: load.amount ?? total_N / (to_m - from_m) };
}
