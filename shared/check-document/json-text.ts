import { firstSlip } from './json-position.ts';

/** What came of reading JSON: the value, or one sentence that says where it goes wrong. */
export type JsonReading =
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly message: string };

/** Reads the bytes of a JSON text (RFC 8259: UTF-8; a byte order mark before it is passed over). */
export function readJson(bytes: Uint8Array): JsonReading {
  const text = decode(bytes);
  if (text === undefined) return { ok: false, message: 'It is not JSON: the text is not UTF-8.' };
  if (text.trim() === '') return { ok: false, message: 'It is not JSON: there is nothing in it.' };
  try {
    const value: unknown = JSON.parse(text);
    return { ok: true, value };
  } catch {
    return { ok: false, message: `It is not JSON: ${whereItFails(text)}.` };
  }
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function whereItFails(text: string): string {
  const slip = firstSlip(text) ?? text.length;
  if (slip >= text.length) return 'it ends too early';
  const before = text.slice(0, slip).split('\n');
  const column = (before.at(-1)?.length ?? 0) + 1;
  return `what begins at line ${before.length}, column ${column} can't stand there`;
}
