import { existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { isProgram } from './is-program.ts';

const packaged = '/usr/lib/postgresql';

/** The folder with the programs of a PostgreSQL server (`initdb`, `postgres`); undefined: there is none. */
export function findPostgres(): string | undefined {
  const versions = existsSync(packaged) ? readdirSync(packaged).sort().reverse() : [];
  const folders = [
    ...versions.map((version) => join(packaged, version, 'bin')),
    ...(process.env['PATH'] ?? '').split(delimiter),
  ];
  return folders.find((folder) => ['initdb', 'postgres'].every((name) => isProgram(join(folder, name))));
}
