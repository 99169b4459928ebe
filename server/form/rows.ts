import type { Texts } from './texts.ts';

/** Numbers the rows of a list from nought, in the order given; rows not named are left out. */
export function arrange(texts: Texts, list: string, order: readonly number[]): Map<string, string> {
  const arranged = new Map<string, string>();
  const place = new Map(order.map((row, index) => [row, index]));
  for (const [name, text] of texts) {
    const inside = name.startsWith(`${list}.`) ? name.slice(list.length + 1) : '';
    const [, row, rest = ''] = /^(\d{1,3})(.*)$/.exec(inside) ?? [];
    if (row === undefined) arranged.set(name, text);
    const index = place.get(Number(row));
    if (row !== undefined && index !== undefined) arranged.set(`${list}.${index}${rest}`, text);
  }
  return arranged;
}
