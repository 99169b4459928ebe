import { show } from '../../../../shared/quantity/index.ts';
import { standardGravity } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { skinMoment, skinStress } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { frameOf } from '../board.ts';
import type { BoardPart } from '../board-part.ts';
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
      S_n: linesOn(gap, acting, factor),
      P: Math.max(
        0,
        ...acting.map((action) => factor(action) * (action.load.kind === 'roaming' ? action.load.load_N : 0)),
      ),
      c: patch_m,
    },
    system,
  );
  const stress = work(skinStress, { m_s: moment.value, t }, system);
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
  return { check, steps: [moment.step, stress.step, ...(resistance.ok ? [resistance.step] : [])] };
}

/** Pressure of a load that is spread over the depth; 0 for any other. */
function pressureOf({ spread, load }: Action, { depth_m }: Shelf): number {
  if (!spread) return 0;
  if (load.kind === 'line') return load.load_Npm / depth_m;
  return load.kind === 'point' ? load.load_N / (depth_m * patch_m) : 0;
}

/**
 * Moments for each width of what stands on lines in a gap, a (s − a) / s each; a single thing spreads at 45° to both sides,
 * and things nearer one another than that add up.
 */
function linesOn(gap: Gap, acting: readonly Action[], factor: Situation['factor']): number {
  const s = gap.to_m - gap.from_m;
  let lines = 0;
  const points: { readonly at_m: number; readonly moment_N: number }[] = [];
  for (const action of acting) {
    const { spread, load, eccentricity_m } = action;
    const a = eccentricity_m - gap.from_m;
    if (spread || load.kind === 'roaming' || a <= 0 || a >= s) continue;
    const lever = (factor(action) * a * (s - a)) / s;
    if (load.kind === 'line') lines += load.load_Npm * lever;
    else
      points.push({ at_m: load.at_m, moment_N: (load.load_N * lever) / (patch_m + 2 * Math.min(a, s - a)) });
  }
  const beside = (at_m: number): number =>
    points.reduce((sum, each) => sum + (Math.abs(each.at_m - at_m) < patch_m + s ? each.moment_N : 0), 0);
  return lines + Math.max(0, ...points.map(({ at_m }) => beside(at_m)));
}
