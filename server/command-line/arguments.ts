import { parseArgs } from 'node:util';

/** What the command line asks for. */
export type Request =
  | { readonly ask: 'help' }
  | { readonly ask: 'mistake'; readonly message: string }
  | { readonly ask: 'check'; readonly json: boolean; readonly sources: readonly string[] };

/** Reads the words after the command's name. `-` is a source: standard input. */
export function readArguments(words: readonly string[]): Request {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    });
    if (values.help === true) return { ask: 'help' };
    if (positionals.length === 0)
      return mistake('Name a file with a check document, or - for standard input.');
    if (positionals.filter((source) => source === '-').length > 1) {
      return mistake('Standard input can be read only once: name - once.');
    }
    return { ask: 'check', json: values.json === true, sources: positionals };
  } catch (error) {
    return mistake(error instanceof Error ? (error.message.split('. ')[0] ?? '').replace(/\.?$/, '.') : '');
  }
}

function mistake(message: string): Request {
  return { ask: 'mistake', message };
}
