/** A page without what keeps its mixed numbers together, which changes no letter of it. */
export function loosened(html: string): string {
  return html.replace(/<span class="one-number">([^<]*)<\/span>/g, '$1');
}

/** What a page says, without its tags. */
export function plainText(html: string): string {
  return loosened(html)
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&#x27;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');
}

/** What no page may say. */
export const leaks = /\bundefined\b|\bNaN\b|\[object |\bInfinity\b/;
