import { caution } from '../../../shared/cautions.ts';
import type { Proof } from '../../issued/issue.ts';
import type { IssueForm } from '../../issued/issue-form.ts';
import type { SheetNames } from '../../issued/frozen-document.ts';
import { revisionLetters } from '../../issued/revision-letters.ts';
import { paperOf } from '../../sheets/paper.ts';
import type { Check } from '../../store/checks.ts';
import type { IssuedSheet } from '../../store/issued.ts';
import type { Job } from '../../store/jobs.ts';
import type { TrailView } from '../check-page.ts';
import { jobFacts, type Fact } from '../jobs/job-facts.ts';
import { checkAddress, trailTo } from '../jobs/kept-check.ts';
import { pageFrame, type PageFrame } from '../page.ts';
import { outcomeWords, summaryAfterWord, type OutcomeWords } from '../verdict.ts';
import { issuedAddress, issuedList, sheetLabel, type IssuedList } from './issued-rows.ts';

interface IssueField {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly hint: string;
  readonly isDate: boolean;
  readonly error: string;
  readonly hasError: boolean;
}

/** Why nothing was issued yet, with what can be done about it. */
interface Objection {
  readonly said: string;
  /** The sheet that says the same; none otherwise. */
  readonly same: readonly { readonly address: string; readonly label: string; readonly revision: string }[];
}

export interface IssuePage extends PageFrame {
  readonly trail: TrailView;
  readonly heading: string;
  readonly action: string;
  readonly back: string;
  readonly token: string;
  readonly verdict: OutcomeWords;
  readonly summary: string;
  /** That it may be issued though it does not hold; one, or none where it holds. */
  readonly warnings: readonly string[];
  readonly firstCaution: string;
  readonly cautions: readonly string[];
  readonly fields: readonly IssueField[];
  readonly isLetter: boolean;
  readonly isA4: boolean;
  readonly job: readonly Fact[];
  readonly edition: string;
  readonly checkVersion: string;
  readonly jobVersion: string;
  readonly revision: string;
  readonly objections: readonly Objection[];
  readonly earlier: readonly IssuedList[];
  readonly supersedes: string;
}

const labels: Readonly<Record<keyof SheetNames, readonly [label: string, hint: string]>> = {
  title: ['Title', 'What the sheet is called'],
  preparedBy: ['Prepared by', ''],
  checkedBy: ['Checked by', 'Somebody else, where there is somebody'],
  date: ['Date', 'The day that is printed on it'],
};

const names = ['title', 'preparedBy', 'checkedBy', 'date'] as const;

/** What a page about issuing is made from. */
export interface IssueView {
  readonly job: Job;
  readonly check: Check;
  readonly proof: Proof;
  readonly form: IssueForm;
  readonly errors: ReadonlyMap<keyof SheetNames, string>;
  readonly issued: readonly IssuedSheet[];
  readonly token: string;
  /** Why nothing was issued; `same`: the newest revision says the same already. */
  readonly objection: 'none' | 'stale' | 'crowded' | 'same';
}

/** The page that says what will be frozen, and issues it. */
export function issuePage(view: IssueView): IssuePage {
  const { job, check, proof, form, errors, issued } = view;
  const { checked } = proof;
  const { result } = checked;
  const [newest] = issued;
  const revision = revisionLetters((newest?.revisionNumber ?? 0) + 1);
  const heading = `Issue sheet ${job.number}-${check.number}, revision ${revision}`;
  const paper = paperOf(form.paper, checked.document.units ?? 'inch-pound');
  const verdict = outcomeWords(result.verdict);
  return {
    ...pageFrame(heading),
    trail: trailTo(job, check),
    heading,
    action: `${checkAddress(check)}/issue`,
    back: checkAddress(check),
    token: view.token,
    verdict,
    summary: summaryAfterWord(result),
    warnings: verdict.holds ? [] : [unfavourable[result.verdict]],
    firstCaution: caution.aid,
    cautions: result.cautions,
    fields: names.map((name) => ({
      name,
      label: labels[name][0],
      hint: labels[name][1],
      value: form[name],
      isDate: name === 'date',
      error: errors.get(name) ?? '',
      hasError: errors.has(name),
    })),
    isLetter: paper === 'letter',
    isA4: paper === 'a4',
    job: [{ what: 'Job', said: `${job.number} · ${job.name}` }, ...jobFacts(job).filter(isOfTheJob)],
    edition: `${result.edition.code}; ${result.edition.tool}`,
    checkVersion: String(check.version),
    jobVersion: String(job.version),
    revision,
    objections: objectionsOf(view, newest),
    earlier: issuedList('Issued so far', issued),
    supersedes: newest === undefined ? '' : `It supersedes revision ${newest.revision}.`,
  };
}

const unfavourable = {
  holds: '',
  'does-not-hold':
    'This check does not hold. It can be issued all the same, as a record: “Does not hold” stands at the head of the sheet, in every list, and wherever its fingerprint is looked up.',
  'cannot-say':
    'It can’t be said whether this holds. It can be issued all the same, as a record: “Cannot say” stands at the head of the sheet, in every list, and wherever its fingerprint is looked up.',
} as const;

/** The people are fields of the form. */
function isOfTheJob({ what }: Fact): boolean {
  return what !== 'Prepared by' && what !== 'Checked by';
}

function objectionsOf({ objection, errors }: IssueView, newest: IssuedSheet | undefined): Objection[] {
  if (errors.size > 0) {
    const said = errors.size === 1 ? 'One thing is' : `${errors.size} things are`;
    return [{ said: `${said} to be put right. Nothing was issued.`, same: [] }];
  }
  if (objection === 'none') return [];
  if (objection !== 'same' || newest === undefined) {
    return [{ said: objection === 'crowded' ? crowded : stale, same: [] }];
  }
  const { revision, date } = newest;
  const said = `Revision ${revision} of ${date} says the same already: nothing changed but the day, if that. Nothing was issued.`;
  return [{ said, same: [{ address: issuedAddress(newest), label: sheetLabel(newest), revision }] }];
}

const stale =
  'The check or the words of its job were changed after this page was opened. Nothing was issued. What is shown now is how they stand: look it over, and issue it then.';
const crowded =
  'Others issued this check again and again at the same moment. Nothing was issued here. Look at what they issued, and try once more.';
