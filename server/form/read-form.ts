import type { Kind, UnitSystem } from '../../shared/quantity/index.ts';
import { fieldOfWay, idleFields, likelyWay } from './alternatives.ts';
import { withUnit } from './bare-units.ts';
import { elementOf, formShapes, usualElement } from './elements.ts';
import type { Group, Shape } from './shape.ts';
import { anyWritten, rowsOf, written, type Texts } from './texts.ts';

/** What a filled-in form says. */
export interface FormReading {
  /** The document, not yet judged. */
  readonly document: Readonly<Record<string, unknown>>;
  /** The fields that count, with the user's own text, in the order of the document: the address of the check. */
  readonly entries: readonly (readonly [string, string])[];
  /** The field behind each place of the document (a JSON pointer). */
  readonly nameAt: ReadonlyMap<string, string>;
  /** The field given in place of one that is idle, behind the idle one's place of the document. */
  readonly insteadAt: ReadonlyMap<string, string>;
  /** The fields that take a quantity, and of what. */
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly system: UnitSystem;
}

/**
 * Reads a form into a document. Empty text is a field left out, an empty row is no row, and a number without a unit
 * takes the unit printed beside its field. Text that is no value goes into the document as it is, to be judged there.
 */
export function readForm(texts: Texts): FormReading {
  const system: UnitSystem = written(texts, 'units') === 'metric' ? 'metric' : 'inch-pound';
  const reader = new Reader(texts, system);
  const document = reader.group(formShapes[elementOf(texts)], '', '', new Set()) ?? {};
  return {
    document,
    entries: reader.entries,
    nameAt: reader.nameAt,
    insteadAt: reader.insteadAt,
    kinds: reader.kinds,
    system,
  };
}

/** The field to say an error at that is about a place of the document; empty where none is. */
export function fieldBehind({ nameAt, insteadAt }: FormReading, pointer: string): string {
  return nameAt.get(pointer) ?? insteadAt.get(pointer) ?? '';
}

class Reader {
  readonly entries: [string, string][] = [];
  readonly nameAt = new Map<string, string>();
  readonly insteadAt = new Map<string, string>();
  readonly kinds = new Map<string, Kind>();
  private readonly texts: Texts;
  private readonly system: UnitSystem;

  constructor(texts: Texts, system: UnitSystem) {
    this.texts = texts;
    this.system = system;
  }

  read(shape: Shape, name: string, pointer: string): unknown {
    this.nameAt.set(pointer, name);
    if (shape.is === 'constant') return this.constant(shape.value, name);
    if (shape.is === 'list') return this.list(shape.item, name, pointer);
    if (shape.is === 'tuple') return this.tuple(shape.items, name, pointer);
    if (shape.is === 'group') return this.given(name, () => this.group(shape, name, pointer, new Set()));
    if (shape.is === 'either') return this.given(name, () => this.either(shape.options, name, pointer));
    if (shape.is === 'variants') return this.variant(shape, name, pointer);
    if (shape.is === 'quantity') this.kinds.set(name, shape.kind);
    const text = written(this.texts, name);
    if (text === '') return undefined;
    this.entries.push([name, text]);
    if (shape.is === 'quantity') return withUnit(text, shape.kind, this.system);
    if (shape.is === 'yes-no') return { yes: true, no: false }[text] ?? text;
    return shape.is === 'number' ? numberOf(text) : text;
  }

  group(
    { parts }: Group,
    name: string,
    pointer: string,
    skip: ReadonlySet<string>,
  ): Record<string, unknown> | undefined {
    const by = written(this.texts, `${name}.by`);
    const idle = idleFields(this.texts, name);
    const instead = fieldOfWay(this.texts, name);
    for (const field of instead === '' ? [] : idle)
      this.insteadAt.set(`${pointer}/${field}`, `${name}.${instead}`);
    const before = this.entries.length;
    const values: [string, unknown][] = [];
    for (const [field, { shape, optional }] of parts) {
      if (skip.has(field) || idle.has(field)) continue;
      const path = name === '' ? field : `${name}.${field}`;
      const value = this.read(shape, path, `${pointer}/${field}`);
      if (value !== undefined) values.push([field, value]);
      else if (!optional && shape.is === 'group') values.push([field, {}]);
      else if (!optional && shape.is === 'list') values.push([field, []]);
    }
    const isFilled = this.entries.length > before || skip.size > 0;
    if (isFilled && idle.size > 0 && likelyWay(name, (field) => this.holds(field, before)) !== by) {
      this.entries.push([`${name}.by`, by]);
    }
    if (name === '' || isFilled) return Object.fromEntries(values);
    if (by !== 'given') return undefined;
    this.entries.push([`${name}.by`, by]);
    return {};
  }

  /** Whether a field, or a part of it, is among the entries from a place on. */
  private holds(field: string, from: number): boolean {
    return this.entries.slice(from).some(([name]) => name === field || name.startsWith(`${field}.`));
  }

  private given<T>(name: string, read: () => T): T | undefined {
    return written(this.texts, `${name}.by`) === 'none' ? undefined : read();
  }

  private either(
    options: ReadonlyMap<string, Group>,
    name: string,
    pointer: string,
  ): Record<string, unknown> | undefined {
    const by = written(this.texts, `${name}.by`);
    const isWritten = (group: Group): boolean =>
      [...group.parts.keys()].some((field) => anyWritten(this.texts, `${name}.${field}`));
    const chosen = options.get(by) ?? [...options.values()].find(isWritten);
    return chosen === undefined ? undefined : this.group(chosen, name, pointer, new Set());
  }

  private variant(
    { key, variants }: Extract<Shape, { is: 'variants' }>,
    name: string,
    pointer: string,
  ): Record<string, unknown> | undefined {
    const word = written(this.texts, `${name}.${key}`);
    const isLeftOut = this.texts.has(`${name}.${key}`) || !anyWritten(this.texts, name);
    if (word === '' && isLeftOut) return undefined;
    this.nameAt.set(`${pointer}/${key}`, `${name}.${key}`);
    if (word !== '') this.entries.push([`${name}.${key}`, word]);
    const group = variants.get(word);
    if (group === undefined) return word === '' ? {} : { [key]: word };
    return { [key]: word, ...this.group(group, name, pointer, new Set([key])) };
  }

  private list(item: Shape, name: string, pointer: string): unknown[] | undefined {
    const by = written(this.texts, `${name}.by`);
    if (by === 'none') return undefined;
    if (by === 'empty') {
      this.entries.push([`${name}.by`, by]);
      return [];
    }
    const items: unknown[] = [];
    for (const row of rowsOf(this.texts, name)) {
      const value = this.read(item, `${name}.${row}`, `${pointer}/${items.length}`);
      if (value !== undefined) items.push(value);
    }
    return items.length === 0 ? undefined : items;
  }

  /** One of its items missing is an empty text, for the document to say what it takes. */
  private tuple(items: readonly Shape[], name: string, pointer: string): unknown[] | undefined {
    const values = items.map((item, index) => this.read(item, `${name}.${index}`, `${pointer}/${index}`));
    return values.every((value) => value === undefined) ? undefined : values.map((value) => value ?? '');
  }

  private constant(value: string | number, name: string): string | number {
    const text = written(this.texts, name);
    if (name === 'element' && value !== usualElement) this.entries.push([name, String(value)]);
    return text === '' || text === String(value) ? value : text;
  }
}

/** A number as people write one; other text stays as it is. */
function numberOf(text: string): number | string {
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,3})?$/i.test(text) ? Number(text) : text;
}
