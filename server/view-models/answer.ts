import type { Drawing } from '../drawings/index.ts';
import { fixingViews, type FixingsView } from './fixings.ts';
import type { CheckState } from '../check/check-state.ts';
import { fieldBehind, type Element } from '../form/index.ts';
import { caution, cautions } from '../../shared/cautions.ts';
import type { FieldError } from '../../shared/check-result.ts';
import type { Typesetter } from '../typeset/index.ts';
import { checkViews, type CheckView, type Opened } from './checks.ts';
import type { CheckForm } from './form/index.ts';
import { cautionInShort, outcomeWords, summaryAfterWord, type OutcomeWords } from './verdict.ts';
import type { DrawingView } from './drawing-views.ts';
import { picturesOf } from './pictures.ts';
import { unbroken } from './unbroken.ts';
import { waysOutView, type WaysOutView } from './ways-out.ts';

/** The verdict, as it stands large over the checks and small in the bar that is always in sight. */
interface VerdictView extends OutcomeWords {
  readonly sentence: string;
  readonly mostUsed: string;
  readonly announcement: string;
  readonly firstCaution: string;
  /** Why the word must not be read alone: one, or none. */
  readonly warned: readonly WarnedView[];
  /** What the small bar says beside the word. */
  readonly inShort: string;
}

/** Warnings beside the verdict: how many, and as many of them as are soon read. */
interface WarnedView {
  readonly count: string;
  readonly said: string;
  readonly link: string;
}

interface ResultView extends WaysOutView {
  readonly whole: readonly DrawingView[];
  readonly section: readonly Drawing[];
  readonly sectionTitle: string;
  readonly sectionSaid: string;
  readonly diagrams: readonly DrawingView[];
  readonly hasDiagrams: boolean;
  readonly diagramsTitle: string;
  /** Layouts and limits are worked out of a shelf alone. */
  readonly hasOutlooks: boolean;
  /** Props are looked for under a counter alone. */
  readonly hasProps: boolean;
  readonly checks: readonly CheckView[];
  /** One, or none where the fixing into the wall was not worked out. */
  readonly fixings: readonly FixingsView[];
  readonly warnings: readonly string[];
  readonly hasWarnings: boolean;
  readonly assumptions: readonly string[];
  readonly hasAssumptions: boolean;
  readonly edition: string;
}

interface ErrorView {
  readonly href: string;
  readonly field: string;
  readonly message: string;
}

/** What is wrong, with a link to each field; one list item, or none where all is well. */
interface ErrorsView {
  readonly title: string;
  readonly errors: readonly ErrorView[];
}

export interface AnswerView {
  readonly verdict: VerdictView;
  readonly results: readonly ResultView[];
  readonly problems: readonly ErrorsView[];
  readonly cautions: readonly string[];
  readonly links: LinksView;
  readonly notes: CheckForm['notes'];
}

/** Where the check goes from here. */
export interface LinksView {
  readonly hasAddress: boolean;
  readonly address: string;
  readonly sheet: string;
  readonly sheetPdf: string;
  readonly installer: string;
  readonly download: string;
  readonly canPrint: boolean;
  readonly canInstall: boolean;
  /** Where it is put in a job. */
  readonly keep: string;
  readonly canKeep: boolean;
}

const pictureWords: Readonly<
  Record<Element, Pick<ResultView, 'sectionTitle' | 'sectionSaid' | 'diagramsTitle'>>
> = {
  'bracket-shelf': {
    sectionTitle: 'Across the shelf',
    sectionSaid: 'Board, bracket, screws and wall from the side.',
    diagramsTitle: 'Movement, moment and shear',
  },
  'wall-fixing': { sectionTitle: '', sectionSaid: '', diagramsTitle: '' },
  'counter-run': { sectionTitle: '', sectionSaid: '', diagramsTitle: 'Over the panels' },
  'counter-overhang': {
    sectionTitle: 'Across the counter',
    sectionSaid: 'Top, base and what carries the overhang, from the side.',
    diagramsTitle: 'Over the top',
  },
};

/** The answer to a check as it is shown, whether there is a result or only errors. */
export function answerView(
  state: CheckState,
  form: CheckForm,
  typesetter: Typesetter,
  opened: Opened,
): AnswerView {
  const { answer } = state;
  const shared = { links: linksView(state), notes: form.notes };
  if (!answer.ok) {
    const count = answer.errors.length;
    const title = count === 1 ? 'One thing to put right' : `${count} things to put right`;
    return {
      ...shared,
      verdict: {
        ...outcomeWords('cannot-say'),
        word: 'Not checked',
        sentence: 'There is no answer until this is put right.',
        mostUsed: title,
        announcement: `Not checked. ${title}.`,
        firstCaution: caution.aid,
        warned: [],
        inShort: cautionInShort,
      },
      results: [],
      problems: [{ title, errors: answer.errors.map((error) => errorView(error, state, form)) }],
      cautions,
    };
  }
  const { result, document } = answer;
  const pictures = picturesOf(answer);
  const checks = checkViews(result, typesetter, opened);
  const most = checks.find(({ hasRatio }) => hasRatio);
  const mostUsed = most === undefined ? '' : `${most.used} ${most.title}`;
  const outcome = outcomeWords(result.verdict);
  return {
    ...shared,
    verdict: {
      ...outcome,
      sentence: unbroken(summaryAfterWord(result)),
      mostUsed,
      announcement: `${outcome.word}. ${mostUsed}.`,
      firstCaution: caution.aid,
      warned: warnedView(result.warnings),
      inShort: [...countOf(result.warnings), cautionInShort].join(' '),
    },
    results: [
      {
        whole: pictures.whole,
        section: pictures.section,
        diagrams: pictures.diagrams,
        hasDiagrams: pictures.diagrams.length > 0,
        ...pictureWords[answer.element],
        hasOutlooks: answer.element === 'bracket-shelf',
        hasProps: answer.element === 'counter-overhang',
        checks,
        fixings:
          document.element === 'counter-overhang' || document.element === 'counter-run'
            ? []
            : fixingViews(document, result, pictures.detail),
        ...waysOutView(result, state),
        warnings: result.warnings,
        hasWarnings: result.warnings.length > 0,
        assumptions: result.assumptions,
        hasAssumptions: result.assumptions.length > 0,
        edition: `${result.edition.code}; ${result.edition.tool}`,
      },
    ],
    problems: [],
    cautions: result.cautions,
  };
}

const soonRead = 320;

/** All warnings where they are short, else the first. */
function warnedView(warnings: readonly string[]): WarnedView[] {
  const all = warnings.join(' ');
  const [first = ''] = warnings;
  return countOf(warnings).map((count) => ({
    count,
    said: all.length <= soonRead ? all : first,
    link: warnings.length === 1 ? 'Its place in the list' : 'All warnings',
  }));
}

/** One count, or none where there is nothing to be warned of. */
function countOf({ length }: readonly string[]): string[] {
  if (length === 0) return [];
  return [length === 1 ? 'One warning.' : `${length} warnings.`];
}

function linksView({ query, isTooLong, answer }: CheckState): LinksView {
  return {
    hasAddress: !isTooLong,
    address: `/check?${query}`,
    sheet: `/sheet?${query}`,
    sheetPdf: `/sheet.pdf?${query}`,
    installer: `/installer?${query}`,
    download: `/document?${query}`,
    canPrint: answer.ok && !isTooLong,
    canInstall: answer.ok && answer.element === 'bracket-shelf',
    keep: `/keep?${query}`,
    canKeep: !isTooLong,
  };
}

function errorView({ path, message }: FieldError, state: CheckState, form: CheckForm): ErrorView {
  const name = fieldBehind(state.reading, path);
  const place = placeOf(name, form);
  return { href: `#${place.id}`, field: place.label, message };
}

/** The field behind an error; else the rows or the section it is about. */
function placeOf(name: string, form: CheckForm): { readonly id: string; readonly label: string } {
  const label = form.labels.get(name);
  if (label !== undefined) return { id: name, label };
  const section = form.sections.find(({ id }) => name === id || name.startsWith(`${id}.`));
  return section === undefined
    ? { id: 'form', label: 'This check' }
    : { id: `section:${section.id}`, label: section.title };
}
