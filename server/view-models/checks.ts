import type { Check, CheckResult, Step } from '../../shared/check-result.ts';
import type { Typesetter } from '../typeset/index.ts';
import { prosePieces, type ProsePiece } from './sheet-prose.ts';
import { unbroken } from './unbroken.ts';
import { outcomeWords, type OutcomeWords } from './verdict.ts';

/** One line of working; symbol, formula, numbers and result are MathML. */
interface StepView {
  readonly caption: readonly ProsePiece[];
  readonly symbol: string;
  readonly formula: string;
  readonly numbers: string;
  readonly hasNumbers: boolean;
  readonly result: string;
  readonly source: readonly ProsePiece[];
}

/** One check: a bar, and what is behind it. */
export interface CheckView extends OutcomeWords {
  readonly id: string;
  readonly title: string;
  /** "43 %"; the outcome where there is no ratio. */
  readonly used: string;
  readonly hasRatio: boolean;
  /** Of a movement, how much it is and may be, since a share of very little tells nothing by itself; empty elsewhere. */
  readonly amounts: string;
  /** Length of the bar in per cent of its box, in which the whole capacity is two thirds. */
  readonly length: string;
  readonly governs: boolean;
  readonly demand: string;
  readonly hasDemand: boolean;
  readonly capacity: string;
  readonly hasCapacity: boolean;
  readonly clause: string;
  readonly where: string;
  readonly hasWhere: boolean;
  readonly combination: string;
  readonly hasCombination: boolean;
  readonly note: string;
  readonly hasNote: boolean;
  /** Its lines of working: one list, or none where it has no lines, or where they are fetched when it is opened. */
  readonly working: readonly WorkingView[];
  /** Where they are fetched: one, or none. */
  readonly later: readonly LaterView[];
}

export interface WorkingView {
  readonly steps: readonly StepView[];
}

interface LaterView {
  readonly check: string;
}

/** Checks whose lines of working are sent along with the answer, by their ids; or all. */
export type Opened = readonly string[] | 'all';

const fullBar = 1.5;

/** The checks by how much is used, most first; a failure without a ratio comes before all, and what can't be said before what holds. */
export function checkViews(result: CheckResult, typesetter: Typesetter, opened: Opened): CheckView[] {
  return [...result.checks]
    .sort((a, b) => urgency(b) - urgency(a))
    .map((check) => checkView(check, result, typesetter, opened));
}

function urgency({ ratio, outcome }: Check): number {
  if (ratio !== null && outcome !== 'cannot-say') return ratio;
  return outcome === 'does-not-hold' ? Infinity : outcome === 'cannot-say' ? 1 : -1;
}

function checkView(check: Check, result: CheckResult, typesetter: Typesetter, opened: Opened): CheckView {
  const outcome = outcomeWords(check.outcome);
  const lines = linesOf(check, result);
  const isOpened = opened === 'all' || opened.includes(check.id);
  return {
    ...outcome,
    id: `check:${check.id}`,
    title: check.title,
    used: check.ratio === null ? outcome.word : percent(check.ratio),
    hasRatio: check.ratio !== null,
    amounts: amountsOf(check),
    length: check.ratio === null ? '0' : ((Math.min(check.ratio, fullBar) / fullBar) * 100).toFixed(1),
    governs: check.id === result.governing,
    demand: check.demand?.shown ?? '',
    hasDemand: check.demand !== null,
    capacity: check.capacity?.shown ?? '',
    hasCapacity: check.capacity !== null,
    clause: check.clause,
    where: check.where,
    hasWhere: check.where !== '',
    combination: check.combination,
    hasCombination: check.combination !== '',
    note: check.note,
    hasNote: check.note !== '',
    working: isOpened ? workingOf(lines, typesetter) : [],
    later: isOpened || lines.length === 0 ? [] : [{ check: check.id }],
  };
}

function amountsOf({ id, demand, capacity }: Check): string {
  if (!id.startsWith('deflection-') || demand === null || capacity === null) return '';
  return unbroken(`${demand.shown}; limit ${capacity.shown}`);
}

/** How much is used, so that a value over the whole never reads as the whole, nor one under it. */
export function percent(ratio: number): string {
  const rounded = Math.round(ratio * 100);
  if (rounded === 100 && ratio !== 1)
    return `${(ratio > 1 ? Math.ceil(ratio * 1e4) : Math.floor(ratio * 1e4)) / 100}\u00a0%`;
  return ratio > 99 ? 'over 9900\u00a0%' : `${rounded}\u00a0%`;
}

/** The lines of working of one check; none where there is no such check, or it has none. */
export function workingView(id: string, result: CheckResult, typesetter: Typesetter): WorkingView[] {
  const check = result.checks.find((each) => each.id === id);
  return check === undefined ? [] : workingOf(linesOf(check, result), typesetter);
}

function linesOf(check: Check, { worksheet }: CheckResult): Step[] {
  return worksheet.sections.filter((section) => section.check === check.id).flatMap(({ steps }) => steps);
}

function workingOf(lines: readonly Step[], typesetter: Typesetter): WorkingView[] {
  if (lines.length === 0) return [];
  const steps = lines.map((step) => {
    const set = typesetter.step(step);
    const caption = prosePieces(step.caption, typesetter);
    const source = prosePieces(step.source, typesetter);
    return { ...set, caption, hasNumbers: set.numbers !== '', source };
  });
  return [{ steps }];
}
