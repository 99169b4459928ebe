import { makeApp } from './app.ts';
import { listen, stop } from './listen.ts';
import { openStore } from './store/open-store.ts';
import { readSettings } from './settings.ts';

const reading = readSettings(process.env);
if (!reading.ok) fail(reading.message);

try {
  const store = await openStore(reading.settings);
  const server = await listen(await makeApp({ store }), reading.settings);
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : reading.settings.port;
  const host = reading.settings.host === '::1' ? '[::1]' : reading.settings.host;
  const home = `http://${host}:${port}`;
  console.log(`Shelf and overhang check: ${home}/`);
  console.log(`A check to begin with: ${home}/demo`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(
      signal,
      () =>
        void stop(server)
          .then(() => store.close())
          .then(() => process.exit(0)),
    );
  }
} catch (error) {
  fail(error instanceof Error ? error.message : String(error));
}

function fail(message: string): never {
  console.error(message);
  process.exit(1);
}
