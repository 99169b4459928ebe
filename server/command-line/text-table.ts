/**
 * A table in columns of equal width, two blanks apart, without blanks at the ends of lines.
 *
 * @param rows the head first; every row as long as the head
 * @param right the columns whose text is set to the right
 */
export function textTable(rows: readonly (readonly string[])[], right: ReadonlySet<number>): string[] {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => width(row[column] ?? ''))));
  return rows.map((row) =>
    row
      .map((cell, column) => {
        const fill = ' '.repeat((widths[column] ?? 0) - width(cell));
        return right.has(column) ? fill + cell : cell + fill;
      })
      .join('  ')
      .trimEnd(),
  );
}

function width(text: string): number {
  return Array.from(text).length;
}
