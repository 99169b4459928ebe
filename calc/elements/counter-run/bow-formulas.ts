import { formula } from '../../formula/formula.ts';

/** Stiffness of a strip that hangs through by so much under its own load after years of creep. */
export const impliedStiffness = formula({
  symbol: 'EI_m',
  caption: 'stiffness that the measured bow tells of, for each width',
  expression: '5 * K_cr * q * L^4 / (384 * Delta_m)',
  symbols: { K_cr: '1', q: 'N/m2', L: 'm', Delta_m: 'm' },
  unit: 'N.m',
  source: {
    document: 'AISC Manual',
    edition: '15th',
    clause: 'Table 3-23, simple beam, uniform load, turned round',
  },
});

/** Movement of a strip between two supports under an even load. */
export const stripMovement = formula({
  symbol: 'Delta_s',
  caption: 'movement of a strip between its ends',
  expression: '5 * q * L^4 / (384 * EI)',
  symbols: { q: 'N/m2', L: 'm', EI: 'N.m' },
  unit: 'm',
  source: { document: 'AISC Manual', edition: '15th', clause: 'Table 3-23, simple beam, uniform load' },
});

/** All that lies on the panels, weight included. */
export const wholeLoad = formula({
  symbol: 'W',
  caption: 'all that the sides and the rails have to carry of it',
  expression: 'q * L * d',
  symbols: { q: 'N/m2', L: 'm', d: 'm' },
  unit: 'N',
  source: { document: 'elementary mechanics', edition: '', clause: 'equilibrium: pressure times area' },
});
