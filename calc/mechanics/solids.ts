import { formula } from '../formula/formula.ts';

const gravity = {
  unit: 'm / s^2',
  shown: { 'inch-pound': { unit: 'lbf/lb', size: 9.80665 }, metric: { unit: 'N/kg', size: 1 } },
} as const;
const geometry = (clause: string) => ({ document: 'elementary geometry', edition: '', clause });

/** A flat round thing: a plate, a lid. */
export const discMass = formula({
  symbol: 'm',
  caption: 'a flat disc',
  expression: 'rho * 3.141592653589793 / 4 * D^2 * t',
  symbols: { rho: 'kg/m3', D: 'm', t: 'm' },
  unit: 'kg',
  source: geometry('disc'),
});

/** A bowl: half an ellipsoid with a wall of even thickness. */
export const bowlMass = formula({
  symbol: 'm',
  caption: 'a bowl and what is in it',
  expression:
    '3.141592653589793 / 6 * (rho * (D^2 * h - (D - 2 * t)^2 * (h - t)) + rho_in * f_in * (D - 2 * t)^2 * (h - t))',
  symbols: { rho: 'kg/m3', D: 'm', h: 'm', t: 'm', rho_in: 'kg/m3', f_in: '1' },
  unit: 'kg',
  source: geometry('half an ellipsoid'),
});

/** A jug, glass, jar or pot: a cylinder with a bottom, and what is in it. */
export const vesselMass = formula({
  symbol: 'm',
  caption: 'a vessel and what is in it',
  expression:
    '3.141592653589793 / 4 * (rho * (D^2 * h - (D - 2 * t)^2 * (h - t)) + rho_in * f_in * (D - 2 * t)^2 * (h - t))',
  symbols: { rho: 'kg/m3', D: 'm', h: 'm', t: 'm', rho_in: 'kg/m3', f_in: '1' },
  unit: 'kg',
  source: geometry('cylinder'),
});

/** A book, a box, a board. */
export const blockMass = formula({
  symbol: 'm',
  caption: 'a block',
  expression: 'rho * b * h * d',
  symbols: { rho: 'kg/m3', b: 'm', h: 'm', d: 'm' },
  unit: 'kg',
  source: geometry('block'),
});

/** Weight of several things of one mass. */
export const weightOfMany = formula({
  symbol: 'P',
  caption: 'weight of all of them',
  expression: 'n_c * m * g_0',
  symbols: { n_c: '1', m: 'kg', g_0: gravity },
  unit: 'N',
  source: geometry('standard gravity, 9.80665 m/s²'),
});
