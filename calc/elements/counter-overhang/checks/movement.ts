import type { Limit } from '../../../../shared/check-document/index.ts';
import type { Step } from '../../../../shared/check-result.ts';
import { work } from '../../../formula/step.ts';
import { spanFraction } from '../../../mechanics/section-formulas.ts';
import { longTermMovement } from '../../../standards/nds-2018/3-members.ts';
import type { Judged } from '../../judged.ts';
import { isWorse, makeCheck } from '../../make-check.ts';
import type { Analysed } from '../analysed.ts';
import type { EffectName } from '../effects.ts';
import type { Overhang } from '../overhang.ts';
import { freeEdges, type FreeEdge } from '../people.ts';
import type { Worst } from '../trial.ts';
import { placeWords, stateWords } from '../where.ts';

interface Kind {
  readonly id: string;
  readonly title: string;
  readonly clause: string;
  readonly combination: string;
  readonly limit: Limit;
  readonly note: string;
  readonly steps: (name: EffectName) => readonly Step[];
}

/** How far the edges move: under people, under what is served, and over the years. */
export function movementChecks(overhang: Overhang, analysed: Analysed): Judged[] {
  const { limits, system, top } = overhang;
  const { soft, service } = analysed;
  const K_cr = top.wood.material.creep.factor;
  const kinds: readonly (readonly [Kind, ReadonlyMap<EffectName, Worst>])[] = [
    [
      {
        id: 'deflection-live',
        title: 'Movement of the edge under load',
        clause:
          limits.live.kind === 'fraction'
            ? 'IBC Table 1604.3, footnote i'
            : 'no published limit; set by the user or advised',
        combination: soft.combination.name,
        limit: limits.live,
        note: '',
        steps: () => [],
      },
      soft.worst,
    ],
    [
      {
        id: 'deflection-serving',
        title: 'Movement of the edge under what is served',
        clause: top.finish?.clause ?? 'IBC Table 1604.3, footnote i',
        combination: 'what is served, nobody there',
        limit: limits.serving,
        note: '',
        steps: () => [],
      },
      service.serving,
    ],
    [
      {
        id: 'deflection-long-term',
        title: 'Movement of the edge over the years',
        clause: 'NDS 3.5.2; IBC Table 1604.3',
        combination: 'D + what is served, with creep',
        limit: limits.longTerm,
        note: '',
        steps: (name) => {
          const worst = service.longTerm.get(name);
          if (worst === undefined || worst.comes_m < 0) return [];
          return [
            work(longTermMovement, { K_cr, Delta_LT: worst.stays_m, Delta_ST: worst.comes_m }, system).step,
          ];
        },
      },
      service.longTerm,
    ],
  ];
  return kinds.flatMap(([kind, found]) =>
    kind.limit.kind === 'none' ? [] : [worstEdge(overhang, analysed.isLost, kind, found)],
  );
}

function worstEdge(
  overhang: Overhang,
  isLost: boolean,
  kind: Kind,
  found: ReadonlyMap<EffectName, Worst>,
): Judged {
  const all = freeEdges(overhang).map((edge) => judge(overhang, isLost, kind, edge, found));
  const [first, ...rest] = all;
  if (first === undefined) throw new RangeError('a counter overhang has a free edge');
  return rest.reduce((worst, each) => (isWorse(each.check, worst.check) ? each : worst), first);
}

function judge(
  { system }: Overhang,
  isLost: boolean,
  kind: Kind,
  edge: FreeEdge,
  found: ReadonlyMap<EffectName, Worst>,
): Judged {
  const name: EffectName = `edge ${edge.name}`;
  const worst = found.get(name);
  const { limit, id, title, clause, combination } = kind;
  const parts = { id, title, unit: 'm', clause, combination } as const;
  if (worst === undefined || isLost) {
    const note = 'The top tips off its base before this can be worked out.';
    const check = makeCheck(
      { ...parts, demand: null, capacity: null, where: `${edge.name} edge`, note },
      system,
    );
    return { check, steps: [] };
  }
  const where = `${edge.name} edge, at ${placeWords(worst, system)}; ${stateWords(worst, system)}`;
  if (limit.kind !== 'fraction') {
    const capacity = limit.kind === 'amount' ? limit.amount_m : null;
    const fraction = worst.value > 0 ? Math.round((2 * edge.out_m) / worst.value) : 0;
    const note = fraction > 0 ? `That is L/${fraction} of twice the overhang.` : '';
    return { check: makeCheck({ ...parts, demand: worst.value, capacity, where, note }, system), steps: [] };
  }
  const allowed = work(spanFraction, { L_s: 2 * edge.out_m, n_L: limit.divisor }, system);
  return {
    check: makeCheck(
      { ...parts, demand: worst.value, capacity: allowed.value, where, note: kind.note },
      system,
    ),
    steps: [...kind.steps(name), allowed.step],
  };
}
