import { show } from '../../../../shared/quantity/index.ts';
import { standardGravity } from '../../../../shared/quantity/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import { skinSheared } from '../../../mechanics/box-formulas.ts';
import { skinMoment, skinStress } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { frameOf } from '../board.ts';
import type { BoardPart } from '../board-part.ts';
import { BoxMembers } from '../box-members.ts';
import type { Context, Situation } from '../context.ts';
import { patch_m, type Action, type Shelf } from '../shelf.ts';
import { sureAcrossGrain } from './past-bracket.ts';

/** A stretch of skin between two members of the frame, from the wall finish. */
interface Gap {
  readonly from_m: number;
  readonly to_m: number;
}

/** The upper skin of a box, bent across the board between the members of its frame; none where it is not a box. */
export function boxSkinCheck(context: Context): Judged[] {
  const { board, document } = context.shelf;
  const skin = board.parts.find(({ name }) => name === 'top skin');
  if (document.board.box === undefined || skin === undefined) return [];
  const gaps = gapsOf(frameOf(board));
  const [first, ...rest] = context.situations.flatMap((situation) =>
    gaps.map((gap) => judge(context, situation, skin, gap)),
  );
  return first === undefined ? [] : [worstCheck([first, ...rest])];
}

function gapsOf(frame: readonly BoardPart[]): Gap[] {
  return frame
    .map(({ y_m, width_m }, index) => ({ from_m: y_m + width_m, to_m: frame[index + 1]?.y_m ?? 0 }))
    .filter(({ from_m, to_m }) => to_m > from_m);
}

function judge(context: Context, situation: Situation, skin: BoardPart, gap: Gap): Judged {
  const { shelf } = context;
  const { system } = shelf;
  const { combination, factor } = situation;
  const t = skin.height_m;
  const own_Npm2 = factor(null) * skin.material.density_kgm3 * standardGravity * t;
  const acting = shelf.actions.filter((action) => factor(action) > 0);
  const moment = work(
    skinMoment,
    {
      q: acting.reduce((sum, action) => sum + factor(action) * pressureOf(action, shelf), own_Npm2),
      s: gap.to_m - gap.from_m,
      S_n: linesOn(gap, acting, factor) + thingsOn(gap, acting, factor),
      P: roamingOn(acting, factor),
      c: patch_m,
    },
    system,
  );
  const sheared = skinShearedBy(context, situation);
  const stress = work(skinStress, { m_s: moment.value, m_d: sheared.at(-1)?.value ?? 0, t }, system);
  const resistance = context.resist(skin.material, 'tension-across', combination.duration);
  const isPanel = skin.material.basis === 'panel';
  const check = makeCheck(
    {
      id: 'box-skin',
      title: 'Upper skin of the box between its frame, across the board',
      unit: 'Pa',
      demand: stress.value,
      capacity: resistance.ok ? resistance.value_Pa : null,
      clause: resistance.clause,
      where: `between ${show(gap.from_m, 'm', system)} and ${show(gap.to_m, 'm', system)} from the wall`,
      combination: combination.name,
      note: resistance.ok
        ? 'More members in the frame, or a thicker skin, would ask less of it. How far a skin sags between them is not worked out.'
        : `Cannot say: ${resistance.why}.`,
      sureUpTo: isPanel ? 1 : sureAcrossGrain,
    },
    system,
  );
  const steps = [moment, ...sheared, stress].map(({ step }) => step);
  return { check, steps: [...steps, ...(resistance.ok ? [resistance.step] : [])] };
}

/** Pressure of a load that is spread over the depth; 0 for any other. */
function pressureOf({ spread, load }: Action, { depth_m }: Shelf): number {
  if (!spread) return 0;
  if (load.kind === 'line') return load.load_Npm / depth_m;
  return load.kind === 'point' ? load.load_N / (depth_m * patch_m) : 0;
}

function roamingOn(acting: readonly Action[], factor: Situation['factor']): number {
  return Math.max(
    0,
    ...acting.map((action) => factor(action) * (action.load.kind === 'roaming' ? action.load.load_N : 0)),
  );
}

/** Moment for each width of lines in a gap: a (s − a) / s each. */
function linesOn(gap: Gap, acting: readonly Action[], factor: Situation['factor']): number {
  const s = gap.to_m - gap.from_m;
  return acting.reduce((sum, action) => {
    const a = action.eccentricity_m - gap.from_m;
    if (action.spread || action.load.kind !== 'line' || a <= 0 || a >= s) return sum;
    return sum + (factor(action) * action.load.load_Npm * a * (s - a)) / s;
  }, 0);
}

/**
 * The same of single things: of each what of its patch is in the gap, in the middle of that. It spreads at 45° to both sides,
 * and things nearer one another than that add up.
 */
function thingsOn(gap: Gap, acting: readonly Action[], factor: Situation['factor']): number {
  const s = gap.to_m - gap.from_m;
  const things: { readonly at_m: number; readonly moment_N: number }[] = [];
  for (const action of acting) {
    const { spread, load, eccentricity_m } = action;
    if (spread || load.kind !== 'point') continue;
    const from = Math.max(0, eccentricity_m - patch_m / 2 - gap.from_m);
    const to = Math.min(s, eccentricity_m + patch_m / 2 - gap.from_m);
    if (to <= from) continue;
    const a = (from + to) / 2;
    const load_N = (factor(action) * load.load_N * (to - from)) / patch_m;
    const width_m = patch_m + 2 * Math.min(a, s - a);
    things.push({ at_m: load.at_m, moment_N: (load_N * a * (s - a)) / s / width_m });
  }
  const beside = (at_m: number): number =>
    things.reduce((sum, each) => sum + (Math.abs(each.at_m - at_m) < patch_m + s ? each.moment_N : 0), 0);
  return Math.max(0, ...things.map(({ at_m }) => beside(at_m)));
}

/** The largest moment across the upper skin of what stands on a patch; null where nothing does. */
export function mostOnPatch({ shelf }: Context, { factor }: Situation): Worked | null {
  const acting = shelf.actions.filter((action) => factor(action) > 0);
  const P = roamingOn(acting, factor);
  const found = gapsOf(frameOf(shelf.board)).map((gap) => ({
    ...{ q: 0, s: gap.to_m - gap.from_m, S_n: thingsOn(gap, acting, factor), P, c: patch_m },
  }));
  const [first, ...rest] = found;
  if (first === undefined) return null;
  const most = rest.reduce((a, b) => (skinMoment.evaluate(b) > skinMoment.evaluate(a) ? b : a), first);
  return work(
    skinMoment,
    most,
    shelf.system,
    'moment across the upper skin of what stands on a patch',
    'm_P',
  );
}

/** What a skin is bent by where loads bend one member more than the next; nothing where they don't. */
function skinShearedBy({ shelf, solved }: Context, { factor }: Situation): Worked[] {
  const members = BoxMembers.of(shelf);
  if (members === null) return [];
  const { bays } = solved[0].model;
  const L = Math.max(...bays.map(({ kind, from_m, to_m }) => (to_m - from_m) * (kind === 'span' ? 1 : 2)));
  const gaps = gapsOf(frameOf(shelf.board));
  const above = (index: number): number =>
    shelf.actions.reduce((sum, action) => {
      const more = members.shareOf(index, action) - 1 / members.count;
      return sum + factor(action) * asLine(action, L, gaps) * Math.max(0, more);
    }, 0);
  const all = Array.from({ length: members.count }, (_, index) => ({ index, q_m: above(index) }));
  const { index, q_m } = all.reduce((a, b) => (b.q_m > a.q_m + least_Npm ? b : a));
  if (q_m <= least_Npm) return [];
  const { g, grain, E_s, t, G_f, b_f, h_i } = members.box;
  const member = members.stiffnessOf(index, L);
  const numbers = { q_m, g, r_A: grain.ratio, E_s, t, L, EI_m: member.value, G_f, b_f, h_i };
  return [...member.steps(), work(skinSheared, numbers, shelf.system)];
}

/** Less comes of rounding. */
const least_Npm = 1e-9;

/** A load on single members, as an even line: a thing as the first sine of one. A hand, or a thing in a gap, bends the skin there. */
function asLine({ spread, load, eccentricity_m }: Action, L: number, gaps: readonly Gap[]): number {
  if (spread || load.kind === 'roaming') return 0;
  if (load.kind === 'line') return load.load_Npm;
  const [from, to] = [eccentricity_m - patch_m / 2, eccentricity_m + patch_m / 2];
  return gaps.some(({ from_m, to_m }) => from_m <= from && to <= to_m) ? 0 : (2 * load.load_N) / L;
}
