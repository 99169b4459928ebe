import type { Limit } from '../../../../shared/check-document/index.ts';
import type { Step } from '../../../../shared/check-result.ts';
import { work } from '../../../formula/step.ts';
import { shearedMovement } from '../../../mechanics/plate-formulas.ts';
import { spanFraction } from '../../../mechanics/section-formulas.ts';
import { longTermMovement } from '../../../standards/nds-2018/3-members.ts';
import type { Judged } from '../../judged.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Analysed } from '../analysed.ts';
import type { EffectName } from '../effects.ts';
import type { Overhang } from '../overhang.ts';
import { freeEdges, type FreeEdge } from '../people.ts';
import type { Worst } from '../trial.ts';
import { placeWords, stateWords } from '../where.ts';

/** A limit, and who asks for it. */
interface Asked {
  readonly limit: Limit;
  readonly clause: string;
}

interface Kind {
  readonly id: string;
  readonly title: string;
  readonly combination: string;
  readonly asked: readonly Asked[];
  readonly found: ReadonlyMap<EffectName, Worst>;
  readonly nameOf: NameOf;
  /** Lines of working of a movement. */
  readonly steps: (name: EffectName) => readonly Step[];
}

/** Under which name the movement of an edge is kept: what is added to the weight of the top, or weight and all. */
type NameOf = (edge: FreeEdge['name']) => EffectName;
const byItself: NameOf = (edge) => `edge ${edge}`;
const withWeight: NameOf = (edge) => `whole edge ${edge}`;

/**
 * How far the edges move: under people, under what is served, and over the years; and under tile or stone, everything at
 * once. What is laid on the top has its own limit, whatever else is asked.
 */
export function movementChecks(overhang: Overhang, analysed: Analysed): Judged[] {
  const { limits, system, top } = overhang;
  const { soft, service } = analysed;
  const K_cr = top.wood.material.creep.factor;
  const ofFinish: readonly Asked[] = top.finish === null ? [] : [top.finish];
  const ibc = 'IBC Table 1604.3, footnote i';
  const shearSteps = (worst: Worst | undefined): Step[] => {
    if (worst?.sheared === undefined) return [];
    const { bent_m, share } = worst.sheared;
    return [work(shearedMovement, { Delta_b: bent_m, r_s: share }, system).step];
  };
  const kinds: readonly Kind[] = [
    {
      id: 'deflection-live',
      title: 'Movement of the edge under load',
      combination: soft.combination.name,
      asked: [
        {
          limit: limits.live,
          clause: limits.live.kind === 'fraction' ? ibc : 'no published limit; set by the user or advised',
        },
        ...ofFinish,
      ],
      found: soft.worst,
      nameOf: byItself,
      steps: (name) => shearSteps(soft.worst.get(name)),
    },
    {
      id: 'deflection-serving',
      title: 'Movement of the edge under what is served',
      combination: 'what is served, nobody there',
      asked: [{ limit: limits.serving, clause: top.finish?.clause ?? ibc }],
      found: service.serving,
      nameOf: byItself,
      steps: (name) => shearSteps(service.serving.get(name)),
    },
    {
      id: 'deflection-together',
      title: 'Movement of the edge under everything together',
      combination: 'weight, what is served and people',
      asked: ofFinish,
      found: soft.worst,
      nameOf: withWeight,
      steps: (name) => shearSteps(soft.worst.get(name)),
    },
    {
      id: 'deflection-long-term',
      title: 'Movement of the edge over the years',
      combination: 'D + what is served, with creep',
      asked: [{ limit: limits.longTerm, clause: 'NDS 3.5.2; IBC Table 1604.3' }, ...ofFinish],
      found: service.longTerm,
      nameOf: byItself,
      steps: (name) => {
        const worst = service.longTerm.get(name);
        if (worst === undefined || worst.comes_m < 0) return shearSteps(worst);
        const numbers = { K_cr, Delta_LT: worst.stays_m, Delta_ST: worst.comes_m };
        return worst.sheared === undefined
          ? [work(longTermMovement, numbers, system).step]
          : [
              work(longTermMovement, numbers, system, 'movement by bending', 'Delta_b').step,
              ...shearSteps(worst),
            ];
      },
    },
  ];
  return kinds.flatMap((kind) => worstEdge(overhang, analysed.isLost, kind));
}

/** The edge and the limit that are judged worst; of limits alike, the first. */
function worstEdge(overhang: Overhang, isLost: boolean, kind: Kind): Judged[] {
  const asked = kind.asked.filter(({ limit }) => limit.kind !== 'none');
  const all = freeEdges(overhang).flatMap((edge) =>
    asked.map((each) => judge(overhang, isLost, kind, edge, each)),
  );
  const [first, ...rest] = all;
  return first === undefined ? [] : [worstCheck([first, ...rest])];
}

function judge(
  { system }: Overhang,
  isLost: boolean,
  kind: Kind,
  edge: FreeEdge,
  { limit, clause }: Asked,
): Judged {
  const name = kind.nameOf(edge.name);
  const worst = kind.found.get(name);
  const { id, title, combination } = kind;
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
    return {
      check: makeCheck({ ...parts, demand: worst.value, capacity, where, note }, system),
      steps: kind.steps(name),
    };
  }
  const allowed = work(spanFraction, { L_s: 2 * edge.out_m, n_L: limit.divisor }, system);
  return {
    check: makeCheck({ ...parts, demand: worst.value, capacity: allowed.value, where }, system),
    steps: [...kind.steps(name), allowed.step],
  };
}
