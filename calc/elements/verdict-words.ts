import { lowerFirst } from '../../shared/words.ts';
import type { Check, Outcome } from '../../shared/check-result.ts';
import { showUsed } from '../../shared/quantity/index.ts';

const words: Readonly<Record<Outcome, string>> = {
  holds: 'Holds',
  'does-not-hold': 'Does not hold',
  'cannot-say': 'Cannot say',
};

/** The verdict and what governs it, in one or two plain sentences. */
export function verdictWords(verdict: Outcome, governing: Check, checks: readonly Check[]): string {
  return `${words[verdict]}. ${whatGoverns(verdict, governing, checks)}`;
}

function whatGoverns(verdict: Outcome, governing: Check, checks: readonly Check[]): string {
  const title = lowerFirst(governing.title);
  if (verdict === 'does-not-hold') {
    const others = checks.filter((check) => check.outcome === 'does-not-hold').length - 1;
    const more =
      others === 0 ? '' : ` ${others === 1 ? 'One more check fails' : `${others} more checks fail`} too.`;
    const used =
      governing.ratio === null
        ? `${governing.title}: nothing there resists it, ${governing.where}.`
        : `${governing.title}: ${usedWords(governing)}, ${governing.where}.${limitWords(governing)}`;
    return `${used}${more}`;
  }
  if (verdict === 'holds')
    return `Most is asked of this: ${title}, ${usedWords(governing)}, ${governing.where}.${limitWords(governing)}`;
  const rest = checks.filter((check) => check.outcome === 'holds');
  const open = checks.length - rest.length - 1;
  const most = rest.reduce<Check | undefined>(
    (a, b) => (a === undefined || (b.ratio ?? 0) > (a.ratio ?? 0) ? b : a),
    undefined,
  );
  const why = governing.note === '' ? '' : ` ${governing.note}`;
  const more =
    open === 0 ? '' : ` ${open === 1 ? 'One more check' : `${open} more checks`} can't be answered either.`;
  const others =
    most === undefined
      ? ''
      : ` The other checks hold; the nearest to its limit is ${lowerFirst(most.title)}, at ${showUsed(most.ratio ?? 0)}.`;
  return `It turns on one thing: ${title}.${why}${more}${others}`;
}

/** How much is used; of a movement the movement and its limit too, since a share of very little tells nothing by itself. */
function usedWords(governing: Check): string {
  const { ratio, demand, capacity } = governing;
  const used = showUsed(ratio ?? 0);
  return isMovement(governing) && demand !== null && capacity !== null
    ? `${used} of what is allowed, ${demand.shown} where ${capacity.shown} may be`
    : `${used} of what is allowed`;
}

/** What the limit of a movement goes by, where that has to be said. */
function limitWords(governing: Check): string {
  return isMovement(governing) && governing.note !== '' ? ` ${governing.note}` : '';
}

function isMovement({ id }: Check): boolean {
  return id.startsWith('deflection-');
}
