import type { ProvenanceValue } from '../../../shared/check-result.ts';
import { layersAsOne } from '../../mechanics/edge-strip-formulas.ts';
import { bondedSection } from '../../mechanics/section.ts';
import { panelRatios, woodRatios } from '../grain-plate.ts';
import type { BoardInput, BoardPart } from './board-part.ts';

/** How stiff a board is across its grain, at the softer side of its growth rings; a panel across its strong direction. */
export interface Grain {
  readonly ratio: number;
  readonly poisson: number;
  readonly side: 'tangential' | null;
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
}

/** The same of the skins of a box, and how stiff they are in shear in their own plane. */
export interface SkinGrain extends Grain {
  readonly inPlaneG_Pa: number;
}

export type Edge = 'front' | 'back';

/** A board between the strips along its edges as a plate of one thickness. */
export interface BoardPlate {
  readonly grain: Grain;
  readonly E_Pa: number;
  readonly torsionG_Pa: number;
  readonly t_m: number;
  readonly b_m: number;
  /** Height of its neutral axis above the underside; null of layers that slide on each other, each with its own. */
  readonly neutral_m: number | null;
  /** Edges without a strip that is taller than the board. */
  readonly bare: readonly Edge[];
  /** The layers, and strips that are no taller than the board. */
  readonly parts: readonly BoardPart[];
  /** What its stiffness follows from, where it has layers. */
  readonly asOneFrom: Parameters<typeof layersAsOne.evaluate>[0] | null;
}

/**
 * The plate of a board. Of layers, the softest ratio across the grain and in twist counts for all of them, which is on the safe
 * side; null of a box.
 */
export function boardPlateOf(
  input: BoardInput,
  body: readonly BoardPart[],
  strips: readonly BoardPart[],
  bonded: boolean,
): BoardPlate | null {
  const [first, ...others] = body;
  if (first === undefined || input.box !== undefined) return null;
  const t_m = input.thickness;
  const tall = strips.filter(({ height_m }) => height_m > t_m * (1 + 1e-9));
  const parts = [...body, ...strips.filter((strip) => !tall.includes(strip))];
  const section = bondedSection(body);
  const EI = bonded
    ? section.EIx_Nm2
    : body.reduce((sum, { E_Pa, width_m, height_m }) => sum + (E_Pa * width_m * height_m ** 3) / 12, 0);
  const asOneFrom = others.length === 0 ? null : { EI_b: EI, b: input.depth, t: t_m };
  const E_Pa = asOneFrom === null ? first.E_Pa : layersAsOne.evaluate(asOneFrom);
  const grains = body.map((part, index) => grainOf(input.layers?.[index]?.material ?? input.material, part));
  return {
    grain: grains.reduce((softest, each) => (each.ratio < softest.ratio ? each : softest)),
    E_Pa,
    torsionG_Pa:
      asOneFrom === null
        ? first.material.torsionG_Pa
        : E_Pa * Math.min(...body.map((part) => part.material.torsionG_Pa / part.E_Pa)),
    t_m,
    b_m: parts.slice(body.length).reduce((sum, { width_m }) => sum + width_m, input.depth),
    neutral_m: bonded ? section.centroidZ_m : null,
    bare: (['front', 'back'] as const).filter(
      (edge) => !tall.some(({ name }) => name === (edge === 'front' ? 'nosing' : 'back rail')),
    ),
    parts,
    asOneFrom,
  };
}

/** Of a panel that is as stiff across as along: its shear in its own plane over E. Its twisting takes far less. */
const alikePanel = 0.2;

/** The skins of a box: across it, and sheared in their own plane. */
export function skinGrainOf(name: string | undefined, skin: BoardPart): SkinGrain {
  const grain = grainOf(name, skin);
  const { material, E_Pa } = skin;
  if (material.basis !== 'panel' || grain.ratio < 0.9) return { ...grain, inPlaneG_Pa: material.torsionG_Pa };
  const words = `In its own plane a skin that is alike both ways is taken to have ${alikePanel} of its stiffness in shear (EN 12369-1 has 0.21 to 0.27 of particleboard and MDF, from memory).`;
  return { ...grain, inPlaneG_Pa: alikePanel * E_Pa, assumptions: [...grain.assumptions, words] };
}

function grainOf(name: string | undefined, { material, height_m }: BoardPart): Grain {
  if (material.basis === 'panel') {
    const { ratio, poisson, assumptions } = panelRatios(name ?? '', height_m, material.E_Pa);
    return { ratio, poisson, side: null, provenance: [], assumptions };
  }
  const { tangential, poisson, provenance, assumptions } = woodRatios(name);
  return {
    ...{ ratio: tangential, poisson, side: 'tangential', provenance },
    assumptions: [
      'Across its grain the board is taken as soft as in the tangential direction of the growth rings: more is then bent along its edge.',
      ...assumptions,
    ],
  };
}
