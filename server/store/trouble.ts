/** Why nothing could be read or kept, in words for whoever uses the program. */
export interface Trouble {
  readonly message: string;
}

const sqlite: readonly (readonly [string, string])[] = [
  ['SQLITE_FULL', 'The disk the jobs are kept on is full.'],
  ['SQLITE_READONLY', 'The folder the jobs are kept in can’t be written in.'],
  ['SQLITE_BUSY', 'Another program holds the file the jobs are kept in.'],
  ['SQLITE_CANTOPEN', 'The file the jobs are kept in can’t be opened.'],
  ['SQLITE_IOERR', 'The disk the jobs are kept on does not answer as it should.'],
  ['SQLITE_CORRUPT', 'The file the jobs are kept in is damaged.'],
  ['SQLITE_NOTADB', 'The file the jobs are kept in is damaged.'],
];
const postgres: readonly (readonly [string, string])[] = [
  ['53100', 'The disk the jobs are kept on is full.'],
  ['25006', 'The database the jobs are kept in can’t be written in.'],
];
const gone = 'The database the jobs are kept in does not answer.';
const goneCodes = /^(?:ECONN|ENOENT|EPIPE|ETIMEDOUT|EHOSTUNREACH|ENOTFOUND|EAI_|08|57|53)/;
const goneWords =
  /connection terminated|timeout exceeded when trying to connect|driver has already been destroyed/i;

/**
 * Tells trouble with the place where things are kept, which passes or which whoever runs the program can put right, from a
 * fault of the program.
 *
 * @returns undefined where the error is a fault
 */
export function troubleOf(error: unknown): Trouble | undefined {
  if (!(error instanceof Error)) return undefined;
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const known = [...sqlite, ...postgres].find(([start]) => code.startsWith(start));
  if (known !== undefined) return { message: known[1] };
  if (goneCodes.test(code) || goneWords.test(error.message)) return { message: gone };
  return error instanceof AggregateError ? troubleOf(error.errors[0]) : undefined;
}
