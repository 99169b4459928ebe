/** Everything the letters of the sheet have: Latin, Greek and Cyrillic, punctuation, arrows, mathematics and drawn shapes. */
const known =
  /^[\n\u0020-\u007e\u00a0-\u024f\u0370-\u04ff\u1e00-\u1eff\u2000-\u2027\u202f-\u205f\u2070-\u22ff\u25a0-\u25ff]$/u;

/** Text with each character that the sheet has no letter for as its number, `[U+6728]`: printed alike on every machine. */
export function printable(text: string): string {
  return [...text].map((each) => (known.test(each) ? each : codeOf(each))).join('');
}

function codeOf(character: string): string {
  const code = character.codePointAt(0) ?? 0xfffd;
  return /\p{M}|\p{C}/u.test(character) ? '' : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
}

/** A place to break in every word that is longer than a column. */
export function breakable(text: string): string {
  return text.replace(/\S{24}(?=\S)/g, '$&\u200b');
}
