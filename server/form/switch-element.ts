import { startChecks } from '../start-checks.ts';
import { elementNamed, elementOf, type Element } from './elements.ts';
import { fillForm } from './fill-form.ts';
import { written, type Texts } from './texts.ts';
import { unknownNames } from './unknown-names.ts';

/** What is said of plate and screws stands elsewhere in a document of another element; null where there is no plate. */
const fixingAt: Readonly<Record<Element, string | null>> = {
  'bracket-shelf': 'brackets.',
  'wall-fixing': '',
  'counter-overhang': null,
  'counter-run': null,
};
const carried = /^(title|date|preparedBy|checkedBy|code|units|was|conditions\..+|wall\.(?!by$).+)$/;
const ofFixing = /^(plate|screws)\.(?!by$)/;

/**
 * A form that was switched to another element starts anew, and takes along what means the same in both: title and people, units,
 * conditions, the wall, plate and screws. `element.was` is what it was before.
 */
export function switchElement(texts: Texts): Map<string, string> {
  const was = elementNamed(written(texts, 'element.was'));
  const now = elementOf(texts);
  const kept = new Map(texts);
  kept.delete('element.was');
  if (was === undefined || was === now) return kept;
  const [from, to] = [fixingAt[was], fixingAt[now]];
  const moved: [string, string][] = [];
  for (const [name, text] of kept) {
    if (carried.test(name) && unknownNames(new Map([[name, text]]), now).length === 0)
      moved.push([name, text]);
    if (from === null || to === null) continue;
    const part = name.startsWith(from) ? name.slice(from.length) : '';
    const [, group = ''] = ofFixing.exec(part) ?? [];
    if (group !== '' && written(kept, `${from}${group}.by`) !== 'none') moved.push([`${to}${part}`, text]);
  }
  const parts = new Set(moved.map(([name]) => partOf(name)));
  const begun = [...fillForm(startChecks[now])].filter(([name]) => !parts.has(partOf(name)));
  return new Map([...begun, ...moved, ['element', now]]);
}

/** The part of a form a field belongs to, of which either the old or the new counts, never a mixture. */
function partOf(name: string): string {
  return /^(?:brackets\.)?(?:plate|screws|wall|conditions)(?=\.)/.exec(name)?.[0] ?? name;
}
