import {
  isConstantNode,
  isFunctionNode,
  isOperatorNode,
  isParenthesisNode,
  isSymbolNode,
  type FunctionNode,
  type MathNode,
  type OperatorNode,
  type OperatorNodeFn,
  type OperatorNodeOp,
} from '../../calc/formula/parser.ts';
import { wordsTex } from './mathml.ts';
import { numberTex } from './number.ts';
import { isPrimed, symbolTex } from './symbol.ts';

/** A typeset piece, with what its neighbours must know of it. */
interface Piece {
  readonly tex: string;
  /** Begins with a digit, or is a fraction: a number in front of it needs a multiplication sign. */
  readonly startsWithNumber: boolean;
  /** Ends with a digit. */
  readonly endsWithNumber: boolean;
  /** Needs parentheses under a power. */
  readonly wrapUnderPower: boolean;
  /** Needs parentheses as an operand that is not the first. */
  readonly wrapAsOperand: boolean;
  /** A number below zero: it needs parentheses wherever it is multiplied. */
  readonly isNegative: boolean;
}

const plain = {
  startsWithNumber: false,
  endsWithNumber: false,
  wrapUnderPower: false,
  wrapAsOperand: false,
  isNegative: false,
};
const quotient: Omit<Piece, 'tex'> = { ...plain, startsWithNumber: true, wrapUnderPower: true };

type Operation = OperatorNode<OperatorNodeOp, OperatorNodeFn>;

interface Setting {
  /** Sets a symbol: as itself, or as the number put in for it. */
  readonly symbol: (name: string) => Piece;
  /** Inside an exponent, where a fraction bar would be too small to read. */
  readonly raised: boolean;
}

/** The TeX of a formula with its symbols. */
export function symbolicTex(node: MathNode): string {
  const symbol = (name: string): Piece => ({
    ...plain,
    tex: symbolTex(name),
    wrapUnderPower: isPrimed(name),
  });
  return piece(unwrapped(node), { symbol, raised: false }).tex;
}

/** A number put in for a symbol; its unit is printed where it has one. */
export interface PutIn {
  readonly number: string;
  readonly unit: string;
}

/**
 * The TeX of a formula with numbers put in for its symbols.
 *
 * @param numbers the printed number of every symbol
 * @throws Error when a symbol has no number, or its text is no number
 */
export function filledTex(node: MathNode, numbers: ReadonlyMap<string, PutIn>): string {
  const symbol = (name: string): Piece => {
    const found = numbers.get(name);
    if (found === undefined) throw new Error(`No number stands for ${name}`);
    const set = numberPiece(found.number);
    return found.unit === '' ? set : { ...set, tex: String.raw`${set.tex}\,${wordsTex(found.unit)}` };
  };
  return piece(unwrapped(node), { symbol, raised: false }).tex;
}

function numberPiece(text: string): Piece {
  const { tex, compound } = numberTex(text);
  return {
    tex,
    startsWithNumber: true,
    endsWithNumber: true,
    wrapUnderPower: true,
    wrapAsOperand: compound,
    isNegative: text.startsWith('-'),
  };
}

function piece(node: MathNode, setting: Setting): Piece {
  if (isSymbolNode(node)) return setting.symbol(node.name);
  if (isConstantNode(node) && node.value === Math.PI) return { ...plain, tex: String.raw`\pi` };
  if (isConstantNode(node)) return { ...numberPiece(String(node.value)), wrapUnderPower: false };
  if (isParenthesisNode(node)) return { ...plain, tex: parenthesised(piece(node.content, setting).tex) };
  if (isFunctionNode(node)) return functionPiece(node, setting);
  if (isOperatorNode(node)) return operatorPiece(node, setting);
  throw new Error(`"${node.toString()}" can't be typeset`);
}

function operatorPiece(node: Operation, setting: Setting): Piece {
  const [left, right] = node.args;
  if (left === undefined) throw new Error(`"${node.toString()}" has no operand`);
  if (right === undefined) {
    if (node.fn !== 'unaryMinus') throw new Error(`"${node.toString()}" can't be typeset`);
    const operand = piece(left, setting);
    return { ...operand, tex: `-${asOperand(operand)}`, wrapUnderPower: true, wrapAsOperand: true };
  }
  switch (node.op) {
    case '+':
    case '-': {
      const [first, second] = [piece(left, setting), piece(right, setting)];
      return { ...plain, tex: `${first.tex} ${node.op} ${asOperand(second)}`, wrapUnderPower: true };
    }
    case '*':
      return productPiece(piece(left, setting), piece(right, setting));
    case '/':
      return quotientPiece(node, setting);
    case '^':
      return powerPiece(left, right, setting);
    default:
      throw new Error(`"${node.op}" can't be typeset`);
  }
}

function productPiece(left: Piece, right: Piece): Piece {
  const sign = right.startsWithNumber && (left.endsWithNumber || !right.tex.startsWith(String.raw`\dfrac`));
  return {
    tex: `${left.isNegative ? parenthesised(left.tex) : left.tex} ${sign ? String.raw`\times` : String.raw`\,`} ${asOperand(right)}`,
    startsWithNumber: left.startsWithNumber,
    endsWithNumber: right.endsWithNumber,
    wrapUnderPower: true,
    wrapAsOperand: false,
    isNegative: false,
  };
}

/** One fraction bar for a chain of divisions: `5*w*L^4/384/EI` is 5wL⁴ over 384 EI. */
function quotientPiece(node: Operation, setting: Setting): Piece {
  const under: MathNode[] = [];
  let over: MathNode = node;
  while (isOperatorNode(over) && over.op === '/') {
    const [numerator, denominator]: MathNode[] = over.args;
    if (numerator === undefined || denominator === undefined) break;
    under.unshift(denominator);
    over = numerator;
  }
  if (setting.raised) {
    const parts = [over, ...under].map((part) => piece(part, setting));
    return {
      ...quotient,
      tex: parts.map((part) => (part.wrapUnderPower ? parenthesised(part.tex) : part.tex)).join('/'),
    };
  }
  const single = under.length === 1;
  const denominator = under
    .map((part) => piece(single ? unwrapped(part) : part, setting))
    .reduce((product, factor) => productPiece(product, factor));
  return { ...quotient, tex: String.raw`\dfrac{${piece(unwrapped(over), setting).tex}}{${denominator.tex}}` };
}

function powerPiece(base: MathNode, exponent: MathNode, setting: Setting): Piece {
  const below = piece(base, setting);
  const wrapped = below.wrapUnderPower ? parenthesised(below.tex) : below.tex;
  const above = piece(unwrapped(exponent), { ...setting, raised: true });
  return { ...plain, tex: `{${wrapped}}^{${above.tex}}`, startsWithNumber: below.startsWithNumber };
}

const upright: Readonly<Record<string, string>> = {
  min: String.raw`\min`,
  max: String.raw`\max`,
  exp: String.raw`\exp`,
  log: String.raw`\ln`,
  sin: String.raw`\sin`,
  cos: String.raw`\cos`,
  tan: String.raw`\tan`,
};

function functionPiece(node: FunctionNode, setting: Setting): Piece {
  const name = node.fn.name;
  const [first, second] = node.args;
  if (first === undefined) throw new Error(`"${name}" has no operand`);
  if (name === 'pow' && second !== undefined) return powerPiece(first, second, setting);
  const args = node.args.map((argument) => piece(unwrapped(argument), setting).tex);
  if (name === 'sqrt') return { ...plain, tex: String.raw`\sqrt{${args.join('')}}` };
  if (name === 'abs') return { ...plain, tex: String.raw`\left|${args.join('')}\right|` };
  const command = upright[name];
  if (command === undefined) throw new Error(`The function "${name}" can't be typeset`);
  return { ...plain, tex: `${command}${parenthesised(args.join(String.raw`,\; `))}`, wrapUnderPower: true };
}

function asOperand(operand: Piece): string {
  return operand.wrapAsOperand ? parenthesised(operand.tex) : operand.tex;
}

/** Parentheses grow around what is tall; around a plain number they stay as they are, close to it. */
function parenthesised(tex: string): string {
  return /\\(dfrac|sqrt)/.test(tex) ? String.raw`\left(${tex}\right)` : `(${tex})`;
}

/** Parentheses that a fraction bar, a root, an exponent or a comma makes idle. */
function unwrapped(node: MathNode): MathNode {
  return isParenthesisNode(node) ? unwrapped(node.content) : node;
}
