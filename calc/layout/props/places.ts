import { inch, type UnitSystem, writeLength } from '../../../shared/quantity/index.ts';
import type { Counter } from './subject.ts';

/** How near a prop may stand to the end of the base, and how far it stays behind the stool edge. Common practice, no source. */
const fromEnd_m: Readonly<Record<UnitSystem, number>> = { 'inch-pound': 2 * inch, metric: 0.05 };

/** Where some props stand: from end to end of the base at even distances; one stands in the middle. */
export function placesFor({ document }: Counter, system: UnitSystem, count: number): string[] {
  const { from, to } = document.base;
  const [first, last] = [from + fromEnd_m[system], to - fromEnd_m[system]];
  return Array.from({ length: count }, (_, index) =>
    place(count === 1 ? (from + to) / 2 : first + ((last - first) * index) / (count - 1), system),
  );
}

/** How far out props reach: up to where an edge is still free of them. */
export function reachOf({ document }: Counter, system: UnitSystem): string {
  return place(document.top.depth - fromEnd_m[system], system);
}

/** Where a flat bar begins: as far back from the face of the base as the overhang is out, or at the back of the base. */
export function barBegins({ document }: Counter, system: UnitSystem): string {
  const { back, front } = document.base;
  return place(Math.max(back + fromEnd_m[system], 2 * front - document.top.depth), system);
}

/** A place as a tape measure tells it: to the half inch, or to 5 mm. */
function place(metres: number, system: UnitSystem): string {
  const step = system === 'metric' ? 0.005 : 0.5 * inch;
  return writeLength(Math.round(metres / step) * step, system).text;
}
