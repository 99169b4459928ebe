import { findPanel, type Panel, type StrengthKind } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import {
  allowableFromCharacteristic,
  characteristicFromMean,
  loadFactor,
  modificationFactor,
  panelCreep,
  panelVariation,
  partialFactor,
} from '../../standards/ec5-2004/panels.ts';
import type { Step } from '../../../shared/check-result.ts';
import { show, showEnd, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { Material, MaterialReading, MaterialRequest, Property, Resistance } from '../design-code.ts';
import { unknownName } from '../../catalogue/unknown-name.ts';
import { allowable, type Reference } from './resistance.ts';

const kindWords: Readonly<Record<StrengthKind, string>> = {
  mean: 'a mean of tests',
  '5-percentile': 'a characteristic value',
  allowable: 'an allowable stress',
  'minimum requirement': 'the least value the standard asks for, taken as characteristic',
};

/** A panel: plywood, OSB, MDF, particleboard, hardboard. */
export function panelMaterial(request: MaterialRequest): MaterialReading {
  const { path, material, thickness_m, moisture, temperature, system } = request;
  const field = `${path}/${request.fieldPrefix ? 'frameMaterial' : 'material'}`;
  const found = findPanel(material ?? '', thickness_m);
  if (!found.ok && found.reason === 'unknown-name') {
    return { ok: false, errors: [unknownName(field, 'a panel', material ?? '', found.nearest)] };
  }
  if (!found.ok) {
    const message = `There are no values for this panel ${show(thickness_m, 'm', system)} thick. It takes ${rangeWords(found.thicknesses, system)}, or another panel. Of several sheets each counts by itself; measure it: one sold as 3/4 in is often 23/32 in thick.`;
    return { ok: false, errors: [{ path: `${path}/thickness`, message }] };
  }
  if (moisture === 'wet' || temperature !== 'ordinary') {
    const message = 'Values of panels here are for dry rooms up to 100 °F. It takes "dry" and "ordinary".';
    return { ok: false, errors: [{ path: '/conditions', message }] };
  }
  return { ok: true, material: panel(request, found.row) };
}

interface Range {
  readonly from_m: number;
  readonly to_m: number;
}

/** Ranges nearer to each other than this are told as one. */
const apart_m = 1e-4;

/** `6 mm to 13 mm, or 18 mm and more`: ranges that meet are one. */
function rangeWords(ranges: readonly Range[], system: UnitSystem): string {
  const joined: Range[] = [];
  for (const range of [...ranges].sort((a, b) => a.from_m - b.from_m)) {
    const last = joined[joined.length - 1];
    if (last === undefined || range.from_m > last.to_m + apart_m) joined.push(range);
    else joined[joined.length - 1] = { from_m: last.from_m, to_m: Math.max(last.to_m, range.to_m) };
  }
  const words = (units: UnitSystem) =>
    joined
      .map(({ from_m, to_m }) => {
        const from = showEnd(from_m, 'm', units, 'up');
        return to_m === Infinity ? `${from} and more` : `${from} to ${showEnd(to_m, 'm', units, 'down')}`;
      })
      .join(', or ');
  return system === 'metric' ? words('metric') : `${words('inch-pound')} (${words('metric')})`;
}

function panel(request: MaterialRequest, row: Panel): Material {
  const { system } = request;
  const steps: Step[] = [];
  const characteristic = (pascals: number, what: string): number => {
    if (row.strengthKind !== 'mean') return pascals;
    const worked = work(characteristicFromMean, { f_m: pascals, V_c: panelVariation }, system, what);
    steps.push(worked.step);
    return worked.value;
  };
  const missing = (what: string): Reference => ({ ok: false, why: `no ${what} is published for this panel` });
  const reference = (pascals: number | null | undefined, what: string): Reference =>
    pascals === null || pascals === undefined
      ? missing(what)
      : { ok: true, value_Pa: characteristic(pascals, what) };
  const references: Record<Property, Reference> = {
    bending: reference(row.along.bending_Pa, 'bending strength along the panel'),
    shear: reference(row.shear_Pa, 'shear strength in its plane'),
    bearing: bearingReference(row),
    'tension-across': reference(row.across?.bending_Pa, 'bending strength across the panel'),
  };
  const value = (what: string, pascals: number) => ({
    what: `${row.name}: ${what}`,
    value: show(pascals, 'Pa', system),
    source: row.source,
    provenance: row.provenance,
  });
  return {
    label: row.name,
    basis: 'panel',
    E_Pa: row.along.modulusOfElasticity_Pa,
    apparentE_Pa: row.along.modulusOfElasticity_Pa,
    G_Pa: null,
    torsionG_Pa: row.along.modulusOfElasticity_Pa / 16,
    density_kgm3: row.density_kgm3,
    specificGravity: null,
    creep: panelCreep[row.family],
    statements: [
      { label: 'Panel', value: row.name, source: 'given' },
      { label: 'Its printed strength is', value: kindWords[row.strengthKind], source: row.source },
    ],
    steps,
    provenance: [
      value('stiffness along the panel, shear inside it', row.along.modulusOfElasticity_Pa),
      value('bending strength along the panel', row.along.bending_Pa),
      ...(row.across === null ? [] : [value('bending strength across the panel', row.across.bending_Pa)]),
      ...(row.shear_Pa === null
        ? []
        : [value(row.shearBasis ?? 'shear in the plane of the panel', row.shear_Pa)]),
      ...(row.compressionPerp_Pa === null
        ? []
        : [value(`bearing on the face: ${row.bearingBasis ?? 'as printed'}`, row.compressionPerp_Pa)]),
    ],
    assumptions: [
      'The panel is cut with its strong direction (face grain) along the shelf.',
      'The twisting stiffness of the panel is taken as 1/16 of its stiffness along the shelf (common practice, no source).',
      ...(row.strengthKind === 'mean'
        ? [
            'Only a mean strength is printed for this panel: 20 % variation is assumed (common practice, no source).',
          ]
        : []),
      ...(row.compressionPerp_Pa === null && row.shear_Pa !== null
        ? [
            'No bearing strength is published for this panel: its shear or bond strength, which bearing exceeds, is taken, divided by γ_M and the load factor.',
          ]
        : []),
      ...(row.strengthKind === 'allowable'
        ? []
        : [
            'The NDS gives no strength for this panel: kmod and γM of EN 1995-1-1 are used, with the load factor 1.5 taken to the resistance.',
          ]),
    ],
    resistance: (property, duration): Resistance => {
      const held = references[property];
      if (row.strengthKind === 'allowable' || property === 'bearing' || !held.ok) {
        return allowable(references, property, duration, request);
      }
      const worked = work(
        allowableFromCharacteristic,
        {
          f_k: held.value_Pa,
          k_mod: modificationFactor(row.family, duration),
          gamma_M: partialFactor[row.family],
          gamma_Q: loadFactor,
        },
        system,
      );
      return {
        ok: true,
        value_Pa: worked.value,
        step: worked.step,
        clause: 'EN 1995-1-1 2.4.1 (NDS is silent)',
      };
    },
  };
}

/** Bearing as published, or else the strength in the plane, which bearing exceeds, brought down to working loads. */
function bearingReference(row: Panel): Reference {
  if (row.compressionPerp_Pa !== null) return { ok: true, value_Pa: row.compressionPerp_Pa };
  if (row.shear_Pa === null) return { ok: false, why: 'no bearing strength is published for this panel' };
  return { ok: true, value_Pa: row.shear_Pa / (partialFactor[row.family] * loadFactor) };
}
