import { configDefaults, defineConfig } from 'vitest/config';

const programs = [
  'test/browser/**/*.test.ts',
  'test/reference/**/*.test.ts',
  'test/command-line/**/*.test.ts',
  'test/bench/**/*.test.ts',
  'test/server/sheets/pdf/**/*.test.ts',
];
const alone = [
  'test/server/papers/job-pdf.test.ts',
  'test/server/threads/**/*.test.ts',
  'test/server/store/killed.test.ts',
];
const patience = { testTimeout: 60_000, hookTimeout: 120_000, isolate: false };

/**
 * Three projects, one after the other. `plain` runs on every core, and so does `programs`, which holds the tests that start a
 * browser, a solver or the command line and wait for them without a clock. `one-by-one` has one worker, so that nothing
 * competes with what its tests time, kill or count.
 * Files share a worker's modules, because loading them took longer than the tests: no test may change a module's state.
 */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'plain',
          include: ['test/**/*.test.ts'],
          exclude: [...configDefaults.exclude, ...programs, ...alone],
          maxWorkers: '100%',
          sequence: { groupOrder: 0 },
          ...patience,
        },
      },
      {
        test: {
          name: 'programs',
          include: programs,
          maxWorkers: '100%',
          sequence: { groupOrder: 1 },
          ...patience,
        },
      },
      {
        test: {
          name: 'one-by-one',
          include: alone,
          maxWorkers: 1,
          sequence: { groupOrder: 2 },
          ...patience,
        },
      },
    ],
  },
});
