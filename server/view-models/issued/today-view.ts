import { version } from '../../../calc/version.ts';
import { showUsed } from '../../../shared/quantity/index.ts';
import type { DifferingCheck, FrozenCheck, Today } from '../../issued/today.ts';
import { outcomeWords } from '../verdict.ts';

/** Whether the numbers would be the same today, in words. */
export interface TodayView {
  readonly said: string;
  /** Whether it is something to look into. */
  readonly isAlarming: boolean;
  readonly rows: readonly {
    readonly title: string;
    readonly then: string;
    readonly now: string;
    readonly by: string;
  }[];
  readonly hasRows: boolean;
  /** Where it is worked out on asking; empty where it was. */
  readonly askAddress: string;
}

/** Nobody asked, and the version is the same: nothing was worked out. */
export function notAsked(tool: string, askAddress: string): TodayView {
  return plain(`Worked out by version ${tool}, which is the one that runs here.`, askAddress);
}

/**
 * What came of working it out.
 *
 * @param tool version that worked it out when it was issued
 */
export function todayView(today: Today, tool: string): TodayView {
  const versions = tool === version ? `Version ${version}` : `Issued by version ${tool}; version ${version}`;
  switch (today.kind) {
    case 'same':
      return plain(`${versions} gives the same verdict and the same numbers today.`);
    case 'failed':
      return plain(`${versions} could not work it out just now. Load this page again in a while.`);
    case 'refused': {
      const reasons = today.errors.slice(0, 5).map(({ path, message }) => `${path} ${message}`.trim());
      return {
        ...plain(`${versions} does not take the frozen document any more: ${reasons.join(' ')}`),
        isAlarming: true,
      };
    }
    case 'differs': {
      const [then, now] = [outcomeWords(today.then).word, outcomeWords(today.now).word];
      const verdict =
        then === now
          ? `the same verdict, ${then}, with other numbers`
          : `another verdict: ${now}, not ${then}`;
      return {
        said: `${versions} gives ${verdict}.`,
        isAlarming: true,
        rows: today.checks.map(rowOf),
        hasRows: today.checks.length > 0,
        askAddress: '',
      };
    }
  }
}

function plain(said: string, askAddress = ''): TodayView {
  return { said, isAlarming: false, rows: [], hasRows: false, askAddress };
}

function rowOf({ title, then, now }: DifferingCheck): TodayView['rows'][number] {
  return { title, then: wordsOf(then), now: wordsOf(now), by: changeOf(then?.ratio, now?.ratio) };
}

function wordsOf(check: FrozenCheck | null): string {
  if (check === null) return 'Not checked';
  const { demand, capacity, ratio, outcome } = check;
  const used = ratio === null ? '' : `, ${showUsed(ratio)} used`;
  const amounts = `${demand?.shown ?? 'not known'} of ${capacity?.shown ?? 'not known'}`;
  return `${outcomeWords(outcome).word}${used}: ${amounts}`;
}

const least = 0.01;

/** By how much more or less of the limit is used, of what was used then. */
function changeOf(then: number | null | undefined, now: number | null | undefined): string {
  if (then === null || then === undefined || now === null || now === undefined || then === 0) return '';
  const change_percent = (now / then - 1) * 100;
  const amount = Math.abs(change_percent);
  const words = amount < least ? `under ${least} %` : `${Number(amount.toPrecision(3))} %`;
  return `${words} ${change_percent < 0 ? 'less' : 'more'}`;
}
