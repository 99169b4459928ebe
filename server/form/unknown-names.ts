import { elementOf, formShapes, type Element } from './elements.ts';
import type { Group, Shape } from './shape.ts';
import type { Texts } from './texts.ts';

/** Names that steer the form, or say how it is saved in a job, and are no fields of a check. */
const steering = /^(?:do|at|was|find|token|save\..*)$/;

/**
 * The names in an address that the form of an element does not have. A load behind a misspelt name would otherwise be lost
 * without a word.
 */
export function unknownNames(texts: Texts, element: Element = elementOf(texts)): string[] {
  const shape = formShapes[element];
  return [...texts.keys()].filter((name) => !steering.test(name) && !isKnown(shape, name.split('.')));
}

function isKnown(shape: Shape, path: readonly string[]): boolean {
  const [here, ...rest] = path;
  if (here === undefined) return !['group', 'list', 'tuple', 'either', 'variants'].includes(shape.is);
  if ((here === 'by' || here === 'was') && rest.length === 0) return true;
  if (here === 'by' && rest.join('.') === 'was') return true;
  if (shape.is === 'group') return inGroup(shape, here, rest);
  if (shape.is === 'list') return /^\d{1,3}$/.test(here) && isKnown(shape.item, rest);
  if (shape.is === 'tuple') {
    const item = /^\d$/.test(here) ? shape.items[Number(here)] : undefined;
    return item !== undefined && isKnown(item, rest);
  }
  if (shape.is === 'either') return [...shape.options.values()].some((group) => inGroup(group, here, rest));
  if (shape.is === 'variants')
    return [...shape.variants.values()].some((group) => inGroup(group, here, rest));
  return false;
}

function inGroup(group: Group, here: string, rest: readonly string[]): boolean {
  const part = group.parts.get(here);
  return part !== undefined && isKnown(part.shape, rest);
}
