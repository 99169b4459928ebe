import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay, performance } from 'node:perf_hooks';
import type { RequestListener } from 'node:http';
import express from 'express';
import { makeApp } from '../../server/app.ts';
import { listen } from '../../server/listen.ts';
import { quietLog } from '../../server/log.ts';
import { openStore } from '../../server/store/open-store.ts';

/*
 * A server in a process of its own, for the bench: `app` is the whole application, `echo` gives a JSON body back.
 * Tells its parent the port it has. `timed` tells it more when asked: the time each request took from its first line to the
 * last byte handed over, and the longest it answered nobody, both since it was last asked. Ends with its parent.
 */

const bodyLimit = '256kb';
const spent_ms: number[] = [];
const loop = monitorEventLoopDelay({ resolution: 1 });

function echo(): RequestListener {
  const app = express();
  app.disable('x-powered-by').post('/api/checks', express.json({ limit: bodyLimit }), (request, response) => {
    response.json(request.body);
  });
  return app;
}

function timed(app: RequestListener): RequestListener {
  loop.enable();
  return (request, response) => {
    const start = performance.now();
    response.once('finish', () => spent_ms.push(performance.now() - start));
    app(request, response);
  };
}

const dataFolder = mkdtempSync(join(tmpdir(), 'bench-'));
process.once('exit', () => rmSync(dataFolder, { recursive: true }));
const app =
  process.argv[2] === 'echo'
    ? echo()
    : await makeApp({
        store: await openStore({ dataFolder, databaseUrl: '' }),
        log: quietLog,
        site: undefined,
      });
const isTimed = process.argv[3] === 'timed';
const server = await listen(isTimed ? timed(app) : app, { host: '127.0.0.1', port: 0 });
// Whoever comes again after a while does not find the line closed just then.
server.keepAliveTimeout = 0;
const address = server.address();
if (address === null || typeof address === 'string') throw new Error('no port');
process.on('disconnect', () => process.exit());
// What came just before is noted when the loop has come round once more.
process.on('message', () =>
  setTimeout(() => {
    process.send?.({ spent_ms: spent_ms.splice(0), blocked_ms: loop.max / 1e6 });
    loop.reset();
  }, 5),
);
process.send?.({ port: address.port });
