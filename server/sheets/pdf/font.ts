import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const folder = join(dirname(createRequire(import.meta.url).resolve('source-sans/package.json')), 'OTF');

/** The sheet's own font in the weights it uses, under the SIL Open Font License. */
export function fontFiles(): Buffer[] {
  return ['Regular', 'Semibold', 'It'].map((weight) =>
    readFileSync(join(folder, `SourceSans3-${weight}.otf`)),
  );
}

/**
 * The characters that the sheet's font can show, each with the width it takes, in sizes of the type (OpenType specification,
 * `cmap`, format 4: the basic plane, which is all this font has; `hhea`, `hmtx`).
 *
 * @throws Error where the font has no such tables
 */
export function fontCharacters(): ReadonlyMap<number, number> {
  const font = readFileSync(join(folder, 'SourceSans3-Regular.otf'));
  const table = basicTable(font);
  const segments = font.readUInt16BE(table + 6) / 2;
  const ends = table + 14;
  const starts = ends + 2 * segments + 2;
  const widthOf = glyphWidths(font);
  const known = new Map<number, number>();
  for (let segment = 0; segment < segments; segment++) {
    const end = font.readUInt16BE(ends + 2 * segment);
    for (let code = font.readUInt16BE(starts + 2 * segment); code <= end && code < 0xffff; code++) {
      const glyph = glyphOf(font, starts, segments, segment, code);
      if (glyph !== 0) known.set(code, widthOf(glyph));
    }
  }
  return known;
}

function glyphOf(font: Buffer, starts: number, segments: number, segment: number, code: number): number {
  const deltas = starts + 2 * segments;
  const delta = font.readUInt16BE(deltas + 2 * segment);
  const at = deltas + 2 * segments + 2 * segment;
  const offset = font.readUInt16BE(at);
  if (offset === 0) return (code + delta) & 0xffff;
  const glyph = font.readUInt16BE(at + offset + 2 * (code - font.readUInt16BE(starts + 2 * segment)));
  return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
}

function basicTable(font: Buffer): number {
  const cmap = tableOf(font, 'cmap');
  for (let each = 0; each < font.readUInt16BE(cmap + 2); each++) {
    const table = cmap + font.readUInt32BE(cmap + 4 + 8 * each + 4);
    if (font.readUInt16BE(table) === 4) return table;
  }
  throw new Error("The sheet's font has no table of its characters.");
}

/** Of glyphs past the end of the list, the last width holds. */
function glyphWidths(font: Buffer): (glyph: number) => number {
  const unitsOfSize = font.readUInt16BE(tableOf(font, 'head') + 18);
  const listed = font.readUInt16BE(tableOf(font, 'hhea') + 34);
  const widths = tableOf(font, 'hmtx');
  return (glyph) => font.readUInt16BE(widths + 4 * Math.min(glyph, listed - 1)) / unitsOfSize;
}

function tableOf(font: Buffer, tag: string): number {
  for (let index = 0; index < font.readUInt16BE(4); index++) {
    const record = 12 + 16 * index;
    if (font.toString('latin1', record, record + 4) === tag) return font.readUInt32BE(record + 8);
  }
  throw new Error(`The sheet's font has no table "${tag}".`);
}
