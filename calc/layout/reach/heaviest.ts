import type { ReachLimit } from '../../../shared/check-result.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { quantity, unitOfKind, writeLength, writeLoadDown } from '../../../shared/quantity/index.ts';
import type { Shelf } from '../../elements/bracket-shelf/shelf.ts';
import { usualLoad } from '../remedies/contents.ts';
import { tryShelf, type Subject } from '../subject.ts';
import { largestThatHolds } from './boundary.ts';
import { holds, limitAt, noLimit, notAsked } from './limit.ts';
import { widestBay } from './widest-bay.ts';

type LoadInput = NonNullable<BracketShelfInput['loads']>[number];

/** The most that the field of a load takes, N/m and N, and what is next to nothing. */
const most = 50_000;
const least = 0.5;
const permanent = { duration: 'permanent', arrangement: 'free', sustained: 1 } as const;

/** The heaviest line load along the whole board, in place of the line and area loads that are there. */
export function heaviestLine(subject: Subject): ReachLimit {
  const { input, shelf } = subject;
  const basis =
    'A load along the whole board, there for years, free to come and go bay by bay, spread evenly over the depth, in place of the line and area loads of this check; everything else as it is.';
  const others = loadsOf(subject).filter(({ kind }) => kind !== 'line' && kind !== 'area');
  const withLine = (amount: string): BracketShelfInput => ({
    ...input,
    loads: [{ name: 'Contents', kind: 'line', amount, ...permanent }, ...others],
  });
  const start = shelf.actions.reduce((sum, { load }) => sum + (load.kind === 'line' ? load.load_Npm : 0), 0);
  return heaviest(shelf, withLine, { kind: 'line-load', basis, start: start > 0 ? start : 100 });
}

/** The heaviest single thing in the middle of the widest bay, beside everything that is there. */
export function heaviestPoint(subject: Subject): ReachLimit {
  const { input, shelf } = subject;
  const bay = widestBay(shelf);
  const at = writeLength((bay.from_m + bay.to_m) / 2, shelf.system);
  const basis = `A load in the middle of the widest bay, at ${quantity(at.value, 'm', shelf.system).shown}, there for years, its weight at mid-depth, beside everything on this check.`;
  const withPoint = (amount: string): BracketShelfInput => ({
    ...input,
    loads: [{ name: 'Heavy thing', kind: 'point', amount, at: at.text, ...permanent }, ...loadsOf(subject)],
  });
  return heaviest(shelf, withPoint, { kind: 'force', basis, start: 100 });
}

/** The loads as they were written, or those that were assumed, written out. */
function loadsOf({ input, shelf }: Subject): readonly LoadInput[] {
  return input.loads ?? shelf.actions.map(usualLoad);
}

/** The largest amount of the first load of a check at which all holds. */
function heaviest(
  { system }: Shelf,
  withAmount: (amount: string) => BracketShelfInput,
  asked: { readonly kind: 'line-load' | 'force'; readonly basis: string; readonly start: number },
): ReachLimit {
  const { kind, basis, start } = asked;
  const unit = unitOfKind[kind];
  const base = tryShelf(withAmount(`1 ${unit}`));
  if (base === null) return notAsked(basis, 'This check has no room for one more load.');
  const nothing = withFirst(base, 0);
  if (!holds(nothing)) return noLimit(nothing, basis, 'even with none of it');
  const found = largestThatHolds((amount) => holds(withFirst(base, amount)), { least, start, most });
  if (found === null) return noLimit(withFirst(base, least), basis, 'with more than next to nothing');
  const written = writeLoadDown(found, kind, system);
  return limitAt(withAmount(written.text), {
    basis,
    value: quantity(written.value, unit, system),
    reason: found >= most ? 'It holds as much as the field of a load takes.' : '',
  });
}

/** The shelf with another amount of its first load. */
function withFirst(shelf: Shelf, amount: number): Shelf {
  const actions = shelf.actions.map((action, index) => {
    const { load } = action;
    if (index > 0 || load.kind === 'roaming') return action;
    return {
      ...action,
      load: load.kind === 'line' ? { ...load, load_Npm: amount } : { ...load, load_N: amount },
    };
  });
  return { ...shelf, actions };
}
