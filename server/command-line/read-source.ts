import { createReadStream } from 'node:fs';
import { resolve } from 'node:path';
import { readJson, type JsonReading } from '../../shared/check-document/index.ts';

/** The largest file taken, in bytes. */
const largestFile = 1_000_000;

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  ENOTDIR: 'There is no such file.',
  ENAMETOOLONG: 'There is no such file.',
  EISDIR: 'It is a directory, not a file.',
  EACCES: 'It may not be read by this user.',
  EPERM: 'It may not be read by this user.',
};

/**
 * Reads the JSON of one source.
 *
 * @param source a path, or `-` for standard input
 * @param folder where a relative path starts from
 * @returns the value, or one sentence that says why there is none; it does not throw
 */
export async function readSource(source: string, folder: string): Promise<JsonReading> {
  try {
    const stream = source === '-' ? process.stdin : createReadStream(resolve(folder, source));
    const bytes = await collect(stream);
    return bytes === undefined ? refuse('It is larger than 1 MB.') : readJson(bytes);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    const known = Object.hasOwn(reasons, code) ? reasons[code] : undefined;
    return refuse(known ?? `It can't be read${code === '' ? '' : ` (${code})`}.`);
  }
}

async function collect(stream: AsyncIterable<unknown>): Promise<Uint8Array | undefined> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    const bytes = Buffer.isBuffer(chunk) ? chunk : Buffer.from(String(chunk));
    size += bytes.length;
    if (size > largestFile) return undefined;
    chunks.push(bytes);
  }
  return Buffer.concat(chunks);
}

function refuse(message: string): JsonReading {
  return { ok: false, message };
}
