import type { Express } from 'express';

/** A route as the application has it: `GET /jobs/:job`. */
type Route = string;

interface Layer {
  readonly route?: { readonly path: string; readonly methods: Readonly<Record<string, boolean>> };
  readonly handle?: { readonly stack?: readonly Layer[] };
}

/** Where a router is mounted is not written down in its layer; the one that has a prefix is told by what is in it. */
const prefixes: Readonly<Record<string, string>> = { '/checks': '/api' };

/** Every route of an application, those of its routers too, but for files that never change. */
export function routesOf(app: Express): Route[] {
  const { stack } = app.router as unknown as { readonly stack: readonly Layer[] };
  return [...new Set(collect(stack, ''))].filter((route) => !/^GET \/(?:assets|fonts)\//.test(route));
}

function collect(stack: readonly Layer[], prefix: string): Route[] {
  return stack.flatMap(({ route, handle }) => {
    if (route !== undefined) {
      return Object.keys(route.methods)
        .filter((method) => method !== '_all')
        .map((method) => `${method.toUpperCase()} ${prefix}${route.path}`);
    }
    const inner = handle?.stack ?? [];
    return collect(inner, prefixes[inner[0]?.route?.path ?? ''] ?? '');
  });
}
