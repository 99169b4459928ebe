import { isFunctionNode, isSymbolNode, type MathNode } from './parser.ts';
import { allowedFunctions } from './evaluator.ts';

/** The symbols of an expression in the order they are first met, function names left out. */
export function symbolsOf(node: MathNode): string[] {
  const names = new Set<string>();
  node.traverse((part, _path, parent) => {
    const isFunctionName = isFunctionNode(parent) && parent.fn === part;
    if (isSymbolNode(part) && !isFunctionName) names.add(part.name);
  });
  return [...names];
}

/** An expression cut at its symbols, so that numbers can be put in without walking the tree again. */
export interface Substitution {
  readonly pieces: readonly string[];
  /** The symbol that stands after each piece but the last. */
  readonly slots: readonly string[];
}

const slotMark = '\u0001';

/** Cuts an expression at its symbols. Precedence is kept by the parentheses the expression itself needs. */
export function substitution(node: MathNode): Substitution {
  const slots: string[] = [];
  const text = node.toString({
    parenthesis: 'keep',
    implicit: 'show',
    handler: (part: MathNode) => {
      if (!isSymbolNode(part) || allowedFunctions.has(part.name)) return undefined;
      slots.push(part.name);
      return slotMark;
    },
  });
  const plain = text.replaceAll(' * ', ' × ').replaceAll(' ^ ', '^');
  return { pieces: plain.split(slotMark), slots };
}

/** The expression with numbers put in for its symbols. */
export function fill(template: Substitution, numbers: Readonly<Record<string, string>>): string {
  let text = template.pieces[0] ?? '';
  template.slots.forEach((slot, index) => {
    text += `${numbers[slot] ?? slot}${template.pieces[index + 1] ?? ''}`;
  });
  return text;
}
