import type { Section, Table } from '../../../shared/check-result.ts';
import { inch, show, significant } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import { usualMoistureChange, widthChange } from '../../standards/wood-handbook-2021/moisture.ts';
import { section } from '../section.ts';
import type { Overhang } from './overhang.ts';
import { stoolSpacing_m } from './usual.ts';

/** How the top moves with the seasons, and how long the slots must be that let it. */
export function movementSection({ top, base, screws, props, system }: Overhang): Section {
  if (top.wood.isPanel)
    return section('geometry', 'Movement of the panel', {
      notes: [
        'A panel in a dry room hardly moves with the seasons (common practice, no source): its screws need no slots.',
      ],
    });
  const { isAlong, wood, depth_m, length_m } = top;
  const width = isAlong ? depth_m : length_m;
  const whole = work(widthChange, { W_m: width, C_T: wood.movement, Delta_M: usualMoistureChange }, system);
  const fixed = isAlong ? (base.back_m + base.front_m) / 2 : (base.from_m + base.to_m) / 2;
  const moves = (at: number): string =>
    `± ${show(Math.abs(at - fixed) * wood.movement * usualMoistureChange, 'm', system)}`;
  const across = (x: number, y: number): number => (isAlong ? y : x);
  const rows = [
    ...(screws?.places ?? []).map(({ x_m, y_m }, index) => [`Screw ${index + 1}`, across(x_m, y_m)] as const),
    ...props.map((prop, index) => [`Prop ${index + 1}, at its end`, across(prop.at, prop.to)] as const),
  ];
  return section('geometry', 'Movement of the wood', {
    steps: [whole.step],
    tables: [
      {
        title: `What slots must let pass, one line fixed at ${show(fixed, 'm', system)} ${isAlong ? 'from the back edge' : 'along'}`,
        head: ['What', 'Across the grain, at', 'Slot, either way'],
        rows: rows.map(([name, at]) => [name, show(at, 'm', system), moves(at)]),
      },
    ],
    notes: [
      `Moisture is taken to change by ${usualMoistureChange} % between the seasons (common practice, no source). Fix the top along one line only; everywhere else it takes slots across the grain, washers under the heads, and no glue.`,
    ],
  });
}

/** Advice beside the verdict: room for knees and stools, and what the stone trade allows. */
export function readingsTable({ top, base, system }: Overhang): Table {
  const out = top.depth_m - base.front_m;
  const m = (metres: number): string => show(metres, 'm', system);
  const stools = Math.floor(top.length_m / stoolSpacing_m + 1e-9);
  const stone = (most_m: number): string => {
    const allowed = Math.min(most_m, top.depth_m / 3);
    return `${m(allowed)}: ${out <= allowed + 1e-9 ? 'within it' : 'past it, it would want props'}`;
  };
  return {
    title: 'Readings, no part of the verdict',
    head: ['What', 'Here', 'Advice', 'Source'],
    rows: [
      [
        'Stools along the edge',
        significant(stools, 2),
        `${m(stoolSpacing_m)} of edge each`,
        'common practice, no source',
      ],
      ['Room for knees', m(out), `${m(12 * inch)} clear at 36 in high`, 'common practice, no source'],
      [
        'If it were natural stone 3/4 in thick',
        m(out),
        stone(6 * inch),
        'stone-trade guidance (Dimension Stone Design Manual), as quoted on trade pages; at most a third of the depth',
      ],
      ['If it were natural stone 1-1/4 in thick', m(out), stone(10 * inch), 'the same'],
    ],
  };
}
