const longest = 120;

/**
 * A stylesheet that prints a title and a mark at the head of every page but the first. It is served by itself, since a page
 * under a strict content security policy carries no styles of its own.
 */
export function runningHead(title: string, mark: string): string {
  return [
    `@page { @top-left { content: ${cssString(title)} } @top-right { content: ${cssString(mark)} } }`,
    '@page :first { @top-left { content: none } @top-right { content: none } }',
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
