import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { psi } from '../calc/elements/documents.ts';
import { boxes, boxOf, named, plates, type Box, type Kind } from './box-plates.ts';
import type { StripLoad } from './finite-strip.ts';
import { inverse, transposed } from './plate-rectangle.ts';

/** Largest stress along the board at a face of either skin, each pound. */
function byStrips(box: Box, kind: Kind): { readonly bottom: number; readonly top: number } {
  const { solve, loads, lines, up } = plates(box, box.length, kind);
  const found = solve(loads);
  const most = (z: number): number => Math.max(...lines.map((y) => found.face(y, z)));
  return { bottom: most(-up), top: most(up) };
}

/**
 * The same of the upper skin over a bracket in the middle of two bays, which holds each member up on 1-1/2 in. An even load stands on
 * the members, each with what is halfway to the next: between them it bends the skin across, which has a check of its own.
 */
function overBracket(box: Box, kind: Kind): number {
  const { solve, loads: spread, lines, up, middles } = plates(box, 2 * box.length, kind);
  const apart = (box.depth - box.frame) / (box.members - 1);
  const onMembers = middles.map((y, k): StripLoad => {
    const isLast = k === 0 || k === middles.length - 1;
    const share = (isLast ? (apart + box.frame) / 2 : apart) / box.depth;
    return { at: [y, up], perLength: share / (2 * box.length) };
  });
  const loads = kind === 'even' ? onMembers : spread;
  const push = (y: number, point: number): StripLoad => ({ at: [y, -up], point, patch: 1.5 });
  const sags = middles.map((y) => {
    const { movement } = solve([push(y, -1)]);
    return middles.map((at) => movement(at, -up));
  });
  const alone = solve(loads);
  const held = inverse(transposed(sags)).map((row) =>
    row.reduce((sum, each, k) => sum - each * alone.movement(middles[k] ?? 0, -up), 0),
  );
  const found = solve([...loads, ...middles.map((y, k) => push(y, -(held[k] ?? 0)))]);
  return Math.max(...lines.map((y) => found.face(y, up)));
}

/** Bending that the check finds for each pound, where much stands on the box already. */
function perPound(box: Box, kind: Kind, bays = 1): number {
  const found = (pounds: number): number => {
    const { checks } = check(boxOf(box, kind, pounds, bays), { waysOut: false });
    return checks.find(({ id }) => id === 'bending')?.demand?.value ?? NaN;
  };
  return (found(3000) - found(2000)) / 1000 / psi;
}

describe('a hollow box of one wood in one bay', () => {
  it.each(boxes.map(named))('%s: a hand at its front edge', (_, box) => {
    const { bottom, top } = byStrips(box, 'hand');
    const ratio = perPound(box, 'hand') / Math.max(bottom, top);
    expect(ratio).toBeGreaterThan(0.9);
    expect(ratio).toBeLessThan(2.5);
  });

  it.each(boxes.map(named))('%s: a line of load along its front member', (_, box) => {
    const ratio = perPound(box, 'line') / byStrips(box, 'line').bottom;
    expect(ratio).toBeGreaterThan(0.94);
    expect(ratio).toBeLessThan(2.2);
  });

  it.each(boxes.map(named))('%s: an even load', (_, box) => {
    const ratio = perPound(box, 'even') / byStrips(box, 'even').bottom;
    expect(ratio).toBeGreaterThan(0.94);
    expect(ratio).toBeLessThan(1.5);
  });
});

describe('the same over the middle one of three brackets', () => {
  const some = boxes.filter(({ members }) => members < 5);
  it.each(some.map(named))('%s: an even load', (_, box) => {
    const ratio = perPound(box, 'even', 2) / overBracket(box, 'even');
    expect(ratio).toBeGreaterThan(0.84);
    expect(ratio).toBeLessThan(1.7);
  });

  it.each(some.map(named))('%s: a line of load along its front member', (_, box) => {
    const ratio = perPound(box, 'line', 2) / overBracket(box, 'line');
    expect(ratio).toBeGreaterThan(0.84);
    expect(ratio).toBeLessThan(2.2);
  });
});
