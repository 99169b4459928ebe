import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runCommand } from './run/command.ts';
import { findChromium, providePrograms } from './run/programs.ts';
import { runStaticChecks } from './run/static-checks.ts';
import { tally, tallyLine } from './run/tally.ts';

/**
 * `npm test`: everything. `npm test -- WORDS`: only the tests, with WORDS handed to the test runner, such as the path of
 * a test file. The last line is `N passed, N failed`, with `, N skipped` where tests were; a static check that fails
 * counts as one failure.
 */
const words = process.argv.slice(2);

await providePrograms();
const failedSteps = words.length === 0 ? await runStaticChecks() : [];
const { passed, failed, skipped } = await runTests();
if (failedSteps.length > 0) console.log(`\nFailed: ${failedSteps.join('; ')}`);
const total = { passed, failed: failed + failedSteps.length, skipped };
console.log(tallyLine(total));
process.exitCode = total.failed === 0 ? 0 : 1;

async function runTests() {
  const folder = mkdtempSync(join(tmpdir(), 'test-report-'));
  try {
    const file = join(folder, 'report.json');
    const asked = words.map((word) => `'${word.replaceAll("'", String.raw`'\''`)}'`).join(' ');
    const { ok } = await runCommand(
      `vitest run --reporter=default --reporter=json --outputFile.json='${file}' ${asked}`,
      true,
      { CHROMIUM_PATH: findChromium() ?? '' },
    );
    return tally(readReport(file), ok);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function readReport(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
