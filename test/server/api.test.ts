import { request as httpRequest, type Server } from 'node:http';
import { gzipSync } from 'node:zlib';
import express from 'express';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check, layouts, reach } from '../../calc/index.ts';
import { demoCheck } from '../../server/demo.ts';
import { openStudy } from '../../server/check/study.ts';
import { apiRoutes } from '../../server/routes/api-checks.ts';
import { isValid } from './json-schema.ts';

let server: Server;
let base: string;
const faults: unknown[] = [];

beforeAll(async () => {
  const app = express();
  app.use(
    '/api',
    apiRoutes(openStudy(), (fault) => faults.push(fault)),
  );
  await new Promise<void>((resolve) => {
    server = app.listen(0, '127.0.0.1', () => resolve());
  });
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('No port');
  base = `http://127.0.0.1:${address.port}/api`;
});

afterAll(() => {
  server.close();
  server.closeAllConnections();
  expect(faults).toEqual([]);
});

interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly errors: readonly { readonly path: string; readonly message: string }[];
}

async function post(
  body: string | Uint8Array<ArrayBuffer>,
  headers: Record<string, string> = {},
): Promise<Response> {
  return fetch(`${base}/checks`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body,
  });
}

/** A problem as RFC 9457 has it: the media type, and the members with the status repeated in the body. */
async function problemOf(response: Response, status: number): Promise<Problem> {
  expect(response.status).toBe(status);
  expect(response.headers.get('content-type')).toBe('application/problem+json; charset=utf-8');
  const text = await response.text();
  expect(text).not.toMatch(/node_modules|\bat .+:\d+:\d+/);
  const problem = JSON.parse(text) as Problem;
  expect(Object.keys(problem)).toEqual(['type', 'title', 'status', 'detail', 'errors']);
  expect(problem.type).toBe('about:blank');
  expect(problem.status).toBe(status);
  expect(problem.detail).not.toBe('');
  return problem;
}

describe('POST /api/checks', () => {
  it('answers a document with its result, the same that the library gives', async () => {
    const response = await post(JSON.stringify(demoCheck));
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/json; charset=utf-8');
    expect(await response.json()).toEqual(JSON.parse(JSON.stringify(check(demoCheck))));
  });

  it('takes a body that is packed, marked with a byte order mark, or of a type built on JSON', async () => {
    const text = JSON.stringify(demoCheck);
    expect((await post(new Uint8Array(gzipSync(text)), { 'content-encoding': 'gzip' })).status).toBe(200);
    expect((await post(`\u{FEFF}${text}`)).status).toBe(200);
    expect((await post(text, { 'content-type': 'application/json; charset=utf-8' })).status).toBe(200);
    expect((await post(text, { 'content-type': 'application/shelf+json' })).status).toBe(200);
  });

  it.each([
    ['text', 'a shelf', 'what begins at line 1, column 1'],
    ['a slip on the second line', '{\n  "schema": 1,,\n}', 'what begins at line 2, column 15'],
    ['half a document', '{"schema": 1', 'it ends too early'],
    ['nothing', '', 'there is nothing in it'],
    ['blanks', ' \n ', 'there is nothing in it'],
    ['NaN', '{"schema": NaN}', 'what begins at line 1, column 12'],
  ])('answers %s with 400', async (_what, body, where) => {
    const problem = await problemOf(await post(body), 400);
    expect(problem.title).toBe('Bad Request');
    expect(problem.detail).toContain(where);
  });

  it('answers bytes that are not UTF-8, or not what they are packed as, with 400', async () => {
    await problemOf(await post(new Uint8Array([0x22, 0xff, 0x22])), 400);
    await problemOf(await post(new Uint8Array([1, 2, 3]), { 'content-encoding': 'gzip' }), 400);
  });

  it('answers a document with errors with 422 and all of them at once', async () => {
    const board = { ...demoCheck.board, length: '96', depth: '3 lbf', thicknes: '1 in' };
    const problem = await problemOf(
      await post(JSON.stringify({ ...demoCheck, board, limits: { live: 3 } })),
      422,
    );
    expect(problem.title).toBe('Unprocessable Entity');
    expect(problem.errors.map(({ path }) => path)).toEqual([
      '/board/length',
      '/board/depth',
      '/board/thicknes',
      '/limits/live',
    ]);
    expect(problem.detail).toContain('4 errors');
  });

  it.each(['null', '[]', '3', '"text"', 'true'])(
    'answers the JSON %s, which is no document, with 422',
    async (body) => {
      const problem = await problemOf(await post(body), 422);
      expect(problem.errors).toEqual([{ path: '', message: 'It takes a JSON object, the check document.' }]);
    },
  );

  it('answers more than 256 kB with 413, however it comes', async () => {
    const large = JSON.stringify({ ...demoCheck, title: 'x'.repeat(5_000_000) });
    expect((await problemOf(await post(large), 413)).detail).toContain('256 kB');
    await problemOf(await post(new Uint8Array(gzipSync(large)), { 'content-encoding': 'gzip' }), 413);
    const justFits = JSON.stringify(demoCheck).padEnd(256 * 1024);
    expect((await post(justFits)).status).toBe(200);
    await problemOf(await post(`${justFits} `), 413);
  });

  it('answers a deep nest and a long list soon', async () => {
    const start = performance.now();
    await problemOf(await post('['.repeat(120_000)), 400);
    await problemOf(await post('['.repeat(120_000) + ']'.repeat(120_000)), 422);
    for (const element of ['bracket-shelf', 'counter-overhang']) {
      const nest = `{"element":"${element}","board":${'{"a":'.repeat(40_000)}1${'}'.repeat(40_001)}`;
      await problemOf(await post(nest), 422);
    }
    await problemOf(
      await post(JSON.stringify({ ...demoCheck, loads: Array(100_000).fill({}) }).slice(0, 200_000)),
      400,
    );
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'application/xml', 'json', ''])(
    'answers the content type "%s" with 415',
    async (type) => {
      const response = await post(JSON.stringify(demoCheck), { 'content-type': type });
      expect(response.headers.get('accept-post')).toBe('application/json');
      await problemOf(response, 415);
    },
  );

  it('answers a way of packing it does not know with 415', async () => {
    await problemOf(await post('{}', { 'content-encoding': 'lzma' }), 415);
  });

  it('survives a caller who hangs up in the middle', async () => {
    await new Promise<void>((resolve) => {
      const call = httpRequest(`${base}/checks`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'content-length': '1000' },
      });
      call.on('error', () => resolve());
      call.write('{"schema":');
      setTimeout(() => call.destroy(new Error('hung up')), 50);
    });
    expect((await post(JSON.stringify(demoCheck))).status).toBe(200);
  });
});

describe('wrong methods and addresses', () => {
  it.each([
    ['/checks', 'GET', 'POST'],
    ['/checks', 'PUT', 'POST'],
    ['/checks', 'DELETE', 'POST'],
    ['/schema', 'POST', 'GET, HEAD'],
    ['/catalogue', 'PATCH', 'GET, HEAD'],
  ])('%s answers %s with 405 and what it allows', async (address, method, allowed) => {
    const response = await fetch(base + address, { method });
    expect(response.headers.get('allow')).toBe(allowed);
    await problemOf(response, 405);
  });

  it('answers an address where nothing is with 404', async () => {
    await problemOf(await fetch(`${base}/shelves`), 404);
  });
});

describe('GET /api/schema', () => {
  it('gives JSON Schema 2020-12 by which the demo is valid and slips are not', async () => {
    const response = await fetch(`${base}/schema`);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/schema+json; charset=utf-8');
    const schema = (await response.json()) as Record<string, unknown>;
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema['title']).toBe('Check document');
    expect(isValid(schema, demoCheck)).toBe(true);
    const { board, brackets, ...rest } = demoCheck;
    expect(isValid(schema, rest)).toBe(false);
    expect(isValid(schema, { ...demoCheck, colour: 'white' })).toBe(false);
    expect(isValid(schema, { ...demoCheck, board: { ...board, length: 96 } })).toBe(false);
    expect(isValid(schema, { ...demoCheck, brackets: { ...brackets, positions: ['6 in'] } })).toBe(false);
    expect(isValid(schema, { ...demoCheck, loads: [{ kind: 'falling', amount: '3 lb' }] })).toBe(false);
    expect(isValid(schema, { ...demoCheck, schema: 2 })).toBe(false);
  });

  it('says of every quantity which kind it is', async () => {
    const schema = JSON.stringify(await (await fetch(`${base}/schema`)).json());
    for (const kind of ['length', 'force', 'line-load', 'area-load', 'density', 'mass']) {
      expect(schema).toContain(`"x-quantity":"${kind}"`);
    }
  });

  it.each(['/schema', '/catalogue'])('%s is not sent again to who has it', async (address) => {
    const first = await fetch(base + address);
    const tag = first.headers.get('etag') ?? '';
    expect(tag).not.toBe('');
    expect(first.headers.get('cache-control')).toBe('no-cache');
    await first.arrayBuffer();
    // Without a cache-control of ours, fetch asks for a fresh copy of its own accord.
    const headers = { 'if-none-match': tag, 'cache-control': 'max-age=0' };
    const second = await fetch(base + address, { headers });
    expect(second.status).toBe(304);
  });

  it('answers HEAD without a body', async () => {
    const response = await fetch(`${base}/schema`, { method: 'HEAD' });
    expect(response.status).toBe(200);
    expect(await response.text()).toBe('');
  });
});

describe('GET /api/catalogue', () => {
  it('lists what a document can name, each with its source', async () => {
    const response = await fetch(`${base}/catalogue`);
    expect(response.headers.get('content-type')).toBe('application/json; charset=utf-8');
    const text = await response.text();
    for (const id of ['sugar-maple', 'wood-screw-10', 'a36']) expect(text).toContain(`"${id}"`);
    expect(text).toContain('"source"');
    expect(text).not.toMatch(/NaN|undefined/);
  });
});

describe.each(['layouts', 'reach'] as const)('POST /api/%s', (path) => {
  const ask = (body: string): Promise<Response> =>
    fetch(`${base}/${path}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body });

  it('answers with what the library says', async () => {
    const response = await ask(JSON.stringify(demoCheck));
    expect(response.status).toBe(200);
    const answer: unknown = await response.json();
    expect(answer).toEqual(JSON.parse(JSON.stringify({ layouts, reach }[path](demoCheck))));
  });

  it('tells what is wrong as /api/checks does', async () => {
    const wrong = JSON.stringify({ ...demoCheck, board: {} });
    const problem = await problemOf(await ask(wrong), 422);
    expect(problem).toEqual(await problemOf(await post(wrong), 422));
    await problemOf(await ask('{'), 400);
    await problemOf(await fetch(`${base}/${path}`), 405);
  });
});
