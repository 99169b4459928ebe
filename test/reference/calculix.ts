import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A beam for CalculiX: all places on a grid of `step_m`, which is one quadratic element of reduced integration (B32R). */
export interface SolidBeam {
  readonly length_m: number;
  readonly step_m: number;
  readonly width_m: number;
  readonly height_m: number;
  readonly E_Pa: number;
  readonly G_Pa: number;
  readonly supports: readonly { readonly at_m: number; readonly stiffness_Npm: number }[];
  readonly lines: readonly { readonly from_m: number; readonly to_m: number; readonly load_Npm: number }[];
  readonly points: readonly { readonly at_m: number; readonly load_N: number }[];
}

export interface SolidAnswer {
  readonly places_m: readonly number[];
  /** Down positive, at every place. */
  readonly movement_m: readonly number[];
  /** Up positive, of every support. */
  readonly reactions_N: readonly number[];
}

/** Whether CalculiX (Debian package calculix-ccx) is installed. */
export function hasCalculix(): boolean {
  return spawnSync('ccx', ['-v'], { encoding: 'utf8' }).error === undefined;
}

/** Solves a beam with CalculiX, which blows its beam elements up into bricks: elasticity in three dimensions, not beam theory. */
export function solveWithCalculix(beam: SolidBeam): SolidAnswer {
  const folder = mkdtempSync(join(tmpdir(), 'beam-'));
  try {
    writeFileSync(join(folder, 'beam.inp'), inputOf(beam));
    execFileSync('ccx', ['beam'], {
      cwd: folder,
      stdio: 'pipe',
      env: { ...process.env, OMP_NUM_THREADS: '1' },
    });
    return answerOf(beam, readFileSync(join(folder, 'beam.dat'), 'utf8'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const elementsOf = ({ length_m, step_m }: SolidBeam): number => Math.round(length_m / step_m);
const nodeAt = ({ step_m }: SolidBeam, x: number): number => 2 * Math.round(x / step_m) + 1;

function inputOf(beam: SolidBeam): string {
  const { step_m, width_m, height_m, E_Pa, G_Pa, supports } = beam;
  const count = elementsOf(beam);
  const nodes = Array.from(
    { length: 2 * count + 1 },
    (_, i) => `${i + 1},${((i * step_m) / 2).toFixed(9)},0.,0.`,
  );
  const elements = Array.from({ length: count }, (_, e) => `${e + 1},${2 * e + 1},${2 * e + 2},${2 * e + 3}`);
  const springs = supports.flatMap(({ at_m, stiffness_Npm }, i) =>
    stiffness_Npm === Infinity
      ? []
      : [
          `*ELEMENT, TYPE=SPRING1, ELSET=SPRING${i}`,
          `${count + 1 + i},${nodeAt(beam, at_m)}`,
          `*SPRING, ELSET=SPRING${i}`,
          '2',
          stiffness_Npm.toFixed(3),
        ],
  );
  const rigid = supports
    .filter(({ stiffness_Npm }) => stiffness_Npm === Infinity)
    .map(({ at_m }) => nodeAt(beam, at_m));
  return [
    '*NODE, NSET=ALL',
    ...nodes,
    '*ELEMENT, TYPE=B32R, ELSET=BOARD',
    ...elements,
    '*MATERIAL, NAME=WOOD',
    '*ELASTIC, TYPE=ENGINEERING CONSTANTS',
    `${E_Pa},${E_Pa},${E_Pa},0.,0.,0.,${G_Pa},${G_Pa}`,
    `${G_Pa},293.`,
    '*BEAM SECTION, ELSET=BOARD, MATERIAL=WOOD, SECTION=RECT',
    `${height_m},${width_m}`,
    '0.,1.,0.',
    ...springs,
    '*BOUNDARY',
    'ALL,3,5',
    '1,1,1',
    ...rigid.map((node) => `${node},2,2`),
    '*STEP',
    '*STATIC',
    '*CLOAD',
    ...nodalLoads(beam).map(([node, load]) => `${node},2,${-load}`),
    '*NODE PRINT, NSET=ALL',
    'U',
    '*NODE PRINT, NSET=ALL',
    'RF',
    '*END STEP',
    '',
  ].join('\n');
}

/** Line loads as what does the same work on a quadratic element: 1/6, 4/6, 1/6. */
function nodalLoads(beam: SolidBeam): (readonly [number, number])[] {
  const loads = new Map<number, number>();
  const add = (node: number, load: number): unknown => loads.set(node, (loads.get(node) ?? 0) + load);
  for (const { at_m, load_N } of beam.points) add(nodeAt(beam, at_m), load_N);
  for (const { from_m, to_m, load_Npm } of beam.lines) {
    for (let node = nodeAt(beam, from_m); node < nodeAt(beam, to_m); node += 2) {
      [1, 4, 1].forEach((share, k) => add(node + k, (load_Npm * beam.step_m * share) / 6));
    }
  }
  return [...loads].sort(([a], [b]) => a - b);
}

function answerOf(beam: SolidBeam, text: string): SolidAnswer {
  const [, movements = '', forces = ''] = /displacements([\s\S]*?)forces([\s\S]*)/.exec(text) ?? [];
  const column = (block: string): Map<number, number> =>
    new Map(
      block
        .split('\n')
        .map((line) => line.trim().split(/\s+/).map(Number))
        .filter((row) => row.length === 4 && row.every(Number.isFinite))
        .map(([node = 0, , vertical = NaN]) => [node, vertical]),
    );
  const [moved, held] = [column(movements), column(forces)];
  const down = (node: number): number => -(moved.get(node) ?? NaN);
  const count = 2 * elementsOf(beam) + 1;
  /** Printed forces are all that acts from outside: the support's and the loads'. */
  const loads = new Map(nodalLoads(beam));
  return {
    places_m: Array.from({ length: count }, (_, i) => (i * beam.step_m) / 2),
    movement_m: Array.from({ length: count }, (_, i) => down(i + 1)),
    reactions_N: beam.supports.map(({ at_m, stiffness_Npm }) => {
      const node = nodeAt(beam, at_m);
      return stiffness_Npm === Infinity
        ? (held.get(node) ?? NaN) + (loads.get(node) ?? 0)
        : stiffness_Npm * down(node);
    }),
  };
}
