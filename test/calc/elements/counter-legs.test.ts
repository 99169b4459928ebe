import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { counter } from './counter-documents.ts';
import { judge, poundForce } from './documents.ts';

/*
 * Staves 2-1/4 in thick from back to front that stand out 5 in past a base 25 in deep, so stiff that they hardly move there by
 * themselves, with one leg 3 in in front of its face.
 */
const onLeg = (amount: string, at?: string) =>
  counter({
    top: {
      ...{ appearance: 'small-knots', thickness: '2-1/4 in', staves: 'across' },
      ...{ length: '52-1/2 in', depth: '33-1/2 in' },
    },
    base: { to: '52-1/2 in', back: '3-1/2 in', front: '28-1/2 in', foot: '25-1/2 in', weightAt: '14-1/2 in' },
    props: [{ kind: 'leg', at: '26-1/2 in', to: '31-1/2 in', allowable: '600 lbf' }],
    screws: {
      ...{ fastener: 'wood-screw-8', length: '1-1/2 in', through: '3/4 in' },
      at: [
        ['1-1/2 in', '5 in'],
        ['26-1/4 in', '5 in'],
        ['51 in', '5 in'],
      ],
    },
    loads: [
      { kind: 'area', amount: '10 psf' },
      { kind: 'person', amount, ...(at !== undefined && { at }) },
    ],
  });
describe('a leg under a short stiff overhang', () => {
  it('carries most of somebody right over it: by statics all, if neither it nor the top gave', () => {
    const carried_lbf = judge(onLeg('250 lbf', '26-1/2 in'), 'prop').demand / poundForce;
    expect(carried_lbf).toBeGreaterThan(0.6 * 250);
    expect(carried_lbf).toBeLessThan(1.1 * 250);
  });

  it('is said to give what it is taken to give: 2e-7 m/N is 0.0035 in under 100 lbf', () => {
    const notes = check(onLeg('250 lbf'), { waysOut: false }).worksheet.sections.flatMap(
      (each) => each.notes,
    );
    const said = notes.find((note) => note.includes('a tenth of that'));
    expect(said).toMatch(/gives 0\.0035\d* in under 100 lbf where nothing is said of it/);
  });
});
