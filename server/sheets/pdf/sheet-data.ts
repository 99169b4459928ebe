import type { Paper } from '../paper.ts';
import type { SheetModel } from '../../view-models/sheet.ts';
import type { SheetPicture, SheetSection, SheetStep, SheetTable } from '../../view-models/sheet-sections.ts';
import type { ProsePiece } from '../../view-models/sheet-prose.ts';
import { typstFormula } from './formula.ts';
import { breakable } from './printable.ts';

/**
 * Everything the template of a sheet takes, ready for JSON. Formulas are Typst's math markup, of our own making; all else
 * is text that the template sets as it stands.
 *
 * @param model the sheet, typeset as TeX
 */
export function sheetData(model: SheetModel, paper: Paper) {
  return {
    documentTitle: `${model.title}: calculation sheet`,
    title: breakable(model.title),
    authors: [model.preparedBy].filter((name) => name !== ''),
    paper: paper === 'letter' ? 'us-letter' : 'a4',
    fingerprint: model.fingerprint,
    tool: model.tool,
    block: [
      ['Date', model.date],
      ['Prepared by', model.preparedBy],
      ['Checked by', model.checkedBy],
      ['Code', model.code],
      ['Fingerprint', model.fingerprint],
    ],
    verdict: model.verdict.word,
    holds: model.verdict.holds,
    summary: model.summary,
    governing: model.governing.map((each) =>
      [
        `${each.title}, ${each.where}${each.hasRatio ? `, ${each.used} used` : ''}. ${each.clause}`,
        ...(each.hasCombination ? [each.combination] : []),
      ].join('; '),
    ),
    whole: model.whole.map(pictureData),
    cautions: model.cautions,
    checks: model.checks.map(({ title, demand, capacity, used, word, clause, governs, bar }) => ({
      ...{ title, demand, capacity, used, word, clause, governs },
      bar: onPaper(bar),
    })),
    warnings: model.warnings,
    notes: model.notes.map(({ title, note }) => ({ title, note })),
    reading: model.reading,
    sections: model.sections.map(sectionData),
    assumptions: model.assumptions,
    assumptionsNumber: model.assumptionsNumber,
    provenance: model.provenance,
    provenanceNumber: model.provenanceNumber,
    summaryNumber: model.summaryNumber,
    summaryTables: model.summaryTables.map(tableData),
  };
}

function sectionData({ number, title, pictures, statements, steps, tables, notes }: SheetSection) {
  return {
    ...{ number, title },
    pictures: pictures.map(pictureData),
    statements: statements.map(({ label, value, source }) => ({ label: proseData(label), value, source })),
    steps: steps.map(stepData),
    tables: tables.map(tableData),
    notes: notes.map(proseData),
  };
}

function stepData(step: SheetStep) {
  const { number, caption, source, hasNumbers, formulaWords, numbersWords, resultWords } = step;
  return {
    ...{ number, caption, source, hasNumbers, formulaWords, numbersWords, resultWords },
    symbol: typstFormula(step.symbol),
    symbolWords: texWords(step.symbol),
    formula: typstFormula(step.formula),
    numbers: hasNumbers ? typstFormula(step.numbers) : '',
    result: typstFormula(step.result),
  };
}

function tableData({ title, isShort, head, rows }: SheetTable) {
  return { title, isShort, head: head.map(proseData), rows };
}

function proseData(pieces: readonly ProsePiece[]) {
  return pieces.map(({ words, symbol }) => ({
    words,
    symbol: symbol === '' ? '' : typstFormula(symbol),
    symbolWords: texWords(symbol),
  }));
}

/** A symbol in TeX as somebody who can't see it reads it: `F_{b}'` is `F_b'`. */
function texWords(tex: string): string {
  return tex.replace(/\\(?:mathrm|mathit)|[{}\\]/g, '');
}

function pictureData({ wide, hasNarrow }: SheetPicture) {
  return { svg: onPaper(wide), words: wordsOf(wide), isWhole: hasNarrow };
}

/** Black ink, and the letters of the sheet. */
function onPaper(svg: string): string {
  return svg
    .replaceAll('"currentColor"', '"#000"')
    .replace('font-family="system-ui, sans-serif"', 'font-family="Libertinus Serif"')
    .replace('<svg class="ratio-bar"', '<svg xmlns="http://www.w3.org/2000/svg"');
}

/** Title and description of a drawing, as plain text. */
function wordsOf(svg: string): string {
  return [/<title>(.*?)<\/title>/s, /<desc>(.*?)<\/desc>/s]
    .map((pattern) => pattern.exec(svg)?.[1] ?? '')
    .join('. ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}
