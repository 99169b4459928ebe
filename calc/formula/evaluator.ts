import {
  isConstantNode,
  isFunctionNode,
  isOperatorNode,
  isParenthesisNode,
  isSymbolNode,
  type MathNode,
} from './parser.ts';

/** Numbers by symbol. */
export type Values = Readonly<Record<string, number>>;

/** A parse tree made ready to run on plain numbers. */
export type Evaluator = (values: Values) => number;

const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  sqrt: Math.sqrt,
  min: Math.min,
  max: Math.max,
  abs: Math.abs,
  exp: Math.exp,
  log: Math.log,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  pow: Math.pow,
};

/** Names of the functions a formula may use. */
export const allowedFunctions: ReadonlySet<string> = new Set(Object.keys(functions));

/**
 * Turns a parse tree into nested functions on plain numbers. The tree stays the only form of the formula: what is
 * printed and what is executed are read from it alike.
 *
 * @throws Error where the tree holds anything but arithmetic on symbols and numbers
 */
export function evaluatorOf(node: MathNode): Evaluator {
  if (isParenthesisNode(node)) return evaluatorOf(node.content);
  if (isConstantNode(node) && typeof node.value === 'number') {
    const { value } = node;
    return () => value;
  }
  if (isSymbolNode(node)) {
    const { name } = node;
    return (values) => values[name] ?? NaN;
  }
  if (isOperatorNode(node)) return operator(node.op, node.args.map(evaluatorOf));
  if (isFunctionNode(node)) {
    const name = isSymbolNode(node.fn) ? node.fn.name : '';
    const called = Object.hasOwn(functions, name) ? functions[name] : undefined;
    const args = node.args.map(evaluatorOf);
    if (called !== undefined) return (values) => called(...args.map((arg) => arg(values)));
  }
  throw new Error(`"${node.toString()}" holds more than arithmetic: ${node.type}`);
}

function operator(sign: string, [left, right]: readonly Evaluator[]): Evaluator {
  if (left !== undefined && right === undefined && sign === '-') return (values) => -left(values);
  if (left !== undefined && right !== undefined) {
    if (sign === '+') return (values) => left(values) + right(values);
    if (sign === '-') return (values) => left(values) - right(values);
    if (sign === '*') return (values) => left(values) * right(values);
    if (sign === '/') return (values) => left(values) / right(values);
    if (sign === '^') return (values) => left(values) ** right(values);
  }
  throw new Error(`a formula has no operator "${sign}"`);
}
