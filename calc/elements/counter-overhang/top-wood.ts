import type { CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import type { FieldError, ProvenanceValue, Step } from '../../../shared/check-result.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { findSpecies, sourceOf } from '../../catalogue/index.ts';
import { woodMovement } from '../../catalogue/wood-movement.ts';
import type { DesignCode, Material } from '../../codes/design-code.ts';
import { work } from '../../formula/step.ts';
import { couplingOfPlate, stiffnessOfPlate, twistingOfPlate } from '../../mechanics/plate-formulas.ts';
import { stiffnessAcross, usualAcross } from '../../standards/wood-handbook-2021/stiffness.ts';

/** Stiffness of the top as a plate, by its grain. */
export interface GrainStiffness {
  readonly along_Nm: number;
  readonly across_Nm: number;
  readonly coupling_Nm: number;
  readonly twisting_Nm: number;
}

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
  /** Share of width for each percent of moisture. */
  readonly movement: number;
  readonly steps: readonly Step[];
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
}

/** Width moved for each percent where the wood is not in the table: the most of any of its woods, that of beech. */
const mostMovement = 0.00431;

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
  const ratios = ratiosOf(top.material);
  const soft = plateOf(material, top.thickness, ratios.tangential, ratios.poisson, system, 'tangential');
  const stiff = plateOf(material, top.thickness, ratios.radial, ratios.poisson, system, 'radial');
  const movement = movementOf(top.material);
  return {
    ok: true,
    wood: {
      material,
      isPanel: false,
      sheets: 1,
      soft: soft.stiffness,
      stiff: stiff.stiffness,
      softAcross_Pa: soft.across_Pa,
      movement: movement.value,
      steps: [...soft.steps, ...stiff.steps],
      provenance: [...material.provenance, ...ratios.provenance, ...movement.provenance],
      assumptions: [...material.assumptions, ...ratios.assumptions, ...movement.assumptions],
    },
  };
}

/** A plate of one piece. @param side which side of the growth rings lies across the grain; null for a panel */
export function plateOf(
  { E_Pa, torsionG_Pa }: Material,
  t: number,
  r_A: number,
  nu_LT: number,
  system: UnitSystem,
  side: 'tangential' | 'radial' | null,
): { readonly stiffness: GrainStiffness; readonly across_Pa: number; readonly steps: readonly Step[] } {
  const named = (wood: string, panel: string): string => (side === null ? panel : `${wood}, ${side}`);
  const E_A = work(
    stiffnessAcross,
    { r_A, E_L: E_Pa },
    system,
    named('stiffness across the grain', 'stiffness across the panel'),
  );
  const along = work(
    stiffnessOfPlate,
    { E: E_Pa, t, nu_LT, r_A },
    system,
    side === null ? 'plate along the panel' : `plate along the grain, ${side} side across it`,
  );
  const across = work(
    stiffnessOfPlate,
    { E: E_A.value, t, nu_LT, r_A },
    system,
    named('plate across the grain', 'plate across the panel'),
  );
  const coupling = work(couplingOfPlate, { nu_LT, D_A: across.value }, system);
  const twisting = work(twistingOfPlate, { G: torsionG_Pa, t }, system);
  return {
    stiffness: {
      along_Nm: along.value,
      across_Nm: across.value,
      coupling_Nm: coupling.value,
      twisting_Nm: twisting.value,
    },
    across_Pa: E_A.value,
    steps: [E_A, along, across, coupling, twisting].map(({ step }) => step),
  };
}

interface Ratios {
  readonly tangential: number;
  readonly radial: number;
  readonly poisson: number;
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
}

/** Ratios across the grain as printed for the wood; where a wood has none, the ends of the range of common woods. */
function ratiosOf(name: string | undefined): Ratios {
  const found = findSpecies(name ?? 'not sure');
  const wood = found.ok ? found.row.name : 'the wood';
  const printed = found.ok ? found.row.elastic : null;
  const tangential = printed?.ET_over_EL ?? null;
  const radial = printed?.ER_over_EL ?? null;
  if (printed === null || tangential === null || radial === null) {
    const usual = usualAcross;
    return {
      ...usual,
      provenance: [],
      assumptions: [
        `No stiffness across the grain is printed for ${wood}: ${usual.tangential} and ${usual.radial} of that along the grain are taken, the ends of the range of common woods; the worse counts.`,
      ],
    };
  }
  const isBorrowed =
    found.ok && found.row.drawn === null && printed.species.toLowerCase() !== found.row.name.toLowerCase();
  return {
    tangential,
    radial,
    poisson: printed.nu_LT ?? usualAcross.poisson,
    provenance: [
      {
        what: `${wood}: stiffness across the grain over that along it, tangential and radial; Poisson ratio LT`,
        value: `${tangential}, ${radial}; ${printed.nu_LT ?? usualAcross.poisson}`,
        ...(found.ok ? sourceOf(found.row, 'tangential ratio') : printed),
      },
    ],
    assumptions: [
      'How the growth rings stand in the staves is not known: the tangential stiffness is taken for movement, the radial one for stress.',
      ...(isBorrowed
        ? [`The stiffness across the grain of ${wood} follows the printed ratios of ${printed.species}.`]
        : []),
      ...(printed.nu_LT === null
        ? [`No Poisson ratio is printed for ${wood}: ${usualAcross.poisson} is taken.`]
        : []),
    ],
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
