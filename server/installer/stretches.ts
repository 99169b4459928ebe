import type { Action } from '../../calc/elements/bracket-shelf/shelf.ts';

/** A length of board over which the load is the same; m from the left end. */
export interface Stretch {
  readonly from_m: number;
  readonly to_m: number;
  readonly load_Npm: number;
}

const sameLoad_Npm = 1e-6;
const sameplace_m = 1e-6;

/** The whole board in stretches of equal load, line loads that lie over each other added up. */
export function stretchesOf(actions: readonly Action[], length_m: number): Stretch[] {
  const loads = actions.flatMap(({ load }) => (load.kind === 'line' ? [load] : []));
  const edges = [0, length_m, ...loads.flatMap(({ from_m, to_m }) => [from_m, to_m])]
    .toSorted((a, b) => a - b)
    .filter((edge, index, all) => index === 0 || edge - (all[index - 1] ?? 0) > sameplace_m);
  return edges.slice(1).reduce<Stretch[]>((stretches, to_m, index) => {
    const from_m = edges[index] ?? 0;
    const middle = (from_m + to_m) / 2;
    const load_Npm = loads.reduce(
      (sum, load) => sum + (load.from_m < middle && middle < load.to_m ? load.load_Npm : 0),
      0,
    );
    const last = stretches.at(-1);
    if (last === undefined || Math.abs(last.load_Npm - load_Npm) > sameLoad_Npm) {
      return [...stretches, { from_m, to_m, load_Npm }];
    }
    return [...stretches.slice(0, -1), { ...last, to_m }];
  }, []);
}
