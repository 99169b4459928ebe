import type { Step } from '../../../../shared/check-result.ts';
import { show, showInCalculation } from '../../../../shared/quantity/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import { layerShear, shearFlow } from '../../../mechanics/section-formulas.ts';
import {
  firstMomentsOf,
  levelCuts,
  shearFlowPerForce,
  type FirstMoments,
} from '../../../mechanics/section.ts';
import { shearStressOfCut, shearStressOfRectangle } from '../../../standards/nds-2018/3-members.ts';
import { makeCheck } from '../../make-check.ts';
import type { Shelf } from '../shelf.ts';
import { ownStiffness, type Board } from '../board.ts';
import type { BoardPart } from '../board-part.ts';
import type { Judged } from '../../judged.ts';
import type { Context, Situation } from '../context.ts';
import { byLoadAt, sharesOfShear } from '../load-shares.ts';
import { mostSheared, type MostSheared } from './box-shear.ts';

/** A place in the section where shear is judged: a cut with its width, or a sliding layer. */
export interface Cut {
  readonly id: 'shear' | 'glue-line';
  readonly title: string;
  readonly moments: FirstMoments;
  readonly width_m: number;
  /** Parts whose wood is sheared there; the weaker counts. */
  readonly parts: readonly BoardPart[];
  /** What its first moments are of. */
  readonly of: () => string;
  /** Only for a layer that slides on its neighbours, or a board of one piece. */
  readonly alone: boolean;
}

/** Shear in the board, unreduced near the brackets, and along every glue line. */
export function shearChecks(context: Context): Judged[] {
  const cuts = cutsOf(context.shelf);
  const sheared = context.situations.map((situation) => ({
    situation,
    most: mostSheared(context, situation),
  }));
  const judged: Judged[] = [];
  for (const id of ['shear', 'glue-line'] as const) {
    const candidates = cuts
      .filter((cut) => cut.id === id)
      .flatMap((cut) =>
        sheared.map(({ situation, most }) => ({
          ...{ cut, situation, most },
          ratio: ratioOf(context, cut, situation, most.peak.value),
        })),
      );
    if (candidates.length === 0) continue;
    const worst = candidates.reduce((a, b) => (b.ratio > a.ratio ? b : a));
    judged.push(judge(context, worst.cut, worst.situation, worst.most));
  }
  return judged;
}

/** What a glue line is called. */
export function glueLineTitle(name: string): string {
  return `Glue line, ${name}`;
}

/** Every cut of a board that shear by bending is judged at. */
export function cutsOf({ board, system }: Pick<Shelf, 'board' | 'system'>): Cut[] {
  const { parts, section, bonded, glueLines } = board;
  const none = { EQx_Nm: 0, EQy_Nm: 0 };
  if (parts.length === 1 || !bonded) {
    return parts.map((part) => ({
      id: 'shear',
      title: parts.length === 1 ? 'Shear in the board' : `Shear in the ${part.name}`,
      moments: none,
      width_m: part.width_m,
      parts: [part],
      of: () => '',
      alone: true,
    }));
  }
  const levels = levelCuts(section).map((cut): Cut => {
    const sheared = cut.parts.flatMap((index) => parts[index] ?? []);
    const names = sheared.map(({ name }) => name).join(' and ');
    return {
      id: 'shear',
      title: `Shear in the ${names}`,
      moments: cut,
      width_m: cut.width_m,
      parts: sheared,
      of: () =>
        `what is above ${showInCalculation(Math.round(cut.z_m * 1e7) / 1e7, 'm', system)} from the underside`,
      alone: false,
    };
  });
  const glued = glueLines.map((line): Cut => ({
    id: 'glue-line',
    title: glueLineTitle(line.name),
    moments: firstMomentsOf(section, line.parts),
    width_m: line.width_m,
    parts: [...parts],
    of: () => `the ${line.parts.map((index) => parts[index]?.name ?? '').join(' and ')}`,
    alone: false,
  }));
  return [...levels, ...glued];
}

/** Shear stress at a cut for a unit force, Pa for each N. */
export function stressPerForce(board: Board, cut: Cut): number {
  const [part] = cut.parts;
  if (cut.alone && part !== undefined) {
    const share = board.parts.length === 1 ? 1 : ownStiffness(part) / board.EI_Nm2;
    return (1.5 * share) / (part.width_m * part.height_m);
  }
  return cut.width_m > 0 ? shearFlowPerForce(board.section, cut.moments) / cut.width_m : Infinity;
}

function ratioOf(context: Context, cut: Cut, situation: Situation, V: number): number {
  const weakest = weakestOf(context, cut, situation);
  if (weakest === undefined || !weakest.resistance.ok) return Infinity;
  return (V * stressPerForce(context.shelf.board, cut)) / weakest.resistance.value_Pa;
}

/** The part whose wood gives way first at a cut. */
function weakestOf(context: Context, cut: Cut, { combination }: Situation) {
  const held = cut.parts.map((part) => ({
    part,
    resistance: context.resist(part.material, 'shear', combination.duration),
  }));
  return held.reduce<(typeof held)[number] | undefined>((weakest, each) => {
    if (weakest === undefined || !each.resistance.ok) return each;
    return weakest.resistance.ok && each.resistance.value_Pa < weakest.resistance.value_Pa ? each : weakest;
  }, undefined);
}

function judge(context: Context, cut: Cut, situation: Situation, most: MostSheared): Judged {
  const { shelf } = context;
  const { peak: shear } = most;
  const weakest = weakestOf(context, cut, situation);
  const resistance = weakest?.resistance;
  const stress = stressSteps(shelf.board, cut, shear.value, context);
  const steps: Step[] = [...most.steps(), ...stress].map(({ step }) => step);
  if (resistance?.ok) steps.push(resistance.step);
  const advice = cut.id === 'glue-line' ? 'Structural wood glue and a close fit are needed.' : '';
  return {
    check: makeCheck(
      {
        id: cut.id,
        title: cut.title,
        unit: 'Pa',
        demand: stress[stress.length - 1]?.value ?? null,
        capacity: resistance?.ok ? resistance.value_Pa : null,
        clause:
          cut.id === 'glue-line'
            ? `${resistance?.clause ?? ''}; VQ/I over the joint`
            : (resistance?.clause ?? ''),
        where: `beside the bracket at ${show(shear.at_m, 'm', shelf.system)}`,
        combination: situation.combination.name,
        note: resistance?.ok ? advice : `Cannot say: ${resistance?.why ?? 'no part is sheared here'}.`,
      },
      shelf.system,
    ),
    steps,
    byLoad: byLoadAt(shelf, 'Shear at', shear.at_m, 'N', () =>
      sharesOfShear(situation, shelf.positions_m.indexOf(shear.at_m)),
    ),
  };
}

/** The shear stress at a cut, worked out. */
export function stressSteps(board: Board, cut: Cut, V: number, { shelf }: Pick<Context, 'shelf'>): Worked[] {
  const { system } = shelf;
  const [part] = cut.parts;
  if (cut.alone && part !== undefined) {
    const size = { b: part.width_m, d: part.height_m };
    if (board.parts.length === 1) return [work(shearStressOfRectangle, { V, ...size }, system)];
    const own = work(layerShear, { V, EI_i: ownStiffness(part), EI_eff: board.EI_Nm2 }, system);
    return [own, work(shearStressOfRectangle, { V: own.value, ...size }, system)];
  }
  const { section } = board;
  const flow = work(
    shearFlow,
    {
      V,
      EI_x: section.EIx_Nm2,
      EI_y: section.EIy_Nm2,
      EI_xy: section.EIxy_Nm2,
      EQ_x: cut.moments.EQx_Nm,
      EQ_y: cut.moments.EQy_Nm,
    },
    system,
    `${cut.id === 'glue-line' ? 'shear flow across the joint' : shearFlow.caption}; EQ_x and EQ_y: EA z_i and EA y_i of ${cut.of()}`,
  );
  return [flow, work(shearStressOfCut, { q: flow.value, b: cut.width_m }, system)];
}
