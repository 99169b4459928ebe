import { makeApp } from './app.ts';
import { openStudy } from './check/study.ts';
import { listen, stop } from './listen.ts';
import { openStore } from './store/open-store.ts';
import { hasOwner } from './store/people.ts';
import { openLog, quietLog } from './log.ts';
import { readSettings } from './settings.ts';
import { createPdfWorkers } from './sheets/pdf/workers.ts';

const noAccounts =
  'There are no accounts yet, so nobody could sign in. Make the first one on this machine, with the same DATA_DIR or ' +
  'DATABASE_URL: npm run account -- owner --office "Office" --name "A. Person" --sign-in person@example.org';
const reading = readSettings(process.env);
if (!reading.ok) fail(reading.message);

try {
  const { site } = reading.settings;
  const store = await openStore(reading.settings);
  if (site !== undefined && !(await hasOwner(store))) fail(noAccounts);
  const log = site === undefined ? quietLog : openLog();
  let isStopping = false;
  const pdfs = createPdfWorkers();
  const study = openStudy();
  const app = await makeApp({ store, log, site, isStopping: () => isStopping, pdfs, study });
  const server = await listen(app, reading.settings);
  study.warm();
  pdfs.warm('sheet');
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : reading.settings.port;
  const host = reading.settings.host === '::1' ? '[::1]' : reading.settings.host;
  const home = `http://${host}:${port}`;
  if (site === undefined) {
    console.log(`Shelf and overhang check: ${home}/`);
    console.log(`A check to begin with: ${home}/demo`);
  } else {
    log.note('listening', { host, port });
  }
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      isStopping = true;
      log.note('stopping');
      void stop(server)
        .then(() => store.close())
        .then(() => process.exit(0));
    });
  }
} catch (error) {
  fail(error instanceof Error ? error.message : String(error));
}

function fail(message: string): never {
  console.error(message);
  process.exit(1);
}
