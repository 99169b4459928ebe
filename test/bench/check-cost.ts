import { check } from '../../calc/index.ts';
import { prepareBeam, solveBeam } from '../../calc/mechanics/beam.ts';
import { demoCheck } from '../../server/demo.ts';
import { math } from '../units.ts';
import { figures, type Row } from './report.ts';
import { demoBeam, denseSystem, reactionsOf } from './stiffness-matrix.ts';
import { inTurns, median, medianRatio } from './timing.ts';

const mostSolves = 3;
const most_ms = 1;

/** One whole check, worksheet included: its time, and against one general solution of its beam's stiffness matrix. */
export function checkCost(rounds: number): Row[] {
  const { beam, load } = demoBeam();
  const system = denseSystem(beam, load);
  const solve = (): number[] => math.lusolve(system.matrix, system.forces).map(Number);
  const byEngine = solveBeam(
    prepareBeam(
      beam,
      load.points.map(({ at_m }) => at_m),
    ),
    load,
  ).reactions_N;
  assertAlike(reactionsOf(system, solve()), byEngine);
  const [checks = [], solves = []] = inTurns(
    [
      { run: () => void check(demoCheck), times: 5 },
      { run: () => void solve(), times: 10 },
    ],
    rounds,
    5 * rounds,
  );
  const ratio = medianRatio(checks, solves);
  const middle_ms = median(checks);
  return [
    {
      what: 'One whole check of the shelf to begin with, its calculation with it, ms',
      measured: figures(middle_ms),
      target: `under ${most_ms}`,
      met: middle_ms < most_ms,
      information: `the quickest ${figures(Math.min(...checks))} ms`,
    },
    {
      what: 'The same, over one dense solution of its beam',
      measured: figures(ratio),
      target: `at most ${mostSolves}`,
      met: ratio <= mostSolves,
      information: `lusolve of ${system.free.length} × ${system.free.length} ${figures(median(solves))} ms`,
    },
  ];
}

/** The bench compares nothing but solutions of the same beam. */
function assertAlike(dense: readonly number[], engine: ArrayLike<number>): void {
  dense.forEach((reaction, index) => {
    const other = engine[index] ?? NaN;
    if (!(Math.abs(reaction - other) <= 1e-6 * Math.max(1, Math.abs(reaction)))) {
      throw new Error(
        `reaction ${index + 1} is ${reaction} N by the dense matrix and ${other} N by the engine`,
      );
    }
  });
}
