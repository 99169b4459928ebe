import type { PlateMesh } from '../../mechanics/plate/mesh.ts';
import type { Spot, Standing, Walk } from './people.ts';

/* A moment is read where lines of a mesh cross: under somebody between two lines its peak is not seen, and of two places
   alike on the top the one nearer to a line asks more. So people are tried where they stand right on one. */

/** Longest step between places where people are tried first, or nearly. */
const firstStep_m = 0.16;
/** Places nearer to each other than this are one. */
const closest_m = 1e-5;

/**
 * Places of a walk where people are tried first, in order: both ends, the stops, where one of them stands on a line of the
 * mesh, and even steps between.
 */
export function firstPlaces(walk: Walk, mesh: PlateMesh): number[] {
  const { from_m, to_m, stops_m } = walk;
  const onLines = offsetsOf(walk).flatMap((offset) => linesAlong(walk, mesh).map((line) => line - offset));
  const inside = [...onLines, ...stops_m]
    .filter((at) => at > from_m + closest_m && at < to_m - closest_m)
    .sort((a, b) => a - b);
  const apart = inside.filter((at, index) => at - (inside[index - 1] ?? from_m) > closest_m);
  const bounds = [from_m, ...apart, ...(to_m > from_m ? [to_m] : [])];
  return bounds.flatMap((place, index) => {
    const next = bounds[index + 1] ?? place;
    const steps = Math.max(1, Math.round((next - place) / firstStep_m));
    return Array.from({ length: steps }, (_, k) => place + ((next - place) * k) / steps);
  });
}

/** The places a step before and after some people, on every walk they are on. */
export function beside(walks: readonly Walk[], people: Standing, step_m: number): Standing[] {
  return walks.flatMap((walk) => {
    const place = placeOn(walk, people);
    if (place === null) return [];
    return [place - step_m, place + step_m]
      .filter((next) => next > walk.from_m && next < walk.to_m)
      .map((next) => walk.at(next));
  });
}

/** The nearest places before and after some people where one of them stands on a line, or the end, of every walk they are on. */
export function ontoLines(walks: readonly Walk[], people: Standing, mesh: PlateMesh): Standing[] {
  return walks.flatMap((walk) => {
    const place = placeOn(walk, people);
    if (place === null) return [];
    const { from_m, to_m } = walk;
    return offsetsOf(walk).flatMap((offset) => {
      const places = linesAlong(walk, mesh).map((line) => line - offset);
      const before = places.findLast((each) => each < place - closest_m) ?? from_m;
      const after = places.find((each) => each > place + closest_m) ?? to_m;
      return [walk.at(Math.max(before, from_m)), walk.at(Math.min(after, to_m))];
    });
  });
}

function linesAlong({ along }: Walk, { x_m, y_m }: PlateMesh): readonly number[] {
  return along === 'x' ? x_m : y_m;
}

/** How far along a walk each of its people is from its place. */
function offsetsOf(walk: Walk): number[] {
  return walk.at(walk.from_m).map((spot) => alongOf(walk, spot) - walk.from_m);
}

function alongOf({ along }: Walk, { x_m, y_m }: Spot): number {
  return along === 'x' ? x_m : y_m;
}

/** Where on a walk some people are; null where they are not on it. */
function placeOn(walk: Walk, people: Standing): number | null {
  const [spot] = people;
  const [start] = walk.at(walk.from_m);
  if (spot === undefined || start === undefined || people.length !== walk.at(walk.from_m).length) return null;
  const off = walk.along === 'x' ? spot.y_m - start.y_m : spot.x_m - start.x_m;
  if (Math.abs(off) > 1e-9) return null;
  return walk.from_m + alongOf(walk, spot) - alongOf(walk, start);
}
