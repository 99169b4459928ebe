/** A text as it is sorted and searched: without marks over letters, in lower case, with single spaces. */
export function sortKey(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .trim();
}

/** The text of a search as a pattern for `like … escape '\'`: whatever is written stands for itself. */
export function likePattern(search: string): string {
  return `%${sortKey(search).replace(/[\\%_]/g, String.raw`\$&`)}%`;
}
