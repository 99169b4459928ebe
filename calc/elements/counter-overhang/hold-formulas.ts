import { formula, type UnitExpression } from '../../formula/formula.ts';
import { inch } from '../../../shared/quantity/index.ts';

const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/** What keeps the top on its base: its own weight behind the line at 0.6, and the screws. */
export const topHolding = formula({
  symbol: 'C_keep',
  caption: 'what keeps the top on its base',
  expression: '0.6 * D_r * e_r + Sigma_s',
  symbols: { D_r: 'N', e_r: 'm', Sigma_s: 'N.m' },
  unit: 'N.m',
  source: {
    document: 'ASCE 7',
    edition: '',
    clause: '2.4.1, 0.6 D by analogy; to it the pull of each screw times its distance',
  },
});

/** Curvature. */
const perLength: UnitExpression = {
  unit: '1 / m',
  shown: { 'inch-pound': { unit: '1/in', size: 1 / inch }, metric: { unit: '1/mm', size: 1000 } },
};

/** Moment in a bar that bends with the top. */
export const barMoment = formula({
  symbol: 'M_bar',
  caption: 'moment in the bar, as bent as the top above it',
  expression: 'E_s * b * t_s^3 / 12 * chi',
  symbols: { E_s: 'Pa', b: 'm', t_s: 'm', chi: perLength },
  unit: 'N.m',
  source: mechanics('EI times curvature'),
});

/** Couple of a bracket's load about the face of the base. */
export const bracketCouple = formula({
  symbol: 'C_br',
  caption: 'couple a bracket is rated for, its load in the middle of its arm',
  expression: 'P_r * l_b / 2',
  symbols: { P_r: 'N', l_b: 'm' },
  unit: 'N.m',
  source: { document: 'common practice, no source', edition: '', clause: 'rating of a bracket' },
});

/** Past the last panel a rail is judged as an arm that carries all its load at its end. */
export const railEndMoment = formula({
  symbol: 'M_rail',
  caption: 'moment in the rail past the last panel',
  expression: 'R_r * L_r',
  symbols: { R_r: 'N', L_r: 'm' },
  unit: 'N.m',
  source: {
    document: 'AISC Manual',
    edition: '15th',
    clause: 'Table 3-23, cantilever, load at the free end',
  },
});

/** Load at which a rail between panels is judged: all that the rail carries there, in the middle. */
export const railMoment = formula({
  symbol: 'M_rail',
  caption: 'moment in the rail between panels',
  expression: 'R_r * L_r / 4',
  symbols: { R_r: 'N', L_r: 'm' },
  unit: 'N.m',
  source: { document: 'AISC Manual', edition: '15th', clause: 'Table 3-23, simple beam, load in the middle' },
});
