import { join } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { fontFiles } from './font.ts';
import type { PdfReply, PdfTask } from './task.ts';
import { createTypstFormula, withTypstFormulas } from './typst-formula.ts';

/*
 * A process that sets paper: one task at a time, which can't be interrupted, so it is never done where requests are answered.
 */

const folder = join(import.meta.dirname, '..', '..', '..', 'views', 'paper');
const compiler = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs: fontFiles() }] });
const typst = createTypstFormula();
const pdfStandard = 'a-2a';

warmUp();
process.on('message', (task: PdfTask) => {
  process.send?.(replyTo(task));
});
process.once('disconnect', () => process.exit());

function replyTo({ template, json, made_s }: PdfTask): PdfReply {
  try {
    const inputs = { data: JSON.stringify(withTypstFormulas(JSON.parse(json), typst)) };
    const mainFileContent = `#import "/${template}.typ": whole\n#whole(json(bytes(sys.inputs.data)))`;
    return {
      ok: true,
      pdf: compiler.pdf({ mainFileContent, inputs }, { pdfStandard, creationTimestamp: made_s }),
    };
  } catch (error) {
    return { ok: false, message: reasonOf(error) };
  } finally {
    compiler.resetShadow();
    compiler.evictCache(2);
  }
}

/** Reads templates and fonts, and sets a formula, before the first task comes. */
function warmUp(): void {
  const mainFileContent =
    '#import "/job.typ": look\n#show: look\n#set document(date: auto)\n*Words* $ (a_b ^2) / sqrt(3) = "psi" $';
  compiler.pdf({ mainFileContent }, { creationTimestamp: 0 });
}

/** The setter's errors carry what they say in `code`. */
function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return 'code' in error && typeof error.code === 'string' ? error.code : error.message;
}
