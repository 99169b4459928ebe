import {
  commonWordSaid,
  findSpecies,
  notSure,
  notSureStandsIn,
  sourceOf,
  type ClearStrength,
  type DrawnValue,
  type Species,
} from '../../catalogue/index.ts';
import { work, type Worked } from '../../formula/step.ts';
import * as d245 from '../../standards/astm-d245/clear-wood.ts';
import { adjustedStiffness, temperatureFactorOfStiffness } from '../../standards/nds-2018/2.3-adjustment.ts';
import {
  shearFreeStiffness,
  shearModulus,
  usualShearRatio,
} from '../../standards/wood-handbook-2021/stiffness.ts';
import type { FieldError, ProvenanceValue, Step } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import type { Material, MaterialReading, MaterialRequest, Property } from '../design-code.ts';
import { unknownName } from '../../catalogue/unknown-name.ts';
import { allowable, type Reference } from './resistance.ts';

const appearanceWords: Readonly<Record<d245.Appearance, string>> = {
  'nearly-clear': 'nearly clear',
  'small-knots': 'small sound knots',
  knotty: 'knotty',
};

const appearanceAssumption =
  'Appearance boards carry no design value of their own. Strengths here are derived from tests of green clear wood (Wood Handbook) by the method of ASTM D245 and D2555; factors of D245 are from memory but for the published values they reproduce.';

/** An appearance board: strength derived from clear wood. */
export function clearWoodMaterial(request: MaterialRequest): MaterialReading {
  const errors: FieldError[] = [];
  const found = findSpecies(request.material ?? 'not sure');
  if (!found.ok) {
    const path = `${request.path}/${request.fieldPrefix ? 'frameMaterial' : 'material'}`;
    const name = request.material ?? '';
    const said = commonWordSaid(name, false);
    return { ok: false, errors: [unknownName(path, 'a species', name, found.nearest, said)] };
  }
  const species = found.row;
  const green = completeGreen(species.green);
  if (green === null) {
    errors.push({
      path: `${request.path}/material`,
      message: `${species.name} has no green values in print, and the strength of an appearance board is derived from them. It takes another species.${standInSaid(species)}`,
    });
    return { ok: false, errors };
  }
  return { ok: true, material: derive(request, species, green) };
}

/** What to take in place of a wood without green values, where that is known to be safe. */
function standInSaid(species: Species): string {
  return notSureStandsIn(species)
    ? ` "Not sure" is safe in its place: by what is in print of it dry, ${species.name} is no weaker, less stiff or heavier than that takes.`
    : '';
}

/** Green values with nothing missing that the derivation needs. */
interface CompleteGreen {
  readonly modulusOfRupture_Pa: number;
  readonly modulusOfElasticity_Pa: number;
  readonly shear_Pa: number;
  readonly compressionPerp_Pa: number;
}

function completeGreen(green: ClearStrength | null): CompleteGreen | null {
  if (green === null) return null;
  const { shear_Pa, compressionPerp_Pa } = green;
  return shear_Pa === null || compressionPerp_Pa === null ? null : { ...green, shear_Pa, compressionPerp_Pa };
}

function derive(request: MaterialRequest, species: Species, green: CompleteGreen): Material {
  const { system, moisture, temperature } = request;
  const isDry = moisture === 'dry';
  const appearance = request.appearance ?? (request.material === undefined ? 'knotty' : 'small-knots');
  const factors = d245.appearanceFactors[appearance];
  const toDesign = d245.testToDesign.strength[species.group];
  const seasoned = isDry ? d245.seasoning : { bending: 1, shear: 1, compressionPerp: 1 };

  const bending5 = work(
    d245.fifthPercentile,
    { S_m: green.modulusOfRupture_Pa, V_c: d245.variation.bending },
    system,
    'bending strength of clear wood, 5 % exclusion',
  );
  const bending = work(
    d245.clearWoodBending,
    { S_05: bending5.value, k_a: toDesign, R_b: factors.strengthRatio, k_s: seasoned.bending },
    system,
  );
  const shear5 = work(
    d245.fifthPercentile,
    { S_m: green.shear_Pa, V_c: d245.variation.shear },
    system,
    'shear strength of clear wood, 5 % exclusion',
  );
  const shear = work(
    d245.clearWoodShear,
    { S_05: shear5.value, k_a: toDesign, R_v: d245.shearStrengthRatio, k_s: seasoned.shear },
    system,
  );
  const bearing = work(
    d245.clearWoodBearing,
    { S_m: green.compressionPerp_Pa, k_a: d245.testToDesign.compressionPerp, k_s: seasoned.compressionPerp },
    system,
  );
  const across = acrossGrain(species, request);
  const printed = isDry ? species.dry : green;
  const lengthwise = work(
    shearFreeStiffness,
    { E_12: printed.modulusOfElasticity_Pa, k_q: factors.stiffness },
    system,
  );
  const E = work(
    adjustedStiffness,
    { E: lengthwise.value, C_M: 1, C_t: temperatureFactorOfStiffness[temperature] },
    system,
  );
  const ratio = shearRatio(species);
  const G = work(shearModulus, { r_G: ratio.value, E_L: E.value }, system);

  const references: Record<Property, Reference> = {
    bending: { ok: true, value_Pa: bending.value },
    shear: { ok: true, value_Pa: shear.value },
    bearing: { ok: true, value_Pa: bearing.value },
    'tension-across': across.reference,
  };
  const steps: Step[] = [bending5, bending, shear5, shear, bearing, ...across.steps, lengthwise, E, G].map(
    ({ step }) => step,
  );
  const value = (what: string, pascals: number, from: DrawnValue): ProvenanceValue => ({
    what: `${species.name}: ${what}`,
    value: show(pascals, 'Pa', system),
    ...sourceOf(species, from),
  });
  return {
    label: `${species.name}, ${appearanceWords[appearance]}`,
    basis: 'clear-wood',
    E_Pa: E.value,
    apparentE_Pa: E.value / 1.1,
    G_Pa: G.value,
    torsionG_Pa: G.value,
    density_kgm3: species.density_kgm3,
    specificGravity: species.dry.specificGravity,
    creep: isDry
      ? { factor: 1.5, source: 'NDS 2018 3.5.2: seasoned lumber used dry' }
      : { factor: 2.0, source: 'NDS 2018 3.5.2: wet service' },
    statements: [
      { label: 'Wood', value: species.name, source: request.material === undefined ? 'assumed' : 'given' },
      {
        label: 'Appearance',
        value: `${appearanceWords[appearance]}: strength ratio ${factors.strengthRatio}, stiffness × ${factors.stiffness}`,
        source: request.appearance === undefined ? 'assumed' : 'given',
      },
    ],
    steps,
    provenance: [
      value('bending strength of green clear wood', green.modulusOfRupture_Pa, 'green bending'),
      value('shear strength of green clear wood', green.shear_Pa, 'green shear'),
      value(
        'compression across the grain, green',
        green.compressionPerp_Pa,
        'green compression across the grain',
      ),
      value(
        `stiffness, ${isDry ? '12 % moisture' : 'green'}`,
        printed.modulusOfElasticity_Pa,
        isDry ? 'dry stiffness' : 'green stiffness',
      ),
      ...across.provenance,
      ratio.provenance,
      {
        what: `${species.name}: specific gravity, for screws`,
        value: String(species.dry.specificGravity),
        source: species.source,
        provenance: species.provenance,
      },
    ],
    assumptions: [
      appearanceAssumption,
      ...ratio.assumptions,
      ...across.assumptions,
      ...drawnWords(species),
      ...(request.appearance === undefined
        ? [`Appearance not stated: ${appearanceWords[appearance]} assumed (common practice, no source).`]
        : []),
    ],
    resistance: (property, duration) => allowable(references, property, duration, request),
  };
}

/** That the wood is one of several, where nobody knows which. */
function drawnWords(species: Species): string[] {
  if (species.drawn === null) return [];
  const [known, woods] =
    species === notSure()
      ? ['The wood is not known', 'the likely shelf woods']
      : [species.name, species.drawn.woods];
  return [`${known}: the weakest, softest and heaviest of ${woods} is taken for each value.`];
}

interface AcrossGrain {
  readonly reference: Reference;
  readonly steps: readonly Worked[];
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
}

/** Tension across the grain: the lower of green and dry, or those of a named stand-in. */
function acrossGrain(species: Species, { system }: MaterialRequest): AcrossGrain {
  const own = printedAcross(species);
  const standIn =
    own === null && species.tensionPerpStandIn !== null ? findSpecies(species.tensionPerpStandIn) : null;
  const from = own !== null ? species : standIn?.ok ? standIn.row : null;
  const mean = from === null ? null : printedAcross(from);
  if (from === null || mean === null) {
    const why = `no tension across the grain is printed for ${species.name}`;
    return { reference: { ok: false, why }, steps: [], provenance: [], assumptions: [] };
  }
  const worked = work(
    d245.clearWoodTensionPerp,
    { S_m: mean, V_c: d245.variation.tensionPerp, k_a: d245.testToDesign.tensionPerp },
    system,
  );
  return {
    reference: { ok: true, value_Pa: worked.value },
    steps: [worked],
    provenance: [
      {
        what: `${from.name}: tension across the grain, the lower of green and 12 %`,
        value: show(mean, 'Pa', system),
        ...sourceOf(
          from,
          mean === from.dry.tensionPerp_Pa
            ? 'dry tension across the grain'
            : 'green tension across the grain',
        ),
      },
    ],
    assumptions:
      from === species
        ? []
        : [`No tension across the grain is printed for ${species.name}; ${from.name} stands in for it.`],
  };
}

function printedAcross(species: Species): number | null {
  const values = [species.green?.tensionPerp_Pa ?? null, species.dry.tensionPerp_Pa].filter(
    (value) => value !== null,
  );
  return values.length === 0 ? null : Math.min(...values);
}

/** The lesser printed ratio of shear modulus to E_L, or the usual one. */
function shearRatio(species: Species): {
  value: number;
  provenance: ProvenanceValue;
  assumptions: readonly string[];
} {
  const ratios = species.elastic;
  const printed = [ratios?.GLR_over_EL ?? null, ratios?.GLT_over_EL ?? null].filter(
    (ratio) => ratio !== null,
  );
  const what = `${species.name}: shear modulus, share of the stiffness along the grain`;
  const value = Math.min(...printed);
  const usualCounts = species.drawn?.lacksRatios === true && usualShearRatio < value;
  if (ratios === null || printed.length === 0 || usualCounts) {
    return {
      value: usualShearRatio,
      provenance: { what, value: '1/16', source: 'common ratio, kept by EN 338', provenance: 'memory' },
      assumptions: [
        `No shear modulus is printed for ${usualCounts ? 'some of the woods it may be' : species.name}: 1/16 of the stiffness along the grain is taken.`,
      ],
    };
  }
  const borrowed = species.drawn === null && ratios.species.toLowerCase() !== species.name.toLowerCase();
  const from = value === ratios.GLR_over_EL ? 'shear ratio LR' : 'shear ratio LT';
  return {
    value,
    provenance: { what, value: String(value), ...sourceOf(species, from) },
    assumptions: borrowed
      ? [`The shear modulus of ${species.name} follows the printed ratio of ${ratios.species}.`]
      : [],
  };
}
