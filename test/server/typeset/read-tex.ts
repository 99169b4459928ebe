/**
 * Reads the TeX of a formula back into plain arithmetic, as a reader of the page would: fraction bars, exponents, roots,
 * products by a sign or a thin space. It knows nothing of how the TeX was made.
 */
export function arithmeticOf(tex: string): string {
  let at = 0;

  const group = (): string => {
    at += 1;
    const inner = sequence('}');
    at += 1;
    return `(${inner})`;
  };

  /** Braces are not printed: what is in them stands as it is. */
  const unseen = (): string => group().slice(1, -1);

  const raised = (): string => {
    at += 1;
    return `^${group()}`;
  };

  const command = (): string => {
    const [name = ''] = /^\\([a-z]+|[,;])/i.exec(tex.slice(at)) ?? [];
    at += name.length;
    switch (name) {
      case '\\dfrac':
        return `(${group()}/${group()})`;
      case '\\sqrt':
        return `sqrt${group()}`;
      case '\\times':
      case '\\,':
        return '*';
      case '\\;':
        return '';
      case '\\left':
      case '\\right': {
        const fence = tex[at] ?? '';
        at += 1;
        if (fence === '|') return name === '\\left' ? 'abs(' : ')';
        return fence;
      }
      case '\\min':
      case '\\max':
      case '\\exp':
      case '\\sin':
        return name.slice(1);
      case '\\ln':
        return 'log';
      case '\\pi':
        return '3.141592653589793';
      default:
        throw new Error(`A reader would not know ${name || tex.slice(at, at + 10)}`);
    }
  };

  const sequence = (end: string): string => {
    let text = '';
    while (at < tex.length && tex[at] !== end) {
      const sign = tex[at] ?? '';
      if (sign === '\\') text += command();
      else if (sign === '{') text += unseen();
      else if (sign === '^') text += raised();
      else {
        text += sign;
        at += 1;
      }
    }
    return text;
  };

  return sequence('');
}
