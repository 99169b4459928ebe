import type { CheckResult, Outcome } from '../../shared/check-result.ts';

type Answered = Pick<CheckResult, 'element' | 'verdict' | 'remedies'>;

const noneFound: Readonly<Record<CheckResult['element'], string>> = {
  'bracket-shelf': 'None is known: no change that was tried helps.',
  'counter-overhang':
    'Props are tried under “What it wants under it”, on the page of the check. No other change was tried.',
  'counter-run': 'None was looked for: changes are tried of shelves and counter overhangs alone.',
  'wall-fixing': 'None was looked for: changes are tried of shelves and counter overhangs alone.',
};

/** Over what is offered: a way out is one of something that fails or can't be said. */
export function waysOutTitle({ verdict }: Answered): string {
  return verdict === 'holds' ? 'For more margin' : 'Ways out';
}

/** What is offered: margin where all holds, else changes that are enough, some that only help, or none; empty where none is wanted. */
export function waysOutLead({ element, verdict, remedies }: Answered): string {
  if (remedies.length === 0) return verdict === 'holds' ? '' : noneFound[element];
  if (verdict === 'holds')
    return 'All holds as it is, and nothing has to be changed. Each of these by itself leaves more margin; smallest change first, and every one was checked like this one.';
  if (remedies.every((remedy) => remedy.verdict !== 'holds'))
    return 'No change that was tried is enough. These help, each by itself; they were checked like this one.';
  return 'Each by itself, smallest change first; every one was checked like this one.';
}

const order = { holds: 0, 'cannot-say': 1, 'does-not-hold': 2 } as const;

/** What was tried as it is offered: what holds comes before what can't be vouched for. */
export function inOrder<Tried extends { readonly verdict: Outcome }>(tried: readonly Tried[]): Tried[] {
  return tried.toSorted((a, b) => order[a.verdict] - order[b.verdict]);
}
