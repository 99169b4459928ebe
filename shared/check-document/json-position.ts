/** What the grammar of JSON (RFC 8259) takes next. */
type Awaits = 'value' | 'value or ]' | 'name' | 'name or }' | ':' | ', or ]' | ', or }' | 'end';

const blanks = /[ \t\n\r]*/y;
const token =
  /[[\]{}:,]|true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|"(?:[^"\\\p{Cc}]|[\u{7f}-\u{9f}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;

/**
 * Finds where a text stops being JSON: the index at which something begins that can't stand there, or the length of the
 * text where it ends too early; undefined where it is JSON. JavaScript's own parser words this differently in every
 * engine, and often leaves it out.
 */
export function firstSlip(text: string): number | undefined {
  const open: string[] = [];
  let awaits: Awaits = 'value';
  let at = pastBlanks(text, 0);
  while (at < text.length) {
    token.lastIndex = at;
    const found = token.exec(text)?.[0];
    const next: Awaits | undefined = found === undefined ? undefined : after(awaits, found, open);
    if (next === undefined) return at;
    awaits = next;
    at = pastBlanks(text, token.lastIndex);
  }
  return awaits === 'end' ? undefined : at;
}

/** What is awaited after a token; undefined where it can't stand there. Keeps the list of what is open. */
function after(awaits: Awaits, found: string, open: string[]): Awaits | undefined {
  if (awaits.endsWith(found) && (found === ']' || found === '}')) {
    open.pop();
    return afterValue(open);
  }
  if (awaits.startsWith('name')) return found.startsWith('"') ? ':' : undefined;
  if (awaits === ':') return found === ':' ? 'value' : undefined;
  if (awaits === ', or ]') return found === ',' ? 'value' : undefined;
  if (awaits === ', or }') return found === ',' ? 'name' : undefined;
  if (awaits === 'end' || /^[\]}:,]/.test(found)) return undefined;
  if (found !== '[' && found !== '{') return afterValue(open);
  open.push(found);
  return found === '[' ? 'value or ]' : 'name or }';
}

function afterValue(open: readonly string[]): Awaits {
  const innermost = open.at(-1);
  if (innermost === undefined) return 'end';
  return innermost === '[' ? ', or ]' : ', or }';
}

function pastBlanks(text: string, from: number): number {
  blanks.lastIndex = from;
  blanks.exec(text);
  return blanks.lastIndex;
}
