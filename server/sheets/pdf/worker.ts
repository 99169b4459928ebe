import { join } from 'node:path';
import { parentPort } from 'node:worker_threads';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { fontFiles } from './font.ts';
import type { PdfReply, PdfTask } from './task.ts';
import { createTypstFormula, withTypstFormulas } from './typst-formula.ts';

/*
 * A thread that sets paper: one task at a time, which can't be interrupted, so it is never done where requests are answered.
 */

const port = parentPort;
if (port === null) throw new Error('This file runs as a worker.');

const folder = join(import.meta.dirname, '..', '..', '..', 'views', 'paper');
const compiler = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs: fontFiles() }] });
const typst = createTypstFormula();

port.on('message', (task: PdfTask) => {
  port.postMessage(replyTo(task));
});

function replyTo({ template, data, made_s }: PdfTask): PdfReply {
  try {
    const inputs = { data: JSON.stringify(withTypstFormulas(data, typst)) };
    const mainFileContent = `#import "/${template}.typ": whole\n#whole(json(bytes(sys.inputs.data)))`;
    const options = { pdfStandard: 'a-2a', creationTimestamp: made_s };
    return { ok: true, pdf: compiler.pdf({ mainFileContent, inputs }, options) };
  } catch (error) {
    return { ok: false, message: reasonOf(error) };
  } finally {
    compiler.resetShadow();
    compiler.evictCache(2);
  }
}

/** The setter's errors carry what they say in `code`. */
function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return 'code' in error && typeof error.code === 'string' ? error.code : error.message;
}
