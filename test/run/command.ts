import { spawn } from 'node:child_process';
import { join } from 'node:path';

export const project = join(import.meta.dirname, '..', '..');

/** What came of another program. */
export interface Ended {
  readonly ok: boolean;
  readonly output: string;
}

/**
 * Runs a shell command in the project's folder, with the project's own tools first on the path.
 *
 * @param line the command
 * @param show whether its output goes straight to the screen; else it is kept and given back
 */
export function runCommand(line: string, show: boolean, environment: NodeJS.ProcessEnv = {}): Promise<Ended> {
  const path = `${join(project, 'node_modules', '.bin')}:${process.env['PATH'] ?? ''}`;
  return new Promise((resolve) => {
    const child = spawn(line, {
      cwd: project,
      shell: true,
      stdio: ['ignore', show ? 'inherit' : 'pipe', show ? 'inherit' : 'pipe'],
      env: { ...process.env, ...environment, PATH: path },
    });
    let output = '';
    const keep = (chunk: Buffer): void => {
      output += chunk.toString();
    };
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    child.on('error', (error) => resolve({ ok: false, output: error.message }));
    child.on('close', (code) => resolve({ ok: code === 0, output }));
  });
}
