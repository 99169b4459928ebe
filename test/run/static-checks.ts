import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { project, runCommand } from './command.ts';

const packageFile = z.object({ scripts: z.object({ lint: z.string() }) });

/** The steps of `npm run lint`, each by itself so that one failure does not hide the next, and the ledger of formulas. */
function steps(): string[] {
  const { scripts } = packageFile.parse(JSON.parse(readFileSync(join(project, 'package.json'), 'utf8')));
  const ledger = existsSync(join(project, 'test', 'ledger.ts'))
    ? ['node --import ts-blank-space/register test/ledger.ts --check']
    : [];
  return [...scripts.lint.split(' && '), ...ledger];
}

/** Runs what can be told without running the product. @returns the steps that failed */
export async function runStaticChecks(): Promise<string[]> {
  const failed: string[] = [];
  const waiting = steps();
  const lane = async (): Promise<void> => {
    for (let step = waiting.shift(); step !== undefined; step = waiting.shift()) {
      const { ok, output } = await runCommand(step, false);
      console.log(`${ok ? 'passed' : 'FAILED'}  ${step}`);
      if (ok) continue;
      failed.push(step);
      console.log(output.trimEnd());
    }
  };
  await Promise.all([lane(), lane()]);
  return failed;
}
