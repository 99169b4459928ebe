import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { Check, CheckResult } from '../../shared/check-result.ts';
import { caution } from '../../shared/cautions.ts';
import { showUsed } from '../../shared/quantity/index.ts';
import { bracketDetail, settingOut } from '../drawings/index.ts';
import { jobOf } from '../installer/job.ts';
import { loadWords } from '../installer/load-words.ts';
import { workSteps } from '../installer/steps.ts';
import { outcomeWords, summaryAfterWord, type OutcomeWords } from './verdict.ts';
import type { SheetContext } from './sheet.ts';
import { unbroken } from './unbroken.ts';

/** What is told only where the check holds: how to put the shelf up, and what may stand on it. */
interface InstallerGo {
  readonly steps: readonly string[];
  readonly loads: readonly string[];
  readonly labelLimit: string;
  /** What the label says of the warnings; one line, or none. */
  readonly labelWarned: readonly string[];
}

/** What is told in its place where it doesn't: why not. */
interface InstallerStop {
  readonly reasons: readonly string[];
}

/** Everything the installer's sheet shows. `go` and `stop` hold one item between them. */
export interface InstallerModel {
  readonly title: string;
  readonly date: string;
  readonly hasDate: boolean;
  readonly fingerprint: string;
  readonly isLetter: boolean;
  readonly backAddress: string;
  readonly sheetAddress: string;
  readonly pdfAddress: string;
  readonly letterAddress: string;
  readonly a4Address: string;
  readonly verdict: OutcomeWords;
  readonly first: string;
  readonly warnings: readonly string[];
  readonly hasWarnings: boolean;
  readonly wide: string;
  readonly narrow: string;
  readonly details: readonly string[];
  readonly go: readonly InstallerGo[];
  readonly stop: readonly InstallerStop[];
  readonly cautions: readonly string[];
}

/** What whoever puts a shelf up has to know; the calculation sheet has all cautions, and the steps begin with one. */
const forInstallers: readonly string[] = [
  caution.aid,
  caution.onIt,
  'The calculation sheet has more cautions: read them first.',
];
const mostReasons = 5;

/** Puts a check into the words of the one page that goes to the wall. */
export function installerModel(
  document: BracketShelfDocument,
  result: CheckResult,
  { paper, fingerprint, query }: SheetContext,
): InstallerModel {
  const { verdict } = result;
  const detail = bracketDetail(document, result, 'big');
  return {
    title: document.title ?? 'Shelf on brackets',
    date: document.date ?? '',
    hasDate: document.date !== undefined,
    fingerprint,
    isLetter: paper === 'letter',
    backAddress: `/check?${query}`,
    sheetAddress: `/sheet?${query}`,
    pdfAddress: `/installer.pdf?${query}&paper=${paper}`,
    letterAddress: `/installer?${query}&paper=letter`,
    a4Address: `/installer?${query}&paper=a4`,
    verdict: outcomeWords(verdict),
    first: firstWords[verdict],
    warnings: result.warnings,
    hasWarnings: result.warnings.length > 0,
    wide: settingOut(document, result, 'wide').svg,
    narrow: settingOut(document, result, 'narrow').svg,
    details: detail === undefined ? [] : [detail.svg],
    go: verdict === 'holds' ? [goOf(document, result)] : [],
    stop: verdict === 'holds' ? [] : [{ reasons: reasonsOf(result) }],
    cautions: forInstallers,
  };
}

const firstWords: Readonly<Record<CheckResult['verdict'], string>> = {
  holds: 'As drawn, with no more on it than said here.',
  'does-not-hold': 'Do not put this shelf up.',
  'cannot-say': 'Do not put this shelf up: it has not been shown to hold.',
};

function goOf(document: BracketShelfDocument, { warnings }: CheckResult): InstallerGo {
  const { sentences, label } = loadWords(document);
  return {
    steps: workSteps(document, jobOf(document)).map(unbroken),
    loads: sentences.map(unbroken),
    labelLimit: unbroken(label),
    labelWarned: labelWarned(warnings.length),
  };
}

function labelWarned(count: number): string[] {
  if (count === 0) return [];
  return [
    count === 1
      ? 'One warning stands on the installer’s sheet.'
      : `${count} warnings stand on the installer’s sheet.`,
  ];
}

/** What keeps the check from holding: the summary, which names what governs, then the other checks. */
function reasonsOf(result: CheckResult): string[] {
  const open = result.checks
    .filter(({ id, outcome }) => outcome !== 'holds' && id !== result.governing)
    .map((check) => reasonOf(check));
  const more = open.length - mostReasons;
  const listed = open.slice(0, mostReasons);
  return [
    summaryAfterWord(result),
    ...listed,
    ...(more > 0 ? [`and ${more} more: see the calculation sheet.`] : []),
  ];
}

function reasonOf({ title, ratio, outcome }: Check): string {
  const used =
    ratio === null ? outcomeWords(outcome).word.toLowerCase() : `${showUsed(ratio)} of what is allowed`;
  return `${title}: ${used}.`;
}
