import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createServer, type Server } from 'node:http';
import type { Express } from 'express';
import { makeApp } from '../../server/app.ts';
import { openStudy, type Study } from '../../server/check/study.ts';
import { listen } from '../../server/listen.ts';
import type { SiteSettings } from '../../server/settings.ts';
import type { Log } from '../../server/log.ts';
import type { PdfWorkers } from '../../server/sheets/pdf/workers.ts';
import { openStore, type Store } from '../../server/store/open-store.ts';

/** One for all test files of a process: its threads take longer to start than most tests do. */
const usualStudy = openStudy();

/** The application on a port of its own, for one test file. */
export interface Served {
  readonly home: string;
  readonly app: Express;
  readonly store: Store;
  readonly faults: unknown[];
  readonly close: () => Promise<void>;
}

/** @param site where people reach it, who then sign in; undefined: this machine alone */
export async function serve(
  site?: SiteSettings,
  {
    ownLog,
    pdfs,
    study = usualStudy,
    databaseUrl = '',
    folder,
    now,
  }: {
    readonly ownLog?: Log;
    readonly pdfs?: PdfWorkers;
    readonly study?: Study;
    readonly databaseUrl?: string;
    /** A data folder that outlives the application; one of its own otherwise. */
    readonly folder?: string;
    readonly now?: () => Date;
  } = {},
): Promise<Served> {
  const faults: unknown[] = [];
  const dataFolder = folder ?? mkdtempSync(join(tmpdir(), 'served-'));
  const store = await openStore({ dataFolder, databaseUrl }, now);
  const log = ownLog ?? { note: () => undefined, report: (error: unknown) => faults.push(error) };
  const app = await makeApp({ store, log, site, study, ...(pdfs === undefined ? {} : { pdfs }) });
  const server: Server = await listen(app, { host: '127.0.0.1', port: 0 });
  // A test that works something out between two requests keeps its connection.
  server.keepAliveTimeout = 0;
  const { port } = server.address() as AddressInfo;
  const close = async (): Promise<void> => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
    await store.close();
    if (folder === undefined) rmSync(dataFolder, { recursive: true });
  };
  return { home: `http://127.0.0.1:${port}`, app, store, faults, close };
}

/** A port that is taken until `close`. */
export async function takenPort(): Promise<{ readonly port: number; readonly close: () => void }> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { port: (server.address() as AddressInfo).port, close: () => void server.close() };
}
