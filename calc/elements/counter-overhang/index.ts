import { cautions } from '../../../shared/cautions.ts';
import { DocumentError, type CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import type {
  CounterOverhangResult,
  PlateAnalysis,
  ProvenanceValue,
  TopPlace,
} from '../../../shared/check-result.ts';
import { quantity, showInCalculation, type Unit } from '../../../shared/quantity/index.ts';
import { findMetal } from '../../catalogue/index.ts';
import { plateBendingStress } from '../../mechanics/plate-formulas.ts';
import { version } from '../../version.ts';
import { verdictOf } from '../verdict.ts';
import { verdictWords } from '../verdict-words.ts';
import { analyse, governingAcross, noEffect, worstOf, type Analysed } from './analysed.ts';
import { movementChecks } from './checks/movement.ts';
import { propCheck } from './checks/props.ts';
import { railWood } from './checks/rail-wood.ts';
import { railCheck, railSpans } from './checks/rail.ts';
import { strengthChecks } from './checks/strength.ts';
import { fieldsOf, meshErrorOf, type TopFields } from './fields.ts';
import { holdDownCheck } from './hold.ts';
import { reliesOnScrews } from './top-tipping.ts';
import { onOneSheet, type Overhang } from './overhang.ts';
import { freeEdges } from './people.ts';
import { readOverhang } from './read-overhang.ts';
import { tipOverOf } from './tip-over.ts';
import { worksheetOf } from './worksheet.ts';

/**
 * Checks a counter top that runs past its base.
 *
 * @throws DocumentError where a name is not in the catalogue or a wood has no values to derive strength from
 */
export function checkCounterOverhang(document: CounterOverhangDocument): CounterOverhangResult {
  const reading = readOverhang(document);
  if (!reading.ok) throw new DocumentError(reading.errors);
  const { overhang } = reading;
  const { system, top } = overhang;
  const analysed = analyse(overhang);
  const fields = fieldsOf(overhang, analysed);
  const tipOver = tipOverOf(overhang);
  const judged = [
    ...strengthChecks(overhang, analysed),
    ...movementChecks(overhang, analysed),
    holdDownCheck(overhang, analysed.isLost),
    ...propCheck(overhang, analysed),
    ...railCheck(overhang, analysed),
    ...tipOver.judged,
  ];
  const checks = judged.map(({ check }) => check);
  const { verdict, governing } = verdictOf(checks);
  const q = (value: number, unit: Unit) => quantity(value, unit, system);
  return Object.freeze({
    schema: 1,
    element: 'counter-overhang',
    verdict,
    summary: verdictWords(verdict, governing, checks),
    governing: governing.id,
    checks,
    analysis: {
      plate: plateAnalysis(overhang, analysed, fields),
      tipOver: {
        overturning: q(tipOver.overturning_Nm, 'N.m'),
        restoring: q(tipOver.restoring_Nm, 'N.m'),
        floorPull: tipOver.floorPull_N === null ? null : q(tipOver.floorPull_N, 'N'),
      },
    },
    fixings: [],
    remedies: [],
    assumptions: [...new Set([...overhang.assumptions, ...(railWood(overhang)?.assumptions ?? [])])],
    warnings: [...overhang.warnings, ...warningsOf(overhang, analysed)],
    cautions: [...cautions, ...overhangCautions],
    worksheet: { sections: worksheetOf(overhang, analysed, judged, meshErrorOf(fields)) },
    provenance: {
      values: [...top.wood.provenance, ...(top.finish?.provenance ?? []), ...otherProvenance(overhang)],
    },
    edition: { code: overhang.code.edition, tool: `Shelf and overhang check ${version}` },
  });
}

const overhangCautions = [
  'Nobody stands or jumps on a counter overhang. A cut-out for a sink or a hob, a joint in the length, and a worn or split glue line weaken the top and are not counted.',
];

function warningsOf(overhang: Overhang, { isLost }: Analysed): string[] {
  return !isLost && reliesOnScrews(overhang)
    ? ['The top relies on its screws: with them loose it could tip off its base.']
    : [];
}

function plateAnalysis(overhang: Overhang, analysed: Analysed, fields: TopFields): PlateAnalysis {
  const { system, top, props } = overhang;
  const q = (value: number, unit: Unit) => quantity(value, unit, system);
  const place = ({ x_m, y_m }: { readonly x_m: number; readonly y_m: number }): TopPlace => ({
    x: q(x_m, 'm'),
    y: q(y_m, 'm'),
  });
  const { isLost, soft } = analysed;
  const stress = (name: 'along' | 'across') => {
    const worst = worstOf(analysed, name);
    return worst === undefined || isLost
      ? null
      : q(plateBendingStress.evaluate(onOneSheet(top, worst.value)), 'Pa');
  };
  const edges = freeEdges(overhang).flatMap(({ name }) => soft.worst.get(`edge ${name}`) ?? []);
  const tip = edges.reduce((a, b) => (b.value > a.value ? b : a), edges[0] ?? noEffect);
  const across = governingAcross(overhang, analysed)?.worst;
  return {
    alongGrain: stress('along'),
    acrossGrain: stress('across'),
    tip: edges.length === 0 || isLost ? null : { movement: q(tip.value, 'm'), at: place(tip) },
    lift: q(isLost ? 0 : (worstOf(analysed, 'lift')?.value ?? 0), 'm'),
    railLine: railSpans(overhang, analysed).map((span) => ({
      from: q(span.from_m, 'm'),
      to: q(span.to_m, 'm'),
      load: q(span.load_N, 'N'),
    })),
    props: props.map((prop, index) => ({
      at: q(prop.at, 'm'),
      load: prop.kind === 'flat-bar' ? null : q(worstOf(analysed, `prop ${index}`)?.value ?? 0, 'N'),
    })),
    screwPull: q(worstOf(analysed, 'screw')?.value ?? 0, 'N'),
    person: { at: (across?.people ?? []).map(place) },
    bound: across?.bound ?? 'screws-loose',
    fields,
  };
}

function otherProvenance(overhang: Overhang): ProvenanceValue[] {
  const { screws, props, system } = overhang;
  const values: ProvenanceValue[] = [...(railWood(overhang)?.provenance ?? [])];
  if (screws !== null) {
    const { name, diameter_m, source, provenance } = screws.fastener;
    values.push({
      what: `${name}: diameter`,
      value: showInCalculation(diameter_m, 'm', system),
      source,
      provenance,
    });
  }
  for (const metal of new Set(
    props.flatMap((prop) => (prop.kind === 'flat-bar' ? [prop.metal ?? 'a36'] : [])),
  )) {
    const found = findMetal(metal);
    if (!found.ok || found.row.yield_Pa === null) continue;
    const { name, yield_Pa, source, provenance } = found.row;
    values.push({
      what: `${name}: yield point`,
      value: showInCalculation(yield_Pa, 'Pa', system),
      source,
      provenance,
    });
  }
  return values;
}
