import { show } from '../../../../shared/quantity/index.ts';
import { upperFirst } from '../../../../shared/words.ts';
import { work } from '../../../formula/step.ts';
import { bendingStress } from '../../../standards/nds-2018/3-members.ts';
import { sectionModulus } from '../../../mechanics/section-formulas.ts';
import type { Judged } from '../../judged.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import { endsHeld, stableBendingOf, type EdgeBeam } from '../../rail-stability.ts';
import { worstOf, type Analysed } from '../analysed.ts';
import { railEndMoment, railMoment } from '../hold-formulas.ts';
import type { Overhang } from '../overhang.ts';
import { stateWords } from '../where.ts';

/** A stretch of the front rail between two panels, and the most it carries. */
export interface RailSpan {
  readonly from_m: number;
  readonly to_m: number;
  readonly load_N: number;
  /** Past the first or the last panel. */
  readonly isEnd: boolean;
}

/** What each stretch of the front rail carries at most. */
export function railSpans({ base }: Overhang, analysed: Analysed): RailSpan[] {
  const { panels_m, from_m, to_m } = base;
  return Array.from({ length: panels_m.length + 1 }, (_, k) => ({
    from_m: panels_m[k - 1] ?? from_m,
    to_m: panels_m[k] ?? to_m,
    load_N: worstOf(analysed, `span ${k}`)?.value ?? 0,
    isEnd: k === 0 || k === panels_m.length,
  })).filter((span) => span.to_m - span.from_m > 1e-3);
}

/**
 * The rail under the stool side as a beam between panels, where its height is given: everything a stretch carries is
 * taken to stand in its middle; past the last panel, at its free end. Where there are no panels, nothing can be said of it.
 */
export function railCheck(overhang: Overhang, analysed: Analysed): Judged[] {
  const { document, base, code, system } = overhang;
  const { rail } = document.base;
  const parts = { ...railParts, combination: analysed.soft.combination.name };
  const cannotSay = (note: string): Judged[] => {
    const unknown = { ...parts, demand: null, capacity: null, where: 'front rail', note };
    return [{ check: makeCheck(unknown, system), steps: [] }];
  };
  if (base.panels_m.length === 0)
    return cannotSay('No upright panels are given: what carries the rails is not known.');
  if (rail?.height === undefined) return [];
  const [first, ...others] = railSpans(overhang, analysed);
  const reading = code.material({
    path: '/base/rail',
    material: rail.material,
    basis: 'clear-wood',
    appearance: 'small-knots',
    grade: undefined,
    thickness_m: base.railThickness_m,
    width_m: rail.height,
    use: 'edge',
    moisture: document.conditions?.moisture ?? 'dry',
    temperature: document.conditions?.temperature ?? 'ordinary',
    system,
  });
  if (first === undefined || !reading.ok || analysed.isLost)
    return cannotSay('What the rail carries, or what it is made of, cannot be worked out.');
  const { material } = reading;
  const piece = { thickness_m: base.railThickness_m, height_m: rail.height, material };
  const judge = (span: RailSpan): Judged => judgeSpan(overhang, analysed, span, piece);
  return [worstCheck([judge(first), ...others.map(judge)])];
}

const railParts = {
  id: 'rail',
  title: 'Front rail between panels',
  unit: 'Pa',
  clause: 'NDS 3.3.1',
} as const;

/** One stretch by itself: a long one turns over sooner than a short one that is bent more. */
function judgeSpan(
  { base, system }: Overhang,
  analysed: Analysed,
  span: RailSpan,
  piece: Omit<EdgeBeam, 'span_m'>,
): Judged {
  const { combination } = analysed.soft;
  const L_r = span.to_m - span.from_m;
  const resistance = piece.material.resistance('bending', combination.duration);
  const S = work(sectionModulus, { b: piece.thickness_m, t: piece.height_m }, system);
  const moment = work(span.isEnd ? railEndMoment : railMoment, { R_r: span.load_N, L_r }, system);
  const stress = work(bendingStress, { M: moment.value, S: S.value }, system);
  const effect = worstOf(
    analysed,
    `span ${base.panels_m.filter((panel) => panel <= span.from_m + 1e-6).length}`,
  );
  const state = effect === undefined ? '' : `; ${stateWords(effect, system)}`;
  const where = `from ${show(span.from_m, 'm', system)} to ${show(span.to_m, 'm', system)}${state}`;
  const steps = [S.step, moment.step, stress.step];
  const demanded = { ...railParts, combination: combination.name, demand: stress.value, where };
  if (!resistance.ok) {
    const note = upperFirst(`${resistance.why}.`);
    return { check: makeCheck({ ...demanded, capacity: null, note }, system), steps };
  }
  const stable = stableBendingOf({ ...piece, span_m: L_r }, resistance.value_Pa, system);
  const place = span.isEnd ? 'at its free end, past the last panel' : 'in its middle';
  const taken = `All that the stretch carries is taken ${place}; the wood of the rail as with small sound knots. ${endsHeld}`;
  const note = stable.ok ? taken : upperFirst(`${stable.why}.`);
  const capacity = stable.ok ? stable.value_Pa : 0;
  return {
    check: makeCheck({ ...demanded, capacity, note }, system),
    steps: [...steps, resistance.step, ...stable.steps],
  };
}
