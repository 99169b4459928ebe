/** What the environment says. */
export interface Settings {
  readonly host: string;
  readonly port: number;
  readonly dataFolder: string;
  /** Address of a PostgreSQL database to keep everything in; empty for a file in the data folder. */
  readonly databaseUrl: string;
}

export type SettingsReading =
  { readonly ok: true; readonly settings: Settings } | { readonly ok: false; readonly message: string };

const loopback = new Set(['127.0.0.1', '::1', 'localhost']);

/**
 * Reads `PORT`, `HOST`, `DATA_DIR` and `DATABASE_URL`. There are no accounts yet, so only this machine may ask: another host is refused.
 *
 * @param environment the variables, as in `process.env`
 */
export function readSettings(environment: Readonly<Record<string, string | undefined>>): SettingsReading {
  const host = environment['HOST']?.trim() || '127.0.0.1';
  if (!loopback.has(host)) {
    const message =
      `HOST is "${host}", which other machines can reach. There are no accounts yet, so anyone there could use this ` +
      'program: it only listens on this machine. Leave HOST out, or set it to 127.0.0.1.';
    return { ok: false, message };
  }
  const written = environment['PORT']?.trim() || '3000';
  const port = Number(written);
  if (!/^\d{1,5}$/.test(written) || port > 65_535) {
    return {
      ok: false,
      message: `PORT is "${written}". It takes a whole number from 0 to 65535, such as 3000.`,
    };
  }
  const dataFolder = environment['DATA_DIR']?.trim() || 'data';
  const databaseUrl = environment['DATABASE_URL']?.trim() ?? '';
  if (databaseUrl !== '' && !/^postgres(?:ql)?:\/\//.test(databaseUrl)) {
    return { ok: false, message: 'DATABASE_URL takes the address of a PostgreSQL database: postgresql://…' };
  }
  return { ok: true, settings: { host, port, dataFolder, databaseUrl } };
}
