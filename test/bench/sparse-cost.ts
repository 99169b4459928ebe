import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { SymmetricBand } from '../../calc/mechanics/plate/band.ts';
import { factorBand } from '../../calc/mechanics/plate/band-factor.ts';
import { solveBandForAll } from '../../calc/mechanics/plate/band-solve.ts';
import { freeMatrix } from '../../calc/mechanics/plate/free-plate.ts';
import { loadVector } from '../../calc/mechanics/plate/plate-load.ts';
import { meshOfTop, stiffnessOfTop, topSize_m } from './plate-top.ts';
import { figures, type Row } from './report.ts';
import { inTurns, median } from './timing.ts';

const places = 60;

/** One factorisation and sixty people, ours over scipy's sparse direct solver; no row where scipy is not there. */
export function sparseCost(rounds: number): Row[] {
  if (!hasScipy()) return [];
  const mesh = meshOfTop(1);
  const matrix = freeMatrix(mesh, stiffnessOfTop, []);
  const { length_m, depth_m, patch_m } = topSize_m;
  const loads = Array.from({ length: places }, (_, k) => {
    const fromX_m = (k / (places - 1)) * (length_m - patch_m);
    const [toX_m, fromY_m] = [fromX_m + patch_m, depth_m - patch_m];
    return loadVector(mesh, [{ kind: 'patch', fromX_m, toX_m, fromY_m, toY_m: depth_m, load_N: 1112 }]);
  });
  const solve = (): Float64Array[] =>
    solveBandForAll(
      factorBand({ ...matrix, rows: Float64Array.from(matrix.rows) }),
      loads.map((load) => Float64Array.from(load)),
    );
  const [ours = []] = inTurns([{ run: solve, times: 1 }], rounds, 10);
  const theirs = scipyOn(matrix, loads, solve(), rounds);
  if (!(theirs.difference < 1e-6)) throw new Error(`scipy finds other movements: ${theirs.difference}`);
  const ratio = median(ours) / median(theirs.milliseconds);
  return [
    {
      what: `A top factored and ${places} loads on it, over the sparse direct solver of scipy on the same matrix`,
      measured: figures(ratio),
      target: 'at most 1',
      met: ratio <= 1,
      information: `ours ${figures(median(ours))} ms, scipy ${figures(median(theirs.milliseconds))} ms, ${matrix.size} unknowns; answers agree to ${figures(theirs.difference)}`,
    },
  ];
}

function hasScipy(): boolean {
  try {
    execFileSync('python3', ['-c', 'import scipy.sparse.linalg'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

function scipyOn(
  { size, halfWidth, rows }: SymmetricBand,
  loads: readonly Float64Array[],
  answers: readonly Float64Array[],
  rounds: number,
): { readonly milliseconds: readonly number[]; readonly difference: number } {
  const folder = mkdtempSync(join(tmpdir(), 'sparse-'));
  try {
    const file = join(folder, 'matrix');
    writeFileSync(file, Buffer.concat([rows, ...loads, ...answers].map((each) => Buffer.from(each.buffer))));
    const words = [rounds, size, halfWidth, loads.length].map(String);
    const script = join(import.meta.dirname, 'sparse-solver.py');
    const said: unknown = JSON.parse(execFileSync('python3', [script, ...words, file], { encoding: 'utf8' }));
    if (!isTiming(said)) throw new Error('scipy gave no times');
    return said;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function isTiming(
  said: unknown,
): said is { readonly milliseconds: readonly number[]; readonly difference: number } {
  return typeof said === 'object' && said !== null && 'milliseconds' in said && 'difference' in said;
}
