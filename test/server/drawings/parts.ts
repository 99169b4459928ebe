import { textWidth } from '../../../server/drawings/lettering.ts';

/** What is written in a drawing, with the box it takes by the estimate the drawing itself leans on. */
export interface Written {
  readonly words: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The attributes of every element of one kind. */
export function elements(svg: string, name: string): Record<string, string>[] {
  return [...svg.matchAll(new RegExp(`<${name} ([^>]*?)/?>`, 'g'))].map(([, attributes = '']) =>
    Object.fromEntries(
      [...attributes.matchAll(/([a-z0-9-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]),
    ),
  );
}

/** Every text of a drawing with its place. */
export function writings(svg: string): Written[] {
  const texts = svg.matchAll(
    /<text x="([^"]+)" y="([^"]+)" font-size="([^"]+)" text-anchor="(\w+)"([^>]*)>([^<]*)<\/text>/g,
  );
  return [...texts].map(([, x, y, size, anchor, rest = '', words = '']) => {
    const [at, base, height] = [Number(x), Number(y), Number(size)];
    const length = textWidth(unescaped(words), height);
    const before = anchor === 'start' ? 0 : anchor === 'end' ? length : length / 2;
    if (rest.includes('rotate')) {
      return {
        words,
        left: at - height * 0.8,
        right: at + height * 0.2,
        top: base - length + before,
        bottom: base + before,
      };
    }
    return {
      words,
      left: at - before,
      right: at - before + length,
      top: base - height * 0.8,
      bottom: base + height * 0.2,
    };
  });
}

function unescaped(words: string): string {
  return words
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}

/** Width and height of a drawing. */
export function viewBox(svg: string): { width: number; height: number } {
  const [, width, height] = /viewBox="0 0 (\S+) (\S+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}

/** Texts that reach over the edge of their drawing. */
export function outside(svg: string): string[] {
  const { width, height } = viewBox(svg);
  return writings(svg)
    .filter(
      ({ left, right, top, bottom }) =>
        left < -0.5 || right > width + 0.5 || top < -0.5 || bottom > height + 0.5,
    )
    .map(({ words }) => words);
}

/** Pairs of texts that run into each other. */
export function collisions(svg: string): string[] {
  const all = writings(svg);
  return all.flatMap((a, index) =>
    all
      .slice(index + 1)
      .filter(
        (b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1,
      )
      .map((b) => `${a.words} | ${b.words}`),
  );
}

/** Texts that a level line runs through: struck out. */
export function struckOut(svg: string): string[] {
  const lines = elements(svg, 'line')
    .map(({ x1, x2, y1, y2 }) => ({ x1: Number(x1), x2: Number(x2), y1: Number(y1), y2: Number(y2) }))
    .filter(({ y1, y2 }) => Math.abs(y1 - y2) < 0.01);
  return writings(svg)
    .filter(({ left, right, top, bottom }) =>
      lines.some(
        ({ x1, x2, y1 }) =>
          y1 > top + 1 && y1 < bottom - 1 && Math.min(x1, x2) < right - 1 && Math.max(x1, x2) > left + 1,
      ),
    )
    .map(({ words }) => words);
}
