import type { Check, CheckResult, FieldError, Outcome, Remedy } from '../../shared/check-result.ts';
import { caution } from '../../shared/cautions.ts';
import { showUsed } from '../../shared/quantity/index.ts';
import { inOrder, waysOutLead, waysOutTitle } from '../check/ways-out-words.ts';
import { textTable } from './text-table.ts';

const words: Readonly<Record<Outcome, string>> = {
  holds: 'holds',
  'does-not-hold': 'does not hold',
  'cannot-say': 'cannot say',
};

const head = ['Check', 'Demand', 'Capacity', 'Used', 'Outcome', 'Clause'];
const numberColumns = new Set([1, 2, 3]);

/** The whole answer to one document as text. */
export function fullReport(result: CheckResult): string {
  const table = textTable([head, ...result.checks.map(row)], numberColumns);
  const notes = result.checks.filter(({ note }) => note !== '').map(({ id, note }) => `${id}: ${note}`);
  return [
    oneLine(result.summary),
    caution.aid,
    ...list('Warnings', result.warnings),
    '',
    ...table,
    ...waysOut(result),
    ...list('Notes', notes),
    ...list('Assumptions', result.assumptions),
    ...list('Cautions', result.cautions),
    '',
  ].join('\n');
}

/** The answer to one of several documents. */
export function lineReport(source: string, result: CheckResult): string {
  return `${oneLine(source)}: ${oneLine(result.summary)}\n`;
}

/** One line for each error: file, path, what the field takes. */
export function errorReport(source: string, errors: readonly FieldError[]): string {
  return errors
    .map(
      ({ path, message }) => `${[source, ...(path === '' ? [] : [path]), message].map(oneLine).join(': ')}\n`,
    )
    .join('');
}

/** Text as one line that can't steer a terminal: documents and file names may hold control characters. */
export function oneLine(text: string): string {
  return text.replace(/\s+/gu, ' ').replace(/\p{Cc}|\p{Bidi_Control}/gu, '\u{FFFD}');
}

function row(check: Check): string[] {
  return [
    `${check.title} (${check.id})`,
    check.demand?.shown ?? '-',
    check.capacity?.shown ?? '-',
    check.ratio === null ? '-' : showUsed(check.ratio),
    words[check.outcome],
    check.clause,
  ].map(oneLine);
}

/** The ways out, after what they are; none where none is wanted. */
function waysOut(result: CheckResult): string[] {
  const lead = waysOutLead(result);
  const changes = list(lead, inOrder(result.remedies).map(wayOut)).slice(1);
  return lead === '' ? [] : ['', waysOutTitle(result), ...(changes.length === 0 ? [lead] : changes)];
}

/** A change, and what comes of it. */
function wayOut({ what, verdict, governing }: Remedy): string {
  const used = governing.ratio === null ? '' : `, ${showUsed(governing.ratio)}`;
  const then = verdict === 'cannot-say' ? 'is not shown to hold' : words[verdict];
  return `${what} Then it ${then}: ${governing.title}${used}.`;
}

function list(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `- ${oneLine(line)}`)];
}
