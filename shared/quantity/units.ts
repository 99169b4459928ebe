import { foot, inch, ounce, pound, poundForce, standardGravity } from './exact.ts';

/** Every kind of quantity a document or a form can hold. */
export type Kind = 'length' | 'force' | 'line-load' | 'area-load' | 'stress' | 'couple' | 'density' | 'mass';

/** The SI units a result can carry. `1` is a pure number. */
export type Unit =
  'm' | 'N' | 'Pa' | 'N.m' | 'N/m' | 'N/m2' | 'm2' | 'm3' | 'm4' | 'N.m2' | 'kg/m3' | 'kg' | 'rad' | '1';

export type UnitSystem = 'inch-pound' | 'metric';

/** The SI unit in which each kind of quantity is held. */
export const unitOfKind: Readonly<Record<Kind, Unit>> = {
  length: 'm',
  force: 'N',
  'line-load': 'N/m',
  'area-load': 'N/m2',
  stress: 'Pa',
  couple: 'N.m',
  density: 'kg/m3',
  mass: 'kg',
};

/** Fifteen figures of a factor, so that what is exact stays so and has no neighbour. */
const exact = (factor: number): number => Number(factor.toPrecision(15));

function table(factors: Readonly<Record<string, number>>): ReadonlyMap<string, number> {
  return new Map(Object.entries(factors).map(([written, factor]) => [written, exact(factor)]));
}

const psf = poundForce / foot ** 2;
const psi = poundForce / inch ** 2;
const poundWeight = pound * standardGravity;
const kilogramWeight = standardGravity;

const lengths = table({
  ...{ in: inch, inch, inches: inch, '"': inch, ft: foot, foot, feet: foot, "'": foot, yd: 3 * foot },
  ...{ mm: 0.001, cm: 0.01, m: 1 },
});

const massFactors = { lb: pound, lbs: pound, oz: ounce, kg: 1, g: 0.001 };

const forces = table({
  ...{ lbf: poundForce, kip: 1000 * poundForce, N: 1, kN: 1000 },
  ...Object.fromEntries(
    Object.entries(massFactors).map(([written, mass]) => [written, mass * standardGravity]),
  ),
});

const lineLoads = table({
  ...{ 'lbf/ft': poundForce / foot, 'lbf/in': poundForce / inch, plf: poundForce / foot },
  ...{ 'N/m': 1, 'N/mm': 1000, 'kN/m': 1000 },
  ...{ 'lb/ft': poundWeight / foot, 'lb/in': poundWeight / inch, 'kg/m': kilogramWeight },
});

const stresses = table({
  ...{ psi, ksi: 1000 * psi, psf },
  ...{ Pa: 1, kPa: 1e3, MPa: 1e6, GPa: 1e9, 'N/mm2': 1e6, 'N/mm²': 1e6 },
});

const areaLoads = table({
  ...{ psf, 'lbf/ft2': psf, 'lbf/ft²': psf },
  ...{ 'N/m2': 1, 'N/m²': 1, 'kN/m2': 1e3, 'kN/m²': 1e3, Pa: 1, kPa: 1e3 },
  ...{ 'lb/ft2': poundWeight / foot ** 2, 'lb/ft²': poundWeight / foot ** 2 },
  ...{ 'kg/m2': kilogramWeight, 'kg/m²': kilogramWeight },
});

/** Both orders of a force and an arm, with whatever people put between them. */
function spelledCouples(forces: readonly string[], arms: readonly string[], factor: number) {
  const joints = ['.', '·', '⋅', '*', '-', ' '];
  const pairs = forces.flatMap((force) => arms.map((arm) => [force, arm] as const));
  const spelled = pairs.flatMap(([force, arm]) =>
    joints.flatMap((joint) => [`${force}${joint}${arm}`, `${arm}${joint}${force}`]),
  );
  return Object.fromEntries(spelled.map((written) => [written, factor]));
}

/** In a couple a pound is a force, whichever way it is written: foot-pounds, as a torque wrench says them. */
const pounds = ['lbf', 'lb', 'lbs', 'pound', 'pounds'];
const couples = table({
  ...spelledCouples(pounds, ['in', 'inch'], poundForce * inch),
  ...spelledCouples(pounds, ['ft', 'foot', 'feet'], poundForce * foot),
  ...{ 'N.m': 1, 'N·m': 1, 'N⋅m': 1, 'N*m': 1, 'N-m': 1, 'N m': 1, Nm: 1 },
  ...{ 'N.mm': 0.001, 'N·mm': 0.001, 'N⋅mm': 0.001, 'N*mm': 0.001, 'N-mm': 0.001, 'N mm': 0.001, Nmm: 0.001 },
  ...{ 'kN.m': 1000, 'kN·m': 1000, 'kN⋅m': 1000, 'kN*m': 1000, 'kN-m': 1000, 'kN m': 1000, kNm: 1000 },
});

const pcf = pound / foot ** 3;
const pci = pound / inch ** 3;
const densities = table({
  ...{ 'kg/m3': 1, 'kg/m³': 1, 'lb/ft3': pcf, 'lb/ft³': pcf, pcf, 'lb/in3': pci, 'lb/in³': pci },
  ...{ 'kg/mm3': 1e9, 'kg/mm³': 1e9, 'g/cm3': 1000, 'g/cm³': 1000 },
});

/** For each kind, what may be written after the number and the factor to the kind's SI unit. */
export const unitsOfKind: Readonly<Record<Kind, ReadonlyMap<string, number>>> = {
  length: lengths,
  force: forces,
  'line-load': lineLoads,
  'area-load': areaLoads,
  stress: stresses,
  couple: couples,
  density: densities,
  mass: table(massFactors),
};

/** How a person would be told what each kind takes. */
export const unitAdvice: Readonly<Record<Kind, string>> = {
  length: 'a length with its unit, such as 96 in, 8 ft 4-1/2 in or 2.4 m',
  force: 'a force or weight with its unit, such as 250 lbf, 22 lb, 1.2 kN or 10 kg',
  'line-load': 'a load per length with its unit, such as 20 lbf/ft, 20 lb/ft, 350 N/m or 12 kg/m',
  'area-load': 'a load per area with its unit, such as 25 psf, 0.72 kPa or 40 kg/m2',
  stress: 'a stress with its unit, such as 900 psi or 6.2 MPa',
  couple: 'a couple with its unit, such as 400 lbf.in, 30 ft-lb or 45 N.m',
  density: 'a density with its unit, such as 160 lb/ft3 or 2500 kg/m3',
  mass: 'a mass with its unit, such as 3 lb or 1.4 kg',
};

/** The same to somebody who works in metric units. */
export const unitAdviceMetric: Readonly<Record<Kind, string>> = {
  length: 'a length with its unit, such as 2400 mm, 2.4 m or 96 in',
  force: 'a force or weight with its unit, such as 1.2 kN, 10 kg or 250 lbf',
  'line-load': 'a load per length with its unit, such as 350 N/m, 12 kg/m or 20 lbf/ft',
  'area-load': 'a load per area with its unit, such as 0.72 kPa, 40 kg/m2 or 25 psf',
  stress: 'a stress with its unit, such as 6.2 MPa or 900 psi',
  couple: 'a couple with its unit, such as 45 N.m or 400 lbf.in',
  density: 'a density with its unit, such as 2500 kg/m3 or 160 lb/ft3',
  mass: 'a mass with its unit, such as 1.4 kg or 3 lb',
};
