import type { Section, SectionId, Step, Table } from '../../shared/check-result.ts';
import type { Typesetter } from '../typeset/index.ts';
import { prosePieces, tableValue, type ProsePiece } from './sheet-prose.ts';

/** One line of working; symbol, formula, numbers and result are as the typesetter set them. */
export interface SheetStep {
  readonly number: string;
  readonly caption: readonly ProsePiece[];
  readonly symbol: string;
  readonly formula: string;
  readonly numbers: string;
  readonly hasNumbers: boolean;
  /** Too long to stand beside its caption. */
  readonly isLong: boolean;
  readonly result: string;
  /** Formula, numbers and result once more as plain text, for whoever can't see them set. */
  readonly formulaWords: string;
  readonly numbersWords: string;
  readonly resultWords: string;
  readonly source: readonly ProsePiece[];
}

export interface SheetTable {
  readonly title: string;
  readonly hasTitle: boolean;
  /** Short enough to be kept on one page. */
  readonly isShort: boolean;
  readonly head: readonly (readonly ProsePiece[])[];
  readonly rows: readonly (readonly string[])[];
}

/** A picture on the sheet; one that has a second layout for phones carries it too. SVG of our own making. */
export interface SheetPicture {
  readonly wide: string;
  readonly narrow: string;
  readonly hasNarrow: boolean;
}

/** Something stated, and who says so. */
interface SheetStatement {
  readonly label: readonly ProsePiece[];
  readonly value: string;
  readonly source: readonly ProsePiece[];
}

/** A chapter of the sheet. */
export interface SheetSection {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly pictures: readonly SheetPicture[];
  readonly hasPictures: boolean;
  readonly statements: readonly SheetStatement[];
  readonly hasStatements: boolean;
  readonly steps: readonly SheetStep[];
  readonly hasSteps: boolean;
  readonly tables: readonly SheetTable[];
  readonly notes: readonly (readonly ProsePiece[])[];
  readonly hasNotes: boolean;
}

/** The order in which a reviewer reads. */
const order: readonly SectionId[] = [
  'given',
  'material',
  'section',
  'actions',
  'analysis',
  'hand-check',
  'checks',
  'fixings',
  'geometry',
];

/** The chapters of the calculation, in order and numbered; those with the same id keep their own order. */
export function sheetSections(
  sections: readonly Section[],
  pictures: Readonly<Partial<Record<SectionId, readonly SheetPicture[]>>>,
  typesetter: Typesetter,
): SheetSection[] {
  const sorted = order.flatMap((id) => sections.filter((section) => section.id === id));
  return sorted.map((section, index) => {
    const isFirst = sorted[index - 1]?.id !== section.id;
    const drawn = (isFirst ? pictures[section.id] : undefined) ?? [];
    return sheetSection(section, drawn, String(index + 1), typesetter);
  });
}

function sheetSection(
  section: Section,
  pictures: readonly SheetPicture[],
  number: string,
  typesetter: Typesetter,
): SheetSection {
  return {
    id: `${section.id}-${number}`,
    number,
    title: section.title,
    pictures,
    hasPictures: pictures.length > 0,
    statements: section.statements.map(({ label, value, source }) => ({
      label: prosePieces(label, typesetter),
      value: tableValue(value),
      source: prosePieces(source, typesetter),
    })),
    hasStatements: section.statements.length > 0,
    steps: section.steps.map((step, index) => sheetStep(step, `${number}.${index + 1}`, typesetter)),
    hasSteps: section.steps.length > 0,
    tables: section.tables.map((table) => sheetTable(table, typesetter)),
    notes: section.notes.map((note) => prosePieces(note, typesetter)),
    hasNotes: section.notes.length > 0,
  };
}

const longLine = 60;
/** A phone has room for so many letters of what no line can be broken in: a bracket with all that is in it. */
const longPiece = 32;

function isLong(line: string): boolean {
  return line.length > longLine || piecesOf(line).some((piece) => piece.length > longPiece);
}

/** What stands between the operators outside of all brackets. */
function piecesOf(line: string): string[] {
  const pieces = [''];
  let depth = 0;
  for (const letter of line) {
    depth += letter === '(' ? 1 : letter === ')' ? -1 : 0;
    if (depth === 0 && letter === ' ') pieces.push('');
    else pieces.push((pieces.pop() ?? '') + letter);
  }
  return pieces;
}

function sheetStep(step: Step, number: string, typesetter: Typesetter): SheetStep {
  const set = typesetter.step(step);
  return {
    number,
    caption: prosePieces(step.caption, typesetter),
    ...set,
    hasNumbers: set.numbers !== '' && set.numbers !== set.result,
    isLong: [step.substituted, step.expression].some(isLong),
    formulaWords: step.expression,
    numbersWords: step.substituted,
    resultWords: step.shown,
    source: prosePieces(step.source, typesetter),
  };
}

const shortTable = 12;

export function sheetTable({ title, head, rows }: Table, typesetter: Typesetter): SheetTable {
  return {
    title,
    hasTitle: title !== '',
    isShort: rows.length <= shortTable,
    head: head.map((words) => prosePieces(words, typesetter)),
    rows: rows.map((row) => row.map(tableValue)),
  };
}
