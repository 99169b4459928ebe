import { all, create, type MathJsInstance } from 'mathjs';

/**
 * The project's one mathjs instance. The built-in psi and kip are truncated and psf, ksi, plf and pcf are missing, so
 * they are defined here from the pound-force, the inch and the foot, which are exact.
 */
export const math: MathJsInstance = create(all ?? {}, {});

const ownUnits: Record<string, string> = {
  psi: '1 lbf/inch^2',
  ksi: '1000 lbf/inch^2',
  kip: '1000 lbf',
  psf: '1 lbf/ft^2',
  plf: '1 lbf/ft',
  pcf: '1 lbm/ft^3',
};
for (const [name, definition] of Object.entries(ownUnits)) {
  math.createUnit(name, { definition }, { override: true });
}

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

/** mathjs spelling of each SI unit. */
export const mathUnit: Readonly<Record<Unit, string>> = {
  m: 'm',
  N: 'N',
  Pa: 'N/m^2',
  'N.m': 'N m',
  'N/m': 'N/m',
  'N/m2': 'N/m^2',
  m2: 'm^2',
  m3: 'm^3',
  m4: 'm^4',
  'N.m2': 'N m^2',
  'kg/m3': 'kg/m^3',
  kg: 'kg',
  rad: 'rad',
  '1': '',
};

/** Standard gravity, m/s²: a weight given in pounds or kilograms is this times its mass. */
export const standardGravity = 9.80665;

/** Factor from one unit (mathjs spelling) to an SI unit; fifteen figures, so that 1 in is 0.0254 and no neighbour. */
function factor(spelling: string, unit: Unit): number {
  return Number(math.unit(1, spelling).toNumber(mathUnit[unit]).toPrecision(15));
}

const weight = (spelling: string): number => factor(spelling, 'kg') * standardGravity;

function table(unit: Unit, spellings: Record<string, string>): Map<string, number> {
  return new Map(Object.entries(spellings).map(([written, spelling]) => [written, factor(spelling, unit)]));
}

const lengths = table('m', {
  in: 'inch',
  inch: 'inch',
  inches: 'inch',
  '"': 'inch',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  yd: 'yd',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
});

const masses = table('kg', { lb: 'lbm', lbs: 'lbm', oz: 'ounce', kg: 'kg', g: 'g' });

const forces = table('N', { lbf: 'lbf', kip: 'kip', N: 'N', kN: 'kN' });
for (const [written, spelling] of Object.entries({ lb: 'lbm', lbs: 'lbm', oz: 'ounce', kg: 'kg', g: 'g' })) {
  forces.set(written, weight(spelling));
}

const lineLoads = table('N/m', {
  'lbf/ft': 'lbf/ft',
  'lbf/in': 'lbf/inch',
  plf: 'lbf/ft',
  'N/m': 'N/m',
  'N/mm': 'N/mm',
  'kN/m': 'kN/m',
});
const pound = weight('lbm');
lineLoads.set('lb/ft', pound / factor('ft', 'm'));
lineLoads.set('lb/in', pound / factor('inch', 'm'));
lineLoads.set('kg/m', weight('kg'));

const stresses = {
  psi: 'psi',
  ksi: 'ksi',
  psf: 'psf',
  Pa: 'Pa',
  kPa: 'kPa',
  MPa: 'MPa',
  GPa: 'GPa',
  'N/mm2': 'MPa',
  'N/mm²': 'MPa',
};
const areaLoads = table('N/m2', {
  psf: 'psf',
  'lbf/ft2': 'psf',
  'lbf/ft²': 'psf',
  'N/m2': 'Pa',
  'N/m²': 'Pa',
  'kN/m2': 'kPa',
  'kN/m²': 'kPa',
  Pa: 'Pa',
  kPa: 'kPa',
});
areaLoads.set('lb/ft2', pound / factor('ft^2', 'm2'));
areaLoads.set('lb/ft²', pound / factor('ft^2', 'm2'));
areaLoads.set('kg/m2', weight('kg'));
areaLoads.set('kg/m²', weight('kg'));

const couples = table('N.m', {
  'lbf.in': 'lbf inch',
  'lbf·in': 'lbf inch',
  'lbf in': 'lbf inch',
  'in-lbf': 'lbf inch',
  'lbf.ft': 'lbf ft',
  'lbf·ft': 'lbf ft',
  'lbf ft': 'lbf ft',
  'ft-lbf': 'lbf ft',
  'N.m': 'N m',
  'N·m': 'N m',
  'N m': 'N m',
  Nm: 'N m',
  'N.mm': 'N mm',
  'N·mm': 'N mm',
  'N mm': 'N mm',
  'kN.m': 'kN m',
  'kN·m': 'kN m',
  'kN m': 'kN m',
  kNm: 'kN m',
});

const densities = table('kg/m3', {
  'kg/m3': 'kg/m^3',
  'kg/m³': 'kg/m^3',
  'lb/ft3': 'pcf',
  'lb/ft³': 'pcf',
  pcf: 'pcf',
  'lb/in3': 'lbm/inch^3',
  'lb/in³': 'lbm/inch^3',
  'kg/mm3': 'kg/mm^3',
  'kg/mm³': 'kg/mm^3',
  'g/cm3': 'g/cm^3',
  'g/cm³': 'g/cm^3',
});

/** For each kind, what may be written after the number and the factor to the kind's SI unit. */
export const unitsOfKind: Readonly<Record<Kind, ReadonlyMap<string, number>>> = {
  length: lengths,
  force: forces,
  'line-load': lineLoads,
  'area-load': areaLoads,
  stress: table('Pa', stresses),
  couple: couples,
  density: densities,
  mass: masses,
};

/** How a person would be told what each kind takes. */
export const unitAdvice: Readonly<Record<Kind, string>> = {
  length: 'a length with its unit, such as 96 in, 8 ft 4-1/2 in or 2.4 m',
  force: 'a force or weight with its unit, such as 250 lbf, 22 lb, 1.2 kN or 10 kg',
  'line-load': 'a load per length with its unit, such as 20 lbf/ft, 20 lb/ft, 350 N/m or 12 kg/m',
  'area-load': 'a load per area with its unit, such as 25 psf, 0.72 kPa or 40 kg/m2',
  stress: 'a stress with its unit, such as 900 psi or 6.2 MPa',
  couple: 'a couple with its unit, such as 400 lbf.in or 45 N.m',
  density: 'a density with its unit, such as 160 lb/ft3 or 2500 kg/m3',
  mass: 'a mass with its unit, such as 3 lb or 1.4 kg',
};
