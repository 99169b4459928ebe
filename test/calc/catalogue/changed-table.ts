import { parseCsv } from '../../../calc/catalogue/csv.ts';
import { tableText } from '../../../calc/catalogue/table.ts';

/** A catalogue table as text again, with the cells under one heading changed on some lines. */
export function changedTable(
  file: string,
  heading: string,
  cell: string,
  onLine: (line: number) => boolean,
): string {
  const rows = parseCsv(tableText(file), file);
  const headings = [...(rows[0]?.cells.keys() ?? [])];
  if (!headings.includes(heading)) throw new Error(`${file} has no heading ${heading}`);
  const written = rows.map((row) =>
    headings.map((each) => (each === heading && onLine(row.line) ? cell : (row.cells.get(each) ?? ''))),
  );
  const quoted = (cells: string[]): string =>
    cells.map((each) => `"${each.replaceAll('"', '""')}"`).join(',');
  return [headings, ...written].map(quoted).join('\n');
}
