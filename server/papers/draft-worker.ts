import { parentPort } from 'node:worker_threads';
import { createPrintable } from '../sheets/pdf/printable.ts';
import { createTypesetter, texAsItIs } from '../typeset/index.ts';
import { draftOf, type Draft, type DraftOrder } from './draft.ts';

/** What a drafting thread says. */
export type DraftReply =
  { readonly ok: true; readonly draft: Draft } | { readonly ok: false; readonly message: string };

const tools = { typesetter: createTypesetter(texAsItIs), printable: createPrintable() };

parentPort?.on('message', (order: DraftOrder) => {
  parentPort?.postMessage(replyTo(order));
});

function replyTo(order: DraftOrder): DraftReply {
  try {
    return { ok: true, draft: draftOf(order, tools) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
