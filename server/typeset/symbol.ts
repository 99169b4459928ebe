/** Names of Greek letters that a symbol may begin with, as they are typed. */
export const greekLetters: readonly string[] = (
  'alpha beta gamma delta epsilon zeta eta theta kappa lambda mu nu xi rho sigma tau phi chi psi omega ' +
  'Gamma Delta Theta Lambda Sigma Phi Psi Omega'
).split(' ');

const greek: ReadonlySet<string> = new Set(greekLetters);

/** Subscripts that are a sign rather than a letter or a word. */
const signs: Readonly<Record<string, string>> = { perp: String.raw`\perp`, para: String.raw`\parallel` };

/**
 * The TeX of a formula's symbol. A name is `base[_sub[_sub...]][_prime]`: `F_b_prime` is F′ with subscript b, `f_c_perp`
 * has the subscript c⟂, `Delta_T` is Δ with subscript T. Single letters are slanted, words upright.
 *
 * @throws Error when the name is not made of letters, digits and single underlines
 */
export function symbolTex(name: string): string {
  if (!/^[A-Za-z][A-Za-z0-9]*(_[A-Za-z0-9]+)*$/.test(name))
    throw new Error(`"${name}" is not the name of a symbol`);
  const [base = '', ...parts] = name.split('_');
  const primed = parts.at(-1) === 'prime';
  const subscripts = primed ? parts.slice(0, -1) : parts;
  return `${baseTex(base)}${subscriptTex(subscripts)}${primed ? "'" : ''}`;
}

/** Whether the symbol's TeX must be wrapped before an exponent is set on it. */
export function isPrimed(name: string): boolean {
  return name.endsWith('_prime');
}

function baseTex(base: string): string {
  const letter = letterTex(base);
  if (letter !== undefined) return letter;
  const numbered = /^([A-Za-z])(\d+)$/.exec(base);
  if (numbered !== null) return `${numbered[1]}_{${numbered[2]}}`;
  return String.raw`\mathit{${base}}`;
}

function letterTex(text: string): string | undefined {
  if (greek.has(text)) return `\\${text}`;
  return text.length === 1 ? text : undefined;
}

/** A sign follows its letter closely (c⟂); anything else after the first part stands behind a comma. */
function subscriptTex(parts: readonly string[]): string {
  if (parts.length === 0) return '';
  const joined = parts
    .map((part, index) => {
      const sign = signs[part];
      if (sign !== undefined) return sign;
      return `${index === 0 ? '' : ','}${letterTex(part) ?? (/^\d+$/.test(part) ? part : String.raw`\mathrm{${part}}`)}`;
    })
    .join('');
  return `_{${joined}}`;
}
