import { show } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { armStress } from '../../../standards/aisc-360/steel-arm.ts';
import type { Judged } from '../../judged.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import { ratingToAskFor } from '../../rating-to-ask.ts';
import { allowedBending } from '../../steel-bar.ts';
import { noEffect, worstOf, type Analysed } from '../analysed.ts';
import { barMetal, type FlatBar } from '../bar.ts';
import { barMoment, bracketCouple } from '../hold-formulas.ts';
import type { Overhang, Prop } from '../overhang.ts';
import type { Worst } from '../trial.ts';
import { stateWords } from '../where.ts';

type Rated = Exclude<Prop, FlatBar>;

/** The prop that is used most; none where there are none. */
export function propCheck(overhang: Overhang, analysed: Analysed): Judged[] {
  const [first, ...rest] = overhang.props.flatMap((prop, index) =>
    prop.kind === 'flat-bar'
      ? [ofBar(overhang, analysed, prop, index)]
      : ofRated(overhang, analysed, prop, index),
  );
  return first === undefined ? [] : [worstCheck([first, ...rest])];
}

const words: Readonly<Record<Prop['kind'], string>> = {
  'flat-bar': 'flat bar',
  bracket: 'bracket',
  corbel: 'corbel',
  leg: 'leg',
};

function partsOf(
  { system, code, serving, person }: Overhang,
  prop: Prop,
  index: number,
  worst: Worst | undefined,
) {
  const durations = [serving, person].flatMap((load) => (load === null ? [] : [load.duration]));
  const combinations = code.combinations(durations);
  const state = worst === undefined ? '' : `; ${stateWords(worst, system)}`;
  return {
    id: 'prop',
    title: 'Props under the overhang',
    where: `prop ${index + 1}, ${words[prop.kind]} ${show(prop.at, 'm', system)} along${state}`,
    combination: combinations[combinations.length - 1]?.name ?? 'D',
  } as const;
}

const lost = 'The top tips off its base before this can be worked out.';

function ofBar(overhang: Overhang, analysed: Analysed, bar: FlatBar, index: number): Judged {
  const { system } = overhang;
  const worst = worstOf(analysed, `bar ${index}`);
  const metal = barMetal(bar);
  const parts = { ...partsOf(overhang, bar, index, worst), unit: 'Pa', clause: 'AISC 360 F11' } as const;
  if (worst === undefined || analysed.isLost)
    return { check: makeCheck({ ...parts, demand: null, capacity: null, note: lost }, system), steps: [] };
  const { width: b, thickness: t } = bar;
  const moment = work(barMoment, { E_s: metal.E_Pa, b, t_s: t, chi: worst.value }, system);
  const stress = work(armStress, { M: moment.value, N: 0, b, t }, system, 'stress in the bar');
  const steps = [moment.step, stress.step];
  if (metal.yield_Pa === null) {
    const note = `${metal.name} has no yield point: its bending cannot be vouched for.`;
    return { check: makeCheck({ ...parts, demand: stress.value, capacity: null, note }, system), steps };
  }
  const allowed = allowedBending({ E_s: metal.E_Pa, F_y: metal.yield_Pa, b, t }, bar.to - bar.from, system);
  return {
    check: makeCheck({ ...parts, demand: stress.value, capacity: allowed.value_Pa }, system),
    steps: [...steps, ...allowed.steps],
  };
}

/** A rated prop: its load, and for brackets and corbels the couple about the face of the base. */
function ofRated(overhang: Overhang, analysed: Analysed, prop: Rated, index: number): Judged[] {
  const { system, base } = overhang;
  const load = worstOf(analysed, `prop ${index}`);
  const parts = {
    ...partsOf(overhang, prop, index, load),
    unit: 'N',
    clause: 'rating of its maker',
  } as const;
  if (analysed.isLost)
    return [{ check: makeCheck({ ...parts, demand: null, capacity: null, note: lost }, system), steps: [] }];
  const { value } = load ?? noEffect;
  const couple = worstOf(analysed, `prop couple ${index}`) ?? noEffect;
  const ratedCouple = (P_r: number) => work(bracketCouple, { P_r, l_b: prop.to - base.front_m }, system);
  if (prop.allowable === undefined) {
    const byCouple = prop.kind === 'leg' ? 0 : couple.value / ratedCouple(1).value;
    const note = `Nothing is known of what this ${words[prop.kind]} carries. Ask for one rated for ${ratingToAskFor(Math.max(value, byCouple), system)} or more: "load rating", "working load" or "weight capacity" on the packaging.`;
    return [{ check: makeCheck({ ...parts, demand: value, capacity: null, note }, system), steps: [] }];
  }
  const source = prop.source === undefined ? 'as given' : prop.source;
  const force: Judged = {
    check: makeCheck(
      { ...parts, demand: value, capacity: prop.allowable, clause: `rating, ${source}` },
      system,
    ),
    steps: [],
  };
  if (prop.kind === 'leg') return [force];
  const rated = ratedCouple(prop.allowable);
  const note =
    'Its rating is taken as of a load in the middle of its arm; the couple about the face of the base counts too.';
  const check = makeCheck(
    { ...parts, unit: 'N.m', demand: couple.value, capacity: rated.value, clause: `rating, ${source}`, note },
    system,
  );
  return [force, { check, steps: [rated.step] }];
}
