/** A count that was sent, from 0 to under a thousand million; 0 for anything else. */
export function wholeNumber(text: string | null): number {
  return text !== null && /^\d{1,9}$/.test(text) ? Number(text) : 0;
}
