import { hullOf, type Point } from '../../mechanics/hull.ts';
import type { Overhang } from './overhang.ts';
import { leverAbout, type Lever } from './tipping-line.ts';

/**
 * How far outside a line of the base's feet somebody counts. Legs stand under the top and nothing ties them to the base:
 * they are no feet of it. But somebody between the rails and the legs is carried by both, and turns the base by no more than
 * if they stood on a rail. Everybody else counts as if there were no legs.
 */
export function peopleLever({ base, props }: Overhang, lever: Lever): Lever {
  const legs = props.flatMap((prop): Point[] => (prop.kind === 'leg' ? [[prop.at, prop.to]] : []));
  if (legs.length === 0) return lever;
  const rails: Point[] = [
    [base.from_m, base.back_m],
    [base.to_m, base.back_m],
    [base.to_m, base.front_m],
    [base.from_m, base.front_m],
  ];
  const carrying = hullOf([...rails, ...legs]);
  const sides = carrying.map((from, index) =>
    leverAbout(from, carrying[(index + 1) % carrying.length] ?? from),
  );
  const onRail_m = Math.max(0, ...rails.map(lever));
  return (place) =>
    sides.every((side) => side(place) <= 1e-9) ? Math.min(lever(place), onRail_m) : lever(place);
}
