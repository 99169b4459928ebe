import type { Check, CheckResult } from '../../shared/check-result.ts';
import { showUsed } from '../../shared/quantity/index.ts';
import { upperFirst } from '../../shared/words.ts';
import { tableValue } from './sheet-prose.ts';
import { outcomeWords, type OutcomeWords } from './verdict.ts';

/** One row of the table of checks. */
export interface SheetCheck extends OutcomeWords {
  readonly id: string;
  readonly title: string;
  readonly demand: string;
  readonly capacity: string;
  readonly used: string;
  readonly hasRatio: boolean;
  /** A small bar with a stroke at the full capacity; SVG. */
  readonly bar: string;
  readonly governs: boolean;
  readonly clause: string;
  /** The clause as a sentence begins. */
  readonly clauseBegun: string;
  readonly where: string;
  readonly combination: string;
  readonly hasCombination: boolean;
  readonly note: string;
  readonly hasNote: boolean;
}

const nothing = '–';

/** Every check, in the order of the calculation. */
export function sheetChecks(result: CheckResult): SheetCheck[] {
  return result.checks.map((check) => sheetCheck(check, check.id === result.governing));
}

function sheetCheck(check: Check, governs: boolean): SheetCheck {
  return {
    ...outcomeWords(check.outcome),
    id: check.id,
    title: check.title,
    demand: tableValue(check.demand?.shown ?? nothing),
    capacity: tableValue(check.capacity?.shown ?? nothing),
    used: check.ratio === null ? nothing : showUsed(check.ratio),
    hasRatio: check.ratio !== null,
    bar: check.ratio === null ? '' : ratioBar(check.ratio),
    governs,
    clause: check.clause,
    clauseBegun: upperFirst(check.clause),
    where: check.where,
    combination: check.combination,
    hasCombination: check.combination !== '',
    note: check.note,
    hasNote: check.note !== '',
  };
}

const full = 40;
const longest = 58;

function ratioBar(ratio: number): string {
  const length = Math.min(Math.max(ratio, 0) * full, longest);
  return (
    `<svg class="ratio-bar" viewBox="0 0 60 10" width="60" height="10" aria-hidden="true" focusable="false">` +
    `<rect x="0.5" y="2.5" width="${length.toFixed(1)}" height="5" fill="currentColor" fill-opacity="0.45" stroke="currentColor" stroke-width="0.7"/>` +
    `<line x1="${full + 0.5}" y1="0" x2="${full + 0.5}" y2="10" stroke="currentColor" stroke-width="1"/></svg>`
  );
}
