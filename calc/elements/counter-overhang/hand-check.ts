import type { Section } from '../../../shared/check-result.ts';
import { showInCalculation } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import { clampedOverhang, freeOverhang, plateBendingStress } from '../../mechanics/plate-formulas.ts';
import { handMoment, handStress } from '../bracket-formulas.ts';
import { section } from '../section.ts';
import { worstOf, type Analysed } from './analysed.ts';
import { onOneSheet, type Overhang } from './overhang.ts';

/** Strips cut out of the top, beside what the plate says; null where nothing stands out on the stool side. */
export function handCheck(overhang: Overhang, analysed: Analysed): Section[] {
  const { top, base, props, serving, person, system } = overhang;
  const onProps = props.length === 0 ? '' : ' (the strip has no props under it, the plate has)';
  const a = top.depth_m - base.front_m;
  if (a < 0.02 || analysed.isLost) return [];
  const E_Pa = top.isAlong ? top.wood.softAcross_Pa : top.wood.material.E_Pa;
  const EI = (E_Pa * top.length_m * top.thickness_m ** 3) / 12 / top.wood.sheets ** 2;
  const c = (value: number | undefined, unit: 'm' | 'Pa'): string =>
    value === undefined ? '–' : showInCalculation(value, unit, system);
  const w = serving === null ? 0 : serving.pressure_Npm2 * top.length_m;
  const clamped = work(clampedOverhang, { w, a, EI }, system);
  const free = work(freeOverhang, { w, a, L: base.front_m - base.back_m, EI }, system);
  const steps = serving === null ? [] : [clamped.step, free.step];
  const rows =
    serving === null
      ? []
      : [
          [
            `Movement of the stool edge under what is served${onProps}`,
            `${c(clamped.value, 'm')} to ${c(free.value, 'm')}`,
            c(analysed.service.serving.get('edge stool')?.value, 'm'),
          ],
        ];
  const name = top.isAlong ? 'across' : 'along';
  const grain = top.wood.isPanel ? 'panel' : 'grain';
  const worst = worstOf(analysed, name);
  if (person !== null && worst !== undefined) {
    const lever = a - person.patch_m / 2;
    const moment = work(
      handMoment,
      { P: person.load_N, l_P: lever },
      system,
      'moment of one person about the rail',
    );
    const stress = work(
      handStress,
      {
        M_P: moment.value / top.wood.sheets,
        b_a: person.patch_m,
        c_l: lever,
        c_r: lever,
        t: top.thickness_m / top.wood.sheets,
      },
      system,
      `stress ${name} the ${grain}, spread at 45°`,
    );
    const plate = work(plateBendingStress, onOneSheet(top, worst.value), system);
    steps.push(moment.step, stress.step);
    rows.push([
      `Stress ${name} the ${grain}, one person on a strip; the plate, all loads${onProps}`,
      c(stress.value, 'Pa'),
      c(plate.value, 'Pa'),
    ]);
  }
  const { carried_N } = analysed.service;
  if (carried_N !== null) {
    rows.push([
      'Weight of the top, and all that carries it, the pull of screws taken off',
      showInCalculation(top.weight_N, 'N', system),
      showInCalculation(carried_N, 'N', system),
    ]);
  }
  return [
    section('hand-check', 'Hand check', {
      steps,
      tables: [{ title: 'By hand and by the plate solver', head: ['What', 'By hand', 'Plate'], rows }],
      notes: [
        props.length === 0 ? withoutProps : withProps,
        'Every check goes by the plate; the strip stands beside it to show that it is of a likely size.',
      ],
    }),
  ];
}

const withoutProps =
  'A strip held from turning at the rail moves least, one that turns freely over it most. The plate also carries its own weight and, where two stools fit, two people, and at a corner only one side helps: it may be asked for more than the strip.';
const withProps =
  'By hand the strip takes everything back to the rail by itself, a person over no more width than a spread at 45° gives. In the plate the props take their share of that straight down: the two differ by as much, and the strip is about what there would be without props.';
