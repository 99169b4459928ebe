import type { Section, Statement, Step, Table } from '../../../shared/check-result.ts';
import { show, showInCalculation, type Unit } from '../../../shared/quantity/index.ts';
import type { Worked } from '../../formula/step.ts';
import { work } from '../../formula/step.ts';
import {
  neutralDistance,
  showWarping,
  stripShare,
  twistAxis,
} from '../../mechanics/open-section-formulas.ts';
import { effectiveStiffness, secondMoment } from '../../mechanics/section-formulas.ts';
import { twistingOfRectangle } from '../../mechanics/section.ts';
import { twistingStiffness, twistingStiffnessOfBox } from '../../mechanics/torsion-formulas.ts';
import { section } from '../section.ts';
import { ownStiffness } from './board.ts';
import { boxTwist } from './board-twist.ts';
import type { Shelf } from './shelf.ts';

/** The board as a beam: its parts, and the stiffnesses that follow from them. */
export function sectionOf(shelf: Shelf, spring: Worked | null): Section {
  const { board, system } = shelf;
  const { section: s } = board;
  const [only] = board.parts;
  const plain = board.parts.length === 1 && only !== undefined;
  return section('section', 'Section', {
    statements: statementsOf(shelf),
    steps: [
      ...(plain ? [work(secondMoment, { b: only.width_m, t: only.height_m }, system).step] : []),
      ...(board.bonded && s.EIxy_Nm2 !== 0
        ? [work(effectiveStiffness, { EI_x: s.EIx_Nm2, EI_xy: s.EIxy_Nm2, EI_y: s.EIy_Nm2 }, system).step]
        : []),
      ...twistSteps(shelf),
      ...axisSteps(shelf),
      ...(spring === null ? [] : [spring.step]),
    ],
    tables: [partsTable(shelf), ...warpingTable(shelf)],
    notes: [
      ...(plain
        ? []
        : ['The board may move sideways, so a section that is not symmetric bends about inclined axes.']),
      ...((board.twisting.warp?.sheets.length ?? 0) === 0 ? [] : [warpingWords]),
    ],
  });
}

const warpingWords =
  'Warping (Vlasov): ω is the sectorial coordinate, with Σ EA ω = 0; s_y and s_z are its slopes across a part and upright, s_w the upright one as corners are judged; EI_w of a part is EA (ω² + (s_y² b² + s_z² h²) / 12 + b² h² / 144).';

function statementsOf({ board, system, document }: Shelf): Statement[] {
  const { section: s } = board;
  const { warp, strips, GJ_Nm2 } = board.twisting;
  const c = (value: number, unit: Unit): string => showInCalculation(value, unit, system);
  const stated = (label: string, value: string, source: string): Statement => ({ label, value, source });
  const isPlain = board.parts.length === 1;
  return [
    stated(
      'Centroid from the wall, and from the underside',
      `${c(s.centroidY_m, 'm')}, ${c(s.centroidZ_m, 'm')}`,
      'Σ EA y / Σ EA of the parts below, and of z',
    ),
    stated('EI about the level axis, EI_x', c(s.EIx_Nm2, 'N.m2'), 'Σ EI + EA z², z from the centroid'),
    stated('EI about the upright axis, EI_y', c(s.EIy_Nm2, 'N.m2'), 'Σ EA (b² / 12 + y²), b the width'),
    ...(s.EIxy_Nm2 === 0 ? [] : [stated('Product term, EI_xy', c(s.EIxy_Nm2, 'N.m2'), 'Σ EA y z')]),
    ...(board.bonded
      ? s.EIxy_Nm2 === 0
        ? [stated('Bending stiffness EI_eff', c(board.EI_Nm2, 'N.m2'), 'EI_x: it bends about its level axis')]
        : []
      : [stated('EI of layers that slide on each other', c(board.EI_Nm2, 'N.m2'), 'sum over the layers')]),
    stated(
      'Shear stiffness κGA, κ = 5/6',
      board.GA_N === null ? 'none: shear is inside the stiffness of the panel' : c(board.GA_N, 'N'),
      strips.length > 0 && document.board.box === undefined
        ? '1 / Σ v² / κGA, each part by its share v of the shear'
        : 'sum over the parts that carry shear',
    ),
    ...(isPlain ? [] : [stated('Twisting stiffness GJ', c(GJ_Nm2, 'N.m2'), 'sum of the lines below')]),
    ...(warp === null || warp.sheets.length === 0
      ? []
      : [
          stated(
            'Height of the twist axis above the underside',
            c(s.centroidZ_m + warp.poleZ_m, 'm'),
            'Vlasov: where warping neither bends nor stretches the section',
          ),
        ]),
    ...(warp === null
      ? []
      : [
          stated(
            'Stiffness against warping EI_w',
            showWarping(warp.EIw_Nm4, system),
            warp.sheets.length === 0
              ? 'Σ EI (a² + b² / 12), a from the twist axis'
              : 'Vlasov: sum of the parts below',
          ),
        ]),
    stated(
      'Own weight of the board',
      `${show(board.selfWeight_Npm, 'N/m', system)}, ${show(board.weightAt_m, 'm', system)} from the wall`,
      'density × area',
    ),
  ];
}

/** What each part resists twisting with. */
function twistSteps({ board, system, document }: Shelf): Step[] {
  const box = boxTwist(document.board, board.parts);
  const strips = board.twisting.strips.map(({ part }) => part);
  const solid = box === null ? board.parts : strips;
  const isPlain = board.parts.length === 1;
  return [
    ...(box === null ? [] : [work(twistingStiffnessOfBox, box, system).step]),
    ...solid.map(({ name, material, width_m, height_m }) => {
      const numbers = twistingOfRectangle(material.torsionG_Pa, width_m, height_m);
      const caption = `twisting stiffness of the ${name}`;
      return work(twistingStiffness, numbers, system, caption, isPlain ? 'GJ' : 'GJ_i').step;
    }),
  ];
}

/** Where a board with strips twists about. */
function axisSteps({ board, system }: Shelf): Step[] {
  const { strips, axisFrom } = board.twisting;
  if (axisFrom === null) return [];
  const shares = strips.flatMap(({ part, neutralFrom, shareFrom }) => [
    work(neutralDistance, neutralFrom, system, `${neutralDistance.caption}: middle of the ${part.name}`).step,
    work(stripShare, shareFrom, system, `share of the shear in the ${part.name}`).step,
  ]);
  return [...shares, work(twistAxis, axisFrom, system).step];
}

function partsTable({ board, system }: Shelf): Table {
  const c = (value: number, unit: Unit): string => showInCalculation(value, unit, system);
  return {
    title: 'Parts; y from the wall and z from the underside, to the middle of each',
    head: ['Part', 'Material', 'Width', 'Height', 'y', 'z', 'E', 'EA alone', 'EI alone'],
    rows: board.parts.map((part) => [
      part.name,
      part.material.label,
      c(part.width_m, 'm'),
      c(part.height_m, 'm'),
      c(part.y_m + part.width_m / 2, 'm'),
      c(part.z_m + part.height_m / 2, 'm'),
      c(part.E_Pa, 'Pa'),
      c(part.E_Pa * part.width_m * part.height_m, 'N'),
      c(ownStiffness(part), 'N.m2'),
    ]),
  };
}

/** How the parts of a board with strips warp. */
function warpingTable({ board, system }: Shelf): Table[] {
  const sheets = board.twisting.warp?.sheets ?? [];
  if (sheets.length === 0) return [];
  const c = (value: number, unit: Unit): string => showInCalculation(value, unit, system);
  return [
    {
      title: 'How the parts warp',
      head: ['Part', 'ω in the middle', 'Slope s_y', 'Slope s_z', 'Slope s_w', 'Its EI_w'],
      rows: sheets.map(({ part, omega_m2, perY_m, perZ_m, bentPerZ_m, EIw_Nm4 }) => [
        part.name,
        c(omega_m2, 'm2'),
        c(perY_m, 'm'),
        c(perZ_m, 'm'),
        c(bentPerZ_m, 'm'),
        showWarping(EIw_Nm4, system),
      ]),
    },
  ];
}
