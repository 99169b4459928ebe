import { join } from 'node:path';
import { parentPort } from 'node:worker_threads';
import { loadTemplates } from '../templates.ts';
import { createTypesetter } from '../typeset/index.ts';
import { makePage, type PageOrder } from './page-orders.ts';

/** What the thread answers: a page in UTF-8, or that it is at fault itself. */
export type MadePage = { readonly html: Uint8Array<ArrayBuffer> } | { readonly fault: string };

const views = {
  templates: loadTemplates(join(import.meta.dirname, '..', '..', 'views')),
  typesetter: createTypesetter(),
};
const encoder = new TextEncoder();

parentPort?.on('message', (order: PageOrder) => {
  const page = made(order);
  parentPort?.postMessage(page, 'html' in page ? [page.html.buffer] : []);
});

function made(order: PageOrder): MadePage {
  try {
    return { html: encoder.encode(makePage(order, views)) };
  } catch (error) {
    return { fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
