import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { extname, join } from 'node:path';
import { Router } from 'express';

interface Asset {
  /** Where it is served: what is in it is in its address, so that a browser may keep it for good. */
  readonly path: string;
  readonly type: string;
  readonly content: Buffer;
}

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
};
const folder = join(import.meta.dirname, '..', 'views', 'assets');
const htmxFile = createRequire(import.meta.url).resolve('htmx.org/dist/htmx.min.js');
const yearInSeconds = 31_536_000;

const assets: ReadonlyMap<string, Asset> = new Map([
  ...readdirSync(folder)
    .filter((name) => types[extname(name)] !== undefined)
    .map((name): [string, Asset] => [name, asset(name, join(folder, name))]),
  ['htmx.js', asset('htmx.js', htmxFile)],
]);

function asset(name: string, file: string): Asset {
  const content = readFileSync(file);
  const mark = createHash('sha256').update(content).digest('hex').slice(0, 12);
  return {
    path: `/assets/${mark}/${name}`,
    type: types[extname(name)] ?? 'application/octet-stream',
    content,
  };
}

/**
 * The address of a style sheet, script or picture.
 *
 * @throws Error where there is no such file
 */
export function assetPath(name: string): string {
  const found = assets.get(name);
  if (found === undefined) throw new Error(`There is no asset named ${name}.`);
  return found.path;
}

/** Serves the style sheets and scripts. */
export function assetRoutes(): Router {
  const router = Router();
  for (const { path, type, content } of assets.values()) {
    router.get(path, (_request, response) => {
      response
        .set({ 'Content-Type': type, 'Cache-Control': `public, max-age=${yearInSeconds}, immutable` })
        .send(content);
    });
  }
  return router;
}
