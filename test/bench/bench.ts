import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beamCost } from './beam-cost.ts';
import { checkCost } from './check-cost.ts';
import { counterCost } from './counter-cost.ts';
import { layoutCost, remedyCost } from './layout-cost.ts';
import { memory } from './memory.ts';
import { pageCost } from './page-cost.ts';
import { pdfCost } from './pdf-cost.ts';
import { plateCost } from './plate-cost.ts';
import { page, table, type Row } from './report.ts';
import { sparseCost } from './sparse-cost.ts';
import { storeCost } from './store-cost.ts';
import { throughput } from './throughput.ts';
import { typingCost } from './typing-cost.ts';

/**
 * `npm run bench` measures, prints a table and writes docs/bench.md. `--quick` measures next to nothing, to see that every
 * part runs, and writes nothing. `--checks=N` makes the memory part shorter than its 100,000 checks.
 */
const isQuick = process.argv.includes('--quick');
const counts = isQuick
  ? {
      check: 2,
      layout: 1,
      beam: 2,
      plate: 1,
      page: 3,
      typing: { rounds: 1, seconds: 0.5 },
      pdf: { sheets: 2, checks: 2, jobs: 1 },
      store: { saves: 3, jobs: 20, lists: 3 },
      throughput: { rounds: 1, seconds: 1 },
      memory: 40,
    }
  : {
      check: 60,
      layout: 12,
      beam: 60,
      plate: 12,
      page: 200,
      typing: { rounds: 5, seconds: 3 },
      pdf: { sheets: 30, checks: 20, jobs: 5 },
      store: { saves: 300, jobs: 10_000, lists: 15 },
      throughput: { rounds: 7, seconds: 3 },
      memory: asked('--checks=') ?? 100_000,
    };

const rows: Row[] = [
  ...checkCost(counts.check),
  layoutCost(counts.layout),
  remedyCost(counts.layout),
  await throughput(counts.throughput),
  beamCost(counts.beam),
  counterCost(counts.plate),
  plateCost(counts.plate),
  ...sparseCost(counts.plate),
  await pageCost(counts.page),
  ...(await typingCost(counts.typing)),
  ...(await pdfCost(counts.pdf)),
  ...(await storeCost(counts.store)),
  ...(await memory(counts.memory)),
];
console.log(table(rows));
for (const { what, information } of rows) console.log(`- ${what}: ${information}`);
if (!isQuick) {
  writeFileSync(join(import.meta.dirname, '..', '..', 'docs', 'bench.md'), page(rows, process.version));
}

function asked(option: string): number | undefined {
  const written = process.argv.find((word) => word.startsWith(option))?.slice(option.length);
  if (written === undefined) return undefined;
  if (!/^[1-9]\d{1,6}$/.test(written)) throw new Error(`${option}N takes a whole number from 10 to 9999999`);
  return Number(written);
}
