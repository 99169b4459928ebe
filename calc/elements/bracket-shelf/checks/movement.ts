import type { Step } from '../../../../shared/check-result.ts';
import type { Limit } from '../../../../shared/check-document/index.ts';
import { calculationUnits, show, significant, type UnitSystem } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { twistTogether } from '../../../mechanics/open-section-formulas.ts';
import { edgeMovement, spanFraction } from '../../../mechanics/section-formulas.ts';
import { twistedBay, twistedTip, warpedBay } from '../../../mechanics/twist-formulas.ts';
import { longTermMovement } from '../../../standards/nds-2018/3-members.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context } from '../context.ts';
import { allowedBy } from '../../allowed-by.ts';
import { BoxMembers } from '../box-members.ts';
import { mostOfMembers } from '../box-movement.ts';
import { byLoadAt, sharesOfMovement, type LoadShares } from '../load-shares.ts';
import { liveFactor, longTermFactor, type BayMovements, type MovedOn, type Movements } from '../movements.ts';
import type { Shelf } from '../shelf.ts';
import { twistNumbers, type TwistOfBay } from '../twist-of-bay.ts';

/** What differs between the two movements that are limited. */
interface Kind {
  readonly id: 'deflection-live' | 'deflection-long-term';
  readonly title: string;
  readonly bent: (bay: BayMovements) => MovedOn;
  readonly twisted: (bay: BayMovements) => TwistOfBay;
}

const underLoad: Kind = {
  id: 'deflection-live',
  title: 'Movement under load',
  bent: ({ live }) => live,
  twisted: ({ twistLive }) => twistLive,
};
const overTheYears: Kind = {
  id: 'deflection-long-term',
  title: 'Movement over the years',
  bent: ({ longTerm }) => longTerm,
  twisted: ({ twistLongTerm }) => twistLongTerm,
};

/** Movement of the edge that moves most of every bay against its own span; the worst ratio counts, not the largest amount. */
export function movementChecks(context: Context, movements: Movements): Judged[] {
  const { live, longTerm } = context.shelf.limits;
  return [
    ...oneLimit(context, underLoad, live, movements),
    ...oneLimit(context, overTheYears, longTerm, movements),
  ];
}

function oneLimit({ shelf, service }: Context, kind: Kind, limit: Limit, { bays }: Movements): Judged[] {
  if (limit.kind === 'none') return [];
  const { id } = kind;
  const used = bays.map((bay, index) => {
    const [bent, twist] = [kind.bent(bay), kind.twisted(bay)];
    const allowed = allowedBy(limit, bay.span_m) ?? Infinity;
    return { bay, index, bent, twist, allowed, ratio: (bent.value + twist.value_m) / allowed };
  });
  const factor = id === 'deflection-live' ? liveFactor : longTermFactor(shelf.board.creep.factor);
  const members = BoxMembers.of(shelf);
  const ofMembers =
    members === null
      ? []
      : used.map(({ bay: { bay }, bent, index, allowed }) => {
          const value = mostOfMembers(members, bay, sharesOfMovement(bent, index, factor), factor);
          return { value, ratio: value / allowed };
        });
  const member = ofMembers.reduce<Movement | null>(
    (most, each) => (most === null || each.ratio > most.ratio ? each : most),
    null,
  );
  const worst = used.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const { system } = shelf;
  const { bay, bent, twist, index } = worst;
  // Under load they are for the sheet alone, and worked out where that is laid out.
  const lasting = id === 'deflection-live' ? null : sharesOfMovement(bent, index, factor);
  const shares = (): LoadShares => lasting ?? sharesOfMovement(bent, index, factor);
  const steps: Step[] = lasting === null ? [] : longTermSteps(shelf, lasting);
  steps.push(...twistSteps(shelf, bay.bay, twist));
  const moved = work(
    edgeMovement,
    { Delta: bent.value, Delta_twist: twist.value_m },
    system,
    `movement of the ${twist.edge} edge`,
  );
  steps.push(moved.step);
  if (limit.kind === 'fraction') {
    steps.push(work(spanFraction, { L_s: bay.span_m, n_L: limit.divisor }, system).step);
  }
  const check = makeCheck(
    {
      id,
      title: `${kind.title}, at the ${twist.edge} edge`,
      unit: 'm',
      demand: moved.value,
      capacity: worst.allowed,
      clause: id === 'deflection-live' ? `limit ${limit.written}` : `NDS 3.5.2; limit ${limit.written}`,
      where: whereIs(bay.bay, system),
      combination: id === 'deflection-live' ? 'everything but the board itself' : service[0].combination.name,
      ...(member !== null && member.ratio > worst.ratio && { sureUpTo: worst.ratio / member.ratio }),
      note: [
        noteOnSpan(limit, bay, system),
        ...(member === null ? [] : [noteOnBox(member, { value: moved.value, ratio: worst.ratio }, system)]),
      ]
        .filter((words) => words !== '')
        .join(' '),
    },
    system,
  );
  const what = id === 'deflection-live' ? 'Moves at' : 'With its weight, at';
  return [{ check, steps, byLoad: byLoadAt(shelf, what, bent.at_m, 'm', shares) }];
}

/** What a box moves is told of one section; its members and skins move each for itself (docs/decisions/010-boxes.md). */
function noteOnBox(member: Movement, told: Movement, system: UnitSystem): string {
  const section = 'It is the movement of the box as one section';
  const skins = 'how far a skin sags between members is not worked out.';
  if (member.ratio <= told.ratio) return `${section}; ${skins}`;
  const most = `${section}. The member under a load may go down up to ${show(member.value, 'm', system)}`;
  return member.ratio > 1
    ? `${most}, more than the limit: more members or thicker skins would share it better. Nor is said ${skins}`
    : `${most}; ${skins}`;
}

/** A movement, and its share of the limit. */
interface Movement {
  readonly value: number;
  readonly ratio: number;
}

/** What a share of the span goes by at an end past its bracket, where it comes to little. */
function noteOnSpan(limit: Limit, { bay, span_m }: BayMovements, system: UnitSystem): string {
  if (limit.kind !== 'fraction' || bay.kind === 'span') return '';
  const out = show(bay.to_m - bay.from_m, 'm', system);
  return `The limit of an overhang goes by twice its length: ${limit.written} of 2 × ${out}, which is ${show(span_m, 'm', system)}.`;
}

/** What bending comes to over the years, from what stays and what does not. */
function longTermSteps({ board, system }: Shelf, shares: LoadShares): Step[] {
  let [stays, goes] = [0, 0];
  for (const [action, share] of shares) {
    const sustained = action?.sustained ?? 1;
    stays += sustained * share;
    goes += (1 - sustained) * share;
  }
  const numbers = { K_cr: board.creep.factor, Delta_LT: stays, Delta_ST: goes };
  return [work(longTermMovement, numbers, system, 'movement by bending', 'Delta').step];
}

/** What the edge moves by twisting, worked out; nothing where nothing twists. */
function twistSteps(shelf: Shelf, bay: BayMovements['bay'], { torques }: TwistOfBay): Step[] {
  if (torques === null) return [];
  const { system } = shelf;
  const numbers = twistNumbers(shelf, bay, torques);
  const words = evenWords(shelf, torques.even);
  if (numbers.kind === 'tip')
    return [work(twistedTip, numbers.alone, system, twistedTip.caption + words).step];
  if (numbers.warped === null) {
    return [work(twistedBay, numbers.alone, system, twistedBay.caption + words).step];
  }
  const caption = `movement of the edge, were the board to twist without bending its parts${words}`;
  const alone = work(twistedBay, numbers.alone, system, caption, 'Delta_s');
  const warped = work(warpedBay, numbers.warped, system);
  const together = work(twistTogether, { Delta_s: alone.value, Delta_w: warped.value }, system);
  return [alone.step, warped.step, together.step];
}

/** What the torque for each length is the sum of: load times distance from the twist axis, creep counted over the years. */
function evenWords({ system }: Shelf, even: NonNullable<TwistOfBay['torques']>['even']): string {
  const number = (value: number, unit: 'N/m' | 'm'): string =>
    significant(value / calculationUnits[system][unit].size);
  const products = even.map(({ load_Npm, arm_m }) => `${number(load_Npm, 'N/m')} × ${number(arm_m, 'm')}`);
  return products.length === 0 ? '' : `; t_s = ${products.join(' + ')}`;
}

/** Where a bay is, in words. */
export function whereIs(bay: BayMovements['bay'], system: UnitSystem): string {
  if (bay.kind === 'left-overhang') return 'at the left end';
  if (bay.kind === 'right-overhang') return 'at the right end';
  const places = `${show(bay.from_m, 'm', system)} to ${show(bay.to_m, 'm', system)}`;
  return `between brackets ${bay.leftSupport + 1} and ${bay.leftSupport + 2}, ${places}`;
}
