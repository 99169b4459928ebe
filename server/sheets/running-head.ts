const longest = 120;

/**
 * A stylesheet that prints a title and a mark at the head of every page but the first, and lines of its own at the foot of
 * every page. It is served by itself, since a page under a strict content security policy carries no styles of its own.
 *
 * @param foot none: the foot stays as the sheet's own stylesheet has it
 */
export function runningHead(title: string, mark: string, foot: readonly string[] = []): string {
  const lines = foot.map(cssString).join(' "\\a" ');
  return [
    `@page { @top-left { content: ${cssString(title)} } @top-right { content: ${cssString(mark)} } }`,
    '@page :first { @top-left { content: none } @top-right { content: none } }',
    ...(foot.length === 0 ? [] : [`@page { @bottom-left { content: ${lines}; white-space: pre } }`]),
    '',
  ].join('\n');
}

/** User text as a CSS string: everything but letters, digits and spaces becomes an escape, so nothing can end the string. */
function cssString(text: string): string {
  const characters = [...text].slice(0, longest);
  const safe = characters.map((each) =>
    /[A-Za-z0-9 ]/.test(each) ? each : `\\${(each.codePointAt(0) ?? 0xfffd).toString(16)} `,
  );
  return `"${safe.join('')}"`;
}
