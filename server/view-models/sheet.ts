import type { ProvenanceValue } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import type { Checked } from '../check/answer-to.ts';
import type { Drawing } from '../drawings/index.ts';
import type { Paper } from '../sheets/paper.ts';
import type { Typesetter } from '../typeset/index.ts';
import type { DrawingView } from './drawing-views.ts';
import { picturesOf } from './pictures.ts';
import { sheetChecks, type SheetCheck } from './sheet-checks.ts';
import {
  sheetSections,
  sheetTable,
  type SheetPicture,
  type SheetSection,
  type SheetTable,
} from './sheet-sections.ts';
import { prosePieces, tableValue, type ProsePiece } from './sheet-prose.ts';
import {
  headAddress,
  plainHead,
  sheetFields,
  titleOf,
  type SheetField,
  type SheetHead,
} from './sheet-head.ts';
import { unbroken } from './unbroken.ts';
import { outcomeWords, summaryAfterWord, type OutcomeWords } from './verdict.ts';

/** Everything the sheet shows, on a page or on paper. Pictures are SVG; formulas and symbols are as the typesetter set them. */
export interface SheetModel {
  readonly title: string;
  readonly date: string;
  readonly preparedBy: string;
  /** What its head says: number and day, people, job, code, tool. */
  readonly fields: readonly SheetField[];
  /** What stands at the foot of every page of the file. */
  readonly foot: readonly string[];
  readonly isLetter: boolean;
  readonly isA4: boolean;
  readonly backAddress: string;
  readonly installerAddress: string;
  /** Whether there is an installer's sheet. */
  readonly hasInstaller: boolean;
  readonly pdfAddress: string;
  readonly letterAddress: string;
  readonly a4Address: string;
  readonly headAddress: string;
  readonly verdict: OutcomeWords;
  readonly summary: string;
  readonly governing: readonly SheetCheck[];
  readonly checks: readonly SheetCheck[];
  readonly notes: readonly { readonly title: string; readonly note: string }[];
  readonly hasNotes: boolean;
  /** The thing itself; none where nothing of it can be drawn. */
  readonly whole: readonly SheetPicture[];
  /** Whether it stands beside the cautions, so that the checks keep to the first page. */
  readonly isBeside: boolean;
  readonly sections: readonly SheetSection[];
  /** How to read the lines of working. */
  readonly reading: string;
  readonly warnings: readonly string[];
  readonly hasWarnings: boolean;
  readonly assumptions: readonly string[];
  readonly assumptionsNumber: string;
  readonly provenance: readonly (Omit<ProvenanceValue, 'source'> & {
    readonly source: readonly ProsePiece[];
  })[];
  readonly provenanceNumber: string;
  readonly summaryNumber: string;
  /** Whether it ends with a summary: where the calculation has none, that would only say the first page again. */
  readonly hasSummary: boolean;
  readonly summaryTables: readonly SheetTable[];
  readonly cautions: readonly string[];
}

/** What is known of a sheet besides the check itself. */
export interface SheetContext {
  readonly paper: Paper;
  readonly fingerprint: string;
  /** The check's own query, without `?`. */
  readonly query: string;
}

/** Puts a check, its drawings and its calculation into the words of the sheet. */
export function sheetModel(
  checked: Checked,
  typesetter: Typesetter,
  { paper, fingerprint, query }: SheetContext,
  head: SheetHead = plainHead(fingerprint),
): SheetModel {
  const { document, result } = checked;
  const title = titleOf(checked);
  const checks = sheetChecks(result);
  const pictures = picturesOf(checked);
  const sections = sheetSections(
    result.worksheet.sections,
    {
      section: pictures.section.map(across),
      analysis: pictures.diagrams.map(onPaper),
      fixings: pictures.detail.map(across),
    },
    typesetter,
  );
  const count = sections.length;
  return {
    title,
    date: document.date ?? '',
    preparedBy: document.preparedBy ?? '',
    fields: sheetFields(document, result.edition, head),
    foot: head.foot,
    isLetter: paper === 'letter',
    isA4: paper === 'a4',
    backAddress: `/check?${query}`,
    installerAddress: `/installer?${query}`,
    pdfAddress: `/sheet.pdf?${query}&paper=${paper}`,
    hasInstaller: checked.element === 'bracket-shelf',
    letterAddress: `/sheet?${query}&paper=letter`,
    a4Address: `/sheet?${query}&paper=a4`,
    headAddress: headAddress(title, fingerprint),
    verdict: outcomeWords(result.verdict),
    summary: unbroken(summaryAfterWord(result)),
    governing: checks.filter(({ governs }) => governs),
    checks,
    notes: checks.filter(({ hasNote }) => hasNote),
    hasNotes: checks.some(({ hasNote }) => hasNote),
    whole: pictures.whole.map(onPaper),
    isBeside: pictures.whole.some(({ isHalf }) => isHalf),
    sections,
    reading: readingWords[document.units ?? 'inch-pound'],
    warnings: result.warnings,
    hasWarnings: result.warnings.length > 0,
    assumptions: result.assumptions,
    assumptionsNumber: String(count + 1),
    provenance: result.provenance.values.map((each) => ({
      ...each,
      value: tableValue(each.value),
      source: prosePieces(each.source, typesetter),
    })),
    provenanceNumber: String(count + 2),
    summaryNumber: String(count + 3),
    hasSummary: result.worksheet.sections.some(({ id }) => id === 'summary'),
    summaryTables: result.worksheet.sections
      .filter(({ id }) => id === 'summary')
      .flatMap(({ tables }) => tables.map((table) => sheetTable(table, typesetter))),
    cautions: result.cautions,
  };
}

const rounded =
  'Printed numbers are rounded to four figures; the check counts with all of them, and each printed formula is the one that was counted with.';
const readingWords: Readonly<Record<UnitSystem, string>> = {
  'inch-pound': `Lines of working give the formula, the numbers put in, and the result. Numbers without a unit are in inches, pounds-force and what follows from them (lbf·in, psi, in²); a line that needs other units prints all of its units. ${rounded}`,
  metric: `Lines of working give the formula, the numbers put in, and the result. Numbers without a unit are in millimetres, newtons and what follows from them (N·mm, MPa, mm²); a line that needs other units prints all of its units. ${rounded}`,
};

/** A picture that is as wide as a phone and serves paper as it is. */
function across(drawing: Drawing): SheetPicture {
  return { wide: drawing.svg, narrow: '', hasNarrow: false };
}

function onPaper({ wide, narrow, isHalf }: DrawingView): SheetPicture {
  if (isHalf) return across(narrow);
  return { wide: wide.svg, narrow: narrow.svg, hasNarrow: true };
}
