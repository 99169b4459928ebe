import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** An orthotropic plate for CalculiX: an even grid of quadratic shells (S8R), which it blows up into bricks. */
export interface ShellPlate {
  readonly cellsX: number;
  readonly cellsY: number;
  readonly cell_m: number;
  readonly thickness_m: number;
  /** E_x, E_y, E_z, ν_xy, ν_xz, ν_yz, G_xy, G_xz, G_yz. */
  readonly wood: readonly number[];
  readonly weight_Npm2: number;
  /** Cells under an even load besides. */
  readonly patch: {
    readonly i: readonly [number, number];
    readonly j: readonly [number, number];
    readonly load_N: number;
  };
  /** At corners of cells; a push acts while the plate presses on it, a pull while it rises. */
  readonly springs: readonly ShellSpring[];
}

export interface ShellSpring {
  readonly i: number;
  readonly j: number;
  readonly sense: 'push' | 'pull';
  readonly stiffness_Npm: number;
}

export interface ShellAnswer {
  /** Down, at the corner of cells i, j. */
  readonly down_m: (i: number, j: number) => number;
  /** Of every spring in its own sense, N: less than zero where it would have to act against it. */
  readonly forces_N: readonly number[];
  /** Bending moment m_y at the middle of a cell, sagging positive, N·m/m. */
  readonly momentY_Nmpm: (i: number, j: number) => number;
}

/**
 * The fixed end of a spring. Its reaction is the force of the spring; the printed movement of a node of a shell is a mean
 * through the thickness and not quite where the spring holds.
 */
const groundOf = ({ cellsX, cellsY }: ShellPlate, k: number): number =>
  (2 * cellsX + 1) * (2 * cellsY + 1) + 1 + k;

/** Nodes lie on a grid of half cells; the middles of cells have none. */
const nodeAt = ({ cellsX }: ShellPlate, a: number, b: number): number => b * (2 * cellsX + 1) + a + 1;

/**
 * Solves with the springs that act, each of them both ways, and without the others: whether every one acts in its own sense
 * is for the test to see.
 */
export function solveShellPlate(plate: ShellPlate, acting: readonly boolean[]): ShellAnswer {
  const folder = mkdtempSync(join(tmpdir(), 'plate-'));
  try {
    writeFileSync(join(folder, 'plate.inp'), inputOf(plate, acting));
    execFileSync('ccx', ['plate'], {
      cwd: folder,
      stdio: 'pipe',
      env: { ...process.env, OMP_NUM_THREADS: '1' },
    });
    return answerOf(plate, acting, readFileSync(join(folder, 'plate.dat'), 'utf8'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function inputOf(plate: ShellPlate, acting: readonly boolean[]): string {
  const { cellsX, cellsY, cell_m, thickness_m, wood, springs } = plate;
  const nodes: string[] = [];
  for (let b = 0; b <= 2 * cellsY; b++) {
    for (let a = 0; a <= 2 * cellsX; a++) {
      if (a % 2 === 1 && b % 2 === 1) continue;
      nodes.push(
        `${nodeAt(plate, a, b)},${((a * cell_m) / 2).toFixed(9)},${((b * cell_m) / 2).toFixed(9)},0.`,
      );
    }
  }
  const springLines = springs.flatMap(({ i, j, stiffness_Npm }, k) =>
    acting[k] === true
      ? [
          '*NODE, NSET=GROUND',
          `${groundOf(plate, k)},${(i * cell_m).toFixed(9)},${(j * cell_m).toFixed(9)},0.`,
          `*ELEMENT, TYPE=SPRING2, ELSET=SPRING${k}`,
          `${cellsX * cellsY + 1 + k},${nodeAt(plate, 2 * i, 2 * j)},${groundOf(plate, k)}`,
          `*SPRING, ELSET=SPRING${k}`,
          '3,3',
          stiffness_Npm.toFixed(3),
        ]
      : [],
  );
  return [
    '*NODE, NSET=ALL',
    ...nodes,
    '*ELEMENT, TYPE=S8R, ELSET=TOP',
    ...cellsOf(plate).map(({ number, nodes: [...own] }) => `${number},${own.join(',')}`),
    '*MATERIAL, NAME=WOOD',
    '*ELASTIC, TYPE=ENGINEERING CONSTANTS',
    wood.slice(0, 8).join(','),
    `${wood[8] ?? NaN},293.`,
    '*SHELL SECTION, ELSET=TOP, MATERIAL=WOOD',
    String(thickness_m),
    ...springLines,
    '*BOUNDARY',
    'GROUND,1,3',
    `${nodeAt(plate, 0, 0)},1,2`,
    `${nodeAt(plate, 2 * cellsX, 0)},2,2`,
    '*STEP',
    '*STATIC',
    '*CLOAD',
    ...[...nodalLoads(plate)].map(([node, load_N]) => `${node},3,${-load_N}`),
    '*NODE PRINT, NSET=ALL',
    'U',
    '*NODE PRINT, NSET=GROUND',
    'RF',
    '*EL PRINT, ELSET=TOP',
    'S',
    '*END STEP',
    '',
  ].join('\n');
}

function cellsOf(plate: ShellPlate): { i: number; j: number; number: number; nodes: number[] }[] {
  const { cellsX, cellsY } = plate;
  return Array.from({ length: cellsX * cellsY }, (_, k) => {
    const [i, j] = [k % cellsX, Math.floor(k / cellsX)];
    const around = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
      [1, 0],
      [2, 1],
      [1, 2],
      [0, 1],
    ];
    return {
      i,
      j,
      number: k + 1,
      nodes: around.map(([a = 0, b = 0]) => nodeAt(plate, 2 * i + a, 2 * j + b)),
    };
  });
}

/** What does the work of an even load on a quadratic cell: −1/12 at its corners, 1/3 at its sides. */
function nodalLoads(plate: ShellPlate): Map<number, number> {
  const { patch, cell_m, weight_Npm2 } = plate;
  const loads = new Map<number, number>();
  const inPatch = ({ i, j }: { i: number; j: number }): boolean =>
    i >= patch.i[0] && i < patch.i[1] && j >= patch.j[0] && j < patch.j[1];
  const cells = cellsOf(plate);
  const count = cells.filter(inPatch).length;
  for (const cell of cells) {
    const load_N = weight_Npm2 * cell_m ** 2 + (inPatch(cell) ? patch.load_N / count : 0);
    cell.nodes.forEach((node, k) =>
      loads.set(node, (loads.get(node) ?? 0) + load_N * (k < 4 ? -1 / 12 : 1 / 3)),
    );
  }
  return loads;
}

function answerOf(plate: ShellPlate, acting: readonly boolean[], text: string): ShellAnswer {
  const [, movements = '', reactions = '', stresses = ''] =
    /displacements([\s\S]*?)forces([\s\S]*?)stresses([\s\S]*)/.exec(text) ?? [];
  const rows = (block: string, width: number): number[][] =>
    block
      .split('\n')
      .map((line) => line.trim().split(/\s+/).slice(0, width).map(Number))
      .filter((row) => row.length === width && row.every(Number.isFinite));
  const moved = new Map(rows(movements, 4).map(([node = 0, , , up = NaN]) => [node, up]));
  const held = new Map(rows(reactions, 4).map(([node = 0, , , up = NaN]) => [node, up]));
  const down_m = (i: number, j: number): number => -(moved.get(nodeAt(plate, 2 * i, 2 * j)) ?? NaN);
  const bent = new Map<number, number>();
  // Eight places a cell, the lower four first, each a share 1/√3 of half the thickness from the middle.
  for (const [element = 0, place = 0, , stressY = NaN] of rows(stresses, 8)) {
    const moment = (((place <= 4 ? 1 : -1) * stressY) / 8) * (plate.thickness_m ** 2 / 6) * Math.sqrt(3);
    bent.set(element, (bent.get(element) ?? 0) + moment);
  }
  return {
    down_m,
    forces_N: plate.springs.map(({ sense }, k) =>
      acting[k] === true ? (sense === 'push' ? 1 : -1) * (held.get(groundOf(plate, k)) ?? NaN) : 0,
    ),
    momentY_Nmpm: (i, j) => bent.get(j * plate.cellsX + i + 1) ?? NaN,
  };
}
