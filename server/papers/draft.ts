import type { CheckResult } from '../../shared/check-result.ts';
import { cautions } from '../../shared/cautions.ts';
import { sentForm } from '../check/check-state.ts';
import { checkInPlace } from '../check/in-place.ts';
import { rememberAnswer } from '../check/known-answers.ts';
import { takesItsTime } from '../check/pace.ts';
import { elementNamed, textsOf, usualElement, written } from '../form/index.ts';
import type { Paper } from '../sheets/paper.ts';
import { paperInstaller } from '../sheets/pdf/paper-installer.ts';
import { paperSheet, verdictKind, type VerdictKind } from '../sheets/pdf/paper-sheet.ts';
import type { Printable } from '../sheets/pdf/printable.ts';
import { sheetOf, type AskedSheet } from '../sheets/sheet-of.ts';
import type { StandingWord } from '../store/tables.ts';
import type { Typesetter } from '../typeset/index.ts';
import { elementWords } from '../view-models/form/words.ts';
import { installerModel } from '../view-models/installer.ts';
import { sheetErrors } from '../view-models/sheet-page.ts';
import { sheetModel } from '../view-models/sheet.ts';

/** A check of a job that is to be drafted for paper. */
export interface DraftOrder {
  readonly form: string;
  /** As people call it: `12-3`. */
  readonly number: string;
  /** The newest sheet issued of it, in words; empty for none. */
  readonly issued: string;
  readonly paper: Paper;
  /** What came of the check, where that is known already. */
  readonly known: CheckResult | null;
}

/** A check as the table of all checks has it. */
export interface DraftRow {
  readonly number: string;
  readonly title: string;
  readonly word: string;
  readonly kind: VerdictKind;
  /** Title of what governs; empty for nothing. */
  readonly governs: string;
  readonly used: string;
  /** The newest sheet issued of it, in words; empty for none. */
  readonly issued: string;
}

/** A check drafted for paper. */
export interface Draft {
  readonly standing: StandingWord;
  readonly row: DraftRow;
  readonly cautions: readonly string[];
  /** Its pages, as JSON: they go on to the setter as they are. */
  readonly json: string;
}

/** What puts words and formulas into the terms of paper. */
export interface DraftTools {
  /** Sets formulas as TeX. */
  readonly typesetter: Typesetter;
  readonly printable: Printable;
}

/** Works a check out and puts it into the data of the paper: its calculation, and the page to the wall of a shelf. */
export function draftOf(order: DraftOrder, tools: DraftTools): Draft {
  const { form, paper, known } = order;
  const texts = textsOf(form);
  if (known !== null) rememberAnswer(sentForm(texts).reading.document, known);
  const state = checkInPlace(texts, false);
  const reading = sheetOf(state, paper);
  if (!reading.ok) return unfinished(order, sheetErrors(reading.errors, ''), tools);
  const { checked } = reading.sheet;
  if (known === null && takesItsTime(checked.document))
    rememberAnswer(state.reading.document, checked.result);
  return finished(reading.sheet, order, tools);
}

function finished(
  { checked, context }: AskedSheet,
  { number, issued }: DraftOrder,
  tools: DraftTools,
): Draft {
  const { words } = tools.printable;
  const model = sheetModel(checked, tools.typesetter, context);
  const [governing] = model.governing;
  const title = words(model.title);
  const installer = checked.element === 'bracket-shelf' ? installerOf(checked, context, tools) : null;
  const kind = verdictKind(model.verdict);
  return {
    standing: checked.result.verdict,
    row: {
      number,
      title,
      word: model.verdict.word,
      kind,
      governs: words(governing?.title ?? ''),
      used: words(governing?.used ?? ''),
      issued,
    },
    cautions: model.cautions.map(words),
    json: JSON.stringify({
      number: `Check ${number}`,
      sheet: {
        ...paperSheet(model, tools.printable),
        kind: `Check ${number}, calculation sheet`,
        title: `${number} ${title}`,
      },
      installer,
      unfinished: null,
    }),
  };
}

function installerOf(
  { document, result }: Extract<AskedSheet['checked'], { readonly element: 'bracket-shelf' }>,
  context: AskedSheet['context'],
  { printable }: DraftTools,
): object {
  const model = installerModel(document, result, context);
  return {
    ...paperInstaller(model, printable),
    bookmark: `Installer’s sheet: ${printable.words(model.title)}`,
  };
}

/** A check that can't be worked out yet has a page that says what is missing. */
function unfinished(
  { form, number, issued, paper }: DraftOrder,
  { errors }: ReturnType<typeof sheetErrors>,
  { printable: { words } }: DraftTools,
): Draft {
  const texts = textsOf(form);
  const element = elementNamed(written(texts, 'element')) ?? usualElement;
  const title = words(written(texts, 'title').trim() || elementWords[element]);
  const row = { number, title, word: 'Unfinished', kind: 'open', governs: '', used: '', issued } as const;
  return {
    standing: 'unfinished',
    row,
    cautions: cautions.map(words),
    json: JSON.stringify({
      number: `Check ${number}`,
      sheet: null,
      installer: null,
      unfinished: {
        isA4: paper === 'a4',
        kind: `Check ${number}, not worked out`,
        title: `${number} ${title}`,
        fields: [
          ['Kind of check', elementWords[element], true],
          ['Date', words(written(texts, 'date')), false],
          ['Prepared by', words(written(texts, 'preparedBy')), false],
          ['Checked by', words(written(texts, 'checkedBy')), false],
        ],
        word: row.word,
        summary:
          'It can’t be worked out until what is said below is put right, so nothing of it is known to hold.',
        errors: errors.map(({ path, message }) => ({ place: words(path), message: words(message) })),
        cautions: cautions.map(words),
      },
    }),
  };
}
