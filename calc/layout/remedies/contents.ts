import { show, writeLoadDown, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import type { Action, Shelf } from '../../elements/bracket-shelf/shelf.ts';
import { effortOf, type Change, type Trouble } from './change.ts';

type LoadInput = NonNullable<BracketShelfInput['loads']>[number];

/** A share of the contents above which taking a little off the shelf is the smallest change of all. */
const aLittle = 0.9;

/** The shelf with less on it: every load but those that roam, times a share. */
export function withShare(shelf: Shelf, share: number): Shelf {
  const lighter = ({ load }: Action): Action['load'] => {
    if (load.kind === 'line') return { ...load, load_Npm: load.load_Npm * share };
    return load.kind === 'point' ? { ...load, load_N: load.load_N * share } : load;
  };
  return { ...shelf, actions: shelf.actions.map((action) => ({ ...action, load: lighter(action) })) };
}

/** The change that leaves a share of the contents on the shelf. */
export function lighterContents({ input, shelf }: Trouble, share: number): Change {
  const changed = shelf.actions.map((action, index) =>
    lighterLoad(input.loads?.[index] ?? usualLoad(action), action, share, shelf),
  );
  const amounts = changed.flatMap((load, index) => {
    const name = shelf.actions[index]?.name ?? '';
    return load.kind === 'roaming' ? [] : [`${name} ${shownAmount(shelf, index, share)}`];
  });
  const what = `No more than ${Math.round(share * 100)} % of the contents: ${amounts.join('; ')}.`;
  const effort = share >= aLittle - 1e-9 ? 0 : effortOf['lighter-contents'];
  return { kind: 'lighter-contents', what, effort, input: { ...input, loads: changed } };
}

function lighterLoad(
  load: LoadInput,
  { load: acting }: Action,
  share: number,
  { system, depth_m }: Shelf,
): LoadInput {
  if (load.kind === 'roaming') return load;
  if (load.kind === 'area') {
    const pressure = acting.kind === 'line' ? acting.load_Npm / depth_m : 0;
    return { ...load, amount: writeLoadDown(pressure * share, 'area-load', system).text };
  }
  const others = withoutWeight(load);
  return load.kind === 'line'
    ? { ...others, kind: 'line', amount: lineAmount(acting, share, system) }
    : { ...others, kind: 'point', at: load.at, amount: pointAmount(acting, share, system) };
}

/** A load without what it weighs, however that is given. */
export function withoutWeight<Load extends Weighed>({ amount: _, ...load }: Load) {
  return withoutTotal(withoutThings(load));
}

interface Weighed {
  readonly amount?: unknown;
  readonly things?: unknown;
  readonly total?: unknown;
}

const withoutThings = <Load extends Weighed>({ things: _, ...load }: Load) => load;
const withoutTotal = <Load extends Weighed>({ total: _, ...load }: Load) => load;

function lineAmount(acting: Action['load'], share: number, system: UnitSystem): string {
  return writeLoadDown(acting.kind === 'line' ? acting.load_Npm * share : 0, 'line-load', system).text;
}

function pointAmount(acting: Action['load'], share: number, system: UnitSystem): string {
  return writeLoadDown(acting.kind === 'point' ? acting.load_N * share : 0, 'force', system).text;
}

function shownAmount({ actions, system }: Shelf, index: number, share: number): string {
  const load = actions[index]?.load;
  if (load?.kind === 'line') return show(load.load_Npm * share, 'N/m', system);
  return load?.kind === 'point' ? show(load.load_N * share, 'N', system) : '';
}

/** A load that was assumed, written out, so that it can be made lighter. */
export function usualLoad({ name, duration, sustained, load }: Action): LoadInput {
  if (load.kind === 'line') {
    const amount = writeLoadDown(load.load_Npm, 'line-load', 'inch-pound').text;
    return { name, kind: 'line', amount, duration, sustained, arrangement: 'free' };
  }
  const force = writeLoadDown(load.load_N, 'force', 'inch-pound').text;
  return load.kind === 'point'
    ? { name, kind: 'point', amount: force, at: `${load.at_m} m`, duration, sustained }
    : { name, kind: 'roaming', amount: force, duration, sustained };
}
