/** What a page says, without its tags. */
export function plainText(html: string): string {
  return html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&#x27;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');
}

/** What no page may say. */
export const leaks = /\bundefined\b|\bNaN\b|\[object |\bInfinity\b/;
