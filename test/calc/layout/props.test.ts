import { describe, expect, it } from 'vitest';
import { check, DocumentError, props } from '../../../calc/index.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { parseQuantity } from '../../../shared/quantity/index.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';

const start: CounterOverhangInput = startChecks['counter-overhang'];
const bracketsAt = (places: readonly number[]): CounterOverhangInput => ({
  ...start,
  props: places.map((at) => ({ kind: 'bracket', at: `${at} in`, to: '34 in', allowable: '2000 lbf' })),
});

describe('what a counter wants under it', () => {
  const answer = props(start);
  const [brackets] = answer.proposals;

  it('holds as proposed, by a check of its own, with a rating that is not used up', () => {
    expect(answer.wanted).toBe(true);
    expect(brackets?.kind).toBe('brackets');
    const after = check(brackets?.document);
    expect(after.verdict).toBe('holds');
    const rating = after.checks.find(({ id }) => id === 'prop')?.ratio ?? NaN;
    expect(rating).toBeGreaterThan(0.75);
    expect(rating).toBeLessThanOrEqual(0.9);
  });

  it('is brackets for 72 in of maple: one fewer is not enough', () => {
    expect(brackets?.what).toMatch(/\d brackets at/);
    const proposed = brackets?.document as CounterOverhangInput;
    const fewer = (proposed.props?.length ?? 0) - 1;
    const at = (index: number): number => 2 + (68 * index) / Math.max(1, fewer - 1);
    const places = Array.from({ length: fewer }, (_, index) => (fewer === 1 ? 36 : at(index)));
    expect(check({ ...bracketsAt(places), top: proposed.top }).verdict).not.toBe('holds');
    for (const places of [
      [2, 70],
      [12, 60],
      [18, 54],
    ]) {
      expect(check(bracketsAt(places)).verdict).not.toBe('holds');
    }
  });

  it('says of each kind that comes to nothing what was tried and the check in its way, which a check of its own confirms', () => {
    expect(answer.notEnough.map(({ kind }) => kind)).toEqual(['legs', 'flat-bars', 'thicker-top']);
    for (const { document, verdict, governing, what } of answer.notEnough) {
      const found = check(document);
      expect(found.verdict, what).not.toBe('holds');
      expect(found.verdict).toBe(verdict);
      const failing = found.checks.find(({ id }) => id === governing.id);
      expect(failing?.outcome, what).not.toBe('holds');
      expect(governing).toMatchObject({ title: failing?.title, ratio: failing?.ratio });
    }
    expect(answer.notEnough[0]?.what).toMatch(/^6 legs at .*, whatever the rating\.$/);
    expect(answer.proposals.every(({ verdict }) => verdict === 'holds')).toBe(true);
  });

  it('is a thicker top on the props that are there, and says so, where there are any', () => {
    const there = bracketsAt([12, 60]);
    const { proposals, notEnough } = props(there);
    const thicker = [...proposals, ...notEnough].find(({ kind }) => kind === 'thicker-top');
    expect((thicker?.document as CounterOverhangInput).props).toEqual(there.props);
    expect(thicker?.what).toMatch(/^A top .* thick, on the props that are there\.$/);
    expect(answer.notEnough.at(-1)?.what).toMatch(/^A top .* thick\.$/);
  });

  it('is no thicker top where it holds on the props that are there', () => {
    const stands = { ...start, ...(brackets?.document as CounterOverhangInput) };
    const found = props(stands);
    expect(found).toMatchObject({ wanted: true, holds: true });
    const kinds = [...found.proposals, ...found.notEnough].map(({ kind }) => kind);
    expect(kinds).not.toContain('thicker-top');
    expect(kinds).toContain('brackets');
    expect(answer.holds).toBe(false);
  });

  it('says how far it stands out unaided: it holds there, and half an inch further it does not', () => {
    const { value, document } = answer.unaided;
    expect(check(document).verdict).toBe('holds');
    const out = (value?.value ?? NaN) / 0.0254;
    const further = { ...start, top: { ...start.top, depth: `${24 + out + 0.5} in` }, props: [] };
    expect(check(further).verdict).not.toBe('holds');
    const { depth } = (document as CounterOverhangInput).top;
    const read = parseQuantity(depth, 'length');
    expect(read.ok && read.value).toBeCloseTo(0.0254 * (24 + out), 9);
  });

  it('wants nothing under what holds by itself', () => {
    const short = { ...start, top: { ...start.top, depth: '26-1/2 in' } };
    expect(props(short)).toMatchObject({ wanted: false, proposals: [], notEnough: [] });
  });

  it('is no leg under the top where the base itself tips over, but a hold on the floor', () => {
    const light = { ...start.base, weight: '50 lbf', weightAt: '12 in', heldToFloor: false };
    const { proposals, reason } = props({ ...start, base: light });
    expect(proposals).toEqual([]);
    expect(reason).toContain('hold it to the floor');
  });

  it('is asked of counters alone', () => {
    expect(() => props(startChecks['bracket-shelf'])).toThrow(DocumentError);
  });
});
