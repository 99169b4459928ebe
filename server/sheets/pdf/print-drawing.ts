/** A drawing for paper: SVG that needs no stylesheet, and what it shows in words. */
export interface PrintDrawing {
  readonly svg: string;
  readonly words: string;
}

const paperFont = 'Source Sans 3';

/**
 * A drawing of the page made fit for paper: black for the colour of the text around it, the sheet's own font, and title and
 * description taken out of the picture, where they are the alternative text.
 */
export function printDrawing(svg: string): PrintDrawing {
  const title = contentOf(svg, 'title');
  const description = contentOf(svg, 'desc');
  const plain = svg
    .replace(/<title>.*?<\/title>/s, '')
    .replace(/<desc>.*?<\/desc>/s, '')
    .replace(/ (?:class|role|aria-hidden|focusable)="[^"]*"/g, '')
    .replaceAll('"currentColor"', '"#000"')
    .replace(/ font-family="[^"]*"/g, ` font-family="${paperFont}"`);
  const named = plain.includes('xmlns=')
    ? plain
    : plain.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"');
  return { svg: named, words: [title, description].filter((each) => each !== '').join('. ') };
}

function contentOf(svg: string, element: string): string {
  const content = new RegExp(`<${element}>(.*?)</${element}>`, 's').exec(svg)?.[1] ?? '';
  return content
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}
