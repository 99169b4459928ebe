import {
  bracketShelfSchema,
  counterOverhangSchema,
  counterRunSchema,
  wallFixingSchema,
  type CheckDocument,
} from '../../shared/check-document/index.ts';
import { groupOf, type Group } from './shape.ts';
import { written, type Texts } from './texts.ts';

/** What a form can check. */
export type Element = CheckDocument['element'];

/** The shape of the form of each element. */
export const formShapes: Readonly<Record<Element, Group>> = {
  'bracket-shelf': groupOf(bracketShelfSchema),
  'wall-fixing': groupOf(wallFixingSchema),
  'counter-overhang': groupOf(counterOverhangSchema),
  'counter-run': groupOf(counterRunSchema),
};

const elements: readonly Element[] = ['bracket-shelf', 'wall-fixing', 'counter-overhang', 'counter-run'];

/** What a form checks where it does not say so: addresses of shelves need not name it. */
export const usualElement: Element = 'bracket-shelf';

/** What a form checks; the usual where it names nothing that can be checked. */
export function elementOf(texts: Texts): Element {
  return elementNamed(written(texts, 'element')) ?? usualElement;
}

/** An element by its name; undefined where nothing of ours goes by it. */
export function elementNamed(name: unknown): Element | undefined {
  return elements.find((element) => element === name);
}
