import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import type { CounterOverhangResult, ReachLimit } from '../../../shared/check-result.ts';
import { inch, quantity, show, type UnitSystem, writeLength } from '../../../shared/quantity/index.ts';
import { governingOf } from '../ranking.ts';
import { tryCounter, type Counter } from './subject.ts';

const least_m = 0.03;

/**
 * How far the top could stand out on the stool side with nothing under it: found by trying depths on the true checks, to
 * the half inch or 10 mm, and checked whole at the depth that is given.
 */
export function unaidedOverhang({ input, document }: Counter, system: UnitSystem): ReachLimit {
  const step = system === 'metric' ? 0.01 : 0.5 * inch;
  const { front } = document.base;
  const basis =
    'The top cut back or made deeper on the stool side, on the same base, with no props; everything else as it is.';
  const withOut = (steps: number): CounterOverhangInput => ({
    ...input,
    top: { ...input.top, depth: writeLength(front + steps * step, system).text },
    props: [],
  });
  const tried = new Map<number, CounterOverhangResult | null>();
  const at = (steps: number): CounterOverhangResult | null => {
    const held = tried.get(steps) ?? tryCounter(withOut(steps));
    tried.set(steps, held);
    return held;
  };
  const holds = (steps: number): boolean => at(steps)?.verdict === 'holds';
  let low = Math.ceil(least_m / step);
  let high = Math.floor(Math.min(front, 2.4 - front) / step);
  const none = (reason: string): ReachLimit => ({
    value: null,
    reason,
    basis,
    governing: null,
    document: null,
  });
  if (high <= low) return none('There is no room on this base to look in.');
  if (!holds(low)) {
    const found = at(low);
    const check = found?.checks.find(({ id }) => id === found.governing);
    return none(
      check === undefined
        ? 'No check can be made of it.'
        : `Not even a short one can be vouched for: ${check.title}.${check.note === '' ? '' : ` ${check.note}`}`,
    );
  }
  const isEndless = holds(high);
  if (isEndless) low = high;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  const here = at(low);
  const governing = here?.checks.find(({ id }) => id === here.governing);
  return {
    value: quantity(low * step, 'm', system),
    reason: isEndless
      ? 'It holds as far out as the base is deep; nothing longer was tried.'
      : stoppedBy(at(high), high * step, system),
    basis,
    governing: governing === undefined ? null : governingOf({ governing }),
    document: withOut(low),
  };
}

/** What stops it at the next step out. */
function stoppedBy(found: CounterOverhangResult | null, out_m: number, system: UnitSystem): string {
  const check = found?.checks.find(({ id }) => id === found.governing);
  if (check === undefined) return '';
  const stands = check.outcome === 'does-not-hold' ? 'does not hold' : 'cannot be vouched for';
  return `At ${show(out_m, 'm', system)} it ${stands}: ${check.title}.`;
}
