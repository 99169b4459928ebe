import { describe, expect, it } from 'vitest';
import type { Fixing } from '../../../calc/elements/fixing/fixing.ts';
import { legBending } from '../../../calc/elements/fixing/leg-bending.ts';

/*
 * The leg of a bracket with a strut on a covering that crushes, as a beam in equilibrium under point forces and one even
 * pressure: the moment is summed from the pressed end at 4000 places. Metres, newtons.
 */
interface Leg {
  readonly height: number;
  readonly width: number;
  /** Above the lower end. */
  readonly screws: readonly number[];
  readonly drop: number;
  /** Null on solid backing. */
  readonly bearing_Pa: number | null;
  readonly couple: number;
  readonly isLifted: boolean;
  /** Height of the blocking that is all there is behind the plate, its edge at the farthest screw. */
  readonly blocking?: number;
}

/** The largest moment in the leg, and the length that is pressed. */
function sampled({
  height,
  width,
  screws,
  drop,
  bearing_Pa,
  couple,
  isLifted,
  blocking = Infinity,
}: Leg & { bearing_Pa: number }) {
  const along = screws.map((z) => (isLifted ? height - z : z));
  const from = Math.max(0, Math.max(...along) - blocking);
  const line = bearing_Pa * width;
  const pullsAbout = (pivot: number): number[] => {
    const arms = along.map((z) => Math.max(0, z - pivot));
    return arms.map((arm) => (couple * arm) / arms.reduce((sum, each) => sum + each * each, 0));
  };
  const total = (pulls: readonly number[]): number => pulls.reduce((sum, each) => sum + each, 0);
  // The pulls together are what the wall answers: f b a.
  let [short, long] = [0, Math.min(...along) - from];
  for (let round = 0; round < 100; round++) {
    const a = (short + long) / 2;
    if (total(pullsAbout(from + a / 2)) > line * a) short = a;
    else long = a;
  }
  const pulls = pullsAbout(from + long / 2);
  const pair = couple / drop;
  // Positive away from the wall. Down, the arm pulls at the top and the strut presses at its foot; lifted, the other way.
  const forces = [
    ...along.map((at, index) => ({ at, force: -(pulls[index] ?? NaN) })),
    isLifted ? { at: 0, force: -pair } : { at: height, force: pair },
    isLifted ? { at: drop, force: pair } : { at: height - drop, force: -pair },
  ];
  const momentAt = (z: number): number => {
    const pressed = Math.min(Math.max(0, z - from), long);
    const ofPoints = forces.reduce((sum, { at, force }) => sum + force * Math.max(0, z - at), 0);
    return ofPoints + line * pressed * (z - from - pressed / 2);
  };
  const places = Array.from({ length: 4001 }, (_, step) => (Math.max(height, drop) * step) / 4000);
  expect(Math.abs(momentAt(Math.max(height, drop)))).toBeLessThan(1e-6 * couple);
  return { M: Math.max(...places.map((z) => Math.abs(momentAt(z)))), a: from + long };
}

function worked({ height, width, screws, drop, bearing_Pa, couple, isLifted, blocking }: Leg): number {
  const fixing: Fixing = {
    system: 'metric',
    plate: { height_m: height, width_m: width, thickness_m: 0.004 },
    fastener: null,
    allowable: null,
    length_m: 0.08,
    thread_m: 0.05,
    driven: 'straight',
    heights_m: screws,
    perHeight: 1,
    across_m: 0,
    gap_m: 0.0125,
    ground: { kind: 'hollow' },
    blockingHeight_m: blocking ?? null,
    moisture: 'dry',
    temperature: 'ordinary',
    coveringBearing_Pa: bearing_Pa,
  };
  const load = {
    shear_N: 0,
    pull_N: 0,
    couple_Nm: couple,
    isLifted,
    duration: 'permanent',
    C_D: 1,
  } as const;
  return legBending(fixing, load, drop).value_Nm;
}

const high = { height: 0.15906, width: 0.05018, screws: [0.08819, 0.04165], drop: 0.11708 };
const legs: readonly (readonly [string, Leg & { bearing_Pa: number }])[] = [
  [
    'lifted, worst where the arm presses and the wall answers over 50 mm',
    { ...high, bearing_Pa: 0.518e6, couple: 100, isLifted: true },
  ],
  [
    'lifted, a harder covering',
    { ...high, screws: [0.12, 0.04], bearing_Pa: 2e6, couple: 100, isLifted: true },
  ],
  [
    'lifted, the foot of the strut within the length that is pressed',
    { ...high, screws: [0.06, 0.03], drop: 0.03, bearing_Pa: 0.8e6, couple: 90, isLifted: true },
  ],
  [
    'lifted, the foot below the plate',
    { ...high, drop: 0.2, bearing_Pa: 0.6e6, couple: 100, isLifted: true },
  ],
  [
    'down, the foot above the screws',
    { ...high, drop: 0.04, bearing_Pa: 0.6e6, couple: 50, isLifted: false },
  ],
  [
    'down, the foot where the wall is pressed',
    { ...high, screws: [0.13, 0.06], drop: 0.14, bearing_Pa: 0.4e6, couple: 80, isLifted: false },
  ],
  [
    'down, the foot low where the wall is pressed far up',
    { ...high, screws: [0.11, 0.08], drop: 0.155, bearing_Pa: 0.3e6, couple: 50, isLifted: false },
  ],
  [
    'down, the foot below the plate',
    {
      ...high,
      height: 0.12,
      screws: [0.12, 0.07],
      drop: 0.22,
      bearing_Pa: 1.8e6,
      couple: 90,
      isLifted: false,
    },
  ],
  [
    'down, the foot in the middle',
    { ...high, screws: [0.15, 0.05], drop: 0.09, bearing_Pa: 1e6, couple: 100, isLifted: false },
  ],
  [
    'down, on blocking 90 mm high, the foot below it',
    { ...high, screws: [0.15, 0.12], bearing_Pa: 2e6, couple: 60, isLifted: false, blocking: 0.09 },
  ],
  [
    'down, on blocking 90 mm high, the foot on it',
    {
      ...high,
      screws: [0.15, 0.12],
      drop: 0.06,
      bearing_Pa: 2e6,
      couple: 60,
      isLifted: false,
      blocking: 0.09,
    },
  ],
  [
    'lifted, on blocking 90 mm high',
    { ...high, screws: [0.04, 0.02], bearing_Pa: 2e6, couple: 60, isLifted: true, blocking: 0.09 },
  ],
];

describe('the leg of a bracket whose strut stands below its plate', () => {
  it('solid backing, the foot 80 mm below: C / 200 mm × 80 mm at the lower end of the plate', () => {
    const leg = { ...high, height: 0.12, screws: [0.11, 0.07], drop: 0.2, couple: 90, isLifted: false };
    expect(worked({ ...leg, bearing_Pa: null })).toBeCloseTo((90 / 0.2) * 0.08, 9);
  });
});

describe('the leg of a bracket with a strut where the wall is crushed', () => {
  it.each(legs)('%s: the largest of 4000 sampled moments', (_, leg) => {
    const { M, a } = sampled(leg);
    expect(a).toBeLessThan(Math.min(...leg.screws.map((z) => (leg.isLifted ? leg.height - z : z))) - 1e-6);
    expect(worked(leg) / M).toBeGreaterThan(0.9999);
    expect(worked(leg) / M).toBeLessThan(1.001);
  });
});
