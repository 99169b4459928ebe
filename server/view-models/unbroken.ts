/** Units and signs that stand behind a number in our sentences. */
const behind = /(?<=\d) (?=(?:in|ft|mm|cm|m|lbf?|N|kN|kg|psf|kPa|psi|MPa)\b|%)/g;

/** Words in which no line parts a number from its unit, by no-break spaces (Unicode U+00A0). */
export function unbroken(words: string): string {
  return words.replace(behind, '\u00a0');
}
