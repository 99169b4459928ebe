import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { prepareBeam, solveBeam } from '../../calc/mechanics/beam.ts';
import { math } from '../units.ts';
import { page, table, type Row } from './report.ts';
import { denseSystem, reactionsOf } from './stiffness-matrix.ts';
import { inTurns, median, medianRatio, percentile } from './timing.ts';

/** No test here looks at a time: the machine that runs it may be busy. */

function quickBench(): Promise<{ code: number | null; output: string }> {
  const words = [
    '--expose-gc',
    '--import',
    'ts-blank-space/register',
    join(import.meta.dirname, 'bench.ts'),
    '--quick',
  ];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'pipe'] });
  let output = '';
  const keep = (chunk: Buffer): void => {
    output += chunk.toString();
  };
  child.stdout.on('data', keep);
  child.stderr.on('data', keep);
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, output })));
}

describe('the bench', () => {
  it('measures every row', { timeout: 300_000 }, async () => {
    const { code, output } = await quickBench();
    expect(code, output).toBe(0);
    const lines = output.split('\n').filter((line) => line.startsWith('| ') && !line.startsWith('| -'));
    const rows = lines.slice(1).map((line) => line.split('|').map((cell) => cell.trim()));
    const names = rows.map(([, what]) => what?.split(',')[0]);
    // Only where scipy is there.
    const sparse = 'A top factored and 60 loads on it';
    expect(names.filter((name) => name !== sparse)).toEqual([
      'One whole check of the shelf to begin with',
      'The same',
      'Search for brackets on the studs of an 8 ft board',
      'Ways out of a shelf that sags',
      'POST /api/checks',
      'A beam solved',
      'One whole check of a counter overhang',
      'A top factored and 60 places of a person with moments',
      'Answer on the page as a field changes',
      '10 people writing in shelves and 2 changing counters',
      '10 people writing in shelves and 2 changing counters',
      'PDF of the demo sheet',
      'PDF of a job of 2 checks',
      'PDF of a job of 2 checks',
      'A check saved with its revision',
      'A page of 20 jobs with 2 checks each and its counts',
      'Memory of a process that made 40 checks',
      'Heap after collection',
    ]);
    for (const [, , measured, target, met] of rows) {
      expect(Number(measured?.split(' ')[0])).not.toBeNaN();
      expect(target).toMatch(/^(?:at most|at least|under) [\d.]+$/);
      expect(met).toMatch(/^(?:yes|\*\*no\*\*)$/);
    }
  });
});

describe('the dense matrix that the check is measured against', () => {
  const supports = [0, 1, 2].map((at_m) => ({ at_m, stiffness_Npm: Infinity }));
  const load = { lines: [], points: [{ at_m: 0.5, load_N: 320 }] };

  it('gives the reactions of two equal spans with a load in one, AISC Manual Table 3-23, case 30 (from memory)', () => {
    const beam = { length_m: 2, EI_Nm2: 1, GA_N: 1e12, supports, hinges: [] };
    const system = denseSystem(beam, load);
    const moved = math.lusolve(system.matrix, system.forces).map(Number);
    const [first, second, third] = reactionsOf(system, moved);
    expect(first).toBeCloseTo((13 / 32) * 320, 4);
    expect(second).toBeCloseTo((11 / 16) * 320, 4);
    expect(third).toBeCloseTo((-3 / 32) * 320, 4);
  });

  it('gives the reactions of the engine where shear counts', () => {
    const beam = { length_m: 2.5, EI_Nm2: 100, GA_N: 900, supports, hinges: [] };
    const system = denseSystem(beam, load);
    const moved = math.lusolve(system.matrix, system.forces).map(Number);
    const engine = solveBeam(prepareBeam(beam, [0.5]), load).reactions_N;
    reactionsOf(system, moved).forEach((reaction, i) => expect(reaction).toBeCloseTo(engine[i] ?? NaN, 6));
  });
});

describe('timing and report', () => {
  it('takes the middle, of numbers and of ratios round by round', () => {
    expect(median([9, 1, 5])).toBe(5);
    expect(median([4, 1, 2, 100])).toBe(3);
    expect(() => median([])).toThrow(RangeError);
    expect(medianRatio([2, 30, 8], [1, 10, 2])).toBe(3);
  });

  it('takes the number that so many of a hundred are at most', () => {
    const hundred = Array.from({ length: 100 }, (_, index) => 100 - index);
    expect(percentile(hundred, 95)).toBe(95);
    expect(percentile([7, 3], 95)).toBe(7);
    expect(percentile([7, 3], 50)).toBe(3);
    expect(() => percentile([], 95)).toThrow(RangeError);
  });

  it('runs tasks in turns, as often as asked, and leaves the warming up out', () => {
    const runs: string[] = [];
    const samples = inTurns(
      [
        { run: () => runs.push('a'), times: 1 },
        { run: () => runs.push('b'), times: 2 },
      ],
      3,
    );
    expect(runs.join('')).toBe('abb'.repeat(5));
    expect(samples.map((each) => each.length)).toEqual([3, 3]);
  });

  it('marks what misses its target and keeps the times out of the table', () => {
    const row: Row = {
      what: 'A thing',
      measured: '7',
      target: 'at most 3',
      met: false,
      information: '12 ms',
    };
    expect(table([row])).toBe(
      [
        '| What    | Measured | Target    | Met    |',
        '| ------- | -------- | --------- | ------ |',
        '| A thing | 7        | at most 3 | **no** |',
      ].join('\n'),
    );
    expect(page([row], 'v20.0.0')).toContain('Node.js v20.0.0.\n\n- A thing: 12 ms\n');
  });
});
