/** Words as a list in a sentence: `4 in, 36 in and 92 in`. */
export function listed(words: readonly string[], last: 'or' | 'and' = 'and'): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1) ?? ''}`;
}

export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A sentence or a name inside another sentence; what begins with an abbreviation, such as MDF, stays. */
export function lowerFirst(text: string): string {
  return /^\p{Lu}(?!\p{Lu})/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
