import type { Step } from '../../../../shared/check-result.ts';
import type { Limit } from '../../../../shared/check-document/index.ts';
import { show } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { twistTogether } from '../../../mechanics/open-section-formulas.ts';
import { edgeMovement, spanFraction } from '../../../mechanics/section-formulas.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context } from '../context.ts';
import { allowedBy } from '../../allowed-by.ts';
import type { BayMovements, Movements } from '../movements.ts';
import type { TwistOfBay } from '../twist-of-bay.ts';

const titles = {
  'deflection-live': 'Movement under load',
  'deflection-long-term': 'Movement over the years',
} as const;

/** Movement of the edge that moves most of every bay against its own span; the worst ratio counts, not the largest amount. */
export function movementChecks(context: Context, movements: Movements): Judged[] {
  const { live, longTerm } = context.shelf.limits;
  return [
    ...oneLimit(context, 'deflection-live', live, movements, (bay) => [bay.live.value, bay.twistLive]),
    ...oneLimit(context, 'deflection-long-term', longTerm, movements, (bay) => [
      bay.longTerm.value,
      bay.twistLongTerm,
    ]),
  ];
}

function oneLimit(
  { shelf, service }: Context,
  id: keyof typeof titles,
  limit: Limit,
  { bays }: Movements,
  parts: (bay: BayMovements) => readonly [number, TwistOfBay],
): Judged[] {
  if (limit.kind === 'none') return [];
  const used = bays.map((bay) => {
    const [bending, twist] = parts(bay);
    const allowed = allowedBy(limit, bay.span_m) ?? Infinity;
    return { bay, bending, twist, allowed, ratio: (bending + twist.value_m) / allowed };
  });
  const worst = used.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const { system } = shelf;
  const { edge, apart, value_m } = worst.twist;
  const together = apart === null ? [] : [work(twistTogether, apart, system).step];
  const moved = work(
    edgeMovement,
    { Delta: worst.bending, Delta_twist: value_m },
    system,
    `movement of the ${edge} edge`,
  );
  const steps: Step[] = [...together, moved.step];
  if (limit.kind === 'fraction') {
    steps.push(work(spanFraction, { L_s: worst.bay.span_m, n_L: limit.divisor }, system).step);
  }
  const { bay } = worst.bay;
  const check = makeCheck(
    {
      id,
      title: `${titles[id]}, at the ${edge} edge`,
      unit: 'm',
      demand: moved.value,
      capacity: worst.allowed,
      clause: id === 'deflection-live' ? `limit ${limit.written}` : `NDS 3.5.2; limit ${limit.written}`,
      where: whereIs(bay, shelf.system),
      combination: id === 'deflection-live' ? 'everything but the board itself' : service[0].combination.name,
    },
    system,
  );
  return [{ check, steps }];
}

/** Where a bay is, in words. */
export function whereIs(bay: BayMovements['bay'], system: Parameters<typeof show>[2]): string {
  if (bay.kind === 'left-overhang') return 'the left end';
  if (bay.kind === 'right-overhang') return 'the right end';
  const places = `${show(bay.from_m, 'm', system)} to ${show(bay.to_m, 'm', system)}`;
  return `between brackets ${bay.leftSupport + 1} and ${bay.leftSupport + 2}, ${places}`;
}
