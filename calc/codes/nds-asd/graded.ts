import { findGradedLumber, type GradedLumber } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import { adjustedStiffness, temperatureFactorOfStiffness } from '../../standards/nds-2018/2.3-adjustment.ts';
import { flatUseFactor, sizeFactor, wetService } from '../../standards/nds-2018/4a-lumber-factors.ts';
import { shearFreeStiffnessOfLumber } from '../../standards/nds-2018/f-stiffness.ts';
import { shearModulus, usualShearRatio } from '../../standards/wood-handbook-2021/stiffness.ts';
import { show, inch } from '../../../shared/quantity/index.ts';
import type { Material, MaterialReading, MaterialRequest, Property } from '../design-code.ts';
import { unknownName } from '../../catalogue/unknown-name.ts';
import { allowable, type Reference } from './resistance.ts';

const thinnest_m = 1.5 * inch;
const thickest_m = 3.5 * inch;

/** Grade-stamped dimension lumber, 2 to 4 in thick. */
export function gradedMaterial(request: MaterialRequest): MaterialReading {
  const { path, material, grade, thickness_m, width_m } = request;
  if (thickness_m < thinnest_m - 1e-6 || thickness_m > thickest_m + 1e-6) {
    const message =
      'Grade values (NDS Supplement Tables 4A, 4B) are for lumber 2 to 4 in thick, 1-1/2 to 3-1/2 in dressed. For this thickness it takes "clear-wood" or "panel".';
    return { ok: false, errors: [{ path: `${path}/basis`, message }] };
  }
  const found = findGradedLumber(material ?? '', grade ?? '', nominalWidth(width_m));
  if (!found.ok) {
    const error = {
      'unknown-name': () =>
        unknownName(`${path}/material`, 'a lumber combination', material ?? '', found.nearest),
      'no-such-grade': () =>
        unknownName(`${path}/grade`, 'a grade of that lumber', grade ?? '', found.nearest),
      'no-such-width': () => ({
        path: `${path}/grade`,
        message: `${material ?? ''} ${grade ?? ''} has no values for a nominal width of ${nominalWidth(width_m)} in.`,
      }),
    }[found.reason]();
    return { ok: false, errors: [error] };
  }
  return { ok: true, material: lumber(request, found.row) };
}

function lumber(request: MaterialRequest, row: GradedLumber): Material {
  const { system, moisture, temperature, use, thickness_m, width_m } = request;
  const isWet = moisture === 'wet';
  const thick = thickness_m > 2.5 * inch + 1e-6;
  const nominal = nominalWidth(width_m);
  const size = sizeFactor(row.table, row.grade, nominal, thick);
  const flatUse = use === 'flat' ? flatUseFactor(nominal, thick) : 1;
  const references: Record<Property, Reference> = {
    bending: {
      ok: true,
      value_Pa: row.bending_Pa,
      wet: isWet ? wetService.bending(row.bending_Pa * size) : 1,
      size,
      flatUse,
    },
    shear: { ok: true, value_Pa: row.shear_Pa, wet: isWet ? wetService.shear : 1 },
    bearing: { ok: true, value_Pa: row.compressionPerp_Pa, wet: isWet ? wetService.compressionPerp : 1 },
    'tension-across': { ok: false, why: 'the NDS gives no tension across the grain for graded lumber' },
  };
  const adjusted = work(
    adjustedStiffness,
    {
      E: row.modulusOfElasticity_Pa,
      C_M: isWet ? wetService.stiffness : 1,
      C_t: temperatureFactorOfStiffness[temperature],
    },
    system,
  );
  const E = work(shearFreeStiffnessOfLumber, { E_prime: adjusted.value }, system);
  const G = work(shearModulus, { r_G: usualShearRatio, E_L: E.value }, system);
  const value = (what: string, pascals: number) => ({
    what: `${row.combination} ${row.grade}: ${what}`,
    value: show(pascals, 'Pa', system),
    source: row.source,
    provenance: row.provenance,
  });
  return {
    label: `${row.combination} ${row.grade}`,
    basis: 'graded',
    E_Pa: E.value,
    apparentE_Pa: adjusted.value,
    G_Pa: G.value,
    torsionG_Pa: G.value,
    density_kgm3: row.density_kgm3,
    specificGravity: row.specificGravity,
    creep: isWet
      ? { factor: 2.0, source: 'NDS 2018 3.5.2: wet service' }
      : { factor: 1.5, source: 'NDS 2018 3.5.2: seasoned lumber used dry' },
    statements: [
      { label: 'Lumber', value: row.combination, source: 'given' },
      { label: 'Grade', value: row.grade, source: 'given' },
      {
        label: 'Factors of the piece',
        value: `C_F ${size}, C_fu ${flatUse} (nominal width ${nominal} in)`,
        source: 'NDS Supplement 2018 Tables 4A, 4B',
      },
    ],
    steps: [adjusted.step, E.step, G.step],
    provenance: [
      value('bending', row.bending_Pa),
      value('shear', row.shear_Pa),
      value('compression across the grain', row.compressionPerp_Pa),
      value('modulus of elasticity', row.modulusOfElasticity_Pa),
      {
        what: `${row.combination}: shear modulus, share of the stiffness along the grain`,
        value: '1/16',
        source: 'common ratio, kept by EN 338',
        provenance: 'memory',
      },
    ],
    assumptions: ['The shear modulus of graded lumber is taken as 1/16 of its stiffness along the grain.'],
    resistance: (property, duration) => allowable(references, property, duration, request),
  };
}

/** Nominal width, in, of a dressed width: what a 9-1/4 in board is sold as. */
function nominalWidth(width_m: number): number {
  const inches = width_m / inch;
  const dressed: readonly (readonly [number, number])[] = [
    [1.5, 2],
    [2.5, 3],
    [3.5, 4],
    [4.5, 5],
    [5.5, 6],
    [7.25, 8],
    [9.25, 10],
    [11.25, 12],
  ];
  return dressed.find(([most]) => inches <= most + 1e-6)?.[1] ?? 14;
}
