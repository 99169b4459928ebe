const space = new Set([' ', '\t', '\n', '\r']);

/**
 * A JSON text without the white space between its parts: how it was laid out does not count, and every other character does.
 *
 * @param text a text that is JSON
 */
export function compactJson(text: string): string {
  const kept: string[] = [];
  let from = 0;
  let isInText = false;
  for (let at = 0; at < text.length; at++) {
    const character = text.charAt(at);
    if (isInText && character === '\\') at++;
    else if (character === '"') isInText = !isInText;
    else if (!isInText && space.has(character)) {
      kept.push(text.slice(from, at));
      from = at + 1;
    }
  }
  return kept.join('') + text.slice(from);
}
