import { readArguments } from './arguments.ts';
import { exitCode, worst } from './exit-code.ts';
import { help } from './help.ts';
import { judge, type Judgement } from './judge.ts';
import { readSource } from './read-source.ts';
import { errorReport, fullReport, lineReport, oneLine } from './report.ts';

/** Where the command writes, and the folder its paths start from. */
export interface Surroundings {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  readonly folder: string;
}

/**
 * Runs the command.
 *
 * @param words the words after the command's name
 * @returns the exit code
 */
export async function run(words: readonly string[], { out, error, folder }: Surroundings): Promise<number> {
  const request = readArguments(words);
  if (request.ask === 'help') {
    out(help);
    return 0;
  }
  if (request.ask === 'mistake') {
    error(`${oneLine(request.message)}\n\n${help}`);
    return 2;
  }
  const alone = request.sources.length === 1;
  const codes: number[] = [];
  for (const source of request.sources) {
    const name = source === '-' ? 'standard input' : source;
    const judgement = judge(await readSource(source, folder));
    error(complaint(name, judgement));
    out(request.json ? json(name, judgement, alone) : text(name, judgement, alone));
    codes.push(exitCode(judgement));
  }
  return worst(codes);
}

function complaint(name: string, judgement: Judgement): string {
  if (judgement.kind === 'result') return '';
  if (judgement.kind === 'bad-input') return errorReport(name, judgement.errors);
  const message = `The check broke off: ${judgement.message}. This is a fault of the tool, not of the document.`;
  return errorReport(name, [{ path: '', message }]);
}

function text(name: string, judgement: Judgement, alone: boolean): string {
  if (judgement.kind === 'result') {
    return alone ? fullReport(judgement.result) : lineReport(name, judgement.result);
  }
  if (alone) return '';
  if (judgement.kind === 'fault') return `${oneLine(name)}: The check broke off.\n`;
  const { length } = judgement.errors;
  return `${oneLine(name)}: Bad input, ${length === 1 ? 'one error' : `${length} errors`}.\n`;
}

function json(name: string, judgement: Judgement, alone: boolean): string {
  if (judgement.kind === 'result') return `${JSON.stringify(judgement.result, null, alone ? 2 : 0)}\n`;
  if (alone) return '';
  const errors = judgement.kind === 'fault' ? [{ path: '', message: judgement.message }] : judgement.errors;
  return `${JSON.stringify({ file: name, errors })}\n`;
}
