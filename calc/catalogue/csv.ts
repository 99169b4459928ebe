/** One row of a table: its line in the file and its cells by heading. */
export interface CsvRow {
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

/**
 * Reads comma-separated text: a line of headings, then one row a line; a cell in double quotes may hold commas and, doubled,
 * quotes. Nothing is guessed.
 *
 * @param text the whole file
 * @param file its name, for messages
 * @returns the rows in order
 * @throws Error naming file and line: an open quote, text after a quote, a repeated or empty heading, a row with
 *   more or fewer cells than headings, a blank line
 */
export function parseCsv(text: string, file: string): CsvRow[] {
  const lines = text.replace(/\r\n/g, '\n').replace(/\n$/, '').split('\n');
  const [first = '', ...rest] = lines;
  const headings = splitLine(first, `${file}, line 1`);
  if (headings.includes('')) throw new Error(`${file}, line 1: a heading is empty`);
  if (new Set(headings).size !== headings.length) throw new Error(`${file}, line 1: a heading is repeated`);

  return rest.map((written, index) => {
    const line = index + 2;
    const cells = splitLine(written, `${file}, line ${line}`);
    if (cells.length !== headings.length) {
      throw new Error(`${file}, line ${line}: ${cells.length} cells under ${headings.length} headings`);
    }
    return { line, cells: new Map(headings.map((heading, column) => [heading, cells[column] ?? ''])) };
  });
}

const quoted = /"((?:[^"]|"")*)"(,|$)/y;
const plain = /([^",]*)(,|$)/y;

function splitLine(line: string, place: string): string[] {
  const cells: string[] = [];
  let at = 0;
  for (;;) {
    const pattern = line[at] === '"' ? quoted : plain;
    pattern.lastIndex = at;
    const [whole, cell, end] = pattern.exec(line) ?? [];
    if (whole === undefined || cell === undefined) throw new Error(`${place}: a quote is out of place`);
    cells.push(pattern === quoted ? cell.replaceAll('""', '"') : cell.trim());
    if (end === '') return cells;
    at += whole.length;
  }
}
