import type { ProvenanceValue, Step } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { findPanel, findSpecies, sourceOf, type Panel } from '../catalogue/index.ts';
import type { Material } from '../codes/design-code.ts';
import { work } from '../formula/step.ts';
import { couplingOfPlate, stiffnessOfPlate, twistingOfPlate } from '../mechanics/plate-formulas.ts';
import {
  stiffnessAcross,
  usualAcross,
  usualRollingRatio,
} from '../standards/wood-handbook-2021/stiffness.ts';

/** Stiffness of a piece of wood or of a panel as a plate, by its grain. */
export interface GrainStiffness {
  readonly along_Nm: number;
  readonly across_Nm: number;
  readonly coupling_Nm: number;
  readonly twisting_Nm: number;
}

/** A plate of one piece. @param side which side of the growth rings lies across the grain; null for a panel */
export function plateOf(
  { E_Pa, torsionG_Pa }: Pick<Material, 'E_Pa' | 'torsionG_Pa'>,
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

/** How stiff wood is across its grain beside along it. */
export interface WoodRatios {
  readonly tangential: number;
  readonly radial: number;
  readonly poisson: number;
  readonly isPrinted: boolean;
  readonly provenance: readonly ProvenanceValue[];
  /** What is taken where nothing is printed of the wood itself. */
  readonly assumptions: readonly string[];
}

/**
 * Stiffness of a wood against shear that rolls its fibres, as a share of that along the grain: as printed, or where nothing is,
 * the lowest of common woods.
 */
export function rollingRatio(name: string | undefined): {
  readonly value: number;
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
} {
  const found = findSpecies(name ?? 'not sure');
  const printed = found.ok ? (found.row.elastic?.GRT_over_EL ?? null) : null;
  const wood = found.ok ? found.row.name : 'the wood';
  if (!found.ok || printed === null) {
    const value = usualRollingRatio[found.ok ? found.row.group : 'softwood'];
    const words = `No shear modulus across the fibres is printed for ${wood}: ${value} of the stiffness along the grain is taken, the lowest of common woods.`;
    return { value, provenance: [], assumptions: [words] };
  }
  const what = `${wood}: shear modulus across the fibres, share of the stiffness along the grain`;
  const provenance = [{ what, value: String(printed), ...sourceOf(found.row, 'shear ratio RT') }];
  return { value: printed, provenance, assumptions: [] };
}

/** Ratios across the grain as printed for the wood; where a wood has none, the ends of the range of common woods. */
export function woodRatios(name: string | undefined): WoodRatios {
  const found = findSpecies(name ?? 'not sure');
  const wood = found.ok ? found.row.name : 'the wood';
  const printed = found.ok ? found.row.elastic : null;
  const tangential = printed?.ET_over_EL ?? null;
  const radial = printed?.ER_over_EL ?? null;
  if (printed === null || tangential === null || radial === null) {
    const usual = usualAcross;
    return {
      ...usual,
      isPrinted: false,
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
    isPrinted: true,
    provenance: [
      {
        what: `${wood}: stiffness across the grain over that along it, tangential and radial; Poisson ratio LT`,
        value: `${tangential}, ${radial}; ${printed.nu_LT ?? usualAcross.poisson}`,
        ...(found.ok
          ? sourceOf(found.row, 'tangential ratio')
          : { source: printed.source, provenance: printed.provenance }),
      },
    ],
    assumptions: [
      ...(isBorrowed
        ? [`The stiffness across the grain of ${wood} follows the printed ratios of ${printed.species}.`]
        : []),
      ...(printed.nu_LT === null
        ? [`No Poisson ratio is printed for ${wood}: ${usualAcross.poisson} is taken.`]
        : []),
    ],
  };
}

/** Panels whose Poisson ratio nobody prints. Common practice, no source. */
const usualPoisson = 0.2;
/** Stiffness across a panel over that along it, where none is printed: under that of any plywood of the table. */
const lowRatio = 0.1;

/** How stiff a panel is across beside along. */
export interface PanelRatios {
  readonly ratio: number;
  readonly poisson: number;
  /** The row of the catalogue; null where the panel has none. */
  readonly row: Panel | null;
  readonly assumptions: readonly string[];
}

/** The ratio of a panel across as printed; where it has none, a low one. */
export function panelRatios(name: string, thickness_m: number, along_Pa: number): PanelRatios {
  const found = findPanel(name, thickness_m);
  const row = found.ok ? found.row : null;
  const across = row?.across ?? null;
  return {
    ratio: across === null ? lowRatio : across.modulusOfElasticity_Pa / along_Pa,
    poisson: usualPoisson,
    row,
    assumptions: [
      `A Poisson ratio of ${usualPoisson} is taken for the panel (common practice, no source).`,
      ...(across === null
        ? [
            `Nothing is printed across this panel: ${lowRatio} of its stiffness along is taken, and nobody can say what it bears across.`,
          ]
        : []),
    ],
  };
}
