import type { Table } from '../../../shared/check-result.ts';
import { inch, show, showUsed } from '../../../shared/quantity/index.ts';
import type { Context } from './context.ts';
import { beamOf } from './model.ts';
import { baysOf } from '../../mechanics/bays.ts';
import { prepareBeam, solveBeam } from '../../mechanics/beam.ts';
import { movementIn } from '../../mechanics/beam-field.ts';
import { largest, scaled } from '../../mechanics/polynomial.ts';
import type { BayMovements, Movements } from './movements.ts';

const poundPerSquareFoot = 47.88025898033584;

interface Reading {
  readonly name: string;
  readonly source: string;
  readonly allowed: (span_m: number) => number;
  readonly moved: (bay: BayMovements, index: number) => number;
}

/** How the shelf stands against other published limits of movement: a reading, not part of the verdict. */
export function readingsOf(context: Context, movements: Movements): Table {
  const { shelf } = context;
  const underOne = movementsUnder(context, shelf.depth_m * poundPerSquareFoot);
  const live = (bay: BayMovements): number => bay.live.value + bay.twistLive.value_m;
  const later = (bay: BayMovements): number => bay.longTerm.value + bay.twistLongTerm.value_m;
  const under =
    (psf: number) =>
    (_: BayMovements, index: number): number =>
      (underOne[index] ?? 0) * psf;
  const readings: Reading[] = [
    {
      name: 'Floors, under load, L/360',
      source: 'IBC Table 1604.3',
      allowed: (span) => span / 360,
      moved: live,
    },
    {
      name: 'Floors, over the years, L/240',
      source: 'IBC Table 1604.3',
      allowed: (span) => span / 240,
      moved: later,
    },
    {
      name: 'Beams, first movement, L/300',
      source: 'EN 1995-1-1 Table 7.2 (memory)',
      allowed: (span) => span / 300,
      moved: live,
    },
    {
      name: 'Woodwork shelves, 40 psf, L/144',
      source: 'Architectural Woodwork Standards (2009)',
      allowed: (span) => span / 144,
      moved: under(40),
    },
    {
      name: 'Book shelves, 50 psf, L/144',
      source: 'Architectural Woodwork Standards (2009)',
      allowed: (span) => span / 144,
      moved: under(50),
    },
    {
      name: 'Kitchen cabinet shelves, 15 psf, L/192 and 1/4 in',
      source: 'ANSI/KCMA A161.1',
      allowed: (span) => Math.min(span / 192, 0.25 * inch),
      moved: under(15),
    },
  ];
  return {
    title: 'Read against other published limits of movement (not part of the verdict)',
    head: ['Limit', 'Source', 'Moves', 'Allowed', 'Used'],
    rows: readings.map(({ name, source, allowed, moved }) => {
      const used = movements.bays.map((bay, index) => ({
        moves: moved(bay, index),
        may: allowed(bay.span_m),
      }));
      const worst = used.reduce((a, b) => (b.moves / b.may > a.moves / a.may ? b : a));
      return [
        name,
        source,
        show(worst.moves, 'm', shelf.system),
        show(worst.may, 'm', shelf.system),
        showUsed(worst.moves / worst.may),
      ];
    }),
  };
}

/** Movement of each bay under a line load along the whole board, all bays at once. */
function movementsUnder({ shelf }: Context, load_Npm: number): number[] {
  const prepared = prepareBeam(beamOf(shelf, Infinity), []);
  const whole = { from_m: 0, to_m: shelf.length_m, load_Npm };
  const field = solveBeam(prepared, { lines: [whole], points: [] });
  return baysOf(prepared).map((bay) => {
    let most = 0;
    for (let i = bay.first; i < bay.end; i++) {
      const movement = movementIn(field, i);
      const width = (prepared.grid_m[i + 1] ?? 0) - (prepared.grid_m[i] ?? 0);
      const down = largest(movement, 0, width).value;
      const up = largest(scaled(movement, -1), 0, width).value;
      most = Math.max(most, down, up);
    }
    return most;
  });
}
