import type { CounterRunDocument } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { standardGravity, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { DesignCode, Material } from '../../codes/design-code.ts';
import { simpleBeamGive } from '../../mechanics/simple-beam.ts';

/** The rails under the long edges, all alike, each a beam between the cabinet sides. */
export interface RailBeam {
  readonly thickness_m: number;
  readonly height_m: number;
  /** How much of each end rests on something; null where nobody said. */
  readonly seat_m: number | null;
  /** Between the middles of its seats. */
  readonly span_m: number;
  readonly material: Material;
  readonly weight_Npm: number;
}

/** What a rail carries under one arrangement of loads, its own weight included. */
export interface RailForces {
  readonly edge: 'front' | 'back';
  readonly moment_Nm: number;
  /** The larger of both ends: all that it carries there is shear in the rail and rests on its seat. */
  readonly end_N: number;
}

export type RailReading =
  | { readonly ok: true; readonly rail: RailBeam | null }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

/** Looks the wood of the rails up; null where their size is not given. */
export function readRail(
  { rail, opening, conditions }: CounterRunDocument,
  code: DesignCode,
  system: UnitSystem,
): RailReading {
  if (rail === undefined) return { ok: true, rail: null };
  const { thickness, height, seat, material } = rail;
  const reading = code.material({
    ...{ path: '/rail', material, basis: 'clear-wood', appearance: undefined, grade: undefined },
    ...{ thickness_m: thickness, width_m: height, use: 'edge', system },
    moisture: conditions?.moisture ?? 'dry',
    temperature: conditions?.temperature ?? 'ordinary',
  });
  if (!reading.ok) return reading;
  return {
    ok: true,
    rail: {
      ...{ thickness_m: thickness, height_m: height, seat_m: seat ?? null, material: reading.material },
      span_m: opening + (seat ?? 0),
      weight_Npm: reading.material.density_kgm3 * thickness * height * standardGravity,
    },
  };
}

/** How far each place along a rail gives under one newton at each other, row by row, m/N. */
export function railGive(rail: RailBeam, places_m: readonly number[]): number[] {
  const { thickness_m: b, height_m: h, material, span_m } = rail;
  const from_m = (rail.seat_m ?? 0) / 2;
  const beam = {
    span_m,
    EI_Nm2: (material.E_Pa * b * h ** 3) / 12,
    /** Five sixths of the section of a rectangle (Wood Handbook, chapter 9). */
    GA_N: material.G_Pa === null ? Infinity : (5 / 6) * material.G_Pa * b * h,
  };
  return places_m.flatMap((at) => places_m.map((other) => simpleBeamGive(beam, at + from_m, other + from_m)));
}

/** Largest moment and end force of a rail from what presses on it at places along it, by the statics of a simple beam. */
export function railForces(
  rail: RailBeam,
  edge: RailForces['edge'],
  places: readonly { readonly x_m: number; readonly force_N: number }[],
): RailForces {
  const { span_m, weight_Npm } = rail;
  const pressed = places.map(({ x_m, force_N }) => ({ at_m: x_m + (rail.seat_m ?? 0) / 2, force_N }));
  const total_N = pressed.reduce((sum, { force_N }) => sum + force_N, 0);
  const right_N = pressed.reduce((sum, { at_m, force_N }) => sum + (force_N * at_m) / span_m, 0);
  const left_N = total_N - right_N;
  const momentAt = (at: number): number =>
    pressed.reduce((sum, { at_m, force_N }) => sum - force_N * Math.max(0, at - at_m), left_N * at);
  return {
    edge,
    moment_Nm: Math.max(0, ...pressed.map(({ at_m }) => momentAt(at_m))) + (weight_Npm * span_m ** 2) / 8,
    end_N: Math.max(left_N, right_N) + (weight_Npm * span_m) / 2,
  };
}
