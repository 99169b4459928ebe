import temml from 'temml';

const marks: Readonly<Record<string, string>> = {
  '\\': String.raw`\backslash `,
  '{': String.raw`\{`,
  '}': String.raw`\}`,
  $: String.raw`\$`,
  '%': String.raw`\%`,
  '#': String.raw`\#`,
  '&': String.raw`\&`,
  _: String.raw`\_`,
  '^': String.raw`\text{\textasciicircum}`,
  '~': String.raw`\text{\textasciitilde}`,
};

/** Plain words inside a formula: a unit, a remark. */
export function wordsTex(words: string): string {
  return String.raw`\text{${words.replace(/[\\{}$%#&_^~]/g, (mark) => marks[mark] ?? '')}}`;
}

/**
 * MathML of a line of TeX. Inline styles are taken out, so that it stands under a strict content security policy; it is
 * broken in pieces after its operators, so that a narrow page can wrap it.
 *
 * @throws Error when the TeX can't be read
 */
export function mathml(tex: string): string {
  const marked = temml.renderToString(tex, { throwOnError: true, trust: false, wrap: 'tex' });
  return marked.replace(/ style="[^"]*"/g, '').replace('<math>', '<math displaystyle="true">');
}
