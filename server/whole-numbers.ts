/** What a page shows in ways of its own, with everything in it; what is kept together already; and tags. */
const passedOver =
  /<(svg|math|script|style|textarea|select|title)\b[\s\S]*?<\/\1>|<span class="one-number">[^<]*<\/span>|<[^>]*>/;
/** A mixed number or a fraction, with the unit behind it: "11-1/4 in", "2 3/16 in", "3/4 in". */
const wholeNumber = /(?<![\w/.-])(?:\d+[- \u00a0])?\d+\/\d+(?:[ \u00a0](?:in|ft)\b)?/;
const either = new RegExp(`${passedOver.source}|${wholeNumber.source}`, 'g');

/**
 * Keeps every mixed number of a page together at the ends of lines: browsers break one behind its hyphen or its space. The letters
 * stay as they are, so that what is copied from the page can be read again.
 *
 * @param html a page or a part of one, as our templates make it
 */
export function wholeNumbers(html: string): string {
  return html.replace(either, (found) =>
    found.startsWith('<') || !/[- \u00a0]/.test(found) ? found : `<span class="one-number">${found}</span>`,
  );
}
