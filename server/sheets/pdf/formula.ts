import { tex2typst } from 'tex2typst';

/** A caret inside a unit, as TeX has to write it: `\text{lbf/in\text{\textasciicircum}1.75}`. */
const raisedUnit = /\\text\{([^{}]*)\\text\{\\textasciicircum\}([\d.]+)\}/g;

/**
 * A formula as Typst's own math markup, from the TeX the typesetter makes.
 *
 * @throws Error when the TeX can't be read
 */
export function typstFormula(tex: string): string {
  return tex2typst(tex.replace(raisedUnit, String.raw`\text{$1}^{$2}`));
}
