import { describe, expect, it } from 'vitest';
import { unitOfKind, unitsOfKind } from '../../shared/quantity/index.ts';
import { kinds, math, mathUnit } from '../units.ts';

/* Every factor against the units of mathjs, which were written by others. */

/** Where a mass is written for a weight, mathjs is asked for the mass times standard gravity. */
const masses = /^(?:lbs?|oz|kg|g)\b/;
const spelled: Readonly<Record<string, string>> = { '"': 'inch', "'": 'ft', Nm: 'N m', kNm: 'kN m' };

/** Foot-pounds in either order: the pound is a force (NIST SP 811, Appendix B: "foot pound-force"). */
const [armFirst, forceFirst] = [
  /^(in|inch|ft|foot|feet)[-.·⋅* ](?:lbf|lbs?|pounds?)$/,
  /^(?:lbf|lbs?|pounds?)[-.·⋅* ](in|inch|ft|foot|feet)$/,
];
const armOf = (written: string): string | undefined =>
  (armFirst.exec(written) ?? forceFirst.exec(written))?.[1];

function spelling(written: string): string {
  const arm = armOf(written);
  if (arm !== undefined) return `lbf ${arm.startsWith('in') ? 'inch' : 'ft'}`;
  return (spelled[written] ?? written)
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/(?<=[a-z])([23])$/, '^$1')
    .replace(/[.·⋅*]|(?<=N)-| in$/g, (sign) => (sign === ' in' ? ' inch' : ' '))
    .replace(/^Nmm$/, 'N mm')
    .replace(/\blbs?\b/, 'lbm')
    .replace(/^oz$/, 'ounce');
}

describe.each(kinds)('units of a %s', (kind) => {
  it.each([...unitsOfKind[kind]])('%s is %d', (written, factor) => {
    const isWeight = masses.test(written) && kind !== 'couple' && kind !== 'mass' && kind !== 'density';
    const unit = math.unit(1, spelling(written));
    const asked = isWeight ? math.multiply(unit, math.unit(9.80665, 'm/s^2')) : unit;
    const value: unknown = math.evaluate('number(u, v)', { u: asked, v: mathUnit[unitOfKind[kind]] });
    expect(Number(value) / factor).toBeCloseTo(1, 13);
  });
});
