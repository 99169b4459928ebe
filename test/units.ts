import type { MathJsInstance } from 'mathjs';
import mathjs from 'mathjs/lib/browser/math.js';
import { unitsOfKind, type Kind, type Unit } from '../shared/quantity/index.ts';

/**
 * The whole of mathjs, with units: what the project's own arithmetic and factors are held against. Its psi and kip are
 * truncated and psf, ksi, plf and pcf are missing; they are defined here from its pound-force, inch and foot.
 */
export const math: MathJsInstance = mathjs.create(mathjs.all ?? {}, {});

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

/** Every kind of quantity there is. */
export const kinds = Object.keys(unitsOfKind) as Kind[];
