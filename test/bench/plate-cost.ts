import {
  addedLoads,
  fieldOfStanding,
  freePlate,
  heldPlate,
  lineSupports,
  momentsOf,
  preparedLoad,
  standerOf,
  type PlateLoad,
  type PlateSupport,
} from '../../calc/mechanics/plate/index.ts';
import { meshOfTop, stiffnessOfTop, topSize_m } from './plate-top.ts';
import { figures, type Row } from './report.ts';
import { inTurns, median, medianRatio, type Task } from './timing.ts';

const finenesses = [1, 1.5, 2] as const;
const places = 60;
/** A band factored costs the square of the nodes; all else costs less. */
const mostExponent = 2.2;

const { length_m, depth_m, front_m, patch_m } = topSize_m;

/** The top on two rails with eight screws, and a person at many places of its edge. */
function checkOverhang(finer: number): void {
  const mesh = meshOfTop(finer);
  const plate = freePlate(mesh, stiffnessOfTop);
  const rails = [0, front_m].flatMap((at_m) =>
    lineSupports(mesh, { along: 'x', at_m, from_m: 0, to_m: length_m, stiffness_Npm2: 4e8 }),
  );
  const screws = [0.05, 0.55].flatMap((y_m) =>
    [0.1, 0.6, 1.2, 1.7].map((x_m): PlateSupport => ({
      x_m,
      y_m,
      sense: 'pull',
      give_mpN: 5e-7,
      most_N: 3000,
    })),
  );
  const held = heldPlate(plate, [...rails, ...screws]);
  const patch = (fromX_m: number, toX_m: number, fromY_m: number, load_N: number): PlateLoad => ({
    kind: 'patch',
    fromX_m,
    toX_m,
    fromY_m,
    toY_m: depth_m,
    load_N,
  });
  const weight = preparedLoad(plate, [patch(0, length_m, 0, 440)]);
  const stander = standerOf(held);
  for (let k = 0; k < places; k++) {
    const at_m = (k / (places - 1)) * (length_m - patch_m);
    const person = preparedLoad(plate, [patch(at_m, at_m + patch_m, depth_m - patch_m, 1112)]);
    const load = addedLoads(weight, person);
    const standing = stander.stand(load);
    if (!standing.stands) throw new Error('the top of the bench stands');
    momentsOf(plate, fieldOfStanding(held, load, standing));
  }
}

/** A plate factored and a person put on it at sixty places: how the cost grows with the mesh. */
export function plateCost(rounds: number): Row {
  const tasks = finenesses.map((finer): Task => ({ run: () => checkOverhang(finer), times: 1 }));
  const samples = inTurns(tasks, rounds);
  const nodes = finenesses.map((finer) => {
    const { x_m, y_m } = meshOfTop(finer);
    return x_m.length * y_m.length;
  });
  const [coarse = [], , fine = []] = samples;
  const growth = (nodes[2] ?? NaN) / (nodes[0] ?? NaN);
  const exponent = Math.log(medianRatio(fine, coarse)) / Math.log(growth);
  return {
    what: `A top factored and ${places} places of a person with moments, power of the number of nodes its cost grows with`,
    measured: figures(exponent),
    target: `at most ${mostExponent}`,
    met: exponent <= mostExponent,
    information:
      samples.map((each, index) => `${nodes[index] ?? ''} nodes ${figures(median(each))} ms`).join(', ') +
      ' (wanted at the usual mesh, the first: under 150)',
  };
}
