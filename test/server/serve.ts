import type { AddressInfo } from 'node:net';
import { createServer, type Server } from 'node:http';
import { makeApp } from '../../server/app.ts';
import { listen } from '../../server/listen.ts';

/** The application on a port of its own, for one test file. */
export interface Served {
  readonly home: string;
  readonly faults: unknown[];
  readonly close: () => Promise<void>;
}

export async function serve(): Promise<Served> {
  const faults: unknown[] = [];
  const server: Server = await listen(
    makeApp((error) => faults.push(error)),
    { host: '127.0.0.1', port: 0, dataFolder: 'data' },
  );
  // A test that works something out between two requests keeps its connection.
  server.keepAliveTimeout = 0;
  const { port } = server.address() as AddressInfo;
  const close = async (): Promise<void> => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  };
  return { home: `http://127.0.0.1:${port}`, faults, close };
}

/** A port that is taken until `close`. */
export async function takenPort(): Promise<{ readonly port: number; readonly close: () => void }> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { port: (server.address() as AddressInfo).port, close: () => void server.close() };
}
