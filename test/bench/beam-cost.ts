import { prepareBeam, solveBeam } from '../../calc/mechanics/beam.ts';
import type { Beam, BeamLoad } from '../../calc/mechanics/beam-model.ts';
import { figures, type Row } from './report.ts';
import { inTurns, median, medianRatio, type Task } from './timing.ts';

const counts = [10, 100, 1000] as const;
const mostOverLinear = 1.3;

/** A beam of spans of 0.8 m under one load along the whole of it and one point load in each span. */
function solving(supports: number): () => void {
  const span_m = 0.8;
  const length_m = span_m * (supports - 1);
  const beam: Beam = {
    length_m,
    EI_Nm2: 3000,
    GA_N: 3e6,
    supports: Array.from({ length: supports }, (_, i) => ({ at_m: i * span_m, stiffness_Npm: Infinity })),
    hinges: [],
  };
  const points = Array.from({ length: supports - 1 }, (_, i) => ({ at_m: (i + 0.4) * span_m, load_N: 100 }));
  const load: BeamLoad = { lines: [{ from_m: 0, to_m: length_m, load_Npm: 300 }], points };
  const breaks_m = points.map(({ at_m }) => at_m);
  return () => void solveBeam(prepareBeam(beam, breaks_m), load);
}

/** What a support more costs on a long beam, over what it costs on a short one. */
export function beamCost(rounds: number): Row {
  const tasks = counts.map((count): Task => ({ run: solving(count), times: Math.max(1, 2000 / count) }));
  const samples = inTurns(tasks, rounds).map((times, index) =>
    times.map((ms) => ms / (counts[index] ?? NaN)),
  );
  const [ten = [], hundred = [], thousand = []] = samples;
  const ratios = [medianRatio(hundred, ten), medianRatio(thousand, ten), medianRatio(thousand, hundred)];
  const worst = Math.max(...ratios);
  return {
    what: 'A beam solved, cost for each support, worst of 100 over 10, 1,000 over 10 and 1,000 over 100',
    measured: `${figures(worst)} (${ratios.map(figures).join(', ')})`,
    target: `at most ${mostOverLinear}`,
    met: worst <= mostOverLinear,
    information: samples
      .map(
        (each, index) =>
          `${counts[index] ?? ''} supports ${figures(median(each) * (counts[index] ?? NaN))} ms`,
      )
      .join(', '),
  };
}
