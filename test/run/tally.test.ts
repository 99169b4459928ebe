import { describe, expect, it } from 'vitest';
import { tally, tallyLine } from './tally.ts';

const report = {
  success: true,
  numPassedTests: 7,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [{ status: 'passed', assertionResults: [{}] }],
};

describe('the last line of a test run', () => {
  it.each<[string, unknown, boolean, string]>([
    ['all pass', report, true, '7 passed, 0 failed'],
    ['some fail', { ...report, success: false, numFailedTests: 2 }, false, '7 passed, 2 failed'],
    [
      'some are skipped',
      { ...report, numPendingTests: 3, numTodoTests: 1 },
      true,
      '7 passed, 0 failed, 4 skipped',
    ],
    [
      'a file that does not load',
      { ...report, success: false, testResults: [{ status: 'failed', assertionResults: [] }] },
      false,
      '7 passed, 1 failed',
    ],
    ['an error outside all tests', { ...report, success: false }, false, '7 passed, 1 failed'],
    ['a runner that ends badly after a good report', report, false, '7 passed, 1 failed'],
    ['no report', undefined, false, '0 passed, 1 failed'],
    ['another report', { tests: 7 }, true, '0 passed, 1 failed'],
  ])('%s', (_what, json, ended, line) => {
    expect(tallyLine(tally(json, ended))).toBe(line);
  });
});
