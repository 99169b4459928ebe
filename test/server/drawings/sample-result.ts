import type { BracketShelfResult } from '../../../shared/check-result.ts';
import { quantity } from '../../../shared/quantity/index.ts';

const inch = 0.0254;
const none = quantity(0, 'm', 'inch-pound');
const force = quantity(0, 'N', 'inch-pound');
const moment = quantity(0, 'N.m', 'inch-pound');

/**
 * An answer made by hand for drawing tests: a 96 in board on brackets at 8, 32, 64 and 88 in. Its diagram is a simple wave
 * with zeros over the brackets, so that every place on the drawing can be told beforehand.
 */
export function sampleResult(
  diagram?: Partial<BracketShelfResult['analysis']['diagram']>,
): BracketShelfResult {
  const at = Array.from({ length: 97 }, (_, index) => index * inch);
  const wave = at.map((_, index) => Math.sin(((index - 8) / 24) * Math.PI));
  return {
    schema: 1,
    element: 'bracket-shelf',
    verdict: 'holds',
    summary: 'Holds.',
    governing: 'fixing',
    checks: [],
    analysis: {
      supports: [],
      moment: { max: moment, min: moment },
      shear: { max: force },
      deflection: { live: none, longTerm: none, bays: [] },
      stiffness: { EI: quantity(1, 'N.m2', 'inch-pound'), GA: null, GJ: quantity(1, 'N.m2', 'inch-pound') },
      diagram: {
        at,
        momentMax: wave.map((each) => Math.max(0, each) * 20),
        momentMin: wave.map((each) => Math.min(0, each) * 20),
        shearMax: wave.map((each) => Math.max(0, each) * 200),
        shearMin: wave.map((each) => Math.min(0, each) * 200),
        settled: wave.map((each) => each * 0.001),
        ...diagram,
      },
    },
    fixings: [],
    remedies: [],
    assumptions: [],
    warnings: [],
    cautions: [],
    worksheet: { sections: [] },
    provenance: { values: [] },
    edition: { code: 'NDS 2018', tool: '0.1.0' },
  };
}
