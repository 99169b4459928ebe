import { z } from 'zod';

/** The part of the test runner's JSON report that is counted. */
const report = z.object({
  success: z.boolean(),
  numPassedTests: z.number(),
  numFailedTests: z.number(),
  numPendingTests: z.number(),
  numTodoTests: z.number(),
  testResults: z.array(z.object({ status: z.string(), assertionResults: z.array(z.unknown()) })),
});

export interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/**
 * Counts a test run. A file that failed before its first test, an error outside any test, and a report that is not
 * there are failures too: what did not run has not passed.
 *
 * @param json the runner's report; undefined where there is none
 * @param ended whether the runner ended with success
 */
export function tally(json: unknown, ended: boolean): Tally {
  const parsed = report.safeParse(json);
  if (!parsed.success) return { passed: 0, failed: 1, skipped: 0 };
  const { data } = parsed;
  const unloaded = data.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  ).length;
  const counted = data.numFailedTests + unloaded;
  const outside = counted === 0 && !(ended && data.success) ? 1 : 0;
  return {
    passed: data.numPassedTests,
    failed: counted + outside,
    skipped: data.numPendingTests + data.numTodoTests,
  };
}

/** The last line of a run. */
export function tallyLine({ passed, failed, skipped }: Tally): string {
  return `${passed} passed, ${failed} failed${skipped === 0 ? '' : `, ${skipped} skipped`}`;
}
