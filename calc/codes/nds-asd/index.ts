import { durations, type Duration } from '../../../shared/check-document/index.ts';
import { durationFactor, mostDurationFactorOfConnections } from '../../standards/nds-2018/2.3-adjustment.ts';
import type { Combination, DesignCode, MaterialReading, MaterialRequest } from '../design-code.ts';
import { clearWoodMaterial } from './clear-wood.ts';
import { gradedMaterial } from './graded.ts';
import { panelMaterial } from './panel.ts';
import { basisOf } from './basis.ts';

/** ANSI/AWC NDS, allowable stress design. */
export const ndsAsd: DesignCode = {
  id: 'nds-asd',
  edition: 'ANSI/AWC NDS 2018, allowable stress design',
  combinationSource:
    'NDS 2018 2.3.2 and Appendix B: C_D of the shortest load in the combination. Of its other factors C_M is for moisture, C_t for temperature, C_F for size, C_fu for lying flat, C_eg for end grain, C_tn for nails toed in, C_g and C_Delta for screws in a row and their spacing.',
  material: (request: MaterialRequest): MaterialReading => {
    const basis = basisOf(request);
    if (basis === 'graded') return gradedMaterial(request);
    return basis === 'panel' ? panelMaterial(request) : clearWoodMaterial(request);
  },
  combinations,
  woodDuration: (duration) => durationFactor[duration],
  connectionDuration: (duration) => Math.min(durationFactor[duration], mostDurationFactorOfConnections),
};

const durationWords: Readonly<Record<Duration, string>> = {
  permanent: 'permanent',
  'ten-years': 'ten years',
  'two-months': 'two months',
  'seven-days': 'seven days',
  'ten-minutes': 'ten minutes',
  impact: 'impact',
};

/** Self-weight alone, then with everything that lasts as long as each duration that occurs. */
function combinations(present: readonly Duration[]): readonly Combination[] {
  const occurring = durations.filter((duration) => present.includes(duration));
  const withLoads = occurring.map((shortest): Combination => {
    const included = durations.slice(0, durations.indexOf(shortest) + 1);
    return {
      name: `D + loads of ${durationWords[shortest]} and longer`,
      duration: shortest,
      selfWeight: 1,
      factor: (duration) => (included.includes(duration) ? 1 : 0),
    };
  });
  return [{ name: 'D', duration: 'permanent', selfWeight: 1, factor: () => 0 }, ...withLoads];
}
