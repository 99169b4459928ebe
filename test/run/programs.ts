import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';
import { runCommand } from './command.ts';
import { isProgram } from './is-program.ts';
import { findPostgres } from './postgres.ts';

const browserNames = ['chromium', 'chromium-browser', 'google-chrome'];

/** Where a browser for the tests is: `CHROMIUM_PATH`, one of the system's, or the test library's own; undefined: none. */
export function findChromium(): string | undefined {
  const named = process.env['CHROMIUM_PATH'];
  const candidates = [
    ...(named === undefined || named === '' ? [] : [named]),
    ...browserNames.map((name) => `/usr/bin/${name}`),
    chromium.executablePath(),
  ];
  return candidates.find(isProgram);
}

/** Where a program of the system is; undefined: nowhere. */
export function findProgram(name: string): string | undefined {
  return (process.env['PATH'] ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find(isProgram);
}

/** CalculiX, the finite element solver of the reference tests. */
const findSolver = () => findProgram('ccx');

/** What reads PDF for the tests. */
const findReader = () => findProgram('pdftotext');

/**
 * Sees to it that the programs the tests need are there: from the system's packages where this user may install them,
 * else the browser from the test library's own installer. What can't be had is said; its tests are skipped and counted.
 */
export async function providePrograms(): Promise<void> {
  const missing = [
    ...(findChromium() === undefined ? ['chromium'] : []),
    ...(findSolver() === undefined ? ['calculix-ccx'] : []),
    ...(findPostgres() === undefined ? ['postgresql'] : []),
    ...(findReader() === undefined ? ['poppler-utils'] : []),
  ];
  if (missing.length > 0 && process.getuid?.() === 0 && isProgram('/usr/bin/apt-get')) {
    console.log(`Installing ${missing.join(' and ')} ...`);
    const refreshed = await runCommand('apt-get update -qq', false);
    for (const name of refreshed.ok ? missing : []) {
      const install = `DEBIAN_FRONTEND=noninteractive apt-get install -qq -y --no-install-recommends ${name}`;
      const { ok, output } = await runCommand(install, false);
      if (!ok) console.log(output.trimEnd());
    }
  }
  if (findChromium() === undefined) {
    console.log('Installing a browser for the tests ...');
    await runCommand('playwright-core install chromium', true);
  }
  if (findChromium() === undefined) {
    console.log(
      'There is no browser and none could be installed: the browser tests are skipped. CHROMIUM_PATH names one.',
    );
  }
  if (findSolver() === undefined) {
    console.log('There is no ccx (package calculix-ccx): the tests against it are skipped.');
  }
  if (findReader() === undefined) {
    console.log('There is no pdftotext (package poppler-utils): what stands in a PDF is not tested.');
  }
  if (findPostgres() === undefined) {
    console.log('There is no PostgreSQL server (package postgresql): the store is tested on SQLite alone.');
  }
}
