import type { Step } from '../../../../shared/check-result.ts';
import type { Unit } from '../../../../shared/quantity/index.ts';
import { upperFirst } from '../../../../shared/words.ts';
import type { Property, Resistance } from '../../../codes/design-code.ts';
import { work, type Worked } from '../../../formula/step.ts';
import { linePressure, plateBendingStress, plateShearStress } from '../../../mechanics/plate-formulas.ts';
import { rollingShear } from '../../../standards/wood-handbook-2021/rolling-shear.ts';
import type { Judged } from '../../judged.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Analysed } from '../analysed.ts';
import type { EffectName } from '../effects.ts';
import { onOneSheet, type Overhang } from '../overhang.ts';
import type { Found } from '../search.ts';
import type { Worst } from '../trial.ts';
import { railWood } from './rail-wood.ts';
import { placeWords, stateWords } from '../where.ts';

/** Above half of what is derived for tension across the grain nothing can be vouched for. */
const sureAcross = 0.5;

interface Kind {
  readonly id: string;
  readonly title: string;
  readonly effect: EffectName;
  readonly stress: (worst: Worst) => Worked;
  readonly resist: (found: Found) => Resistance & { readonly more?: readonly Step[] };
  readonly sureUpTo?: number;
  readonly note: string;
}

/** Stress along and across the grain, shear at the rails and pressure on them, each in its worst combination. */
export function strengthChecks(overhang: Overhang, analysed: Analysed): Judged[] {
  return [...bendingKinds(overhang), shearKinds(overhang), bearingKinds(overhang)].map((kinds) => {
    const [first, ...rest] = kinds.flatMap((kind) =>
      analysed.found.map((found) => judge(overhang, analysed, kind, found)),
    );
    if (first === undefined) throw new RangeError('there is always a combination');
    return worstCheck([first, ...rest]);
  });
}

const resistBy =
  ({ top }: Overhang, property: Property) =>
  (found: Found) =>
    top.wood.material.resistance(property, found.combination.duration);

function bendingKinds(overhang: Overhang): Kind[][] {
  const { top, system } = overhang;
  const { wood } = top;
  const grain = wood.isPanel ? 'panel' : 'grain';
  const bending = (caption: string) => (worst: Worst) =>
    work(plateBendingStress, onOneSheet(top, worst.value), system, caption);
  return [
    [
      {
        id: 'bending-along',
        title: `Bending along the ${grain}`,
        effect: 'along',
        stress: bending(`stress along the ${grain}`),
        resist: resistBy(overhang, 'bending'),
        note: '',
      },
    ],
    [
      {
        id: 'bending-across',
        title: `Bending across the ${grain}`,
        effect: 'across',
        stress: bending(`stress across the ${grain}`),
        resist: resistBy(overhang, 'tension-across'),
        ...(wood.isPanel
          ? { note: '' }
          : { sureUpTo: sureAcross, note: acrossNote(overhangStandIn(wood.material.assumptions)) }),
      },
    ],
  ];
}

/** A top of staves bends across them over whatever runs along them, and its fibres roll there. */
function shearKinds(overhang: Overhang): Kind[] {
  const { top, system } = overhang;
  const plain: Kind = {
    id: 'shear',
    title: 'Shear of the top at the rails',
    effect: 'rail',
    stress: (worst) => work(plateShearStress, { v: worst.value, t: top.thickness_m }, system),
    resist: resistBy(overhang, 'shear'),
    note: 'The whole pressure on the rail is taken as shear on one side of it: never too little.',
  };
  if (top.wood.isPanel) return [plain];
  const rolling: Kind = {
    ...plain,
    effect: 'rolling',
    resist: (found) => {
      const along = plain.resist(found);
      if (!along.ok) return along;
      const rolls = work(rollingShear, { F_v_prime: along.value_Pa }, system);
      return {
        ok: true,
        value_Pa: rolls.value,
        step: rolls.step,
        clause: 'NDS 3.4; Wood Handbook ch. 5',
        more: [along.step],
      };
    },
    note: `${plain.note} The top bends across its staves there, so the fibres roll.`,
  };
  return [rolling, plain];
}

/** The top presses on the rails as hard as they on it: wood of the rails that is named counts too. */
function bearingKinds(overhang: Overhang): Kind[] {
  const { base, document, system } = overhang;
  const onTop: Kind = {
    id: 'bearing',
    title: 'Pressure on the rails',
    effect: 'rail',
    stress: (worst) => work(linePressure, { p: worst.value, b_r: base.railThickness_m }, system),
    resist: resistBy(overhang, 'bearing'),
    note: '',
  };
  if (document.base.rail?.material === undefined) return [onTop];
  const rail = railWood(overhang);
  const onRail: Kind =
    rail === null
      ? {
          ...onTop,
          resist: () => ({
            ok: false,
            why: 'no strength of the wood of the rail can be worked out',
            clause: 'NDS 3.10.2',
          }),
        }
      : {
          ...onTop,
          resist: (found) => rail.resistance('bearing', found.combination.duration),
          note: 'The wood of the rail is softer than that of the top.',
        };
  return [onTop, onRail];
}

function overhangStandIn(assumptions: readonly string[]): string {
  return assumptions.find((each) => each.startsWith('No tension across the grain is printed')) ?? '';
}

function acrossNote(standIn: string): string {
  return [
    'No standard gives a design value for tension across the grain (NDS 3.8.2 warns of it): the value is the 5 % exclusion of clear wood over 2.3.',
    standIn,
    'So half of it is taken to hold; above that and up to the whole, this tool cannot say: it wants a prop, or more of them. EN 338 prints 0.6 MPa (87 psi) for hardwood classes, for large volumes.',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function judge({ system }: Overhang, { isLost }: Analysed, kind: Kind, found: Found): Judged {
  const worst = found.worst.get(kind.effect);
  const resistance = kind.resist(found);
  const unit: Unit = 'Pa';
  const parts = {
    unit,
    id: kind.id,
    title: kind.title,
    clause: resistance.clause,
    combination: found.combination.name,
    ...(kind.sureUpTo === undefined ? {} : { sureUpTo: kind.sureUpTo }),
  };
  if (worst === undefined || isLost) {
    const note = 'The top tips off its base before this can be worked out.';
    return {
      check: makeCheck({ ...parts, demand: null, capacity: null, where: 'the whole top', note }, system),
      steps: [],
    };
  }
  const stress = kind.stress(worst);
  const where = `at ${placeWords(worst, system)}; ${stateWords(worst, system)}`;
  if (!resistance.ok) {
    const note = `${upperFirst(resistance.why)}. ${kind.note}`.trim();
    return {
      check: makeCheck({ ...parts, demand: stress.value, capacity: null, where, note }, system),
      steps: [stress.step],
    };
  }
  return {
    check: makeCheck(
      { ...parts, demand: stress.value, capacity: resistance.value_Pa, where, note: kind.note },
      system,
    ),
    steps: [stress.step, ...(resistance.more ?? []), resistance.step],
  };
}
