import { listed } from '../../../shared/words.ts';
import type { CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import type { CounterOverhangResult } from '../../../shared/check-result.ts';
import { dimensionText } from '../lettering.ts';

const propNames = { 'flat-bar': 'flat bar', bracket: 'bracket', corbel: 'corbel', leg: 'leg' } as const;

/** The plan in words. */
export function planWords(document: CounterOverhangDocument, result: CounterOverhangResult): string {
  const units = document.units ?? 'inch-pound';
  const length = (metres: number): string => dimensionText(metres, units);
  const { top, base, screws, props = [] } = document;
  const people = result.analysis.plate.person.at;
  const out = (metres: number, side: string): string[] =>
    metres > 1e-6 ? [`${length(metres)} ${side}`] : [];
  const overhangs = [
    ...out(top.depth - base.front, 'on the stool side'),
    ...out(base.back, 'at the back'),
    ...out(base.from, 'at the left end'),
    ...out(top.length - base.to, 'at the right end'),
  ];
  return [
    `A top ${length(top.length)} long, ${length(top.depth)} deep and ${length(top.thickness)} thick on a base from ${length(base.from)} to ${length(base.to)} along it and from ${length(base.back)} to ${length(base.front)} from its back edge.`,
    overhangs.length === 0
      ? 'It stands out on no side.'
      : `It stands out past the base ${listed(overhangs)}.`,
    ...(base.panels === undefined ? [] : [`Upright panels stand at ${listed(base.panels.map(length))}.`]),
    ...((screws?.at.length ?? 0) === 0 ? [] : [`${screws?.at.length ?? 0} screws hold it down from below.`]),
    ...props.map(
      (prop, index) =>
        `Prop ${index + 1}, a ${propNames[prop.kind]}, is at ${length(prop.at)} and reaches to ${length(prop.to)} from the back edge.`,
    ),
    ...(people.length === 0
      ? []
      : [
          `Most is asked of the top across its grain by a person at ${listed(people.map(({ x, y }) => `${length(x.value)} along, ${length(y.value)} from the back edge`))}.`,
        ]),
  ].join(' ');
}
