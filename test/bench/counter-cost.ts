import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { check } from '../../calc/index.ts';
import { startChecks } from '../../server/start-checks.ts';
import { figures, type Row } from './report.ts';
import { inTurns, median } from './timing.ts';

const most_ms = 150;
const onBrackets = join(import.meta.dirname, '../../docs/examples/stool-overhang.json');

/** One whole check of a counter, its search for the worst places with it; for information one whose top stands on brackets. */
export function counterCost(rounds: number): Row {
  const propped: unknown = JSON.parse(readFileSync(onBrackets, 'utf8'));
  const [bare = [], brackets = []] = inTurns(
    [
      { run: () => void check(startChecks['counter-overhang']), times: 1 },
      { run: () => void check(propped), times: 1 },
    ],
    rounds,
  );
  const middle = median(bare);
  return {
    what: 'One whole check of a counter overhang, its search for the worst places with it, ms',
    measured: figures(middle),
    target: `under ${most_ms}`,
    met: middle < most_ms,
    information: `the same on brackets, as in docs/examples/stool-overhang.json, ${figures(median(brackets))} ms`,
  };
}
