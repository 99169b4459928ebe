import type { Strip } from './dimension.ts';
import type { Frame } from './frame.ts';
import { textWidth } from './lettering.ts';
import { line, text, type Pen } from './svg.ts';

/** One line of the key: a sample of the line, where there is one, and what it means. */
export interface KeyItem {
  readonly pen?: Pen;
  readonly words: string;
}

const sample = 26;
const between = 18;

/** The key under a drawing: as many items in a row as fit. */
export function keyStrip(items: readonly KeyItem[], top: number, frame: Frame): Strip {
  const size = frame.letters;
  const parts: string[] = [];
  let [x, y] = [frame.left, top];
  for (const { pen, words } of items) {
    const width = (pen === undefined ? 0 : sample + 6) + textWidth(words, size);
    if (x > frame.left && x + width > frame.width - 2) [x, y] = [frame.left, y + size * 1.4];
    if (pen !== undefined)
      parts.push(line({ x, y: y - size * 0.33 }, { x: x + sample, y: y - size * 0.33 }, pen));
    parts.push(text(words, { x: pen === undefined ? x : x + sample + 6, y }, { size }));
    x += width + between;
  }
  return { parts, bottom: y };
}
