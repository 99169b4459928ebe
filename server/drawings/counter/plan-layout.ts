import type { CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { frames, type Frame, type View } from '../frame.ts';
import { bareDimension, textWidth } from '../lettering.ts';
import { trueScale, type Scale } from '../scale.ts';

/** Where a counter top lies on its plan: the back edge above, the stool edge below. */
export interface PlanLayout {
  readonly frame: Frame;
  readonly units: UnitSystem;
  readonly scale: Scale;
  /** Place on the drawing of a distance from the back edge, m. */
  readonly y: (fromBack_m: number) => number;
  /** What the standing numbers left of the top take. */
  readonly margin: number;
}

const mostHeight: Readonly<Record<View, number>> = { wide: 330, narrow: 260 };

/** What the layout of a top from above goes by. */
export interface PlanOf {
  readonly units?: UnitSystem | undefined;
  readonly top: { readonly length: number; readonly depth: number };
  readonly base: { readonly back: number; readonly front: number };
  readonly loads?: CounterOverhangDocument['loads'];
}

/** The largest true scale at which the top and the numbers beside it fit. */
export function planLayout(document: PlanOf, view: View, top: number): PlanLayout {
  const units = document.units ?? 'inch-pound';
  const frame = frames[view];
  const numbers = [document.base.back, document.base.front, document.top.depth].map((place) =>
    textWidth(bareDimension(place, units), frame.letters),
  );
  const margin = Math.max(...numbers) + 26;
  const room = { left: 2 + margin, right: frame.right };
  const scale = trueScale(document.top.length, room, document.top.depth, mostHeight[view]);
  return { frame, units, scale, margin, y: (fromBack_m) => top + scale.length(fromBack_m) };
}
