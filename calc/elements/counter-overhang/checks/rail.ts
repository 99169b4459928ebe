import type { Step } from '../../../../shared/check-result.ts';
import { show, type UnitSystem } from '../../../../shared/quantity/index.ts';
import { upperFirst } from '../../../../shared/words.ts';
import type { Material } from '../../../codes/design-code.ts';
import { work } from '../../../formula/step.ts';
import {
  bendingStress,
  notchedDepth,
  shearStressOfRectangle,
} from '../../../standards/nds-2018/3-members.ts';
import { sectionModulus } from '../../../mechanics/section-formulas.ts';
import type { Judged } from '../../judged.ts';
import { isWorse, makeCheck, worstCheck, type CheckParts } from '../../make-check.ts';
import { endsHeld, stableBendingOf } from '../../rail-stability.ts';
import { worstOf, type Analysed } from '../analysed.ts';
import { railEndMoment, railMoment } from '../hold-formulas.ts';
import type { Overhang } from '../overhang.ts';
import { judgedRails, stretchesOf, type RailName, type Stretch } from '../rail-effects.ts';
import type { Found } from '../search.ts';
import type { Worst } from '../trial.ts';
import { stateWords } from '../where.ts';
import { railWood } from './rail-wood.ts';

/** A stretch of the front rail between two panels, and the most it carries. */
export interface RailSpan extends Stretch {
  readonly load_N: number;
}

/** What each stretch of the front rail carries at most. */
export function railSpans({ base }: Overhang, analysed: Analysed): RailSpan[] {
  return stretchesOf(base)
    .map((stretch, k) => ({ ...stretch, load_N: worstOf(analysed, `front span ${k}`)?.value ?? 0 }))
    .filter(hasLength);
}

const hasLength = ({ from_m, to_m }: Stretch): boolean => to_m - from_m > 1e-3;

const bent = { id: 'rail', title: 'Rail between panels', unit: 'Pa', clause: 'NDS 3.3.1' } as const;
const sheared = { id: 'rail-shear', title: 'Shear of the rail', unit: 'Pa', clause: 'NDS 3.4.1' } as const;

/** A stretch of a rail in one combination. */
interface Piece extends Stretch {
  readonly rail: RailName;
  /** Its number from the left. */
  readonly k: number;
  readonly found: Found;
  readonly thickness_m: number;
  readonly height_m: number;
  /** What is left of the height where bars lie in notches of it. */
  readonly left_m: number;
  readonly material: Material;
}

/**
 * The rail under the stool side as a beam between panels, where its height is given, and the rail along the back where the
 * top stands out there: bending as if everything a stretch carries stood in its middle, past the last panel at its free
 * end; shear by where it stands. Where there are no panels, nothing can be said of it.
 */
export function railCheck(overhang: Overhang, analysed: Analysed): Judged[] {
  const { document, base, system } = overhang;
  const { rail } = document.base;
  const cannotSay = (note: string): Judged[] => {
    const { name: combination } = analysed.soft.combination;
    const unknown = { ...bent, combination, demand: null, capacity: null, where: 'front rail', note };
    return [{ check: makeCheck(unknown, system), steps: [] }];
  };
  if (base.panels_m.length === 0)
    return cannotSay('No upright panels are given: what carries the rails is not known.');
  if (rail?.height === undefined) return [];
  const material = railWood(overhang);
  if (material === null || analysed.isLost)
    return cannotSay('What the rail carries, or what it is made of, cannot be worked out.');
  const size = { thickness_m: base.railThickness_m, height_m: rail.height, material };
  const pieces = (name: RailName): Piece[] =>
    stretchesOf(base).flatMap((stretch, k) => {
      const left_m = size.height_m - notchOf(overhang, name, stretch);
      return hasLength(stretch)
        ? analysed.found.map((found) => ({ ...stretch, ...size, left_m, rail: name, k, found }))
        : [];
    });
  return [judgeBending, judgeShear].flatMap((judge) => {
    const rails = judgedRails(overhang).flatMap((name) => {
      const [first, ...others] = pieces(name).map((piece) => judge(overhang, piece));
      return first === undefined ? [] : [worstCheck([first, ...others])];
    });
    return rails.slice(0, 1).map((front) => rails.slice(1).reduce(plainlyWorse, front));
  });
}

/** How deep the deepest bar is let into a stretch of a rail, m: the front rail under every bar, the back rail under those that reach it. */
function notchOf({ base, props }: Overhang, rail: RailName, { from_m, to_m }: Stretch): number {
  const bars = props.flatMap((prop) => (prop.kind === 'flat-bar' ? [prop] : []));
  const depths = bars
    .filter(({ at, width }) => at + width / 2 > from_m && at - width / 2 < to_m)
    .filter(({ from }) => rail === 'front' || from < base.back_m + base.railThickness_m)
    .map(({ thickness }) => thickness);
  return Math.max(0, ...depths);
}

/** Of two rails alike but for rounding the first. */
function plainlyWorse(a: Judged, b: Judged): Judged {
  const isAlike =
    a.check.outcome === b.check.outcome && (b.check.ratio ?? 0) <= (a.check.ratio ?? 0) * (1 + 1e-6);
  return !isAlike && isWorse(b.check, a.check) ? b : a;
}

/** One stretch by itself: a long one turns over sooner than a short one that is bent more. */
function judgeBending({ system }: Overhang, piece: Piece): Judged {
  const { rail, k, found, isEnd, left_m, thickness_m: b, material } = piece;
  const L_r = piece.to_m - piece.from_m;
  const worst = found.worst.get(`${rail} span ${k}`);
  if (left_m <= 0) return cutThrough(bent, piece, worst, system);
  const S = work(sectionModulus, { b, t: left_m }, system);
  const moment = work(isEnd ? railEndMoment : railMoment, { R_r: worst?.value ?? 0, L_r }, system);
  const stress = work(bendingStress, { M: moment.value, S: S.value }, system);
  const steps = [S.step, moment.step, stress.step];
  const demanded = { ...bent, ...whereOf(piece, worst, system), demand: stress.value };
  const resistance = material.resistance('bending', found.combination.duration);
  if (!resistance.ok) return unknown(demanded, resistance.why, steps, system);
  const stable = stableBendingOf({ ...piece, span_m: L_r }, resistance.value_Pa, system);
  const place = isEnd ? 'at its free end, past the last panel' : 'in its middle';
  const taken = `All that the stretch carries is taken ${place}; the wood of the rail as with small sound knots. ${endsHeld}${notchWords(piece, system)}`;
  const note = stable.ok ? taken : upperFirst(`${stable.why}.`);
  const capacity = stable.ok ? stable.value_Pa : 0;
  return {
    check: makeCheck({ ...demanded, capacity, note }, system),
    steps: [...steps, resistance.step, ...stable.steps],
  };
}

/** Shear at the end of one stretch. */
function judgeShear({ system }: Overhang, piece: Piece): Judged {
  const { rail, k, found, isEnd, height_m, left_m, thickness_m: b, material } = piece;
  const worst = found.worst.get(`${rail} end ${k}`);
  if (left_m <= 0) return cutThrough(sheared, piece, worst, system);
  // Past the last panel a rail is pulled along its top, where it is notched.
  const notched =
    isEnd && left_m < height_m ? work(notchedDepth, { d_n: left_m, d_whole: height_m }, system) : null;
  const d = notched?.value ?? left_m;
  const stress = work(shearStressOfRectangle, { V: worst?.value ?? 0, b, d }, system);
  const demanded = { ...sheared, ...whereOf(piece, worst, system), demand: stress.value };
  const resistance = material.resistance('shear', found.combination.duration);
  const steps = [...(notched === null ? [] : [notched.step]), stress.step];
  if (!resistance.ok) return unknown(demanded, resistance.why, steps, system);
  const note = `Nothing beside a panel is left out: whether the rail bears on it is not known (NDS 3.4.3.1). What holds its ends is not worked out.${notchWords(piece, system)}`;
  return {
    check: makeCheck({ ...demanded, capacity: resistance.value_Pa, note }, system),
    steps: [...steps, resistance.step],
  };
}

function notchWords({ height_m, left_m }: Piece, system: UnitSystem): string {
  return left_m < height_m ? ` Notched for a bar, ${show(left_m, 'm', system)} of it is left.` : '';
}

/** A bar that is as thick as the rail is high: nothing of the rail is left. */
function cutThrough(
  parts: typeof bent | typeof sheared,
  piece: Piece,
  worst: Worst | undefined,
  system: UnitSystem,
): Judged {
  const note = 'A bar let into the rail is as thick as the rail is high: it cuts the rail through.';
  const demanded = { ...parts, unit: 'N', demand: worst?.value ?? 0, capacity: 0, note } as const;
  return { check: makeCheck({ ...demanded, ...whereOf(piece, worst, system) }, system), steps: [] };
}

function whereOf({ rail, from_m, to_m, found }: Piece, worst: Worst | undefined, system: UnitSystem) {
  const state = worst === undefined ? '' : `; ${stateWords(worst, system)}`;
  const which = rail === 'back' ? 'back rail, ' : '';
  return {
    where: `${which}from ${show(from_m, 'm', system)} to ${show(to_m, 'm', system)}${state}`,
    combination: found.combination.name,
  };
}

function unknown(
  parts: Omit<CheckParts, 'capacity' | 'note'>,
  why: string,
  steps: readonly Step[],
  system: UnitSystem,
): Judged {
  return { check: makeCheck({ ...parts, capacity: null, note: upperFirst(`${why}.`) }, system), steps };
}
