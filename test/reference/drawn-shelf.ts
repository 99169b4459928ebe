import type { BracketShelfInput } from '../../shared/check-document/index.ts';
import { gravity, psi, shelf, type Load } from '../calc/elements/documents.ts';
import type { Draws } from './draws.ts';
import type { Plan, PlanLoad } from './every-arrangement.ts';

/*
 * A plain sugar maple board by hand. Wood Handbook FPL-GTR-282: Table 5-3b, 12 % moisture: stiffness 1.83 Mpsi, which has
 * shear inside it (footnote: add 10 %), specific gravity 0.63; Table 5-1: G_LT / E_L 0.063 (memory), the lesser of the two.
 * ASTM D245: stiffness × 0.9 for small knots (memory). Density at 12 %: 1.12 × 0.63 (chapter 4). NDS 3.5.2: creep 1.5.
 */
const mapleE_Pa = 1.1 * 1.83e6 * psi * 0.9;
const mapleG_Pa = 0.063 * mapleE_Pa;
const mapleDensity_kgm3 = 1.12 * 0.63 * 1000;

export interface DrawnShelf {
  readonly document: BracketShelfInput;
  readonly plan: Plan;
}

const metres = (x: number): string => `${x.toFixed(4)} m`;

interface Wishes {
  readonly hold?: 'screwed' | 'resting';
  readonly brackets?: readonly [number, number];
  readonly jointed?: boolean;
  readonly steel?: boolean;
  /** Most loads besides the roaming ones. */
  readonly loads?: number;
}

/** A small shelf with everything about it drawn. */
export function drawnShelf(draws: Draws, wishes: Wishes = {}): DrawnShelf {
  const [fewest, most] = wishes.brackets ?? [2, 5];
  const count = Math.round(draws.between(fewest, most));
  const spans = Array.from({ length: count - 1 }, () => draws.between(0.25, 1.1));
  const overhangs = [draws.one(0, draws.between(0.03, 0.4)), draws.one(0, draws.between(0.03, 0.4))];
  let x = overhangs[0] ?? 0;
  const positions_m = [x, ...spans.map((span) => (x = Math.round((x + span) * 1000) / 1000))];
  const length_m = Math.round((x + (overhangs[1] ?? 0)) * 1000) / 1000;
  const [depth, thickness] = [draws.between(0.15, 0.3), draws.between(0.012, 0.04)];
  const joints =
    wishes.jointed && count > 2 ? [positions_m[Math.floor(draws.between(1, count - 1.001))] ?? 0] : [];
  const loads = drawnLoads(draws, length_m, wishes.loads ?? 3);
  const arm = { width: 0.02, thickness: draws.between(0.006, 0.015) };
  return {
    document: shelf({
      board: {
        length: metres(length_m),
        depth: metres(depth),
        thickness: metres(thickness),
        ...(joints.length > 0 ? { joints: joints.map(metres) } : {}),
      },
      brackets: {
        positions: positions_m.map(metres),
        arm: metres(depth),
        armWidth: '0.02 m',
        hold: wishes.hold ?? 'screwed',
        ...(wishes.steel
          ? {
              capacity: {
                basis: 'steel',
                metal: 'a36',
                width: metres(arm.width),
                thickness: metres(arm.thickness),
              },
            }
          : {}),
      },
      loads: loads.map((load, index) => written(load, index)),
    }),
    plan: {
      length_m,
      EI_Nm2: (mapleE_Pa * depth * thickness ** 3) / 12,
      GA_N: (5 / 6) * mapleG_Pa * depth * thickness,
      selfWeight_Npm: mapleDensity_kgm3 * gravity * depth * thickness,
      positions_m,
      joints,
      ...(wishes.steel
        ? { spring_Npm: (29e6 * psi * arm.width * arm.thickness ** 3) / (4 * depth ** 3) }
        : {}),
      creep: 1.5,
      loads,
    },
  };
}

function drawnLoads(draws: Draws, length_m: number, most: number): PlanLoad[] {
  const loads: PlanLoad[] = [];
  const count = Math.round(draws.between(0, most));
  let parts = 0;
  for (let i = 0; i < count; i++) {
    const free = parts < 2 && draws.one(true, true, false);
    const sustained = draws.one(0, 1, 0.3);
    if (draws.one(true, false)) {
      const [a, b] = [draws.between(0, length_m), draws.between(0, length_m)].sort((p, q) => p - q);
      const part = draws.one(true, false) && (b ?? 0) - (a ?? 0) > 0.05;
      if (free) parts += 1;
      loads.push({
        kind: 'line',
        amount: draws.between(20, 400),
        free,
        sustained,
        ...(part ? { from_m: a, to_m: b } : {}),
      });
    } else {
      loads.push({
        kind: 'point',
        amount: draws.between(20, 300),
        at_m: draws.between(0, length_m),
        free,
        sustained,
      });
    }
  }
  const roaming = draws.one(0, 1, 1, 2);
  for (let i = 0; i < roaming; i++) {
    loads.push({
      kind: 'roaming',
      amount: draws.between(50, 400),
      free: true,
      sustained: draws.one(0, 0, 0.5),
    });
  }
  return loads;
}

function written(load: PlanLoad, index: number): Load {
  const common = {
    name: `Load ${index + 1}`,
    duration: 'ten-years',
    arrangement: load.free ? 'free' : 'fixed',
    sustained: load.sustained,
  } as const;
  if (load.kind === 'roaming') return { ...common, kind: 'roaming', amount: `${load.amount} N` };
  if (load.kind === 'point')
    return { ...common, kind: 'point', amount: `${load.amount} N`, at: metres(load.at_m ?? 0) };
  return {
    ...common,
    kind: 'line',
    amount: `${load.amount} N/m`,
    ...(load.from_m === undefined ? {} : { from: metres(load.from_m) }),
    ...(load.to_m === undefined ? {} : { to: metres(load.to_m) }),
  };
}
