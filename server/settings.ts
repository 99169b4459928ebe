import type { Site } from './visits/session-cookie.ts';

/** What the environment says. */
export interface Settings {
  readonly host: string;
  readonly port: number;
  readonly dataFolder: string;
  /** Address of a PostgreSQL database to keep everything in; empty for a file in the data folder. */
  readonly databaseUrl: string;
  /** Where people reach the program, who then have to sign in; undefined: only this machine does. */
  readonly site: SiteSettings | undefined;
}

export interface SiteSettings extends Site {
  /** How many proxies of ours pass requests on: what the others say of where a request comes from is not believed. */
  readonly proxies: number;
}

export type SettingsReading =
  { readonly ok: true; readonly settings: Settings } | { readonly ok: false; readonly message: string };

const loopback = new Set(['127.0.0.1', '::1', 'localhost']);

/**
 * Reads `PORT`, `HOST`, `DATA_DIR`, `DATABASE_URL`, `SITE_ADDRESS` and `PROXIES`. Without a `SITE_ADDRESS` nobody has to sign
 * in, so only this machine may ask: another host is refused.
 *
 * @param environment the variables, as in `process.env`
 */
export function readSettings(environment: Readonly<Record<string, string | undefined>>): SettingsReading {
  const said = (name: string): string => environment[name]?.trim() ?? '';
  const host = said('HOST') || '127.0.0.1';
  if (!loopback.has(host) && said('SITE_ADDRESS') === '') return refuse(openToAll(host));
  const port = wholeNumber(said('PORT') || '3000', 65_535);
  if (port === undefined) {
    return refuse(`PORT is "${said('PORT')}". It takes a whole number from 0 to 65535, such as 3000.`);
  }
  const databaseUrl = said('DATABASE_URL');
  if (databaseUrl !== '' && !/^postgres(?:ql)?:\/\//.test(databaseUrl)) {
    return refuse('DATABASE_URL takes the address of a PostgreSQL database: postgresql://…');
  }
  const site = readSite(said('SITE_ADDRESS'), said('PROXIES'));
  if (typeof site === 'string') return refuse(site);
  return { ok: true, settings: { host, port, dataFolder: said('DATA_DIR') || 'data', databaseUrl, site } };
}

/** @returns a sentence where something is wrong with it */
function readSite(address: string, proxies: string): SiteSettings | undefined | string {
  if (address === '') return undefined;
  const url = URL.canParse(address) ? new URL(address) : undefined;
  const isBare = url?.pathname === '/' && url.search === '' && url.hash === '' && url.username === '';
  if (url === undefined || !isBare || !/^https?:$/.test(url.protocol)) {
    return `SITE_ADDRESS is "${address}". It takes the address people use, without a path, such as https://shelves.example.`;
  }
  const isSecure = url.protocol === 'https:';
  if (!isSecure && !loopback.has(url.hostname.replace(/^\[|\]$/g, ''))) {
    return (
      `SITE_ADDRESS is "${address}": passwords would go over the network for anyone to read. ` +
      'Put a proxy that speaks https in front, and give its https address.'
    );
  }
  const count = wholeNumber(proxies || (isSecure ? '1' : '0'), 10);
  if (count === undefined)
    return `PROXIES is "${proxies}". It takes how many proxies stand in front, from 0 to 10.`;
  return { origin: url.origin, isSecure, proxies: count };
}

function wholeNumber(written: string, most: number): number | undefined {
  return /^\d{1,5}$/.test(written) && Number(written) <= most ? Number(written) : undefined;
}

function refuse(message: string): SettingsReading {
  return { ok: false, message };
}

function openToAll(host: string): string {
  return (
    `HOST is "${host}", which other machines can reach, and nobody would have to sign in. Set SITE_ADDRESS to the address ` +
    'people use, such as https://shelves.example, and make the first account with "npm run account -- owner"; or leave ' +
    'HOST out, and only this machine is served.'
  );
}
