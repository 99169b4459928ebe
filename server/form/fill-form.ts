import { elementNamed, formShapes, usualElement } from './elements.ts';
import type { Group, Shape } from './shape.ts';

/**
 * Fills in a form from a document; the way back from `readForm`. What is not in the schema is left out, so only a
 * document that was read without errors keeps its meaning.
 */
export function fillForm(document: unknown): Map<string, string> {
  const texts = new Map<string, string>();
  const element = elementNamed(own(document, 'element')) ?? usualElement;
  if (element !== usualElement) texts.set('element', element);
  fillGroup(formShapes[element], document, '', texts);
  return texts;
}

function fill(shape: Shape, value: unknown, name: string, texts: Map<string, string>): void {
  if (value === undefined || shape.is === 'constant') return;
  if (shape.is === 'group') return fillGroup(shape, value, name, texts);
  if (shape.is === 'list') return fillList(shape.item, value, name, texts);
  if (shape.is === 'tuple') {
    shape.items.forEach((item, index) => fill(item, own(value, String(index)), `${name}.${index}`, texts));
    return;
  }
  if (shape.is === 'variants') {
    const word = own(value, shape.key);
    if (typeof word !== 'string') return;
    texts.set(`${name}.${shape.key}`, word);
    const group = shape.variants.get(word);
    if (group !== undefined) fillGroup(group, value, name, texts);
    return;
  }
  if (shape.is === 'either') {
    const [, group] = [...shape.options].find(([first]) => own(value, first) !== undefined) ?? [];
    if (group !== undefined) fillGroup(group, value, name, texts);
    return;
  }
  if (typeof value === 'boolean') texts.set(name, value ? 'yes' : 'no');
  if (typeof value === 'string' || typeof value === 'number') texts.set(name, String(value));
}

function fillGroup({ parts }: Group, value: unknown, name: string, texts: Map<string, string>): void {
  const before = texts.size;
  for (const [field, { shape }] of parts) {
    fill(shape, own(value, field), name === '' ? field : `${name}.${field}`, texts);
  }
  if (texts.size === before && name !== '') texts.set(`${name}.by`, 'given');
}

function fillList(item: Shape, value: unknown, name: string, texts: Map<string, string>): void {
  if (!Array.isArray(value)) return;
  if (value.length === 0) texts.set(`${name}.by`, 'empty');
  value.forEach((each, row) => fill(item, each, `${name}.${row}`, texts));
}

function own(value: unknown, key: string): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  return Object.getOwnPropertyDescriptor(value, key)?.value;
}
