import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Router } from 'express';

const require = createRequire(import.meta.url);
const yearInSeconds = 31_536_000;

interface FontFile {
  /** Where it is served: its package's version is in the name, so that a browser may keep it for good. */
  readonly path: string;
  readonly file: string;
}

/**
 * The sheet's own font and those of the formulas. Source Sans and Noto Sans Math are under the SIL Open Font License, the
 * other under the MIT licence.
 */
function fontFiles(): FontFile[] {
  return [
    fontFile('source-sans', 'source-sans', 'WOFF2/TTF/SourceSans3-Regular.ttf.woff2'),
    fontFile('source-sans-semibold', 'source-sans', 'WOFF2/TTF/SourceSans3-Semibold.ttf.woff2'),
    fontFile('noto-sans-math', '@fontsource/noto-sans-math', 'files/noto-sans-math-latin-400-normal.woff2'),
    fontFile('temml', 'temml', 'dist/Temml.woff2'),
  ];
}

/** Serves the fonts of the sheet and of the formulas. */
export function fontRoutes(): Router {
  const router = Router();
  for (const { path, file } of fontFiles()) {
    const content = readFileSync(file);
    router.get(path, (_request, response) => {
      response
        .set('Cache-Control', `public, max-age=${yearInSeconds}, immutable`)
        .type('font/woff2')
        .send(content);
    });
  }
  return router;
}

function fontFile(name: string, packageName: string, inside: string): FontFile {
  const manifest = require.resolve(`${packageName}/package.json`);
  const version = /"version": *"([^"]+)"/.exec(readFileSync(manifest, 'utf8'))?.[1];
  if (version === undefined) throw new Error(`${packageName} does not say its version.`);
  return { path: `/fonts/${name}-${version}.woff2`, file: join(dirname(manifest), inside) };
}
