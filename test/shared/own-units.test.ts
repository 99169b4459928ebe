import { describe, expect, it } from 'vitest';
import { parseLimit, readDocument } from '../../shared/check-document/index.ts';
import { parseQuantity, unitAdvice, unitAdviceMetric, type Kind } from '../../shared/quantity/index.ts';
import { demoCheck } from '../../server/demo.ts';
import { kinds } from '../units.ts';

type Units = 'inch-pound' | 'metric';

function messageAt(path: string, units: Units, board: object, brackets: object = {}): string {
  const reading = readDocument({
    ...demoCheck,
    units,
    board: { ...demoCheck.board, ...board },
    brackets: { ...demoCheck.brackets, ...brackets },
  });
  return reading.ok ? '' : (reading.errors.find((error) => error.path === path)?.message ?? '');
}

describe('what is wrong with a document in metric units', () => {
  it('is told in its own units first: a range', () => {
    const tooThick = { thickness: '900 mm' };
    expect(messageAt('/board/thickness', 'metric', tooThick)).toMatch(
      /: from [\d.]+ mm to [\d.]+ mm \([-\d./]+ in to [-\d./]+ in\)\.$/,
    );
    expect(messageAt('/board/thickness', 'inch-pound', tooThick)).toMatch(
      /: from [-\d./]+ in to [-\d./]+ in \([\d.]+ mm to [\d.]+ mm\)\.$/,
    );
  });

  it('is told in its own units first: what the field takes', () => {
    expect(messageAt('/board/length', 'metric', { length: 'long' })).toContain(
      'such as 2400 mm, 2.4 m or 96 in',
    );
    expect(messageAt('/board/length', 'inch-pound', { length: 'long' })).toContain('such as 96 in');
  });

  it('is told in its own units: what two fields say against each other', () => {
    const off = { positions: ['100 mm', '2500 mm'] };
    expect(messageAt('/brackets/positions/1', 'metric', { length: '2400 mm' }, off)).toContain(
      'ends at 2400 mm',
    );
    expect(messageAt('/brackets/positions/1', 'inch-pound', { length: '96 in' }, off)).toContain(
      'ends at 96 in',
    );
  });

  it.each(kinds)('a %s is told with the same examples, and each is taken', (kind: Kind) => {
    const examples = (advice: string): string[] => advice.replace(/^.*such as /, '').split(/, | or /);
    for (const example of examples(unitAdviceMetric[kind]))
      expect(parseQuantity(example, kind).ok, example).toBe(true);
    expect(unitAdviceMetric[kind].replace(/ such as .*/, '')).toBe(
      unitAdvice[kind].replace(/ such as .*/, ''),
    );
  });
});

describe('a limit', () => {
  it.each(['L/360', 'l / 360', '360', ' 360 '])('%j is a 360th of the span', (text) => {
    expect(parseLimit(text)).toEqual({ kind: 'fraction', divisor: 360, written: 'L/360' });
  });

  // These may be meant as an amount whose unit was forgotten.
  it.each(['10', '64', '1/64', '1/4', '0.25', '20000', '0100'])('%j is none', (text) => {
    expect(parseLimit(text)).toBeUndefined();
  });
});
