import { run } from './command-line/run.ts';

/** A reader that has seen enough (`| head`) closes its end; that is no error of ours. */
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
}

/** npm runs a script in the project's folder and tells where it was called from; paths are meant from there. */
const calledFrom = process.env['npm_lifecycle_event'] === 'check' ? process.env['INIT_CWD'] : undefined;

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  error: (text) => process.stderr.write(text),
  folder: calledFrom ?? process.cwd(),
});
