import type { FieldError } from '../../../shared/check-result.ts';
import type { SoundDocument } from '../../../shared/check-document/index.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import {
  bareUnits,
  elementOf,
  fieldBehind,
  rowsOf,
  wayOf,
  written,
  writtenParts,
  type Element,
  type FormReading,
  type Texts,
} from '../../form/index.ts';
import type { Button, Field, More, Option, Part, Row, Rows } from './model.ts';
import { understood } from './understood.ts';

/** What a form is shown from. */
export interface FormState {
  readonly texts: Texts;
  readonly reading: FormReading;
  readonly errors: readonly FieldError[];
  /** What of the document is sound, errors or not. */
  readonly sound: SoundDocument;
  /** The field or button that gets the focus; empty for none. */
  readonly at: string;
}

interface FieldWords {
  readonly label: string;
  readonly hint?: string;
  readonly list?: string;
}

interface ChoiceWords {
  readonly label: string;
  readonly hint?: string;
  /** What it means to choose nothing; none: something is always chosen. */
  readonly unsaid?: string;
  readonly options: Readonly<Record<string, string>>;
  readonly reshapes?: boolean;
  /** What is shown as chosen where the form says nothing. */
  readonly chosen?: string;
}

/** Builds the parts of a form, each with the user's own text, what was understood of it and what is wrong with it. */
export class FormView {
  readonly texts: Texts;
  readonly system: UnitSystem;
  /** What is checked. */
  readonly element: Element;
  readonly sound: SoundDocument;
  /** Names of the fields that are shown; the others travel hidden. */
  readonly shown = new Set<string>();
  readonly fields: Field[] = [];
  /** Texts beside the fields that change with what is written: of rows, and of groups that are closed. */
  readonly sayings: { readonly id: string; readonly text: string }[] = [];
  private readonly rowTitles = new Map<string, string>();
  private readonly parts: ReadonlySet<string>;
  private readonly state: FormState;
  private readonly pointerOf: ReadonlyMap<string, string>;
  private readonly errorsAt: ReadonlyMap<string, string>;

  constructor(state: FormState) {
    this.state = state;
    this.texts = state.texts;
    this.parts = writtenParts(state.texts);
    this.system = state.reading.system;
    this.sound = state.sound;
    this.element = elementOf(state.texts);
    const errors = new Map<string, string>();
    for (const { path, message } of state.errors) {
      const name = fieldBehind(state.reading, path);
      const before = errors.get(name);
      errors.set(name, before === undefined ? message : `${before} ${message}`);
    }
    this.errorsAt = errors;
    this.pointerOf = new Map([...state.reading.nameAt].map(([pointer, name]) => [name, pointer]));
  }

  written(name: string): string {
    return written(this.texts, name);
  }

  anyWritten(name: string): boolean {
    return this.parts.has(name);
  }

  /** The way a group is given that can be given in several. */
  way(group: string): string {
    return wayOf(this.texts, group, (name) => this.parts.has(name));
  }

  rows(list: string): number[] {
    return rowsOf(this.texts, list);
  }

  errorAt(name: string): string {
    return this.errorsAt.get(name) ?? '';
  }

  /** What is wrong in a section and with none of its fields or lists. */
  errorInside(section: string): string {
    return [...this.errorsAt]
      .filter(([name]) => (name === section || name.startsWith(`${section}.`)) && !this.shown.has(name))
      .map(([, message]) => message)
      .join(' ');
  }

  /** The place of a row in its list of the document; undefined for a row with nothing in it. */
  placeOf(name: string): number | undefined {
    const place = /\/(\d+)$/.exec(this.pointerOf.get(name) ?? '')?.[1];
    return place === undefined ? undefined : Number(place);
  }

  /** Whether anything in a part of the form is wrong. */
  hasError(...names: readonly string[]): boolean {
    return [...this.errorsAt.keys()].some((wrong) =>
      names.some((name) => wrong === name || wrong.startsWith(`${name}.`)),
    );
  }

  /** A field to write in: a quantity where the document takes one, else a number or a text. */
  text(name: string, words: FieldWords): Field {
    const kind = this.state.reading.kinds.get(name);
    const value = this.texts.get(name) ?? '';
    const unit = kind === undefined ? '' : bareUnits[this.system][kind];
    const note = kind === undefined || value.trim() === '' ? '' : understood(value, kind, this.system);
    return this.field(name, words.label, {
      value,
      unit,
      hasUnit: unit !== '',
      hint: words.hint ?? '',
      note,
      isText: true,
      list: words.list ?? '',
      inputMode: 'text',
    });
  }

  date(name: string, words: FieldWords): Field {
    return this.field(name, words.label, {
      value: this.texts.get(name) ?? '',
      hint: words.hint ?? '',
      isDate: true,
    });
  }

  choice(name: string, words: ChoiceWords): Field {
    const value = this.written(name) === '' ? (words.chosen ?? '') : this.written(name);
    const unsaid: [string, string][] = words.unsaid === undefined ? [] : [['', words.unsaid]];
    const known: [string, string][] = [...unsaid, ...Object.entries(words.options)];
    const all = known.some(([word]) => word === value) ? known : [...known, [value, value] as const];
    const options = all.map(([word, label]): Option => ({ value: word, label, selected: word === value }));
    return this.field(name, words.label, {
      value,
      hint: words.hint ?? '',
      isChoice: true,
      options,
      reshapes: words.reshapes ?? false,
    });
  }

  /** What each field that is shown is called, with the row it is in: "Load 2, weight". */
  labels(): ReadonlyMap<string, string> {
    return new Map(
      this.fields.map(({ id, label }) => [id, [this.rowTitles.get(id), label].filter(Boolean).join(', ')]),
    );
  }

  button(doing: string, label: string, about: string): Button {
    return { doing, label, about, hasFocus: this.state.at === doing };
  }

  more(
    id: string,
    title: string,
    sentence: string,
    watched: readonly string[],
    parts: readonly Part[],
  ): More {
    const holdsFocus = watched.some((name) => this.state.at === name || this.state.at.startsWith(`${name}.`));
    this.sayings.push({ id: `said:${id}`, text: sentence });
    return {
      id: `more:${id}`,
      saidId: `said:${id}`,
      title,
      sentence,
      isOpen: holdsFocus || this.hasError(...watched),
      parts,
    };
  }

  /** The rows of a list, each with the buttons to move and remove it. */
  table(
    list: string,
    words: {
      readonly title: string;
      readonly hint?: string;
      readonly add: string;
      readonly isNarrow?: boolean;
      readonly rowTitle: (row: number, place: number) => string;
      readonly parts: (row: number, place: number) => readonly Part[];
      readonly note?: (row: number) => string;
    },
  ): Rows {
    const rows = this.rows(list);
    this.shown.add(list);
    return {
      id: list,
      title: words.title,
      hint: words.hint ?? '',
      hasHint: words.hint !== undefined,
      isNarrow: words.isNarrow ?? false,
      error: this.errorAt(list),
      add: [this.button(`add:${list}`, words.add, '')],
      rows: rows.map((row, place): Row => {
        const title = words.rowTitle(row, place);
        const noteId = `note:${list}.${row}:row`;
        const note = words.note?.(row) ?? '';
        this.sayings.push({ id: noteId, text: note });
        const up = place === 0 ? [] : [this.button(`up:${list}.${row}`, 'Up', title)];
        const down = place === rows.length - 1 ? [] : [this.button(`down:${list}.${row}`, 'Down', title)];
        const remove = this.button(`remove:${list}.${row}`, 'Remove', title);
        const before = this.fields.length;
        const parts = words.parts(row, place);
        if (!(words.isNarrow ?? false)) this.nameRow(title, before);
        return { title, parts, note, noteId, buttons: [...up, ...down, remove] };
      }),
    };
  }

  private nameRow(title: string, from: number): void {
    for (const { id } of this.fields.slice(from)) {
      const inner = this.rowTitles.get(id);
      this.rowTitles.set(id, inner === undefined ? title : `${title}, ${inner}`);
    }
  }

  private field(name: string, label: string, rest: Partial<Field>): Field {
    const error = this.errorAt(name);
    const hint = rest.hint ?? '';
    const described = [
      rest.hasUnit === true ? `unit:${name}` : '',
      hint === '' ? '' : `hint:${name}`,
      `note:${name}`,
      `error:${name}`,
    ];
    const field: Field = {
      value: '',
      unit: '',
      hasUnit: false,
      note: '',
      isText: false,
      isChoice: false,
      isDate: false,
      options: [],
      reshapes: false,
      list: '',
      inputMode: 'text',
      isSearch: false,
      ...rest,
      id: name,
      label,
      hint,
      hasHint: hint !== '',
      hasList: (rest.list ?? '') !== '',
      error,
      invalid: error !== '',
      describedBy: described.filter((id) => id !== '').join(' '),
      hasFocus: this.state.at === name,
    };
    this.shown.add(name);
    this.fields.push(field);
    return field;
  }
}
