/** What was measured against a target. */
export interface Row {
  readonly what: string;
  /** In words, with its unit where it has one. */
  readonly measured: string;
  readonly target: string;
  readonly met: boolean;
  /** Milliseconds and the like, which depend on the machine. */
  readonly information: string;
}

const head = ['What', 'Measured', 'Target', 'Met'];

function cells({ what, measured, target, met }: Row): string[] {
  return [what, measured, target, met ? 'yes' : '**no**'];
}

/** The rows as a Markdown table with even columns, which a screen shows as well. */
export function table(rows: readonly Row[]): string {
  const lines = [head, ...rows.map(cells)];
  const widths = head.map((_, column) => Math.max(...lines.map((line) => (line[column] ?? '').length)));
  const line = (texts: readonly string[], fill = ' '): string =>
    `| ${texts.map((text, column) => text.padEnd(widths[column] ?? 0, fill)).join(' | ')} |`;
  return [line(head), line(['', '', '', ''], '-'), ...rows.map((row) => line(cells(row)))].join('\n');
}

/** The page docs/bench.md: ratios first, and what depends on the machine after them, as information. */
export function page(rows: readonly Row[], runtime: string): string {
  return [
    '# Bench',
    '',
    'Written by `npm run bench`. Everything in the table is measured in one run, in turns, and given as the middle of the',
    'samples, so that the ratios hold on any machine; times as such do not, and stand below as information.',
    '',
    table(rows),
    '',
    '## For information',
    '',
    `Node.js ${runtime}.`,
    '',
    ...rows.map(({ what, information }) => `- ${what}: ${information}`),
    '',
  ].join('\n');
}

/** Three figures. */
export function figures(value: number): string {
  return String(Number(value.toPrecision(3)));
}
