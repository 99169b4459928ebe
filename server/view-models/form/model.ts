/** One choice of a field. */
export interface Option {
  readonly value: string;
  readonly label: string;
  readonly selected: boolean;
}

/** A field as it is shown: a line of text to fill in, or a choice. */
export interface Field {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly unit: string;
  readonly hasUnit: boolean;
  readonly hint: string;
  readonly hasHint: boolean;
  /** What was understood of the text. */
  readonly note: string;
  readonly error: string;
  readonly invalid: boolean;
  readonly isText: boolean;
  readonly isChoice: boolean;
  readonly isDate: boolean;
  readonly options: readonly Option[];
  /** Whether other fields come or go with it. */
  readonly reshapes: boolean;
  /** Id of a list of proposals; empty for none. */
  readonly list: string;
  readonly hasList: boolean;
  readonly inputMode: string;
  readonly describedBy: string;
  readonly hasFocus: boolean;
  readonly isSearch: boolean;
}

/** A button that sends the form and says what to do with it. */
export interface Button {
  readonly doing: string;
  readonly label: string;
  /** What a reader of the screen hears after the label: which row it is about. */
  readonly about: string;
  readonly hasFocus: boolean;
}

export interface Row {
  readonly title: string;
  readonly parts: readonly Part[];
  readonly note: string;
  readonly noteId: string;
  readonly buttons: readonly Button[];
}

/** A list of rows, and the button that adds one. */
export interface Rows {
  readonly id: string;
  readonly title: string;
  readonly hint: string;
  readonly hasHint: boolean;
  readonly isNarrow: boolean;
  readonly error: string;
  readonly rows: readonly Row[];
  readonly add: readonly Button[];
}

/** A group that is closed to one sentence until it is wanted. */
export interface More {
  readonly id: string;
  readonly saidId: string;
  readonly title: string;
  readonly sentence: string;
  readonly isOpen: boolean;
  readonly parts: readonly Part[];
}

/** One of the boards found by a name. */
export interface BoardFound {
  readonly doing: string;
  readonly name: string;
  readonly facts: string;
  readonly source: string;
}

export interface BoardPicker {
  readonly found: readonly BoardFound[];
  readonly message: string;
  /** What is known of the board that was named. */
  readonly sentence: string;
  readonly isOpen: boolean;
}

/** One thing after another in a section; each part holds one of these and leaves the other lists empty. */
export interface Part {
  readonly fields: readonly Field[];
  readonly tables: readonly Rows[];
  readonly mores: readonly More[];
  readonly pickers: readonly BoardPicker[];
}

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly Part[];
}

/** A section as it is shown: with what is wrong with it as a whole. */
export interface ShownSection extends Section {
  readonly error: string;
}

const nothing: Part = { fields: [], tables: [], mores: [], pickers: [] };

export const fieldPart = (field: Field): Part => ({ ...nothing, fields: [field] });
export const tablePart = (table: Rows): Part => ({ ...nothing, tables: [table] });
export const morePart = (more: More): Part => ({ ...nothing, mores: [more] });
export const pickerPart = (picker: BoardPicker): Part => ({ ...nothing, pickers: [picker] });
