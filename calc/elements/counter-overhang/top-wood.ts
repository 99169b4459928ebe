import type { CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import type { FieldError, ProvenanceValue, Step } from '../../../shared/check-result.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { findSpecies } from '../../catalogue/index.ts';
import { woodMovement } from '../../catalogue/wood-movement.ts';
import type { DesignCode, Material } from '../../codes/design-code.ts';
import { work } from '../../formula/step.ts';
import { shearStiffnessOfPlate } from '../../mechanics/plate-formulas.ts';
import { plateOf, rollingRatio, woodRatios, type GrainStiffness } from '../grain-plate.ts';

/** The wood of a top, and the top as a plate. */
export interface TopWood {
  readonly material: Material;
  readonly isPanel: boolean;
  /** Sheets that slide on each other; 1 for one piece. */
  readonly sheets: number;
  /** The softer side of the growth rings: the top moves most, and what runs along the grain or is of steel carries more. */
  readonly soft: GrainStiffness;
  /** The stiffer side: across the grain more is asked of the top. */
  readonly stiff: GrainStiffness;
  readonly softAcross_Pa: number;
  /** Against shear, N/m for each width; null where it is inside the stiffness of a panel. */
  readonly shear: { readonly along_Npm: number; readonly across_Npm: number } | null;
  /** Share of width for each percent of moisture. */
  readonly movement: number;
  readonly steps: readonly Step[];
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
}

/** Width moved for each percent where the wood is not in the table: the most of any of its woods, that of beech. */
const mostMovement = 0.00431;

const ringsNotKnown =
  'How the growth rings stand in the staves is not known: the tangential stiffness is taken for movement, the radial one for stress.';

/** Looks the wood of a top up and makes a plate of it. */
export function readTopWood(
  { top, conditions }: CounterOverhangDocument,
  code: DesignCode,
  system: UnitSystem,
):
  | { readonly ok: true; readonly wood: TopWood }
  | { readonly ok: false; readonly errors: readonly FieldError[] } {
  const reading = code.material({
    path: '/top',
    material: top.material,
    basis: 'clear-wood',
    appearance: top.appearance,
    grade: undefined,
    thickness_m: top.thickness,
    width_m: Math.min(top.depth, top.length),
    use: 'flat',
    moisture: conditions?.moisture ?? 'dry',
    temperature: conditions?.temperature ?? 'ordinary',
    system,
  });
  if (!reading.ok) return reading;
  const { material } = reading;
  const ratios = woodRatios(top.material);
  const soft = plateOf(material, top.thickness, ratios.tangential, ratios.poisson, system, 'tangential');
  const stiff = plateOf(material, top.thickness, ratios.radial, ratios.poisson, system, 'radial');
  const movement = movementOf(top.material);
  const rolling = rollingRatio(top.material);
  const { E_Pa, torsionG_Pa } = material;
  const shearOf = (r_G: number, caption: string) =>
    work(shearStiffnessOfPlate, { r_G, E_L: E_Pa, t: top.thickness }, system, caption);
  const alongS = shearOf(torsionG_Pa / E_Pa, 'plate against shear along the grain');
  const acrossS = shearOf(rolling.value, 'plate against shear across the grain');
  return {
    ok: true,
    wood: {
      material,
      isPanel: false,
      sheets: 1,
      soft: soft.stiffness,
      stiff: stiff.stiffness,
      softAcross_Pa: soft.across_Pa,
      shear: { along_Npm: alongS.value, across_Npm: acrossS.value },
      movement: movement.value,
      steps: [...soft.steps, ...stiff.steps, alongS.step, acrossS.step],
      provenance: [
        ...material.provenance,
        ...ratios.provenance,
        ...rolling.provenance,
        ...movement.provenance,
      ],
      assumptions: [
        ...material.assumptions,
        ...(ratios.isPrinted ? [ringsNotKnown] : []),
        ...ratios.assumptions,
        ...rolling.assumptions,
        ...movement.assumptions,
      ],
    },
  };
}

function movementOf(name: string | undefined): {
  readonly value: number;
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
} {
  const found = findSpecies(name ?? 'not sure');
  const row = found.ok ? woodMovement.get(found.row.id) : undefined;
  const wood = found.ok ? found.row.name : 'the wood';
  if (row === undefined) {
    const words = `How ${wood} moves with moisture is in no row: the most of any wood of the table is taken.`;
    return { value: mostMovement, provenance: [], assumptions: [words] };
  }
  const what = `${wood}: movement across the grain for each percent of moisture, flat-sawn`;
  return {
    value: row.tangential_per_percent,
    provenance: [
      { what, value: String(row.tangential_per_percent), source: row.source, provenance: row.provenance },
    ],
    assumptions: [],
  };
}
