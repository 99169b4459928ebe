import type { ProsePiece } from '../../view-models/sheet-prose.ts';
import type { SheetCheck } from '../../view-models/sheet-checks.ts';
import type { SheetPicture, SheetSection, SheetStep, SheetTable } from '../../view-models/sheet-sections.ts';
import type { SheetModel } from '../../view-models/sheet.ts';
import type { OutcomeWords } from '../../view-models/verdict.ts';
import type { Printable } from './printable.ts';
import { roomBetweenMargins_pt, sharesOf } from './columns.ts';
import { printDrawing, type PrintDrawing } from './print-drawing.ts';

/** A formula in TeX; the worker that sets the paper turns it into its own notation. No user text is ever in one. */
export interface PaperFormula {
  readonly tex: string;
  readonly words: string;
}

type Words = Printable['words'];

/**
 * The sheet's view model as data for the paper: the same words in the same order.
 *
 * @param model the sheet, its formulas in TeX
 * @param printable fits text to the font
 */
export function paperSheet(model: SheetModel, printable: Printable): object {
  const { words } = printable;
  const room_pt = roomBetweenMargins_pt(model.isA4);
  return {
    isA4: model.isA4,
    kind: 'Calculation sheet',
    title: words(model.title),
    date: words(model.date),
    foot: model.foot.map(words),
    authors: model.preparedBy === '' ? [] : [words(model.preparedBy)],
    fields: model.fields.map(({ name, value, isWide }) => [name, words(value), isWide]),
    verdict: { word: model.verdict.word, kind: verdictKind(model.verdict) },
    summary: words(model.summary),
    governing: model.governing.map((each) => words(governs(each))),
    checks: model.checks.map((check) => paperCheck(check, words)),
    notes: model.notes.map(({ title, note }) => ({ title: words(title), note: words(note) })),
    whole: model.whole.map((each) => paperPicture(each, printable)),
    isBeside: model.isBeside,
    sections: model.sections.map((section) => paperSection(section, printable, room_pt)),
    reading: words(model.reading),
    warnings: model.warnings.map(words),
    assumptions: model.assumptions.map(words),
    assumptionsNumber: model.assumptionsNumber,
    provenance: model.provenance.map(({ what, value, source, provenance }) => ({
      what: words(what),
      value: words(value),
      source: paperProse(source, words),
      provenance: words(provenance),
    })),
    provenanceNumber: model.provenanceNumber,
    hasSummary: model.hasSummary,
    summaryNumber: model.summaryNumber,
    summaryTables: model.summaryTables.map((table) => paperTable(table, printable, room_pt)),
    cautions: model.cautions.map(words),
  };
}

/** What stands beside a verdict on paper. */
export type VerdictKind = 'holds' | 'fails' | 'open';

export function verdictKind({ fails, cannotSay }: OutcomeWords): VerdictKind {
  if (fails) return 'fails';
  return cannotSay ? 'open' : 'holds';
}

function governs({
  title,
  where,
  hasRatio,
  used,
  clauseBegun,
  hasCombination,
  combination,
}: SheetCheck): string {
  const share = hasRatio ? `, ${used} used` : '';
  const under = hasCombination ? `; ${combination}` : '';
  return `What governs: ${title}${where === '' ? '' : `, ${where}`}${share}. ${clauseBegun}${under}.`;
}

function paperCheck(check: SheetCheck, words: Words): object {
  const { demand, capacity, used, governs: isWorst, holds, word } = check;
  return {
    title: words(check.title),
    demand: words(demand),
    capacity: words(capacity),
    used: words(used),
    bar: check.hasRatio ? printDrawing(check.bar).svg : null,
    governs: isWorst,
    holds,
    word,
    clause: words(check.clause),
  };
}

function paperSection(section: SheetSection, printable: Printable, room_pt: number): object {
  const { words } = printable;
  return {
    number: section.number,
    title: words(section.title),
    pictures: section.pictures.map((each) => paperPicture(each, printable)),
    statements: section.statements.map(({ label, value, source }) => ({
      label: paperProse(label, words),
      value: words(value),
      source: paperProse(source, words),
    })),
    steps: section.steps.map((step) => paperStep(step, words)),
    tables: section.tables.map((table) => paperTable(table, printable, room_pt)),
    notes: section.notes.map((note) => paperProse(note, words)),
  };
}

function paperPicture(
  picture: SheetPicture,
  { drawn }: Printable,
): PrintDrawing & { readonly isNarrow: boolean } {
  const { svg, words: alternative } = printDrawing(picture.wide);
  return { svg: drawn(svg), words: drawn(alternative), isNarrow: !picture.hasNarrow };
}

function paperTable(
  { title, isShort, head, rows }: SheetTable,
  printable: Printable,
  room_pt: number,
): object {
  const { words } = printable;
  const table = {
    title: words(title),
    isShort,
    head: head.map((pieces) => paperProse(pieces, words)),
    rows: rows.map((row) => row.map(words)),
  };
  return { ...table, shares: sharesOf(head, table.rows, printable, room_pt) };
}

function paperProse(pieces: readonly ProsePiece[], words: Words): object[] {
  return pieces.map((piece) => ({
    words: words(piece.words),
    symbol: piece.symbol === '' ? null : formula(piece.symbol, piece.symbol),
  }));
}

function paperStep(step: SheetStep, words: Words): object {
  const sides = [
    formula(step.formula, step.formulaWords),
    ...(step.hasNumbers ? [formula(step.numbers, step.numbersWords)] : []),
    formula(step.result, step.resultWords),
  ];
  return {
    number: step.number,
    caption: paperProse(step.caption, words),
    symbol: formula(step.symbol, step.symbol),
    sides,
    isLong: step.isLong,
    source: paperProse(step.source, words),
  };
}

function formula(tex: string, words: string): PaperFormula {
  return { tex, words };
}
