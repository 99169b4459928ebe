import { configDefaults, defineConfig } from 'vitest/config';

const slow = [
  'test/bench/**/*.test.ts',
  'test/browser/**/*.test.ts',
  'test/reference/**/*.test.ts',
  'test/command-line/**/*.test.ts',
  'test/server/papers/job-pdf.test.ts',
  'test/server/sheets/pdf/**/*.test.ts',
  'test/server/threads/**/*.test.ts',
  'test/server/store/killed.test.ts',
];
const patience = { testTimeout: 60_000, hookTimeout: 120_000, isolate: false };

/**
 * Two projects. `plain` runs on every core. `one-by-one` holds the tests that start other programs (a browser, a
 * solver, the command line): one worker, after the others, so that nothing competes with what they time or wait for.
 * Files share a worker's modules, because loading them took longer than the tests: no test may change a module's state.
 */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'plain',
          include: ['test/**/*.test.ts'],
          exclude: [...configDefaults.exclude, ...slow],
          maxWorkers: '100%',
          sequence: { groupOrder: 0 },
          ...patience,
        },
      },
      {
        test: {
          name: 'one-by-one',
          include: slow,
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
          ...patience,
        },
      },
    ],
  },
});
