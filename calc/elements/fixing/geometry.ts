import type { Section, Statement } from '../../../shared/check-result.ts';
import { showInCalculation, significant } from '../../../shared/quantity/index.ts';
import type { Fastener } from '../../catalogue/index.ts';
import { leadHole } from '../../standards/nds-2018/12.1-holes.ts';
import {
  edgeAlong,
  endDistance,
  leastPlacedDiameter_m,
  loadedEdgeAcross,
  spacingBetweenRows,
  spacingInRow,
} from '../../standards/nds-2018/12.5-placement.ts';
import { section } from '../section.ts';
import type { Fixing, Ground } from './fixing.ts';
import { leastPenetration_m, penetrationOf } from './values.ts';

type Wood = Extract<Ground, { kind: 'wood' }>;

/** How the screws are to be set, as a chapter of the calculation; none where the NDS has no word on them. */
export function geometrySections(fixing: Fixing | null): Section[] {
  if (fixing?.ground.kind !== 'wood' || fixing.fastener === null || fixing.allowable !== null) return [];
  const { fastener, ground } = fixing;
  const statements = [
    ...holes(fixing, fastener, ground),
    ...depth(fixing, fastener),
    ...places(fixing, fastener, ground),
  ];
  return [section('geometry', 'Setting the screws', { statements, notes: [note(fastener)] })];
}

function holes({ system }: Fixing, fastener: Fastener, { G }: Wood): Statement[] {
  const c = (metres: number): string => showInCalculation(metres, 'm', system);
  const { thread, shank_m, isNeeded, clause } = leadHole(fastener, G);
  const source = `${clause} (memory), specific gravity ${significant(G, 2)}`;
  const size =
    thread.from_m === thread.to_m
      ? `about ${c(thread.to_m)}`
      : `from ${c(thread.from_m)} to ${c(thread.to_m)}`;
  const most = fastener.kind === 'common-nail' ? `at most ${c(thread.to_m)}, where the wood may split` : size;
  return [
    {
      label: 'Lead hole, diameter',
      value: isNeeded || fastener.kind === 'common-nail' ? most : `${most}; not required for the pull alone`,
      source,
    },
    ...(shank_m > 0
      ? [{ label: 'Hole for the part without thread, diameter', value: c(shank_m), source }]
      : []),
  ];
}

function depth({ system, driven }: Fixing, fastener: Fastener): Statement[] {
  const isLag = fastener.kind === 'lag-screw';
  const least = showInCalculation(leastPenetration_m(fastener), 'm', system);
  return [
    {
      label: `Least penetration into the wood, ${isLag ? '4 D without the tip' : '6 D'}`,
      value: least,
      source: `NDS ${{ 'lag-screw': '12.1.4', 'wood-screw': '12.1.5', 'common-nail': '12.1.6' }[fastener.kind]}`,
    },
    ...(driven === 'toe'
      ? [
          {
            label: 'Nails toed in',
            value: 'at about 30°, begun a third of their length from the edge',
            source: 'NDS 12.1.6, Figure 12A (memory)',
          },
        ]
      : []),
  ];
}

function places(fixing: Fixing, { diameter_m: D }: Fastener, wood: Wood): Statement[] {
  const isPlaced = D >= leastPlacedDiameter_m;
  const statement = (label: string, diameters: number, table: string): Statement => ({
    label: `${label}, ${significant(diameters, 3)} D`,
    value: showInCalculation(diameters * D, 'm', fixing.system),
    source: isPlaced ? `NDS Table ${table}` : 'as for 1/4 in and more (common practice, no source)',
  });
  const isAlong = wood.angle_deg === 0;
  return [
    ...(isAlong
      ? [statement('Edge distance, at least', edgeAlong, '12.5.1C')]
      : [
          statement('Distance to the edge the load points to, at least', loadedEdgeAcross, '12.5.1C'),
          statement('Distance to the other edges, at least', edgeAlong, '12.5.1C'),
        ]),
    ...(isAlong
      ? [
          statement('Distance to an end above the screws, at least', endDistance.away, '12.5.1A'),
          statement('Distance to an end below the screws, at least', endDistance.towards, '12.5.1A'),
        ]
      : [statement('End distance, at least', endDistance.across, '12.5.1A')]),
    statement('Spacing up the plate for the full value', spacingInRow.full, '12.5.1B'),
    ...(fixing.perHeight > 1
      ? [
          statement(
            'Spacing side by side, at least',
            spacingBetweenRows(wood.angle_deg, penetrationOf(fixing, wood) / D),
            '12.5.1D',
          ),
        ]
      : []),
  ];
}

function note({ diameter_m }: Fastener): string {
  return diameter_m >= leastPlacedDiameter_m
    ? 'D is the diameter of the shank.'
    : 'D is the diameter of the shank. Of fasteners thinner than 1/4 in the NDS asks only that the wood does not split.';
}
