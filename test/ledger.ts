import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { exceptions } from './ledger/exceptions.ts';
import { findFormulas } from './ledger/find-formulas.ts';
import { entriesOf, faultsOf, ledgerPage } from './ledger/ledger.ts';
import { publishedValues } from './published/values/index.ts';

/**
 * `npm run ledger` writes docs/ledger.md: every formula, its clause, its file, and what outside the project it was checked
 * against. With `--check` it writes nothing. Exit 1: the page is stale (`--check` only), or a formula has neither an
 * outside value nor a reason for having none.
 */
const file = join(import.meta.dirname, '..', 'docs', 'ledger.md');
const entries = entriesOf(await findFormulas(), publishedValues, exceptions);
const page = ledgerPage(entries);
const faults = faultsOf(entries, exceptions);

if (process.argv.includes('--check')) {
  const written = existsSync(file) ? readFileSync(file, 'utf8') : '';
  if (written !== page) faults.push('docs/ledger.md is stale: npm run ledger writes it again.');
} else {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, page);
}
for (const fault of faults) console.error(fault);
process.exitCode = faults.length === 0 ? 0 : 1;
